import type { Issue } from '#engine/issue.ts';
import type { Knowledge } from '#engine/knowledge.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import type { Survey } from '#engine/see/survey.ts';
import { careTable } from './care.ts';
import { choicesTable } from './choices.ts';
import type { ContentRoot } from './files.ts';
import { firstCoatTable } from './first-coat.ts';
import { handsTable } from './hands.ts';
import { factsTable, languageTable, questionsTable, wordsTable } from './hear.ts';
import { linkedKnowledge, unclear, unproven } from './knowledge.ts';
import { termsTable, toGrade } from './plain-words.ts';
import { planTable } from './plan.ts';
import { practiceTable } from './practice.ts';
import { reachable } from './reachable.ts';
import { type Reckoned, reckon, type Work } from './reckon.ts';
import { collectedTable, readIndex, saidTable } from './said.ts';
import { signsThatStandAlone, untoldMarks } from './signs-told.ts';

const TABLES = [
  planTable,
  careTable,
  choicesTable,
  handsTable,
  firstCoatTable,
  wordsTable,
  termsTable,
  languageTable,
  factsTable,
  questionsTable,
  practiceTable,
  saidTable,
  collectedTable,
];

/** Every fault of the tables, each against the knowledge. */
const tableFaults = (known: Knowledge, root: ContentRoot): readonly Issue[] =>
  TABLES.flatMap((read) => {
    const table = read(known, root);
    return table.ok ? [] : table.issues;
  });

/** All that `npm run check` tells, with what it has read. */
type Found = { readonly known?: Knowledge; readonly figures?: Survey; readonly issues: readonly Issue[] };

/** What is left of the check once it is known what the work came to. */
type Rest = (reckoned: Reckoned) => Found;

/** The check up to where the work is needed: what there is to do, and how it goes on. */
const begin = (
  root: ContentRoot,
): { readonly found: Found } | { readonly work: Work; readonly prove: () => Rest } => {
  const { known, issues } = linkedKnowledge(root);
  if (!known) return { found: { issues } };
  const work: Work = { grade: toGrade(known, root), signs: matrixOf(known) };
  const prove = (): Rest => {
    const proved = unproven(known, root);
    const tables = tableFaults(known, root);
    const marks = tables.length ? [] : [...untoldMarks(known, root), ...signsThatStandAlone(known, root)];
    const index = tables.length ? undefined : readIndex(known, root);
    return ({ grades, worded, figures }) => ({
      known,
      figures,
      issues: [
        ...proved,
        ...unclear(known, root, grades, worded),
        ...tables,
        ...marks,
        ...(index ? reachable(known, figures, index) : []),
      ],
    });
  };
  return { work, prove };
};

export const everyFault = (root: ContentRoot): Found => {
  const begun = begin(root);
  return 'found' in begun ? begun.found : begun.prove()(reckon(begun.work));
};

/** The same where another thread, which has read the same files, does the work meanwhile. */
export const everyFaultBeside = async (
  root: ContentRoot,
  reckonBeside: (work: Work) => Promise<Reckoned>,
): Promise<Found> => {
  const begun = begin(root);
  if ('found' in begun) return begun.found;
  const reckoned = reckonBeside(begun.work);
  const rest = begun.prove();
  return rest(await reckoned);
};
