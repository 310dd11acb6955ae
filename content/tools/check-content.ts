/** What `check.mjs` runs: proves the content; one fault a line; exit 1 on any. Prints what the search for the flaw costs. */

import { say } from '#engine/faults/say.ts';
import { everyFault } from './every-fault.ts';

const { known, figures, issues, untried = 0 } = everyFault(process.cwd());
for (const issue of issues) console.error(say(issue));
if (issues.length) {
  console.error(`\n${issues.length} ${issues.length === 1 ? 'fault' : 'faults'}.`);
  process.exitCode = 1;
}
if (known && figures) {
  console.log(
    `${known.defects.length} defects, ${known.questions.length} questions, ${known.remedies.length} remedies, ` +
      `${known.rules.length} rules, ${known.products.length} products, ${known.sources.length} sources.`,
  );
  if (untried)
    console.log(
      `${untried} names that more pages bear than stand in sight were not tried in the search: with so many pages its words are learned by the build alone.`,
    );
  const { entropy, questions, worst, rightFirst, fixedOrder, alphabetical } = figures;
  console.log(
    `From what is seen to the flaw: ${questions.toFixed(2)} questions on average (entropy ${entropy.toFixed(2)}), ` +
      `${worst} at worst, the right one first in ${(100 * rightFirst).toFixed(1)} %. ` +
      `One fixed order of questions: ${fixedOrder.toFixed(2)}; down an alphabetical list: ${alphabetical.toFixed(2)}.`,
  );
}
