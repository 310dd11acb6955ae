import type { ValueOf } from '../model/facts.ts';
import { entryOf } from '../plain/entry-of.ts';
import type { ClockProduct, LaidCoat, Products } from './coat.ts';

/** Whether isocyanate is in the film: `perhaps` where its kind comes with it as well, and nobody has said. */
export type TwoPart = 'surely' | 'perhaps';

/** One coat, as far as its hardener is told. */
type Told = Pick<LaidCoat, 'hardener'>;

/** The same of one coat of a kind; nothing where none is in it. */
export const twoPartIn = (
  product: Pick<ClockProduct, 'hardeners'> | undefined,
  { hardener }: Told,
): TwoPart | undefined => {
  if (hardener === 'isocyanate') return 'surely';
  return hardener === undefined && product?.hardeners?.includes('isocyanate') ? 'perhaps' : undefined;
};

/** Of a coat and all below it: what is sanded may go through to them. */
export const twoPartOf = (
  coats: readonly (Told & Pick<LaidCoat, 'product'>)[],
  products: Products,
): TwoPart | undefined => {
  const all = coats.map((one) => twoPartIn(entryOf(products, one.product), one));
  return all.find((one) => one === 'surely') ?? all.find((one) => one);
};

/** What a film, the uppermost coat first, tells of hardeners: the worst that is in it; nothing while one may hold more. */
export const hardenerOf = (
  coats: readonly (Told & Pick<LaidCoat, 'product'>)[],
  products: Products,
): ValueOf<'hardener'> | undefined => {
  const two = twoPartOf(coats, products);
  if (two) return two === 'surely' ? 'isocyanate' : undefined;
  return coats.some(({ hardener }) => hardener === 'acid') ? 'acid' : coats[0]?.hardener;
};
