import { toFluidOunces, toGallons, toSquareFeet, toSquareFeetPerGallon } from '../../calc/units.ts';
import type { Sizes } from '../../model/sizes.ts';
import { filled } from '../../plain/filled.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Coverage } from './told-coverage.ts';
import type { Faces, ToldFaces } from './told-faces.ts';

type Ends = readonly [number, number];
const digits = (value: number, count: number): string => String(Number(value.toPrecision(count)));

const both = (metric: string, us: string, isMetric: boolean): string =>
  isMetric ? `${metric} (${us})` : `${us} (${metric})`;

export const sayArea = (squareMeters: number, isMetric: boolean): string =>
  both(`${digits(squareMeters, 3)} m²`, `${digits(toSquareFeet(squareMeters), 3)} sq ft`, isMetric);

const FLUID_OUNCES_PER_GALLON = 128;

/** One figure or two; a range is worth two digits, and one figure three. */
const ends = ([from, to]: Ends, times: number): string => {
  const isOne = to - from < 1e-9 * to;
  const [low, high] = [digits(from * times, isOne ? 3 : 2), digits(to * times, isOne ? 3 : 2)];
  return low === high ? low : `${low} to ${high}`;
};

/** From a liter and a gallon on in the larger unit, by what is needed at most. */
export const sayLiters = (liters: Ends, isMetric: boolean): string => {
  const metric = liters[1] >= 1 ? `${ends(liters, 1)} L` : `${ends(liters, 1000)} mL`;
  const ounces = toFluidOunces(1000);
  const us =
    liters[1] * ounces >= FLUID_OUNCES_PER_GALLON
      ? `${ends(liters, toGallons(1))} gal`
      : `${ends(liters, ounces)} fl oz`;
  return both(metric, us, isMetric);
};

export const sayCoverage = ({ ends: of, isMetric }: Coverage): string =>
  both(`${ends(of, 1)} m² a liter`, `${ends(of, toSquareFeetPerGallon(1))} sq ft a gallon`, isMetric);

const sizeOf = (
  says: Lexicon['tables']['amount'],
  sizes: Sizes,
  { long, wide, unit, isTaken }: Faces,
): string => {
  const [short = unit] = sizes.lengths[unit];
  if (wide === undefined) return filled(says.round, { size: `${long} ${short}` });
  const size = `${long} × ${wide}`;
  return isTaken ? filled(says.taken, { size, unit: says.units[unit] }) : `${size} ${short}`;
};

/** "2 of 18 × 24 in, one face each". */
export const sayFaces = (
  says: Lexicon['tables']['amount'],
  sizes: Sizes,
  { faces, sides }: ToldFaces,
): string =>
  faces
    .map((one) =>
      filled(one.count > 1 ? says.faces : says.one, {
        count: String(one.count),
        size: sizeOf(says, sizes, one),
        sides: sides === 2 ? says['both-faces'] : one.count > 1 ? says['one-face-each'] : says['one-face'],
      }),
    )
    .join('; ');
