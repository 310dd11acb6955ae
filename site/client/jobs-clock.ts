import { type ClockProduct, clockNow, jumpedBack, type LaidCoat, type Reading } from '#engine/clock.ts';
import { type Case, without } from '#engine/index.ts';
import { coatsInOrder, factsOfCard, laidCoatOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { keepCase, readCase } from './case-store.ts';
import { keepClock, loadClock } from './clock-store.ts';

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
  const piece = coat.piece.toLowerCase();
  const coats = [
    coat,
    ...store.coats.filter((one) => one.id !== coat.id && one.piece.toLowerCase() !== piece),
  ];
  return keepClock({
    ...store,
    coats,
    products: { ...store.products, [coat.product]: product },
    current: coat.id,
    seenAt: now,
  });
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
