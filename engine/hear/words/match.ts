import { slips } from '../../find/slips.ts';
import type { WordKind } from '../../model/word-kinds.ts';
import type { WordingKind } from '../../model/wordings.ts';
import { keysOf } from '../../plain/entry-of.ts';
import type { Lexicon } from './lexicon.ts';
import { oneOf } from './one-of.ts';
import { type KindsOfWord, type Span, stemOf, type Vocabulary, type Word } from './words.ts';

/** A phrase found in a text: words `from` to before `to`, `size` of them its own. */
export type Match = {
  readonly sense: string;
  readonly kind: string;
  /** The rest of the sense: fact and value, question and answer, the cue. */
  readonly of: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly size: number;
};

/** Where a phrase stands in the text. */
export const spanOf = (words: readonly Word[], { from, to }: Match): Span => ({
  from: words[from]?.from ?? 0,
  to: words[to - 1]?.to ?? 0,
});

type Pattern = {
  readonly sense: string;
  readonly kind: string;
  readonly of: readonly string[];
  readonly isOfFact: boolean;
  /** Its place among all phrases: what is found at one word stands in this order. */
  readonly place: number;
  /** The words of each step by their numbers: numbers are compared faster than words. */
  readonly steps: readonly (readonly number[])[];
};

/** The phrases that begin with one word: those of that word alone, and the longer ones by the number of their second. */
type Beginning = {
  readonly alone: readonly Pattern[];
  readonly bySecond: ReadonlyMap<number, readonly Pattern[]>;
};

/** A lexicon made ready to hear: phrases by the number of their first word. */
export type Ear = Vocabulary & {
  readonly lexicon: Lexicon;
  /** The number of each stem that phrases hold, and of each `=word` by the word. */
  readonly stems: ReadonlyMap<string, number>;
  readonly exact: ReadonlyMap<string, number>;
  readonly beginning: (first: number) => Beginning;
  readonly ofWork: ReadonlySet<string>;
  readonly small: ReadonlySet<string>;
  readonly not: ReadonlySet<string>;
  readonly below: ReadonlySet<string>;
  readonly onTop: ReadonlySet<string>;
  readonly laid: ReadonlySet<string>;
  readonly ago: ReadonlySet<string>;
  readonly was: ReadonlySet<string>;
  readonly numbers: ReadonlyMap<string, number>;
  readonly units: ReadonlyMap<string, number>;
  /** Whether a text as it is typed holds a wording of a kind. */
  readonly says: (kind: WordingKind, text: string) => boolean;
};

const kindsOfWords = ({ kinds }: Lexicon): ReadonlyMap<string, KindsOfWord> => {
  const found = new Map<string, Set<WordKind>>();
  for (const kind of keysOf(kinds))
    for (const word of kinds[kind].split(',')) found.set(word, (found.get(word) ?? new Set()).add(kind));
  return found;
};

const beginningOf = (patterns: readonly Pattern[]): Beginning => {
  const bySecond = new Map<number, Pattern[]>();
  for (const pattern of patterns)
    for (const second of pattern.steps[1] ?? []) {
      const those = bySecond.get(second);
      if (those) those.push(pattern);
      else bySecond.set(second, [pattern]);
    }
  return { alone: patterns.filter(({ steps }) => steps.length === 1), bySecond };
};

/** So many slips make another word of it. */
const NEAR = 1;
const REMEMBERED = 2000;

const ears = new WeakMap<Lexicon, Ear>();

/** Opens a lexicon, once each. */
export const earOf = (lexicon: Lexicon): Ear => {
  const known = ears.get(lexicon);
  if (known) return known;
  const stems = new Map<string, number>();
  const exact = new Map<string, number>();
  const byFirst: Pattern[][] = [];
  let place = 0;
  const numberOf = (step: string): number => {
    const [numbers, word] = step.startsWith('=') ? [exact, step.slice(1)] : [stems, step];
    const number = numbers.get(word) ?? stems.size + exact.size;
    numbers.set(word, number);
    return number;
  };
  for (const [sense, phrases] of lexicon.senses) {
    const [kind = '', ...of] = sense.split(' ');
    const isOfFact = kind === 'fact' || kind === 'among' || kind === 'none';
    for (const phrase of phrases.split(',')) {
      const steps = phrase.split(' ').map((step) => step.split('|').map(numberOf));
      const pattern = { sense, kind, of, isOfFact, place: place++, steps };
      for (const first of steps[0] ?? []) {
        byFirst[first] ??= [];
        byFirst[first].push(pattern);
      }
    }
  }
  const beginnings: Beginning[] = [];
  const spellings = new Map(Object.entries(lexicon.spellings));
  const coats = lexicon.oneSlip.split(',');
  const near = new Map<string, string>();
  /** "polyurthane", "enamal": a word that no phrase has, and that is nearly the name of a coat. */
  const nearCoat = (word: string): string => {
    if (word.length < 6) return word;
    const known = near.get(word);
    if (known !== undefined) return known;
    if (stems.has(word) || exact.has(word) || stems.has(stemOf(word))) return word;
    const meant = coats.find((coat) => coat[0] === word[0] && slips(word, coat) <= NEAR) ?? word;
    if (near.size < REMEMBERED) near.set(word, meant);
    return meant;
  };
  const set = (words: string) => new Set(words.split(','));
  const wordings = new Map<WordingKind, RegExp>();
  const wordingOf = (kind: WordingKind): RegExp => {
    const found = wordings.get(kind) ?? new RegExp(lexicon.wordings[kind], 'i');
    wordings.set(kind, found);
    return found;
  };
  const fresh: Ear = {
    lexicon,
    stems,
    exact,
    // Of some 4,000 words that phrases begin with a text has a few hundred: each is sorted when it is first met.
    beginning: (first) => (beginnings[first] ??= beginningOf(byFirst[first] ?? [])),
    spelled: (word) => spellings.get(word) ?? nearCoat(word),
    ofWork: set(lexicon.ofWork),
    turns: set(lexicon.turns),
    kindsOf: kindsOfWords(lexicon),
    small: set(lexicon.small),
    not: set(lexicon.not),
    below: set(lexicon.below),
    onTop: set(lexicon.onTop),
    laid: set(lexicon.laid),
    ago: set(lexicon.ago),
    was: set(lexicon.was),
    numbers: new Map(Object.entries(lexicon.numbers)),
    units: new Map(Object.entries(lexicon.units)),
    says: (kind, text) => wordingOf(kind).test(text),
  };
  ears.set(lexicon, fresh);
  return fresh;
};

