import type { Issue } from '#engine/faults/issue.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { type Survey, survey } from '#engine/see/survey.ts';
import { callsTable } from './calls.ts';
import { careTable } from './care.ts';
import { choicesTable } from './choices.ts';
import { clockTable } from './clock-words.ts';
import type { ContentRoot } from './files.ts';
import { firstCoatTable } from './first-coat.ts';
import { handsTable } from './hands.ts';
import { hardWordsTable } from './hard-words.ts';
import {
  factsTable,
  flawsTable,
  languageTable,
  questionsTable,
  replyTable,
  searchWordsTable,
  wordKindsTable,
} from './hear.ts';
import { kinTable } from './kin.ts';
import { provenKnowledge } from './knowledge.ts';
import { planTable } from './plan.ts';
import { practiceTable } from './practice.ts';
import { lostNames, reachable, sharedNames } from './reachable.ts';
import { collectedTable, imaginedTable, readIndex, readNames, saidTable } from './said.ts';
import { sightsTable } from './sights.ts';
import { signsThatStandAlone, untoldMarks } from './signs-told.ts';

const TABLES = [
  planTable,
  callsTable,
  careTable,
  choicesTable,
  clockTable,
  handsTable,
  firstCoatTable,
  sightsTable,
  searchWordsTable,
  replyTable,
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

/** Learning what was said grows faster than the pages: of more than these it is left to the build. */
const MOST_LEARNED = 1000;

/** Names that do not find their page, and how many were not tried since nothing was learned. */
const ofNames = (
  known: Knowledge,
  root: ContentRoot,
): { readonly issues: readonly Issue[]; readonly untried: number } => {
  const names = readNames(known, root);
  const shared = sharedNames(known, names);
  if (names.documents.length > MOST_LEARNED) return { issues: [], untried: shared.length };
  return { issues: shared.length ? [...lostNames(shared, readIndex(known, root))] : [], untried: 0 };
};

/** All that `npm run check` tells, with what it has read. */
export const everyFault = (
  root: ContentRoot,
): {
  readonly known?: Knowledge;
  readonly figures?: Survey;
  readonly issues: readonly Issue[];
  /** Names that were not tried in the search. */
  readonly untried?: number;
} => {
  const { known, issues } = provenKnowledge(root);
  if (!known) return { issues };
  const matrix = matrixOf(known);
  const figures = survey(matrix);
  const tables = tableFaults(known, root);
  if (tables.length) return { known, figures, issues: [...issues, ...tables] };
  const names = ofNames(known, root);
  const more = [
    ...untoldMarks(known, root),
    ...signsThatStandAlone(known, root),
    ...reachable(known, matrix, figures),
    ...names.issues,
  ];
  return { known, figures, issues: [...issues, ...more], untried: names.untried };
};
