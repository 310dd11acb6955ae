import { entryOf } from '../plain/entry-of.ts';
import type { LaidCoat, Products } from './coat.ts';
import { withLaid } from './laid.ts';
import type { ClockStore } from './store.ts';

/** A coat for the clock. Of the products its own is kept with it, so that every page can read it offline. */
export type ForClock = { readonly coat: LaidCoat; readonly products: Products };

/** The products of a clock with that of one coat more. */
const withProductOf = (store: ClockStore, { coat, products }: ForClock): Products => {
  const product = entryOf(products, coat.product);
  return product ? { ...store.products, [coat.product]: product } : store.products;
};

/** Puts a coat on the clock: over the one that lies below it on its piece. Which one was chosen before is over. */
export const layOnClock = (
  store: ClockStore,
  laid: ForClock & { /** Epoch milliseconds. */ readonly now: number },
): ClockStore => ({
  ...store,
  coats: withLaid(store.coats, laid.coat),
  products: withProductOf(store, laid),
  current: undefined,
  seenAt: laid.now,
});

/**
 * The clock with a coat in the place of those with these ids, which is looked at where one of them was. The same clock
 * where none of them is on it.
 */
export const replaceOnClock = (store: ClockStore, ids: readonly string[], instead: ForClock): ClockStore => {
  const first = store.coats.find(({ id }) => ids.includes(id));
  if (!first) return store;
  return {
    ...store,
    coats: store.coats.flatMap((one) => (one === first ? [instead.coat] : ids.includes(one.id) ? [] : [one])),
    products: withProductOf(store, instead),
    ...(store.current !== undefined && ids.includes(store.current) && { current: instead.coat.id }),
  };
};

/** Takes a coat off the clock. The same clock where it is not on it. */
export const takeOffClock = (store: ClockStore, id: string): ClockStore =>
  store.coats.some((coat) => coat.id === id)
    ? { ...store, coats: store.coats.filter((coat) => coat.id !== id) }
    : store;
