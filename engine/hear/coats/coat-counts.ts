import { FACTS } from '../../model/facts.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { isLaying } from '../words/laying.ts';
import type { Ear } from '../words/match.ts';
import { type OneOf, oneOf } from '../words/one-of.ts';
import { isDigit, numberAt } from '../words/spans.ts';
import { DOUBTED, FOLLOWS, JUST, PLAINLY, SAID } from '../words/sure.ts';
import { isTopOrSheen } from '../words/top-words.ts';
import type { Span, Word } from '../words/words.ts';

const ORDINAL_WORDS = oneOf(
  '1st|2nd|3rd|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth',
);
const IN_DIGITS = /^\d{1,2}th$/;
export const ORDINALS: OneOf = {
  test: (word) => ORDINAL_WORDS.test(word) || (isDigit(word) && IN_DIGITS.test(word)),
};
export const COAT = oneOf('coats?|layers?');
const APPLICATIONS: ReadonlySet<string> = new Set([
  'application',
  'applications',
  'round',
  'rounds',
  'go',
  'goes',
  'pass',
  'passes',
  'helping',
  'helpings',
]);

/** "four applications of oil", "the third round of poly", "3 passes" */
export const isApplication = (words: readonly Word[], at: number): boolean => {
  const { word = '', part } = words[at] ?? {};
  if (!APPLICATIONS.has(word)) return false;
  const of = words[at + 1];
  const before = words[at - 1];
  if (of?.part === part && of?.word === 'of' && words[at + 2]?.word !== 'the')
    return words.slice(at + 2, at + 4).some((next) => next.part === part && isTopOrSheen(next));
  // "3 rounds", "round 3", and no "two passes with the sander"
  const isCounted =
    /^(rounds|passes|applications)$/.test(word) &&
    before?.part === part &&
    /^(\d{1,2}|two|three|four|five|six|thin|light|several|few|many|coats)$/.test(before?.word ?? '');
  const isNumbered = /^(round|pass|application)$/.test(word) && ORDINALS.test(before?.word ?? '');
  const isNth =
    word === 'round' && of?.part === part && /^(\d{1,2}|two|three|four|five|six)$/.test(of?.word ?? '');
  const isSanding = words.some(
    (one) =>
      one.part === part && /^(sander|sanding|sanded|paper|grit|pad|plane|strokes?|first)$/.test(one.word),
  );
  return word === 'applications' || ((isCounted || isNumbered || isNth) && !isSanding);
};

export const MOST_COATS = FACTS['coat-number'].max;

/** How many a word that names no number means: least and most. */
const VAGUE: Readonly<Record<string, readonly [number, number]>> = {
  several: [3, 7],
  few: [2, 5],
  multiple: [2, 6],
  many: [4, 10],
};

export type Count = {
  readonly low: number;
  readonly high: number;
  readonly sure: number;
  readonly span: Span;
  readonly ofPaint?: boolean;
};

