import type { Lexicon } from './lexicon.ts';
import type { Span, Word } from './words.ts';

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
  readonly steps: readonly (readonly string[])[];
};

/** A lexicon made ready to hear: phrases by the stem of their first word. */
export type Ear = {
  readonly lexicon: Lexicon;
  readonly byFirst: ReadonlyMap<string, readonly Pattern[]>;
  readonly spelled: (word: string) => string;
  readonly turns: ReadonlySet<string>;
  readonly not: ReadonlySet<string>;
  readonly below: ReadonlySet<string>;
  readonly onTop: ReadonlySet<string>;
  readonly laid: ReadonlySet<string>;
  readonly ago: ReadonlySet<string>;
  readonly was: ReadonlySet<string>;
  readonly numbers: ReadonlyMap<string, number>;
  readonly units: ReadonlyMap<string, number>;
};

const ears = new WeakMap<Lexicon, Ear>();

/** Opens a lexicon, once each. */
export const earOf = (lexicon: Lexicon): Ear => {
  const known = ears.get(lexicon);
  if (known) return known;
  const byFirst = new Map<string, Pattern[]>();
  for (const [sense, phrases] of lexicon.senses) {
    const [kind = '', ...of] = sense.split(' ');
    for (const phrase of phrases.split(',')) {
      const steps = phrase.split(' ').map((step) => step.split('|'));
      for (const first of steps[0] ?? []) {
        const list = byFirst.get(first) ?? [];
        list.push({ sense, kind, of, steps });
        byFirst.set(first, list);
      }
    }
  }
  const spellings = new Map(Object.entries(lexicon.spellings));
  const set = (words: string) => new Set(words.split(','));
  const fresh: Ear = {
    lexicon,
    byFirst,
    spelled: (word) => spellings.get(word) ?? word,
    turns: set(lexicon.turns),
    not: set(lexicon.not),
    below: set(lexicon.below),
    onTop: set(lexicon.onTop),
    laid: set(lexicon.laid),
    ago: set(lexicon.ago),
    was: set(lexicon.was),
    numbers: new Map(Object.entries(lexicon.numbers)),
    units: new Map(Object.entries(lexicon.units)),
  };
  ears.set(lexicon, fresh);
  return fresh;
};

/** Words that may stand between two of a phrase. */
const BETWEEN = 2;

/** What ties two things that are told apart: no phrase of a fact reaches over it ("the flat parts are clear"). */
const TIES = /^(is|are|was|were|and|or|with|but|from|of|not|in|under|over|off|after|before|than)$/;

/** Where the phrase ends if it begins at `at`; no clause ends within it, and no denial slips in between. */
const endOf = (
  { kind, steps }: Pattern,
  words: readonly Word[],
  exact: readonly string[],
  at: number,
  not: ReadonlySet<string>,
): number | undefined => {
  const clause = words[at]?.clause;
  const isOfFact = kind === 'fact' || kind === 'among' || kind === 'none';
  let here = at;
  for (let step = 1; step < steps.length; step++) {
    const wanted = steps[step] ?? [];
    let found = -1;
    for (let next = here + 1; next <= here + 1 + BETWEEN; next++) {
      const word = words[next];
      if (!word || word.clause !== clause || (isOfFact && word.comma)) break;
      if (wanted.includes(word.stem) || wanted.includes(exact[next] ?? '')) {
        found = next;
        break;
      }
      if (not.has(word.word) || word.comma || (isOfFact && TIES.test(word.word))) break;
    }
    if (found < 0) return undefined;
    here = found;
  }
  return here + 1;
};

/** Every phrase of the lexicon in the text, in reading order. */
export const matchesIn = ({ byFirst, not }: Ear, words: readonly Word[]): Match[] => {
  const found: Match[] = [];
  const exact = words.map(({ word }) => `=${word}`);
  const hear = (patterns: readonly Pattern[] | undefined, from: number): void => {
    for (const pattern of patterns ?? []) {
      const to = endOf(pattern, words, exact, from, not);
      if (to === undefined) continue;
      const { sense, kind, of, steps } = pattern;
      found.push({ sense, kind, of, from, to, size: steps.length });
    }
  };
  words.forEach((word, from) => {
    hear(byFirst.get(word.stem), from);
    hear(byFirst.get(exact[from] ?? ''), from);
  });
  return found;
};
