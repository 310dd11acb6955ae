import type { Heard } from './heard.ts';
import type { Span } from './words.ts';

/** What is typed or pasted for a blank: several at once, hard and thin ones, tabs; letters of no width; breaks of lines. */
const ODD = /[^\S \n]|[\u00ad\u200b-\u200d\u2060\ufeff]| {2}|\n/;
const PIECES = /[\u00ad\u200b-\u200d\u2060\ufeff]+|[\s\u00ad\u200b-\u200d\u2060\ufeff]+/g;
const NO_WIDTH = /^[\u00ad\u200b-\u200d\u2060\ufeff]+$/;

/** A line that ends in the middle of what it says: with a number, or a word that wants another. */
const GOES_ON =
  /(?:\d|[\s\n(](?:a|an|the|my|our|of|at|in|on|to|for|with|and|or|about|around|after|over|one|two|three|four|five|six|seven|eight|nine|ten|twelve))$/i;
/** What begins no sentence: a small letter, a number, a unit; `I` may go on in the middle of one. */
const NO_BEGINNING = /^(?:[\p{Ll}\d%°º(]|I\b)/u;
/** A line that long was broken by its width, as mail and some boards do. */
const WRAPPED = 45;
const ENDED = /[.!?:;]["'”’)\]]*$/;

/** Whether a break of lines stands in the middle of a sentence. */
const isWrap = (line: string, next: string): boolean =>
  !ENDED.test(line) &&
  NO_BEGINNING.test(next) &&
  ((GOES_ON.test(line) && !/^I\b/.test(next)) || line.length >= WRAPPED);

/** A text with single blanks alone, and where each stretch of it stands in what was typed. */
type Plain = { readonly text: string; readonly back: (span: Span) => Span };

/** Single blanks alone; a line that was broken by its width is put together. Nothing where the text is so already. */
export const plainBlanks = (typed: string): Plain | undefined => {
  if (!ODD.test(typed)) return undefined;
  let text = '';
  let from = 0;
  let line = 0;
  /** Where a piece begins in the plain text, and where in what was typed. */
  const starts: (readonly [plain: number, typed: number])[] = [[0, 0]];
  for (const found of typed.matchAll(PIECES)) {
    const [blank] = found;
    if (blank === ' ') continue;
    const to = found.index + blank.length;
    text += typed.slice(from, found.index);
    from = to;
    if (!NO_WIDTH.test(blank)) {
      const breaks = blank.split('\n').length - 1;
      const joins =
        breaks === 0 || (breaks === 1 && isWrap(text.slice(line).trimEnd(), typed.slice(to, to + 2)));
      text += joins ? ' ' : '\n';
      if (breaks > 0) line = text.length;
    }
    starts.push([text.length, to]);
  }
  text += typed.slice(from);
  if (text === typed) return undefined;
  const backAt = (at: number): number => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle]?.[0] ?? 0) <= at) low = middle;
      else high = middle - 1;
    }
    const [plain, there] = starts[low] ?? [0, 0];
    return there + at - plain;
  };
  return {
    text,
    back: ({ from: first, to }) => ({
      from: backAt(first),
      to: to > first ? backAt(to - 1) + 1 : backAt(to),
    }),
  };
};

/** What was heard of the plain text, with the places of what was typed. */
export const inTyped = (heard: Heard, typed: string, { back }: Plain): Heard => {
  const all = (spans: readonly Span[]) => spans.map(back);
  const ground = <T extends { readonly rests: readonly Span[]; readonly against: readonly Span[] }>(
    list: readonly T[],
  ): T[] => list.map((one) => ({ ...one, rests: all(one.rests), against: all(one.against) }));
  return {
    ...heard,
    text: typed,
    facts: ground(heard.facts),
    among: ground(heard.among),
    signs: ground(heard.signs),
    names: heard.names.map((one) => ({ ...one, rests: all(one.rests) })),
    named: all(heard.named),
    dangers: heard.dangers.map((one) => ({ ...one, rests: all(one.rests) })),
  };
};