/** Words that may stand between two of a phrase. */
const BETWEEN = 2;

/** What ties two things that are told apart: no phrase of a fact reaches over it ("the flat parts are clear"). */
const TIES = oneOf(
  'is|are|was|were|has|have|had|and|or|with|but|from|of|not|in|under|over|off|after|before|than',
);

/** The words of a text as the phrases are compared with them; −1 is a word of no phrase. */
type Numbered = {
  readonly stems: Int32Array;
  readonly exact: Int32Array;
  /** No phrase reaches over such a word, no phrase of a fact over such a one. */
  readonly stops: Uint8Array;
};
const STOPS_ALL = 1;
const STOPS_FACT = 2;

const numberedOf = (ear: Ear, words: readonly Word[]): Numbered => {
  const stems = new Int32Array(words.length);
  const exact = new Int32Array(words.length);
  const stops = new Uint8Array(words.length);
  words.forEach(({ word, stem, comma }, at) => {
    stems[at] = ear.stems.get(stem) ?? -1;
    exact[at] = ear.exact.get(word) ?? -1;
    stops[at] = comma || ear.not.has(word) ? STOPS_ALL : TIES.test(word) ? STOPS_FACT : 0;
  });
  return { stems, exact, stops };
};

/** Where the phrase ends if it begins at `at`; no clause ends within it, and no denial slips in between. */
const endOf = (
  { isOfFact, steps }: Pattern,
  words: readonly Word[],
  { stems, exact, stops }: Numbered,
  at: number,
): number | undefined => {
  const clause = words[at]?.clause;
  let here = at;
  for (let step = 1; step < steps.length; step++) {
    const wanted = steps[step] ?? [];
    let found = -1;
    for (let next = here + 1; next <= here + 1 + BETWEEN; next++) {
      const word = words[next];
      if (!word || word.clause !== clause || (isOfFact && word.comma)) break;
      if (wanted.includes(stems[next] ?? -1) || wanted.includes(exact[next] ?? -1)) {
        found = next;
        break;
      }
      const stop = stops[next] ?? 0;
      if (stop === STOPS_ALL || (isOfFact && stop === STOPS_FACT)) break;
    }
    if (found < 0) return undefined;
    here = found;
  }
  return here + 1;
};

/** Every phrase of the lexicon in the text, in reading order. */
export const matchesIn = (ear: Ear, words: readonly Word[]): Match[] => {
  const found: Match[] = [];
  const numbers = numberedOf(ear, words);
  /** The phrases that begin with a word at `from` and whose second word is within reach of it. */
  const withinReach = (first: number, from: number): readonly Pattern[] => {
    const { alone, bySecond } = ear.beginning(first);
    if (!bySecond.size) return alone;
    let near = alone;
    for (let next = from + 1; next <= from + 1 + BETWEEN && next < words.length; next++)
      for (const second of [numbers.stems[next] as number, numbers.exact[next] as number]) {
        const those = second < 0 ? undefined : bySecond.get(second);
        if (those) near = near.length ? [...near, ...those] : those;
      }
    return near.length > 1 ? [...new Set(near)].sort((a, b) => a.place - b.place) : near;
  };
  const hear = (first: number, from: number): void => {
    for (const pattern of withinReach(first, from)) {
      const to = endOf(pattern, words, numbers, from);
      if (to === undefined) continue;
      const { sense, kind, of, steps } = pattern;
      found.push({ sense, kind, of, from, to, size: steps.length });
    }
  };
  words.forEach((_, from) => {
    const [stem = -1, exact = -1] = [numbers.stems[from], numbers.exact[from]];
    if (stem >= 0) hear(stem, from);
    if (exact >= 0) hear(exact, from);
  });
  return found;
};
