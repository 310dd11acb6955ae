import type { Applicator } from '../calc/drying/figures.ts';
import type { Label } from '../calc/drying/label.ts';
import type { ValueOf } from '../model/facts.ts';
import type { Product } from '../model/product.ts';

const KEPT = [
  'name',
  'family',
  'mechanism',
  'open-minutes',
  'touch-minutes',
  'recoat-hours',
  'sand-if-beyond-hours',
  'light-use-days',
  'cure-days',
  'volume-solids',
  'reference-wet-film-micrometers',
  'wet-film-micrometers',
  'limits',
  'best',
  'film-formation-celsius',
] as const satisfies readonly (keyof Product)[];

/** The figures of a product that the clock reckons with; its claims and words stay at home. */
export type ClockProduct = Pick<Product, (typeof KEPT)[number]>;

export const clockProduct = (product: ClockProduct): ClockProduct =>
  Object.fromEntries(
    KEPT.flatMap((key) => (product[key] === undefined ? [] : [[key, product[key]]])),
  ) as unknown as ClockProduct;

/** One coat on one piece. The label's figures win over the product's. */
export type LaidCoat = {
  readonly id: string;
  /** What she calls the piece. */
  readonly piece: string;
  /** The id of its job card; nothing where the coat was laid on the clock alone. */
  readonly card?: string | undefined;
  /** The id of a product in `content/products/`. */
  readonly product: string;
  readonly label?: Label | undefined;
  /** Epoch milliseconds: no daylight-saving change can move it. */
  readonly laidAt: number;
  /** -30 to 50 °C. */
  readonly celsius: number;
  /** 0–1. */
  readonly relativeHumidity: number;
  /** The coldest place of the piece, where it is not as warm as the air. */
  readonly surfaceCelsius?: number | undefined;
  /** 1 to 20. */
  readonly coatNumber: number;
  readonly applicator?: Applicator | undefined;
  /** What went on and how far: it tells the film better than the applicator does. */
  readonly amount?: { readonly milliliters: number; readonly squareMeters: number } | undefined;
  readonly baseTone?: ValueOf<'base-tone'> | undefined;
  readonly sheen?: ValueOf<'sheen'> | undefined;
};

/** Wet film, µm: one milliliter on a square meter is one micrometer. Nothing where neither amount nor tool tells. */
export const wetFilmOf = (product: ClockProduct, coat: LaidCoat): number | undefined => {
  if (coat.amount) return coat.amount.milliliters / coat.amount.squareMeters;
  const film = coat.applicator && product['wet-film-micrometers'][coat.applicator];
  return film && Math.sqrt(film[0] * film[1]);
};

export const climateOf = ({ celsius, relativeHumidity, surfaceCelsius }: LaidCoat) => ({
  celsius,
  relativeHumidity,
  surfaceCelsius,
});
