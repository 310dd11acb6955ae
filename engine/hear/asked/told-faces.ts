import type { LengthUnit, Sizes, Thing } from '../../model/sizes.ts';
import type { Ear } from '../words/match.ts';
import { isMetricLength, type Length, MILLIMETERS, type Reader } from './size-tokens.ts';

/** Faces of one size: sides in the unit that was told. */
export type Faces = {
  readonly count: number;
  readonly long: number;
  /** Nothing of a round one. */
  readonly wide: number | undefined;
  readonly unit: LengthUnit;
  /** No unit was told. */
  readonly isTaken: boolean;
  readonly thing: Thing | undefined;
  readonly squareMeters: number;
};

/** What is told of the piece: its faces, how many of each are coated, and what has no size. */
export type ToldFaces = {
  readonly faces: readonly Faces[];
  readonly sides: 1 | 2;
  readonly missing: readonly string[];
};

type Shape = {
  readonly from: number;
  readonly to: number;
  readonly long: Length;
  readonly wide: Length | undefined;
};

/** No part of furniture is smaller or larger, m². */
const LEAST = 0.003;
const MOST = 12;
/** Figures without a unit are read so where nothing else fits them: [from, to] of every side. */
const BARE_INCHES = [6, 130] as const;
/** A top of figures too small for inches is told in feet: "a 4x8 table top". A "2x4" is lumber. */
const BARE_FEET = [3, 12] as const;
const BARE_METRIC: readonly (readonly [LengthUnit, number, number])[] = [
  ['m', 0.2, 4],
  ['cm', 15, 199],
  ['mm', 300, 3000],
];

const withWords = (reader: Reader, { dimension }: Sizes, to: number): number =>
  reader.is(to, dimension) ? to + 1 : to;

/** "18x24", "2.4 by 1.2 m", "60 in long and 30 wide", "24 inches square", from token `at` on; `null` where it has three sides. */
const rectangleAt = (reader: Reader, sizes: Sizes, at: number): Shape | null | undefined => {
  const long = reader.lengthAt(at);
  if (!long) return undefined;
  if (long.unit && reader.is(long.to, sizes.square)) return { from: at, to: long.to + 1, long, wide: long };
  const between = withWords(reader, sizes, long.to);
  const isNamed = between > long.to;
  if (!reader.is(between, sizes.by) && !(isNamed && reader.tokens[between]?.said === 'and')) return undefined;
  const wide = reader.lengthAt(between + 1);
  if (!wide) return undefined;
  const to = withWords(reader, sizes, wide.to);
  const isThird = reader.is(to, sizes.by) && reader.lengthAt(to + 1) !== undefined;
  return isThird ? null : { from: at, to, long, wide };
};

/** The one length of a text that tells of a round top. */
const roundIn = (reader: Reader, sizes: Sizes): Shape | undefined => {
  const isRound = reader.tokens.some((_, at) => reader.is(at, sizes.round));
  const isHalf = reader.tokens.some((_, at) => reader.is(at, sizes.radius));
  if (!isRound && !isHalf) return undefined;
  const lengths = reader.tokens.flatMap((_, at) => {
    const long = reader.lengthAt(at);
    // 5 ft 6 in is one length
    const isRest = long?.unit === 'in' && reader.lengthAt(at - 2)?.to === long.to;
    return long?.unit && !isRest ? [{ from: at, to: long.to, long, wide: undefined }] : [];
  });
  const [only, ...more] = lengths;
  if (!only || more.length) return undefined;
  return isHalf ? { ...only, long: { ...only.long, value: only.long.value * 2 } } : only;
};

/** The unit of sides that are told without one. */
const unitOf = (
  { long, wide }: Shape,
  thing: Thing | undefined,
  isMetric: boolean,
): LengthUnit | undefined => {
  const told = wide?.unit ?? long.unit;
  if (told) return told;
  const values = [long.value, wide?.value ?? long.value];
  const within = (from: number, to: number) => values.every((value) => value >= from && value <= to);
  if (!isMetric)
    return within(...BARE_INCHES) ? 'in' : thing === 'top' && wide && within(...BARE_FEET) ? 'ft' : undefined;
  return BARE_METRIC.find(([, from, to]) => within(from, to))?.[0];
};

