/** What `check.ts` runs: proves the content; one fault a line; exit 1 on any. Prints what the search for the flaw costs. */

import { say } from '#engine/say.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { survey } from '#engine/see/survey.ts';
import { careTable } from './care.ts';
import { choicesTable } from './choices.ts';
import { handsTable } from './hands.ts';
import { factsTable, languageTable, questionsTable, wordsTable } from './hear.ts';
import { provenKnowledge } from './knowledge.ts';
import { termsTable } from './plain-words.ts';
import { planTable } from './plan.ts';
import { practiceTable } from './practice.ts';
import { reachable } from './reachable.ts';
import { collectedTable, readIndex, saidTable } from './said.ts';

const root = process.cwd();
const { known, issues } = provenKnowledge(root);
const figures = known && survey(matrixOf(known));
const tables = known
  ? [
      planTable,
      careTable,
      choicesTable,
      handsTable,
      wordsTable,
      termsTable,
      languageTable,
      factsTable,
      questionsTable,
      practiceTable,
      saidTable,
      collectedTable,
    ].flatMap((read) => {
      const table = read(known, root);
      return table.ok ? [] : table.issues;
    })
  : [];
const all =
  known && figures && tables.length === 0
    ? [...issues, ...reachable(known, figures, readIndex(known, root))]
    : [...issues, ...tables];
for (const issue of all) console.error(say(issue));
if (all.length) {
  console.error(`\n${all.length} ${all.length === 1 ? 'fault' : 'faults'}.`);
  process.exitCode = 1;
}
if (known && figures) {
  console.log(
    `${known.defects.length} defects, ${known.questions.length} questions, ${known.remedies.length} remedies, ` +
      `${known.rules.length} rules, ${known.products.length} products, ${known.sources.length} sources.`,
  );
  const { entropy, questions, worst, rightFirst, fixedOrder, alphabetical } = figures;
  console.log(
    `From what is seen to the flaw: ${questions.toFixed(2)} questions on average (entropy ${entropy.toFixed(2)}), ` +
      `${worst} at worst, the right one first in ${(100 * rightFirst).toFixed(1)} %. ` +
      `One fixed order of questions: ${fixedOrder.toFixed(2)}; down an alphabetical list: ${alphabetical.toFixed(2)}.`,
  );
}
