import type { HeardFact } from '../words/heard.ts';
import { isLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Ear } from '../words/match.ts';
import type { OneOf } from '../words/one-of.ts';
import { stretch } from '../words/stretch.ts';
import { DOUBTED, FOLLOWS, JUST } from '../words/sure.ts';
import type { Word } from '../words/words.ts';
import { COAT, type Count, MOST_COATS, ORDINALS } from './coat-counts.ts';
import { isBegunAnew } from './coat-story.ts';
import { isAnother, moreOf } from './more-coats.ts';
import { toldCoats } from './told-coats.ts';

/** What was laid before all was taken off counts no more. */
const sinceAnew = (words: readonly Word[], told: readonly Count[]): readonly Count[] => {
  const anew = words.findLast((_, at) => isBegunAnew(words, at));
  const since = told.filter(({ span }) => anew && span.from > anew.from);
  return since.length ? since : told;
};

/** "I put the gloss on, then another coat": two, though no number is told. */
const twoWithAnother = (words: readonly Word[], again: Word, more: number): HeardFact => ({
  fact: 'coat-number',
  value: 2,
  range: [2, 2 + more],
  sure: words.some((word, at) => word.from < again.from && isLaying(words, at)) ? JUST : DOUBTED,
  rests: [{ from: again.from, to: again.to }],
  against: [],
});

/** The highest count with what was laid on it later: "two coats, then two more on", "three coats and then another". */
const withLater = (
  ear: Ear,
  words: readonly Word[],
  manner: Manner,
  most: Count,
  others: number,
): Omit<HeardFact, 'against'> | undefined => {
  const more = words.flatMap((word, at) =>
    word.from >= most.span.to && !manner.notYet(stretch(at, at + 1)) ? (moreOf(ear, words, at) ?? []) : [],
  );
  const extra = more.reduce((sum, count) => sum + count, 0);
  const [low, high] = [most.low + extra, most.high + extra + others];
  if (high > MOST_COATS) return undefined;
  return {
    fact: 'coat-number',
    value: others ? high : Math.round((low + high) / 2),
    range: [low, Math.min(MOST_COATS, high + (others > 0 ? 1 : 0))],
    sure: extra || others ? Math.min(most.sure, FOLLOWS) : most.sure,
    rests: [most.span],
  };
};

const holds = (words: readonly Word[], { span }: Count, what: OneOf): boolean =>
  words.some(({ word, from, to }) => from >= span.from && to <= span.to && what.test(word));

/**
 * "Three coats on the underside. The second coat on top bubbled", "filled with four coats, then three over everything": of
 * a number of coats, and behind it of fewer, each may be of its own place, and none says how many lie here. "The second
 * coat. The first was fine" looks back.
 */
const isOfPlaces = (words: readonly Word[], most: Count, told: readonly Count[]): boolean => {
  if (holds(words, most, ORDINALS)) return false;
  // "five coats. First hot plate left a ring": a number alone need be no coat's.
  const behind = told.filter(
    (one) => one.span.from >= most.span.to && (!holds(words, one, ORDINALS) || holds(words, one, COAT)),
  );
  return behind.length > 0 && behind.every(({ high }) => high < most.high);
};

/**
 * Which coat this is: the highest that is told as laid, with what was laid on it later. Where no top coat is named at
 * all, the coats of paint are meant.
 */
export const coatNumberOf = (
  ear: Ear,
  words: readonly Word[],
  manner: Manner,
  isTopNamed: boolean,
  /** The kind of finish that is taken as told. */
  family: string | undefined,
): HeardFact[] => {
  const told = sinceAnew(words, toldCoats(ear, words, manner, family));
  const others = words.filter((_, at) => isAnother(words, manner, at));
  const again = told.length ? undefined : others.find(({ word }) => word === 'another');
  if (again && isTopNamed) return [twoWithAnother(words, again, others.length)];
  const clear = told.filter(({ ofPaint }) => !ofPaint);
  const isOfClear = clear.length > 0 || isTopNamed;
  const ranked = [...(isOfClear ? clear : told)].sort((a, b) => b.high - a.high || b.sure - a.sure);
  const [most] = ranked;
  if (!most) return [];
  const later = others.filter(({ from }) => from >= most.span.to).length;
  const found = withLater(ear, words, manner, most, later);
  const against = (isOfClear ? told : ranked)
    .filter(({ high }) => high !== most.high)
    .map(({ span }) => span);
  const sure = isOfPlaces(words, most, clear) ? DOUBTED : most.sure;
  return found ? [{ ...found, sure: Math.min(found.sure, sure), against }] : [];
};
