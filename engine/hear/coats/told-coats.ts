import type { Manner } from '../words/manner.ts';
import type { Ear } from '../words/match.ts';
import { FOLLOWS, JUST } from '../words/sure.ts';
import type { Word } from '../words/words.ts';
import {
  COAT,
  type Count,
  countDone,
  countOf,
  countOn,
  countSoFar,
  isApplication,
  ORDINALS,
  timesLaid,
} from './coat-counts.ts';
import { type Coats, laidOf, type Said } from './laid-coats.ts';
import { isOfOtherKind, ofNamed } from './named-coats.ts';
import { isCoat } from './nth-coat.ts';

/** "the third is sticky": a coat that its number alone names. */
const byNumber = ({ ear, words }: Coats, at: number, word: Word, sure: number): Count | undefined => {
  if (!ORDINALS.test(word.word) || !isCoat(words, at)) return undefined;
  const count = ear.numbers.get(word.word) ?? 0;
  return { low: count, high: count, sure, span: { from: word.from, to: word.to } };
};

/** What is told before the first word for a coat: "I am on my fourth and it is dull". */
const beforeNamed = (coats: Coats, at: number, word: Word): Said[] => {
  const { ear, words } = coats;
  const isOnMine = words[at - 1]?.word === 'my' && words[at - 2]?.word === 'on';
  return [
    { count: countSoFar(ear, words, at) ?? countDone(ear, words, at), from: at, to: at + 1 },
    { count: isOnMine ? byNumber(coats, at, word, JUST) : undefined, from: at, to: at + 1 },
  ];
};

/** "two coats of poly and one of clear" are three; coats of paint are not counted with clear ones. */
const sumOf = (words: readonly Word[], at: number, of: Count, last: Count | undefined): Count | undefined => {
  // "coats two and three of poly" are three, and not five
  const isApart = last && of.span.from >= last.span.to;
  return isApart && words[at - 1]?.word === 'and' && !of.ofPaint === !last.ofPaint
    ? { ...of, low: last.low + of.low, high: last.high + of.high }
    : undefined;
};

/** What is told behind the first word for a coat, of coats that have no word: "three coats of clear and two of satin". */
const behindNamed = (coats: Coats, at: number, word: Word, last: Count | undefined): Count[] => {
  const { ear, words, family } = coats;
  const of = countOf(ear, words, at);
  // "several of shellac, then one coat of lacquer"
  const kind = of && words.findLast(({ to }) => to === of.span.to);
  if (kind && isOfOtherKind(kind.word, family)) return [];
  const sum = of && sumOf(words, at, of, last);
  if (sum) return [sum];
  const count = of ?? countOn(ear, words, at) ?? countSoFar(ear, words, at) ?? countDone(ear, words, at);
  return laidOf(coats, [
    { count, from: at, to: at + 1 },
    { count: byNumber(coats, at, word, FOLLOWS), from: at, to: at + 1 },
  ]);
};

/** All counts of coats that a text tells as laid, in the order of its words. */
export const toldCoats = (
  ear: Ear,
  words: readonly Word[],
  manner: Manner,
  family: string | undefined,
): Count[] => {
  const named = words.flatMap(({ word }, at) => (COAT.test(word) || isApplication(words, at) ? [at] : []));
  const isOne = named.filter((at) => words[at - 1]?.word !== 'more').length === 1;
  const [first = Number.POSITIVE_INFINITY] = named;
  const coats = { ear, words, manner, family, named: new Set(named), first, isOne };
  const found: Count[] = [];
  words.forEach((word, at) => {
    if (coats.named.has(at)) found.push(...laidOf(coats, ofNamed(coats, at, word)));
    else if (at < first && word.word !== 'x') found.push(...laidOf(coats, beforeNamed(coats, at, word)));
    else found.push(...behindNamed(coats, at, word, found.at(-1)));
  });
  const times = words.map((_, at) => ({ count: timesLaid(ear, words, at), from: at, to: at + 1 }));
  return [...found, ...laidOf(coats, times)];
};
