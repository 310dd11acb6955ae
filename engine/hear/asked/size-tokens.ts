import { toLiters, toMilliliters, toMillimeters } from '../../calc/units.ts';
import type { LengthUnit, Sizes, Thing, VolumeUnit } from '../../model/sizes.ts';
import { keysOf } from '../../plain/entry-of.ts';
import { inDigits } from '../words/digits.ts';
import type { Span } from '../words/words.ts';

const INCHES_PER_FOOT = 12;
export const MILLIMETERS: Readonly<Record<LengthUnit, number>> = {
  in: toMillimeters(1),
  ft: toMillimeters(INCHES_PER_FOOT),
  m: 1000,
  cm: 10,
  mm: 1,
};
export const LITERS: Readonly<Record<VolumeUnit, number>> = {
  gallon: toLiters(1),
  quart: toLiters(1 / 4),
  pint: toLiters(1 / 8),
  'fluid-ounce': toMilliliters(1) / 1000,
  liter: 1,
  milliliter: 1 / 1000,
};
export const isMetricLength = (unit: LengthUnit | undefined): boolean =>
  unit === 'm' || unit === 'cm' || unit === 'mm';
export const isMetricVolume = (unit: VolumeUnit): boolean => unit === 'liter' || unit === 'milliliter';

/** A word, a figure or a mark of a text. */
type Token = Span & {
  readonly said: string;
  readonly value: number | undefined;
  /** A comma or a stop stands before it. */
  readonly isApart: boolean;
};

const FIGURE = /\d+(?:[.,]\d+)?(?:[ -]\d\/\d+)?|\d\/\d+|[½¼¾]/;
const TOKEN = new RegExp(
  String.raw`${FIGURE.source}|\p{L}+(?:[²]|2(?![\p{L}\d]))?|''|[^\s\p{L}\d.,;:!?()]`,
  'gu',
);
const PARTS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };

const fraction = (said: string): number => {
  const [over = 0, under = 1] = said.split('/').map(Number);
  return over / under;
};

/** "24", "2,4", "24 1/2", "3/4", "½". */
const figureOf = (said: string): number | undefined => {
  if (Object.hasOwn(PARTS, said)) return PARTS[said];
  if (!/^\d/.test(said)) return undefined;
  const [whole = '', rest] = said.split(/[ -]/);
  const first = whole.includes('/') ? fraction(whole) : Number(whole.replace(',', '.'));
  return rest ? first + fraction(rest) : first;
};

const tokensOf = (text: string): readonly Token[] =>
  [...inDigits(text).matchAll(TOKEN)].map(({ index, 0: piece }) => {
    const said = piece.toLowerCase();
    const isApart = /[,.;:!?()\n]\s*$/.test(text.slice(Math.max(0, index - 3), index));
    return { said, value: figureOf(said), from: index, to: index + piece.length, isApart };
  });

const unitIn = <U extends string>(units: Readonly<Record<U, readonly string[]>>, said = ''): U | undefined =>
  keysOf(units).find((unit) => units[unit].includes(said));

/** A length from token `at` on; where no unit is told it is a figure alone. */
export type Length = { readonly value: number; readonly unit: LengthUnit | undefined; readonly to: number };

/** The figures and units of a text. */
export type Reader = {
  readonly tokens: readonly Token[];
  readonly is: (at: number, list: readonly string[]) => boolean;
  /** How many tokens one of these phrases takes from token `at` on; 0 for none. */
  readonly phraseAt: (at: number, phrases: readonly string[]) => number;
  readonly lengthAt: (at: number) => Length | undefined;
  /** An area, m². */
  readonly areaAt: (
    at: number,
  ) => { readonly value: number; readonly to: number; readonly isMetric: boolean } | undefined;
  readonly volumeAt: (at: number) => VolumeUnit | undefined;
  readonly thingAt: (at: number) => { readonly thing: Thing; readonly isMany: boolean } | undefined;
};

export const readerOf = (sizes: Sizes, text: string): Reader => {
  const tokens = tokensOf(text);
  const said = (at: number): string => tokens[at]?.said ?? '';
  const is = (at: number, list: readonly string[]): boolean => list.includes(said(at));
  const plainLengthAt = (at: number): Length | undefined => {
    const value = tokens[at]?.value;
    if (value === undefined) return undefined;
    const hyphen = said(at + 1) === '-' ? 1 : 0;
    const unit = unitIn(sizes.lengths, said(at + 1 + hyphen));
    return { value, unit, to: at + 1 + (unit ? hyphen + 1 : 0) };
  };
  const lengthAt = (at: number): Length | undefined => {
    const first = plainLengthAt(at);
    const rest = first?.unit === 'ft' ? plainLengthAt(first.to) : undefined;
    // 5 ft 6 in
    return first && rest?.unit === 'in' && rest.value < INCHES_PER_FOOT
      ? { value: first.value + rest.value / INCHES_PER_FOOT, unit: 'ft', to: rest.to }
      : first;
  };
  const areaAt: Reader['areaAt'] = (at) => {
    const value = tokens[at]?.value;
    if (value === undefined) return undefined;
    const one = unitIn(sizes.areas, said(at + 1));
    const two = is(at + 1, sizes.square) ? unitIn(sizes.lengths, said(at + 2)) : undefined;
    const unit = one ?? two;
    if (!unit) return undefined;
    const side = MILLIMETERS[unit] / 1000;
    return { value: value * side * side, to: at + (one ? 2 : 3), isMetric: isMetricLength(unit) };
  };
  return {
    tokens,
    is,
    phraseAt: (at, phrases) =>
      Math.max(
        0,
        ...phrases
          .map((phrase) => phrase.split(' '))
          .filter((words) => words.every((word, index) => said(at + index) === word))
          .map(({ length }) => length),
      ),
    lengthAt,
    areaAt,
    volumeAt: (at) => unitIn(sizes.volumes, said(at)),
    thingAt: (at) => {
      const word = said(at);
      const one = unitIn(sizes.things, word);
      if (one) return { thing: one, isMany: false };
      const many = word.endsWith('s') ? unitIn(sizes.things, word.slice(0, -1)) : undefined;
      return many && { thing: many, isMany: true };
    },
  };
};
