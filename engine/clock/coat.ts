import type { Applicator } from '../calc/drying/figures.ts';
import type { Label } from '../calc/drying/label.ts';
import type { ValueOf } from '../model/facts.ts';
import type { Product } from '../model/product.ts';
import { pick } from '../plain/pick.ts';

const KEPT = [
  'name',
  'family',
  'mechanism',
  'open-minutes',
  'touch-minutes',
  'recoat-hours',
  'sand-if-beyond-hours',
  'no-coat-hours',
  'light-use-days',
  'cure-days',
  'volume-solids',
  'reference-wet-film-micrometers',
  'wet-film-micrometers',
  'limits',
  'best',
  'film-formation-celsius',
  'hardeners',
] as const satisfies readonly (keyof Product)[];

/** The figures of a product that the clock reckons with; its claims and words stay at home. */
export type ClockProduct = Pick<Product, (typeof KEPT)[number]>;

/** Products by their ids. */
export type Products = Readonly<Record<string, ClockProduct>>;

export const clockProduct = (product: ClockProduct): ClockProduct => pick(product, ...KEPT);

/** A flaw that is not settled: before its repair, and once that is noted. */
export type OpenFlaw = 'open' | 'repaired';

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
  /** The coldest air of the nights it stands in, where that is told; else it is as by day. */
  readonly night?: { readonly celsius: number; readonly relativeHumidity?: number | undefined } | undefined;
  /** From 1; the form takes 20, a card may hold more. */
  readonly coatNumber: number;
  readonly applicator?: Applicator | undefined;
  /** What went on and how far: it tells the film better than the applicator does. */
  readonly amount?: { readonly milliliters: number; readonly squareMeters: number } | undefined;
  readonly baseTone?: ValueOf<'base-tone'> | undefined;
  readonly sheen?: ValueOf<'sheen'> | undefined;
  /** What was mixed in to harden it; nothing where nobody has said. */
  readonly hardener?: ValueOf<'hardener'> | undefined;
  /** How old the oldest paint on its piece may be, as its card has it. */
  readonly age?: ValueOf<'age'> | 'none' | undefined;
  /** No other comes over it: what is left is to cure. */
  readonly last?: boolean | undefined;
  /** A flaw that is noted on its card and not settled. */
  readonly flaw?: OpenFlaw | undefined;
  /** Coats that it buried, the uppermost first; they cure on below it. Theirs are left out. */
  readonly below?: readonly LaidCoat[] | undefined;
};

/** Wet film, µm: one milliliter on a square meter is one micrometer. Nothing where neither amount nor tool tells. */
export const wetFilmOf = (product: ClockProduct, coat: LaidCoat): number | undefined => {
  if (coat.amount) return coat.amount.milliliters / coat.amount.squareMeters;
  const film = coat.applicator && product['wet-film-micrometers'][coat.applicator];
  return film && Math.sqrt(film[0] * film[1]);
};

/** The wet film, µm, that the product's times are for: all that its tools leave, or this one. */
const usualFilm = (product: ClockProduct, applicator: Applicator | undefined): [number, number] => {
  const reference = product['reference-wet-film-micrometers'];
  const films = product['wet-film-micrometers'];
  const own = applicator && films[applicator];
  const told = own ? [own] : Object.values(films);
  return [
    Math.min(reference, ...told.map(([least]) => least)),
    Math.max(reference, ...told.map(([, most]) => most)),
  ];
};

/**
 * A wet film, µm, against the usual one: 1 for all that the tool usually leaves, since the product's times are printed
 * for no other; below or above that against its thin or its thick end.
 */
export const relativeFilm = (
  product: ClockProduct,
  applicator: Applicator | undefined,
  micrometers: number,
): number => {
  const [thin, thick] = usualFilm(product, applicator);
  if (micrometers < thin) return micrometers / thin;
  return micrometers > thick ? micrometers / thick : 1;
};

/**
 * The film of a coat against the usual one. Only an amount can tell that it is another: a tool alone leaves what it
 * leaves.
 */
export const relativeThicknessOf = (product: ClockProduct, { amount, applicator }: LaidCoat): number =>
  amount ? relativeFilm(product, applicator, amount.milliliters / amount.squareMeters) : 1;

export const climateOf = ({ celsius, relativeHumidity, surfaceCelsius }: LaidCoat) => ({
  celsius,
  relativeHumidity,
  surfaceCelsius,
});
