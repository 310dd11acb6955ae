/** Boards that are dealt for tests, of seeds that no other test draws, and how they are looked through. */

import { readPractice } from '../../../content/tools/practice.ts';
import type { PracticeWords } from '../../../engine/model/practice.ts';
import { dealPractice, PRACTICE_LEVELS, type PracticeItem, SOUND } from '../../../engine/practice.ts';
import { known } from '../../content/real/knowledge.ts';

export { known };
export const words: PracticeWords = readPractice(known, process.cwd());

export const drawn: readonly PracticeItem[] = Array.from({ length: 330 }, (_, n) =>
  dealPractice(known, words, { level: PRACTICE_LEVELS[n % 3] ?? 'look', seed: 7_000_000 + 97 * n }),
);
export const flawed = drawn.filter(({ flaw }) => flaw !== SOUND);

export const toldIn = ({ on }: PracticeItem, fact: string) => on[fact]?.value;

/** The ids of the items that are not so, with what else is told of them. */
export const unless = (items: readonly PracticeItem[], holds: (item: PracticeItem) => unknown): string[] =>
  items.flatMap((item) => (holds(item) === true ? [] : [`${item.id}: ${JSON.stringify(holds(item))}`]));

/** True, or both where they differ. */
export const same = (is: unknown, wanted: unknown) =>
  JSON.stringify(is) === JSON.stringify(wanted) ? true : { is, wanted };