/** The count that stands before a word for coats at `at`: "three thin coats", "9 or 10 coats", "second coat". */
export const countBefore = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  for (let back = 1; back <= 4; back++) {
    const there = words[at - back];
    if (!here || !there || there.clause !== here.clause) return undefined;
    const span = { from: there.from, to: here.to };
    // "the second of three coats": the first is meant
    const nth = words[at - back - 2];
    if (words[at - back - 1]?.word === 'of' && nth && ORDINALS.test(nth.word) && nth.clause === here.clause) {
      const count = ear.numbers.get(nth.word) ?? 0;
      return { low: count, high: count, sure: PLAINLY, span: { from: nth.from, to: here.to } };
    }
    if (ORDINALS.test(there.word)) {
      const count = ear.numbers.get(there.word) ?? 0;
      return { low: count, high: count, sure: PLAINLY, span };
    }
    // "one last coat" is one more of an unknown number
    // "2K clear coat" counts none
    if (
      (/^(more|last|final|k)$/.test(there.word) && words[at - back - 1]?.word !== 'and') ||
      ear.units.has(there.word)
    )
      return undefined;
    // "how many coats", "too many coats"
    if (/^(how|too|so)$/.test(words[at - back - 1]?.word ?? '') && there.word === 'many') return undefined;
    const vague = entryOf(VAGUE, there.word);
    if (vague) return { low: vague[0], high: vague[1], sure: DOUBTED, span };
    if (/^(a|an|half|another|next|each|every)$/.test(there.word)) continue;
    // "4 double coats"
    if (there.word === 'double' && numberAt(ear, words[at - back - 1]) !== undefined) continue;
    const number = numberAt(ear, there);
    if (number === undefined) continue;
    // "a four coat job" is how many it is to be
    if (here.word === 'coat' && /^(job|system|process|schedule|minimum)$/.test(words[at + 1]?.word ?? ''))
      return undefined;
    // "one side gets its coats"
    if (number === 1 && /s$/.test(here.word)) return undefined;
    const isHalf =
      there.word === 'dozen' &&
      words.slice(Math.max(0, at - back - 2), at - back).some(({ word }) => word === 'half');
    const high = isHalf ? number / 2 : number;
    const or = words[at - back - 1];
    const first = /^(or|to)$/.test(or?.word ?? '') ? numberAt(ear, words[at - back - 2]) : undefined;
    const low = first !== undefined && first < high ? first : high;
    return { low, high, sure: PLAINLY, span };
  }
  return undefined;
};

export const partOf = (words: readonly Word[], at: number, from: number, to: number): readonly Word[] =>
  words.slice(Math.max(0, from), to).filter(({ part }) => part === words[at]?.part);

/** "three of clear", "one of poly": the count of a top coat, where coats are spoken of. */
export const countOf = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  // "poly x2"
  const times = here?.word === 'x' ? numberAt(ear, words[at + 1]) : undefined;
  if (
    here &&
    times !== undefined &&
    partOf(words, at, at - 3, at).some((one) => isTopOrSheen(one) || /^poly/.test(one.word))
  )
    return {
      low: times,
      high: times,
      sure: FOLLOWS,
      span: { from: here.from, to: words[at + 1]?.to ?? here.to },
    };
  if (!here || words[at + 1]?.word !== 'of' || ORDINALS.test(here.word)) return undefined;
  const count = numberAt(ear, here);
  if (count === undefined || !Number.isInteger(count) || count > 12 || /^an?$/.test(here.word))
    return undefined;
  const named = partOf(words, at, at + 2, at + 5).find((one) => isTopOrSheen(one) || one.word === 'paint');
  return (
    named && {
      low: count,
      high: count,
      sure: SAID,
      span: { from: here.from, to: named.to },
      ofPaint: named.word === 'paint',
    }
  );
};

const IN_ALL = oneOf('so|in|all');

/** "I have brushed on three so far", "eight or nine in all" */
export const countSoFar = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  const last = words[at + 2];
  if (!IN_ALL.test(words[at + 1]?.word ?? '')) return undefined;
  const after = `${words[at + 1]?.word} ${last?.word}`;
  if (!here || !last || !/^(so far|in all|in total|all told)$/.test(after) || ORDINALS.test(here.word))
    return undefined;
  const count = /^an?$/.test(here.word) ? undefined : numberAt(ear, here);
  const laid = words.some((word, index) => word.part === here.part && index < at && isLaying(words, index));
  return count !== undefined && (laid || after !== 'so far') && count <= MOST_COATS
    ? { low: count, high: count, sure: FOLLOWS, span: { from: here.from, to: last.to } }
    : undefined;
};

const ENDS = oneOf('now|so|already');
const ON = oneOf('on|down|done');

/** "three coats wanted, two on" */
export const countOn = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const [here, on] = [words[at], words[at + 1]];
  if (!here || on?.part !== here.part) return undefined;
  // "two coats on the legs and four on the top"
  const and = words[at - 1]?.word === 'and' && on.word === 'on';
  if (!and && words[at + 2]?.part === here.part && !ENDS.test(words[at + 2]?.word ?? '')) return undefined;
  if (!ON.test(on.word) || ORDINALS.test(here.word)) return undefined;
  const count = numberAt(ear, here);
  return count === undefined || /^an?$/.test(here.word)
    ? undefined
    : { low: count, high: count, sure: SAID, span: { from: here.from, to: on.to } };
};

