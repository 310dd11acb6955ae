import { type ClockProduct, type Products, wetFilmOf } from '../clock/coat.ts';
import { type TwoPart, twoPartOf } from '../clock/hardener.ts';
import type { Film } from '../clock/thick.ts';
import { type Family, UNSANDED } from '../model/family.ts';
import type { CardCoat, JobCard } from '../model/job-card.ts';
import { entryOf } from '../plain/entry-of.ts';
import type { Span } from '../plain/span.ts';
import { coatsInOrder, labelOf, laidCoatOf } from './coat.ts';

/** Products by their ids, with the figures of the clock. */
export type { Products };

/** What tells a film, the surest first; `usual` is the film that the product's times are for. */
type FilmGround = 'label' | 'amount' | 'tool' | 'usual' | 'nothing';

export type Layer = {
  readonly coat: CardCoat;
  /** From 1, the lowest. */
  readonly number: number;
  /** Nothing where the product is not known here. */
  readonly family: Family | undefined;
  readonly ground: FilmGround;
  /** µm. */
  readonly wet: number | undefined;
  /** µm. */
  readonly dry: Span | undefined;
  /** Its solids are those of its can. */
  readonly solidsByCan: boolean;
};

export type Layers = {
  /** From the lowest up. */
  readonly layers: readonly Layer[];
  /** Dry film of all coats that are known, µm. */
  readonly total: Span;
  /** Coats whose film is not known. */
  readonly unknown: number;
  /** Coats whose film is only the usual one. */
  readonly supposed: number;
  /** Isocyanate is in one of them, or may be. */
  readonly twoPart: TwoPart | undefined;
};

/** The product of a coat; a key of the prototype is none. */
export const productOf = (products: Products, id: string | undefined): ClockProduct | undefined =>
  entryOf(products, id);

/** Wet film, µm, and what tells it: the can wins, then what was measured, then the tool, then the usual film. */
const wetOf = (
  card: JobCard,
  coat: CardCoat,
  product: ClockProduct | undefined,
): { readonly by: FilmGround; readonly wet: number } | undefined => {
  const coverage = labelOf(card, coat)?.squareMetersPerLiter;
  if (coverage) return { by: 'label', wet: 1000 / coverage };
  if (coat.amount) return { by: 'amount', wet: coat.amount.milliliters / coat.amount.squareMeters };
  if (!product) return undefined;
  const tool = wetFilmOf(product, laidCoatOf(card, coat));
  return tool ? { by: 'tool', wet: tool } : { by: 'usual', wet: product['reference-wet-film-micrometers'] };
};

const layerOf = (card: JobCard, coat: CardCoat, number: number, product: ClockProduct | undefined): Layer => {
  const told = wetOf(card, coat, product);
  const onCan = labelOf(card, coat)?.volumeSolids;
  const solids = onCan ? [onCan, onCan] : product?.['volume-solids'];
  const dry =
    told && solids ? { from: told.wet * (solids[0] ?? 0), to: told.wet * (solids[1] ?? 0) } : undefined;
  const ground = told && dry ? told.by : 'nothing';
  const solidsByCan = Boolean(onCan && dry);
  return { coat, number, family: product?.family, ground, wet: told?.wet, dry, solidsByCan };
};

/** The film of a card, coat by coat and in all, µm. A product that is missing leaves its coats unknown. */
export const layersOf = (card: JobCard, products: Products): Layers => {
  const layers = coatsInOrder(card).map((coat, index) =>
    layerOf(card, coat, index + 1, productOf(products, coat.product)),
  );
  const sum = (end: 'from' | 'to') => layers.reduce((all, { dry }) => all + (dry?.[end] ?? 0), 0);
  const total = { from: sum('from'), to: sum('to') };
  const unknown = layers.filter(({ dry }) => !dry).length;
  const supposed = layers.filter(({ ground }) => ground === 'usual').length;
  return { layers, total, unknown, supposed, twoPart: twoPartOf(card.coats, products) };
};

/** The film at its least: what lies in the wood makes none, and what is not known is not counted. */
export const filmOf = ({ layers }: Pick<Layers, 'layers'>): Film => {
  const films = layers.flatMap(({ family, dry }) =>
    family && dry && !UNSANDED.includes(family) ? [{ family, least: dry.from }] : [],
  );
  return {
    micrometers: films.reduce((sum, { least }) => sum + least, 0),
    families: films.map(({ family }) => family),
  };
};

/** The film that a coat comes to lie on. */
export const filmBelow = (card: JobCard, { id, laidAt }: CardCoat, products: Products): Film => {
  const coats = card.coats.filter((one) => one.id !== id && one.laidAt < laidAt);
  return filmOf(layersOf({ ...card, coats }, products));
};
