/** What `check.mjs` runs: proves the content; one fault a line; exit 1 on any. Prints what the search for the flaw costs. */
import { once } from 'node:events';
import type { Worker } from 'node:worker_threads';
import { say } from '#engine/say.ts';
import type { Told } from './beside.ts';
import { everyFaultBeside } from './every-fault.ts';
import type { ContentRoot } from './files.ts';
import { wasParsed } from './read.ts';
import type { Reckoned, Work } from './reckon.ts';

/** The content as the second thread has read and parsed it. */
const asRead = (folder: string, told: Told): ContentRoot => {
  if (!('read' in told)) throw new Error('the second thread reckoned before it read');
  for (const { file, parsed } of told.read) if (parsed) wasParsed(file, parsed.of, parsed.data);
  return { folder, texts: new Map(told.read.map(({ file, text }) => [file, text])) };
};

/** What it makes of its work; throws what it threw. */
const reckonedBy = async (beside: Worker, work: Work): Promise<Reckoned> => {
  beside.postMessage(work);
  const [told] = (await once(beside, 'message')) as [Told];
  if (!('reckoned' in told)) throw new Error('the second thread read twice');
  return told.reckoned;
};

/** @param read - The first message of the second thread. */
export const check = async (folder: string, beside: Worker, [read]: [Told]): Promise<void> => {
  const root = asRead(folder, read);
  const { known, figures, issues } = await everyFaultBeside(root, (work) => reckonedBy(beside, work));
  await beside.terminate();
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
    const { entropy, questions, worst, rightFirst, fixedOrder, alphabetical } = figures;
    console.log(
      `From what is seen to the flaw: ${questions.toFixed(2)} questions on average (entropy ${entropy.toFixed(2)}), ` +
        `${worst} at worst, the right one first in ${(100 * rightFirst).toFixed(1)} %. ` +
        `One fixed order of questions: ${fixedOrder.toFixed(2)}; down an alphabetical list: ${alphabetical.toFixed(2)}.`,
    );
  }
};
