import type { FactName } from '../../model/facts.ts';
import type { HeardFact } from './heard.ts';
import type { Place } from './place.ts';
import { JUST, MOST } from './sure.ts';
import type { Span } from './words.ts';

/** A value of a fact where a text names it. */
export type Mention = {
  readonly value: string;
  readonly weight: number;
  readonly span: Span;
  readonly place: Place;
  /** Said to have been laid: "two coats of", "brushed", "went on". */
  readonly laid?: boolean;
};

export const PLAIN = JUST;
export const EACH_WORD = 0.08;
/** What each time more adds that a value is named. */
const EACH_MORE = 0.02;

/** The value of a fact that the mentions speak for most; the others stand against it. */
export const settled = (
  fact: FactName,
  mentions: readonly Mention[],
  against: readonly Span[],
): HeardFact[] => {
  const weights = new Map<string, number>();
  // The heaviest first, so that it does not matter in which order they are told.
  for (const { value, weight } of [...mentions].sort((a, b) => b.weight - a.weight))
    weights.set(value, Math.max(weights.get(value) ?? 0, weight) + EACH_MORE);
  const [best, next] = [...weights].sort((a, b) => b[1] - a[1]);
  if (!best) return [];
  const [value, weight] = best;
  const rival = next && weight - next[1] < 0.1 ? 0.75 : next ? 0.92 : 1;
  const others = mentions.filter((one) => one.value !== value).map(({ span }) => span);
  return [
    {
      fact,
      value,
      sure: Math.min(MOST, weight) * rival,
      rests: mentions.filter((one) => one.value === value).map(({ span }) => span),
      against: [...others, ...against],
    },
  ];
};

/** Of what is told beside each other, the first of each pair is meant: paint lies over the wood and the old finish. */
const BEATS: Readonly<Partial<Record<FactName, readonly (readonly [string, readonly string[]])[]>>> = {
  'base-tone': [
    ['dark', ['wood']],
    ['light', ['wood']],
  ],
  base: [
    ['chalk-paint', ['old-finish', 'bare-wood', 'stain', 'laminate']],
    ['milk-paint', ['old-finish', 'bare-wood', 'stain', 'laminate']],
    ['latex-paint', ['old-finish', 'bare-wood', 'laminate']],
    ['oil-paint', ['old-finish', 'bare-wood', 'laminate']],
    ['stain', ['bare-wood']],
  ],
  age: [['before-1993', ['unknown', 'since-1993']]],
  // The short name is said of the long one: "water based lacquer … the lacquer peels".
  family: [
    ['water-lacquer', ['lacquer']],
    ['hardwax-oil', ['oil', 'wax']],
  ],
  applicator: [
    ['aerosol', ['spray-gun']],
    ['sponge', ['brush']],
  ],
};

/** The mentions that no other beats. */
export const withoutBeaten = (fact: FactName, told: readonly Mention[]): Mention[] => {
  const beaten = (BEATS[fact] ?? []).flatMap(([value, others]) =>
    told.some((one) => one.value === value) ? others : [],
  );
  return told.filter(({ value }) => !beaten.includes(value));
};
