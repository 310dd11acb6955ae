import { entryOf } from '../plain/entry-of.ts';
import { type ClockProduct, type LaidCoat, type Products, wetFilmOf } from './coat.ts';

/** Below this a clear film is thin, as the table of sanding in the plan has it: coats, and µm dry. */
export const THIN = { coats: 2, micrometers: 25 } as const;

/** The least dry film of one coat, µm. */
export const leastDry = (product: ClockProduct, coat: LaidCoat): number =>
  (wetFilmOf(product, coat) ?? product['reference-wet-film-micrometers']) * product['volume-solids'][0];

/**
 * Whether all coats so far make a film too thin to be sanded over the whole face. One of which some is not known is as
 * thick as its count says.
 */
export const isThin = (product: ClockProduct, coat: LaidCoat, products: Products): boolean => {
  if (coat.coatNumber < THIN.coats) return true;
  const below = (coat.below ?? []).flatMap((one) => {
    const known = entryOf(products, one.product);
    return known ? leastDry(known, one) : [];
  });
  if (below.length + 1 < coat.coatNumber) return false;
  return below.reduce((sum, film) => sum + film, leastDry(product, coat)) < THIN.micrometers;
};
