import type { Ear } from './match.ts';
import type { Word } from './words.ts';

/** The number that a word tells; ordinals tell none. */
export const numberAt = (ear: Ear, word: Word | undefined): number | undefined => {
  if (!word) return undefined;
  if (/^\d+(?:[.,]\d+)?$/.test(word.word)) return Number(word.word.replace(',', '.'));
  const value = ear.numbers.get(word.word);
  const isOrdinal = word.word !== 'both' && /^\d|(?:st|nd|rd|th)$/.test(word.word);
  return isOrdinal ? undefined : value;
};

const RANGE_WORD = /^(to|or|and)$/;
const FILLER = /^(more|full|whole|of|good|or|so|long|and|short)$/;
const ORDINAL = new Set([
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
]);

const TENS = /^(twenty|thirty|forty|fifty|sixty)$/;

const UNIT = new Set(['day', 'week', 'month']);

/** Nobody counts the days of a coat further. */
const MOST_COUNTED = 31;

/** "the second day", "day three", "week 4": the number of the unit, from word `at` on. */
export const ordinalSpan = (
  ear: Ear,
  words: readonly Word[],
  at: number,
): { to: number; low: number; high: number; unit: string } | undefined => {
  const [before, here, after] = [words[at - 1], words[at], words[at + 1]];
  if (!here || after?.part !== here.part) return undefined;
  if (!UNIT.has(here.word) && !UNIT.has(after.word)) return undefined;
  const isUnit = (word: string) => UNIT.has(word);
  const span = (count: number | undefined, unit: string) => {
    const each = ear.units.get(unit) ?? 0;
    if (count === undefined || count < 2) return undefined;
    return { to: at + 2, low: (count - 0.5) * each, high: count * each, unit };
  };
  if (
    isUnit(after.word) &&
    before?.word === 'the' &&
    /^(after|on|by|its|now)$/.test(words[at - 2]?.word ?? '')
  )
    return span(ear.numbers.get(here.word), after.word);
  const begins = before?.part !== here.part || /^(by|on|its|now|at|is|to)$/.test(before.word);
  const count = /^(a|an|half)$/.test(after.word) ? undefined : numberAt(ear, after);
  if (begins && isUnit(here.word) && (count ?? MOST_COUNTED) < MOST_COUNTED) return span(count, here.word);
  return undefined;
};

/** A number, or two, and a unit of time, from word `at` on. */
export const spanAt = (
  ear: Ear,
  words: readonly Word[],
  at: number,
): { to: number; low: number; high: number; unit: string } | undefined => {
  const first = words[at];
  const low = first && !ORDINAL.has(first.word) ? numberAt(ear, first) : undefined;
  if (low === undefined) return undefined;
  // "forty five minutes"
  const tens = TENS.test(first?.word ?? '') ? numberAt(ear, words[at + 1]) : undefined;
  const ones = tens !== undefined && tens >= 1 && tens <= 9 && words[at + 1]?.part === first?.part ? tens : 0;
  if (ones) return spanFrom(ear, words, at, at + 2, low + ones);
  return spanFrom(ear, words, at, at + 1, low);
};

/** The unit, and the second number, of a span whose first number `low` ends before word `from`. */
const spanFrom = (
  ear: Ear,
  words: readonly Word[],
  at: number,
  from: number,
  low: number,
): { to: number; low: number; high: number; unit: string } | undefined => {
  const first = words[at];
  let here = from;
  let high = low;
  const second = RANGE_WORD.test(words[here]?.word ?? '') ? here + 1 : here;
  const upTo = numberAt(ear, words[second]);
  if (upTo !== undefined && upTo >= low && words[second]?.clause === first?.clause) {
    high = upTo;
    here = second + 1;
  }
  for (let skipped = 0; skipped < 2 && FILLER.test(words[here]?.word ?? ''); skipped++) here++;
  const unit = words[here];
  if (!unit || !ear.units.has(unit.word) || unit.sentence !== first?.sentence) return undefined;
  // "a second coat" and "a min" are no times
  if (unit.word === 'second' || (unit.word.length === 1 && !/^\d/.test(first?.word ?? ''))) return undefined;
  const each = ear.units.get(unit.word) ?? 0;
  // "a year and a half"
  const half =
    words
      .slice(here + 1, here + 4)
      .map(({ word }) => word)
      .join(' ') === 'and a half';
  const more = half ? each / 2 : 0;
  return { to: here + (half ? 4 : 1), low: low * each + more, high: high * each + more, unit: unit.word };
};
