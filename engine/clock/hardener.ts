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

/**
 * What stands in the place of every word on sanding while isocyanate is in the film, the same on the clock, on a card, in
 * a reminder and in a plan. The rule, and how it is known, is content/rules/not-sanded-before-full-cure.mdx.
 */
export const TWO_PART_WORDS = {
  soft: 'It is dry to the touch, but soft inside. No dust of it before its can says fully cured: the dust can hold isocyanate.',
  ready:
    'No dust of it before its can says fully cured: the dust can hold isocyanate. Lay the next coat unsanded, within the time that the can gives for this; later, wait for full cure.',
  late: 'No dust of it before its can says fully cured: the dust can hold isocyanate. A coat unsanded only while the can still gives time for one; else wait for full cure.',
  film: 'No dust of it, not even lightly, before its can says fully cured: the dust can hold isocyanate. Until then coat it unsanded, within the time that the can gives for this, or leave it.',
} as const;

/** Said beside every word on sanding where nobody has told whether isocyanate is in the film. */
export const PERHAPS_TWO_PART = 'Two parts mixed in? No dust of it before full cure.';
