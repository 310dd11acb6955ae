/** `npm run check`: proves the content; one fault a line; exit 1 on any. */
import { say } from '#engine/say.ts';
import { provenKnowledge } from './knowledge.ts';

const { known, issues } = provenKnowledge(process.cwd());
for (const issue of issues) console.error(say(issue));
if (issues.length) {
  console.error(`\n${issues.length} ${issues.length === 1 ? 'fault' : 'faults'}.`);
  process.exitCode = 1;
} else if (known) {
  console.log(
    `Proved: ${known.defects.length} defects, ${known.questions.length} questions, ${known.remedies.length} remedies, ` +
      `${known.rules.length} rules, ${known.products.length} products, ${known.sources.length} sources. No fault.`,
  );
}
