import type { Family } from '../../model/family.ts';
import { sayEnds } from '../../plain/span.ts';
import { lower } from '../../plain/text.ts';
import { DAY_HOURS, HOUR_MIN } from '../../plain/time.ts';
import { claimed } from '../choices/claimed.ts';
import type { AskedFor } from '../words/lexicon.ts';
import type { Ear, Match } from '../words/match.ts';
import { isOfBelow, placeOf } from '../words/place.ts';
import type { Span, Word } from '../words/words.ts';
import type { Waits } from './waits.ts';

/** An answer of the tables, whether it goes before other answers, and the sentences that ask. */
export type TableAnswer = {
  readonly asked: AskedFor;
  readonly isWait: boolean;
  readonly asking: readonly Span[];
};

/** The sentences of a text with their places. */
export const sentencesOf = (text: string): readonly Span[] =>
  [...text.matchAll(/[^.!?\n]+(?:[.!?\n](?!\s|$)[^.!?\n]*)*/g)].map(({ index, 0: { length } }) => ({
    from: index,
    to: index + length,
  }));

/** What is named of layers: kinds of top coat on top and below, and what lies below them all. */
export type Layers = {
  readonly tops: readonly string[];
  readonly belows: readonly string[];
  readonly bases: readonly string[];
  /** The kinds that are named, in their order. */
  readonly named: readonly string[];
  /** The kind on top is left open: any clear coat. */
  readonly isOpen: boolean;
};

const DRIES_BELOW = /^(?:stain|latex-paint|chalk-paint|milk-paint|oil-paint)$/;
/** "under lacquer": what is named behind it lies on top, whatever it is. */
const UNDER = /^(?:under|beneath|underneath|below|before)$/;

/** The layers that a text names. */
export const layersOf = (ear: Ear, words: readonly Word[], matches: readonly Match[]): Layers => {
  const tops = new Set<string>();
  const open = new Set<string>();
  const earlier = new Set<string>();
  const belows = new Set<string>();
  const bases = new Set<string>();
  for (const match of claimed(matches).sort((a, b) => a.from - b.from)) {
    const [fact = '', value = ''] = match.of;
    if (match.kind === 'fact' && fact === 'base' && DRIES_BELOW.test(value)) bases.add(value);
    if (match.kind === 'fact' && fact === 'base' && value === 'wax') belows.add(value);
    // "over shellac": an old finish whose kind is told.
    if (match.kind === 'fact' && fact === 'base' && value === 'old-finish')
      for (const one of within(matches, match))
        if (one.of[0] === 'family') for (const family of one.of[1]?.split('|') ?? []) belows.add(family);
    if (fact !== 'family' || isOfBelow(words, match)) continue;
    const isUnder = words.slice(Math.max(0, match.from - 2), match.from).some(({ word }) => UNDER.test(word));
    const isBelow = !isUnder && placeOf(ear, words, match) === 'below';
    // "danish oil before poly": what is named before it lies below.
    if (isUnder) for (const one of [...earlier]) if (!value.split('|').includes(one)) belows.add(one);
    for (const family of value.split('|')) earlier.add(family);
    const on = isBelow ? belows : match.kind === 'among' ? open : tops;
    for (const family of value.split('|')) on.add(family);
  }
  // "lacquer from a spray can": words that leave the kind open count where none names it.
  const isOnTop = (family: string): boolean => !belows.has(family);
  const told = [...tops].filter(isOnTop);
  return {
    tops: told.length ? told : [...open].filter(isOnTop),
    belows: [...belows],
    bases: [...bases],
    named: [...earlier],
    isOpen: !told.length && open.size > 0,
  };
};

/** The longest matches within another: "oil based varnish" is one kind, and its "oil" none. */
const within = (matches: readonly Match[], { from, to }: Match): readonly Match[] => {
  const inside = matches.filter((one) => one.of[0] === 'family' && from <= one.from && one.to <= to);
  const longest = Math.max(...inside.map(({ size }) => size));
  return inside.filter(({ size }) => size === longest);
};

type Kind = NonNullable<Waits['kinds'][Family]>;

/** "Lacquer takes the next coat after …; shellac after …": what is said of each kind, the verb with the first alone. */
export const each = (kinds: readonly Kind[], verb: string, says: (kind: Kind) => string): string =>
  kinds
    .map((kind, at) => {
      const name = kind.name.replace(/,.*/, '');
      return at ? `${lower(name)} ${says(kind)}` : `${name} ${verb} ${says(kind)}`;
    })
    .join('; ');

/** Ends of a time as people say them: minutes, hours, or days. */
export const saidEnds = ([from, to]: readonly [number, number], inDays = false): string => {
  if (from < 1 && to > 1)
    return `${Math.round(from * HOUR_MIN)} minutes to ${to} ${to === 1 ? 'hour' : 'hours'}`;
  const [unit, size] =
    to <= 1 ? ['minutes', 1 / HOUR_MIN] : !inDays && to <= 3 * DAY_HOURS ? ['hours', 1] : ['days', DAY_HOURS];
  const ends = sayEnds(Number((from / size).toFixed(1)), Number((to / size).toFixed(1)));
  return `${ends.replace('–', ' to ')} ${ends === '1' ? unit.slice(0, -1) : unit}`;
};
