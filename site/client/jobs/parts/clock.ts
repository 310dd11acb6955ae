import {
  adopted,
  type ClockProduct,
  clockNow,
  jumpedBack,
  type LaidCoat,
  type Reading,
  withLaid,
} from '#engine/clock.ts';
import { type Case, without } from '#engine/index.ts';
import { coatsInOrder, factsOfCard, laidCoatOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { keepCase, readCase } from '../../case/store.ts';
import { keepClock, loadClock } from '../../clock/store.ts';

type Products = Readonly<Record<string, ClockProduct>>;

/** The card's uppermost coat as the clock reads it, with what the clock says of it now. */
export const lastCoatNow = (
  card: JobCard,
  products: Products,
  now: number,
): { readonly coat: LaidCoat; readonly reading: Reading } | undefined => {
  const last = coatsInOrder(card).at(-1);
  const product = last && products[last.product];
  if (!product) return undefined;
  const coat = laidCoatOf(card, last);
  return { coat, reading: clockNow(product, coat, now) };
};

/** Puts a coat on the clock in place of the piece's last. False where the browser does not keep it. */
export const startClock = (coat: LaidCoat, products: Products, now: number): boolean => {
  const { store } = loadClock();
  const product = products[coat.product];
  if (!product || jumpedBack(store.seenAt, now)) return false;
  return keepClock({
    ...store,
    coats: withLaid(store.coats, coat),
    products: { ...store.products, [coat.product]: product },
    current: coat.id,
    seenAt: now,
  });
};

/** Corrects a coat that is on the clock; one that is not there stays off it. */
export const correctClock = (coat: LaidCoat, products: Products): void => {
  const { store } = loadClock();
  const product = products[coat.product];
  if (!store.coats.some(({ id }) => id === coat.id)) return;
  keepClock({
    ...store,
    coats: store.coats.map((one) => (one.id === coat.id ? coat : one)),
    products: { ...store.products, ...(product && { [coat.product]: product }) },
  });
};

/** A coat that was put on the clock before it knew its card learns of it, so that cards of one name stay apart. */
export const adoptCoats = (card: JobCard): void => {
  const { store } = loadClock();
  const coats = adopted(store.coats, card.id, card.coats);
  if (coats.some((coat, index) => coat !== store.coats[index])) keepClock({ ...store, coats });
};

/** After a new coat, what she said of the old film is over. */
export const forgetStage = (): void => {
  keepCase(without(readCase(), 'stage'));
};

/**
 * The facts that a walk from this card begins with. While the clock runs it tells stage and hours, which go on;
 * kept as her own word they would stand still.
 */
export const caseOfCard = (card: JobCard, products: Products, now: number): Case => {
  const facts = factsOfCard(card, products, now);
  const last = lastCoatNow(card, products, now);
  if (last?.reading.kind !== 'running' || last.reading.stage === 'cured') return facts;
  if (!startClock(last.coat, products, now)) return facts;
  return without(without(facts, 'stage'), 'hours-since-coat');
};
