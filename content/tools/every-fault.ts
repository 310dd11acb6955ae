import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { type Survey, survey } from '#engine/see/survey.ts';
import { callsTable } from './calls.ts';
import { careTable } from './care.ts';
import { choicesTable } from './choices.ts';
import type { ContentRoot } from './files.ts';
import { firstCoatTable } from './first-coat.ts';
import { handsTable } from './hands.ts';
import { hardWordsTable } from './hard-words.ts';
import {
  factsTable,
  flawsTable,
  languageTable,
  questionsTable,
  searchWordsTable,
  wordKindsTable,
} from './hear.ts';
import { kinTable } from './kin.ts';
import { provenKnowledge } from './knowledge.ts';
import { planTable } from './plan.ts';
import { practiceTable } from './practice.ts';
import { reachable } from './reachable.ts';
import { collectedTable, imaginedTable, readIndex, saidTable } from './said.ts';
import { sightsTable } from './sights.ts';
import { signsThatStandAlone, untoldMarks } from './signs-told.ts';

const TABLES = [
  planTable,
  callsTable,
  careTable,
  choicesTable,
  handsTable,
  firstCoatTable,
  sightsTable,
  searchWordsTable,
  wordKindsTable,
  kinTable,
  hardWordsTable,
  languageTable,
  factsTable,
  flawsTable,
  questionsTable,
  practiceTable,
  saidTable,
  imaginedTable,
  collectedTable,
];

/** Every fault of the tables, each against the knowledge. */
const tableFaults = (known: Knowledge, root: ContentRoot): readonly Issue[] =>
  TABLES.flatMap((read) => {
    const table = read(known, root);
    return table.ok ? [] : table.issues;
  });

/** All that `npm run check` tells, with what it has read. */
export const everyFault = (
  root: ContentRoot,
): { readonly known?: Knowledge; readonly figures?: Survey; readonly issues: readonly Issue[] } => {
  const { known, issues } = provenKnowledge(root);
  if (!known) return { issues };
  const matrix = matrixOf(known);
  const figures = survey(matrix);
  const tables = tableFaults(known, root);
  const more = tables.length
    ? tables
    : [
        ...untoldMarks(known, root),
        ...signsThatStandAlone(known, root),
        ...reachable(known, matrix, figures, readIndex(known, root)),
      ];
  return { known, figures, issues: [...issues, ...more] };
};