/** What a bare count is of: coats, though none is named: "I did two", "Six down", "mine has 4". */
const LAID_SO_MANY = oneOf('did|laid|on|have|has|got|count|counted|at|brushed|rolled|sprayed|wiped|used|put');
const THIN_ONES = oneOf('thin|light|heavy|full|wet|thick|ones|now|so|already|down|by|and');

export const countDone = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const [before, here, after] = [words[at - 1], words[at], words[at + 1]];
  const count = numberAt(ear, here);
  if (!here || count === undefined) return undefined;
  if (ORDINALS.test(here.word) || /^(an?|half|one)$/.test(here.word)) return undefined;
  if (!Number.isInteger(count) || count < 2 || count > MOST_COATS) return undefined;
  const found = { low: count, high: count, sure: JUST, span: { from: here.from, to: here.to } };
  const begins = before?.part !== here.part;
  // "Six down, and I can see brush marks"
  if (begins && after?.part === here.part && /^(down|done|on)$/.test(after.word))
    return after.word !== 'on' ||
      /^(|already|now|so)$/.test(words[at + 2]?.part === here.part ? (words[at + 2]?.word ?? '') : '')
      ? found
      : undefined;
  const ends = after?.part !== here.part;
  const ones = words.slice(at + 1, at + 3).some(({ word, part }) => part === here.part && word === 'ones');
  if (begins || !(LAID_SO_MANY.test(before?.word ?? '') || /^(it|them|mine)$/.test(before?.word ?? '')))
    return undefined;
  if (/^(did|count|counted|stopped)$/.test(before?.word ?? '') && (ends || THIN_ONES.test(after?.word ?? '')))
    return found;
  // "gave it two", "have put on 3"
  const gave =
    /^(gave|given)$/.test(words[at - 2]?.word ?? '') && /^(it|them|mine)$/.test(before?.word ?? '');
  const putOn = before?.word === 'on' && /^(put|laid|brushed|rolled|wiped)$/.test(words[at - 2]?.word ?? '');
  if (
    (gave || putOn) &&
    (ends || THIN_ONES.test(after?.word ?? '') || /^(wipes|goes|more)$/.test(after?.word ?? ''))
  )
    return found;
  if (ones && isLaying(words, before?.word === 'on' ? at - 2 : at - 1)) return found;
  // "mine has 4"
  const mine = /^(mine|this|it)$/.test(words[at - 2]?.word ?? '');
  return mine && /^(has|got|have)$/.test(before?.word ?? '') && ends ? found : undefined;
};

/** "rubbed in oil four times", "oiled it twice" */
export const timesLaid = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  // "brushed it a second time"
  if (here && ORDINALS.test(here.word) && words[at + 1]?.word === 'time' && words[at - 1]?.word === 'a') {
    const count = ear.numbers.get(here.word) ?? 0;
    const lays = partOf(words, at, at - 8, at).some((_, index, part) => isLaying(part, index));
    return lays && count > 1
      ? {
          low: count,
          high: count,
          sure: FOLLOWS,
          span: { from: here.from, to: words[at + 1]?.to ?? here.to },
        }
      : undefined;
  }
  const twice = here?.word === 'twice';
  if (!here || (!twice && words[at + 1]?.word !== 'times')) return undefined;
  const count = twice ? 2 : numberAt(ear, here);
  const before = Array.from({ length: 7 }, (_, back) => at - back - 1);
  const laid = before.some((index) => words[index]?.part === here.part && isLaying(words, index));
  return count !== undefined && laid
    ? {
        low: count,
        high: count,
        sure: FOLLOWS,
        span: { from: here.from, to: words[at + (twice ? 0 : 1)]?.to ?? here.to },
      }
    : undefined;
};