const MOST_COUNTED = 60;
/** So many words may stand between a number and what it counts. */
const NEAR = 3;

type Head = {
  readonly at: number;
  readonly thing: Thing;
  readonly isMany: boolean;
  readonly count: number | undefined;
};

const wholeNumber = (ear: Ear, reader: Reader, sizes: Sizes, at: number): number | undefined => {
  const token = reader.tokens[at];
  if (!token) return undefined;
  if (reader.is(at, sizes.single)) return 1;
  const value =
    token.value ?? (/(?:st|nd|rd|th)$/.test(token.said) ? undefined : ear.numbers.get(token.said));
  return value !== undefined && Number.isInteger(value) && value >= 1 && value <= MOST_COUNTED
    ? value
    : undefined;
};

/** What is named, the last of words that belong together: "drawer fronts", "nightstand tops". */
const headsIn = (ear: Ear, reader: Reader, sizes: Sizes, taken: ReadonlySet<number>): readonly Head[] =>
  reader.tokens.flatMap((_, at): Head[] => {
    const named = taken.has(at) ? undefined : reader.thingAt(at);
    const isFirst = reader.thingAt(at + 1) && !taken.has(at + 1) && !reader.tokens[at + 1]?.isApart;
    if (!named || isFirst) return [];
    let count: number | undefined;
    for (let back = at - 1; back >= Math.max(0, at - NEAR) && count === undefined; back--) {
      if (taken.has(back) || reader.tokens[back + 1]?.isApart) break;
      count = wholeNumber(ear, reader, sizes, back);
      if (count === undefined && reader.is(back, sizes.apart)) break;
    }
    return [{ at, ...named, count }];
  });

/** What stands right behind a size: "18x24 tops", "18 x 24 pine top". */
const nextTo = (reader: Reader, sizes: Sizes, heads: readonly Head[], to: number): Head | undefined =>
  reader.is(to, sizes.apart) || reader.tokens[to]?.isApart
    ? undefined
    : heads.find(({ at }) => at === to || (at === to + 1 && !reader.tokens[at]?.isApart));

/** How many faces a shape has; nothing where that is left open. */
const countOf = (
  ear: Ear,
  reader: Reader,
  sizes: Sizes,
  { from, to }: Shape,
  heads: readonly Head[],
  stretch: number,
): { readonly count: number; readonly thing: Thing | undefined } | undefined => {
  const before = heads.filter(({ at }) => at >= stretch && at < from);
  const head = before.at(-1);
  const piece = before.filter(({ thing, count }) => thing === 'piece' && (count ?? 1) > 1).at(-1);
  const next = nextTo(reader, sizes, heads, to);
  const thing = (next ?? head)?.thing;
  const near = [to, to + 1].find((at) => reader.phraseAt(at + 1, sizes['of-them']) > 0);
  const counted = near === undefined ? undefined : wholeNumber(ear, reader, sizes, near);
  if (counted !== undefined) return { count: counted, thing };
  const isLinked =
    piece !== undefined &&
    reader.tokens.some((_, at) => at > piece.at && at <= to + 1 && reader.is(at, sizes.each));
  // "2 nightstands with 3 drawers each": one, or some, of each of several.
  const ofEach = (own: number, isTold: boolean): number =>
    piece?.count && (isLinked || !isTold) ? own * piece.count : own;
  // "two 18x24 tops"
  const direct = wholeNumber(ear, reader, sizes, from - 1);
  if (direct !== undefined) return { count: direct > 1 ? direct : ofEach(1, true), thing };
  if (next) {
    const count = next.isMany ? piece?.count : ofEach(1, false);
    return count === undefined ? undefined : { count, thing };
  }
  if (!head) {
    const behind = heads.find(({ at, count }) => at > to && at <= to + NEAR && (count ?? 1) > 1);
    const isLater = heads.some(({ at, count }) => at > to && (count ?? 1) > 1);
    if (isLater && !behind) return undefined;
    return { count: behind?.count ?? 1, thing: behind?.thing };
  }
  if (head === piece) return { count: piece.count ?? 1, thing };
  if (head.count === undefined && head.isMany)
    return piece?.count === undefined ? undefined : { count: piece.count, thing };
  return { count: ofEach(head.count ?? 1, head.count !== undefined), thing };
};

