import type { Manner } from '../words/manner.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import type { Word } from '../words/words.ts';
import { laidIn } from './laid-since.ts';

const sentenceAt = (words: readonly Word[], from: number): number =>
  words.find((word) => word.from >= from)?.sentence ?? -1;

/** Letters between "for" and the end of a time that goes with it: "pouted for several weeks" tells how long it was done. */
const BESIDE_FOR = 6;

/**
 * "After thirty minutes it was uneven, after an hour it cracked": of times that are told one after the other and grow, with
 * no coat between, the last is now.
 */
export const lastOfStory = (
  words: readonly Word[],
  manner: Manner,
  first: SpokenSpan,
  told: readonly SpokenSpan[],
): SpokenSpan => {
  const after = told.filter(({ from }) => from > first.from).sort((a, b) => a.from - b.from);
  const last = after.at(-1);
  const grow = [first, ...after].every((one, at, all) => at === 0 || one.likely > (all[at - 1]?.likely ?? 0));
  if (!last || !grow || last.now || last.sure < first.sure) return first;
  const sentences = sentenceAt(words, last.from) - sentenceAt(words, first.from);
  const lasts = words.some(
    ({ from, to, word }) => word === 'for' && to <= last.to && last.from - from < BESIDE_FOR,
  );
  if (sentences > 1 || lasts) return first;
  const laid = laidIn(words, manner).some((at) => (words[at]?.from ?? 0) > first.to);
  return laid ? first : last;
};
