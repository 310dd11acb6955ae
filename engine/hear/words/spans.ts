import type { Ear } from './match.ts';
import { oneOf } from './one-of.ts';
import type { Word } from './words.ts';

/** Whether a word begins with a digit. */
export const isDigit = (word: string): boolean => word.charCodeAt(0) >= 48 && word.charCodeAt(0) <= 57;

/** The number that a word tells; ordinals tell none. */
export const numberAt = (ear: Ear, word: Word | undefined): number | undefined => {
  if (!word) return undefined;
  if (isDigit(word.word))
    return /^\d+(?:[.,]\d+)?$/.test(word.word) ? Number(word.word.replace(',', '.')) : undefined;
  const value = ear.numbers.get(word.word);
  if (value === undefined || word.word === 'both') return value;
  return /(?:st|nd|rd|th)$/.test(word.word) ? undefined : value;
};

const RANGE_WORD = oneOf('to|or|and');
const FILLER = oneOf('more|full|whole|of|good|or|so|long|and|short');
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

const TENS = oneOf('twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety');

type Count = { readonly to: number; readonly value: number };

/** A number from word `at` on, whole or with its half: "forty five", "a hundred", "two and a half", "3 1/2". */
export const countAt = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const first = words[at];
  const value = first && !ORDINAL.has(first.word) ? numberAt(ear, first) : undefined;
  if (value === undefined) return undefined;
  const isOfPart = (index: number) => words[index]?.part === first?.part;
  const said = (from: number, to: number) =>
    words
      .slice(from, to)
      .map(({ word }) => word)
      .join(' ');
  // "three quarters of an hour"
  const next = words[at + 1]?.word ?? '';
  const quarters = /^quarters?$/.test(next) && /^quarters? of an?$/.test(said(at + 1, at + 4));
  if (quarters && value <= 3) return { to: at + 4, value: value / 4 };
  const ones = TENS.test(first?.word ?? '') && isOfPart(at + 1) ? numberAt(ear, words[at + 1]) : undefined;
  if (ones !== undefined && ones >= 1 && ones <= 9 && Number.isInteger(ones))
    return { to: at + 2, value: value + ones };
  if (next === 'and' && said(at + 1, at + 4) === 'and a half') return { to: at + 4, value: value + 0.5 };
  if (value >= 1 && next === 'half' && /^\d/.test(first?.word ?? ''))
    return { to: at + 2, value: value + 0.5 };
  return { to: at + 1, value };
};

const UNIT = new Set(['hour', 'day', 'week', 'month']);

/** Nobody counts the days of a coat, or its hours, further. */
const MOST_COUNTED: Readonly<Record<string, number>> = { hour: 100, day: 60, week: 30, month: 24 };

/** "the second day", "day three", "hour twenty two": the number of the unit, from word `at` on. */
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
    ((before?.word === 'the' && /^(after|on|by|its|now|is|at|this|on to)$/.test(words[at - 2]?.word ?? '')) ||
      before?.part !== here.part ||
      /^(this|my|its|is)$/.test(before?.word ?? ''))
  )
    return span(ear.numbers.get(here.word), after.word);
  const begins = before?.part !== here.part || /^(by|on|its|now|at|is|to|im|are|so|and)$/.test(before.word);
  const count = /^(a|an|half)$/.test(after.word) ? undefined : countAt(ear, words, at + 1);
  const unit = words[count?.to ?? 0];
  // "day 3 coats" counts coats, "hour two hours"
  if (!begins || !isUnit(here.word) || !count || (unit?.part === here.part && ear.units.has(unit.word)))
    return undefined;
  if (count.value > (MOST_COUNTED[here.word] ?? 0)) return undefined;
  const found = span(count.value, here.word);
  return found && { ...found, to: count.to };
};

/** A number, or two, and a unit of time, from word `at` on. */
export const spanAt = (
  ear: Ear,
  words: readonly Word[],
  at: number,
): { to: number; low: number; high: number; unit: string } | undefined => {
  const count = countAt(ear, words, at);
  return count && spanFrom(ear, words, at, count.to, count.value);
};

/** How many of a smaller unit are told behind a greater one: "2 hrs 20 min", "two weeks and three days". */
const restAt = (ear: Ear, words: readonly Word[], at: number, each: number): { to: number; more: number } => {
  const none = { to: at, more: 0 };
  const here = words[at - 1];
  const from = words[at]?.word === 'and' ? at + 1 : at;
  const said = words
    .slice(at, at + 3)
    .map(({ word }) => word)
    .join(' ');
  if (said === 'and a half') return { to: at + 3, more: each / 2 };
  if (said === 'and a quarter') return { to: at + 3, more: each / 4 };
  const count = countAt(ear, words, from);
  const unit = words[count?.to ?? 0];
  const smaller = ear.units.get(unit?.word ?? '') ?? each;
  const isOfOne = unit?.part === here?.part && unit?.word !== 'second' && (unit?.word.length ?? 0) > 1;
  if (!count || !isOfOne || smaller >= each || count.value * smaller >= each) return none;
  return { to: count.to + 1, more: count.value * smaller };
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
  // "2-3 hours", but "then a thick one 45 minutes after"
  const isOne = second === here && !isDigit(first?.word ?? '') && isDigit(words[here]?.word ?? '');
  const upTo = isOne ? undefined : countAt(ear, words, second);
  if (upTo !== undefined && upTo.value >= low && words[second]?.clause === first?.clause) {
    high = upTo.value;
    here = upTo.to;
  }
  for (let skipped = 0; skipped < 2 && FILLER.test(words[here]?.word ?? ''); skipped++) here++;
  const unit = words[here];
  if (!unit || !ear.units.has(unit.word) || unit.sentence !== first?.sentence) return undefined;
  // "a second coat" and "a min" are no times
  if (unit.word === 'second' || (unit.word.length === 1 && !/^\d/.test(first?.word ?? ''))) return undefined;
  const each = ear.units.get(unit.word) ?? 0;
  const rest = restAt(ear, words, here + 1, each);
  return { to: rest.to, low: low * each + rest.more, high: high * each + rest.more, unit: unit.word };
};
