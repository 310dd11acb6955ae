import { atOnceOf, type Heard, hear, mindOf, type Understanding } from '#engine/hear.ts';
import { readHearing } from '../../../content/tools/hear.ts';
import { readIndex } from '../../../content/tools/said.ts';
import { known } from '../../content/real/knowledge.ts';

export { known };
export const hearing = readHearing(known, process.cwd());

/** What a reply says. */
export const words = hearing.lexicon.reply;

/** All that it takes to understand a post. */
export const understanding: Understanding = {
  hearing,
  mind: mindOf(known),
  index: readIndex(known, process.cwd()),
  atOnce: atOnceOf(known),
};

export const heard = (text: string): Heard => hear(hearing, text);
export const fact = (text: string, name: string) => heard(text).facts.find((one) => one.fact === name);
export const sign = (text: string, question: string) =>
  heard(text).signs.find((one) => one.question === question)?.answer;