const facesOf = (
  shape: Shape,
  count: number,
  thing: Thing | undefined,
  isMetric: boolean,
): Faces | undefined => {
  const unit = unitOf(shape, thing, isMetric);
  if (!unit) return undefined;
  const inMeters = ({ value, unit: own }: Length): number => (value * MILLIMETERS[own ?? unit]) / 1000;
  const long = inMeters(shape.long);
  const each = shape.wide ? long * inMeters(shape.wide) : (Math.PI / 4) * long * long;
  if (each < LEAST || each > MOST) return undefined;
  const inUnit = (meters: number): number => Number(((meters * 1000) / MILLIMETERS[unit]).toFixed(3));
  return {
    count,
    long: inUnit(long),
    wide: shape.wide && inUnit(inMeters(shape.wide)),
    unit,
    isTaken: (shape.wide?.unit ?? shape.long.unit) === undefined,
    thing,
    squareMeters: each * count,
  };
};

/** How many pieces an area holds for: of each of those that are counted before it; nothing where that is left open. */
export const countOfArea = (
  ear: Ear,
  reader: Reader,
  sizes: Sizes,
  ofEach: number | undefined,
): number | undefined => {
  const many = headsIn(ear, reader, sizes, new Set()).filter(({ count }) => (count ?? 1) > 1);
  if (ofEach === undefined) return many.length ? undefined : 1;
  const [counted, ...others] = many.filter(({ at }) => at < ofEach);
  return others.length ? undefined : counted?.count;
};

const SIZED: readonly (Thing | undefined)[] = ['side', 'front', 'loose'];

/** The faces that a text tells with their sizes; nothing where it tells none, or leaves open how many there are. */
export const toldFaces = (
  ear: Ear,
  reader: Reader,
  sizes: Sizes,
  isMetric: boolean,
): ToldFaces | undefined => {
  const shapes: Shape[] = [];
  for (let at = 0; at < reader.tokens.length; at++) {
    const shape = rectangleAt(reader, sizes, at);
    if (shape === null) return undefined;
    if (!shape) continue;
    shapes.push(shape);
    at = shape.to - 1;
  }
  const round = shapes.length ? undefined : roundIn(reader, sizes);
  if (round) shapes.push(round);
  if (!shapes.length) return undefined;
  const phrases = (list: readonly string[]) =>
    reader.tokens.flatMap((_, at) => {
      const length = reader.phraseAt(at, list);
      return length ? [{ from: at, to: at + length }] : [];
    });
  const [both, one] = [phrases(sizes.both), phrases(sizes.one)];
  // Of several sizes it is left open which have both.
  if (both.length && (one.length || shapes.length > 1)) return undefined;
  const taken = new Set(
    [...both, ...one, ...shapes].flatMap(({ from, to }) =>
      Array.from({ length: to - from }, (_, at) => from + at),
    ),
  );
  const heads = headsIn(ear, reader, sizes, taken);
  const all = shapes.map((shape, at) => {
    const counted = countOf(ear, reader, sizes, shape, heads, shapes[at - 1]?.to ?? 0);
    return counted && facesOf(shape, counted.count, counted.thing, isMetric);
  });
  const faces = all.flatMap((one) => one ?? []);
  if (faces.length < shapes.length) return undefined;
  const owned = new Set(
    shapes.flatMap(({ from, to }) => [
      heads.filter(({ at }) => at < from).at(-1)?.at,
      nextTo(reader, sizes, heads, to)?.at,
    ]),
  );
  const missing = one.length
    ? []
    : heads
        .filter(({ at, thing }) => SIZED.includes(thing) && !owned.has(at))
        .map(({ at }) => reader.tokens[at]?.said ?? '');
  return { faces, sides: both.length ? 2 : 1, missing: [...new Set(missing)] };
};

export const isToldMetric = ({ faces }: ToldFaces): boolean =>
  faces.every(({ unit }) => isMetricLength(unit));
