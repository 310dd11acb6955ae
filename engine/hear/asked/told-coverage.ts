import type { Sizes } from '../../model/sizes.ts';
import { isMetricVolume, LITERS, type Reader } from './size-tokens.ts';

/** m² a liter, from one end to the other. */
export type Coverage = { readonly ends: readonly [number, number]; readonly isMetric: boolean };

/** What is told in areas: how far a can goes, and the area itself. Nothing where it is left open which of them is meant. */
export type ToldAreas = {
  readonly coverage: Coverage | undefined;
  readonly squareMeters: number | undefined;
  /** The area holds for each of several: the token behind which that is told. */
  readonly ofEach: number | undefined;
  readonly isMetric: boolean;
  /** The tokens that tell how far a can goes. */
  readonly of: readonly number[];
};

/** So far before an area stands the volume that covers it. */
const NEAR = 5;

/** The volume of "450 sq ft a gallon" behind an area that ends before token `at`, in liters. */
const behind = (
  reader: Reader,
  { per }: Sizes,
  at: number,
): { readonly liters: number; readonly to: number } | undefined => {
  let here = at;
  while (here < at + 2 && reader.is(here, per)) here++;
  const unit = here > at ? reader.volumeAt(here) : undefined;
  return unit && { liters: LITERS[unit], to: here + 1 };
};

/** The volume of "a quart covers 100 sq ft", in liters; 0 where one covers, and none is told. */
const before = (reader: Reader, { covers }: Sizes, at: number): number | undefined => {
  const from = Math.max(0, at - NEAR);
  const verb = reader.tokens.findLastIndex((_, here) => here >= from && here < at && reader.is(here, covers));
  if (verb < 0) return undefined;
  const volume = reader.tokens.findLastIndex(
    (_, here) => here >= Math.max(0, verb - 2) && here < verb && reader.volumeAt(here) !== undefined,
  );
  const unit = volume < 0 ? undefined : reader.volumeAt(volume);
  return unit ? LITERS[unit] : 0;
};

export const toldAreas = (reader: Reader, sizes: Sizes): ToldAreas | undefined => {
  const rates: (Coverage & { readonly at: number; readonly to: number })[] = [];
  const areas: { readonly value: number; readonly isMetric: boolean; readonly to: number }[] = [];
  for (let at = 0; at < reader.tokens.length; at++) {
    const area = reader.areaAt(at);
    if (!area) continue;
    const per = behind(reader, sizes, area.to);
    const liters = per?.liters ?? before(reader, sizes, at);
    if (liters === 0) return undefined;
    if (liters === undefined) areas.push(area);
    else {
      // "10 to 12 m² a liter"
      const least = reader.is(at - 1, sizes.to) ? reader.tokens[at - 2]?.value : undefined;
      const most = reader.tokens[at]?.value ?? 1;
      const rate = area.value / liters;
      const low = least !== undefined && least < most ? (rate * least) / most : rate;
      rates.push({ ends: [low, rate], isMetric: area.isMetric, at, to: per?.to ?? area.to });
    }
    at = area.to - 1;
  }
  const [rate, ...others] = rates;
  const [area, ...more] = areas;
  if (others.length || more.length) return undefined;
  return {
    coverage: rate && { ends: rate.ends, isMetric: rate.isMetric },
    squareMeters: area?.value,
    ofEach: area && reader.is(area.to, sizes.every) ? area.to : undefined,
    isMetric: (area ?? rate)?.isMetric ?? false,
    of: rate ? Array.from({ length: rate.to - rate.at + NEAR }, (_, index) => rate.at - NEAR + index) : [],
  };
};

/** A can that is told with its volume, in liters, that is not part of how far a can goes. */
export const toldVolume = (
  reader: Reader,
  { single }: Sizes,
  numberOf: (said: string) => number | undefined,
  isTaken: (at: number) => boolean,
): { readonly liters: number; readonly said: string; readonly isMetric: boolean } | undefined => {
  const found = reader.tokens.flatMap((token, at) => {
    const unit = isTaken(at) ? undefined : reader.volumeAt(at);
    const number = reader.tokens[at - 1];
    if (!unit || !number) return [];
    const isSingle = reader.is(at - 1, single);
    // "half a pint"; "two and a half gallons" is left alone.
    const half = numberOf(reader.tokens[at - 2]?.said ?? '');
    const isPart = (isSingle ? half : numberOf(number.said)) === 0.5;
    if (isPart && reader.tokens.slice(Math.max(0, at - 4), at - 1).some(({ said }) => said === 'and'))
      return [];
    const count = isPart ? 0.5 : isSingle ? 1 : (number.value ?? numberOf(number.said));
    const words = isPart && isSingle ? [reader.tokens[at - 2], number, token] : [number, token];
    const said = words.map((one) => one?.said ?? '').join(' ');
    return count ? [{ liters: count * LITERS[unit], said, isMetric: isMetricVolume(unit) }] : [];
  });
  return found.length === 1 ? found[0] : undefined;
};
