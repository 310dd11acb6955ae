import {
  adopted,
  type ClockProduct,
  type ClockStore,
  clockDoubt,
  clockNow,
  type LaidCoat,
  type Reading,
  withLaid,
} from '#engine/clock.ts';
import { type Case, without } from '#engine/index.ts';
import { canonical } from '#engine/jobs/canonical.ts';
import { coatsInOrder, factsOfCard, laidCoatOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { keepCase, readCase } from '../../case/store.ts';
import { changeClock, loadClock } from '../../clock/store.ts';
import { timeStyle } from '../../shared/time-style.ts';

type Products = Readonly<Record<string, ClockProduct>>;

/** The card's uppermost coat as the clock reads it, with what the clock says of it now. */
export const lastCoatNow = (
  card: JobCard,
  products: Products,
  now: number,
): { readonly coat: LaidCoat; readonly reading: Reading } | undefined => {
  const last = coatsInOrder(card).at(-1);
  const product = last && entryOf(products, last.product);
  if (!product) return undefined;
  const coat = laidCoatOf(card, last);
  return { coat, reading: clockNow(product, coat, now, products) };
};

/**
 * Puts a coat on the clock in place of the piece's last. True once it is on the disk; false where the browser does not
 * keep it, or the clock of the device is to be doubted.
 */
export const startClock = async (coat: LaidCoat, products: Products, now: number): Promise<boolean> => {
  const product = entryOf(products, coat.product);
  if (!product) return false;
  const doubted = (seenAt: number) => clockDoubt(seenAt, now, timeStyle()) !== undefined;
  const { store, onDisk } = await changeClock((there) =>
    doubted(there.seenAt)
      ? there
      : {
          ...there,
          coats: withLaid(there.coats, coat),
          products: { ...there.products, [coat.product]: product },
          current: coat.id,
          seenAt: now,
        },
  );
  return onDisk && !doubted(store.seenAt);
};

/** Corrects a coat that is on the clock; one that is not there stays off it. */
export const correctClock = async (coat: LaidCoat, products: Products): Promise<void> => {
  const product = entryOf(products, coat.product);
  await changeClock((there) =>
    there.coats.some(({ id }) => id === coat.id)
      ? {
          ...there,
          coats: there.coats.map((one) => (one.id === coat.id ? coat : one)),
          products: { ...there.products, ...(product && { [coat.product]: product }) },
        }
      : there,
  );
};

/** Takes a coat off the clock. True where it was on it. */
export const stopClock = async (id: string): Promise<boolean> => {
  const { store } = await loadClock();
  if (!store.coats.some((coat) => coat.id === id)) return false;
  await changeClock((there) => ({ ...there, coats: there.coats.filter((coat) => coat.id !== id) }));
  return true;
};

/**
 * When a card is opened: a coat that was put on the clock before it knew its card learns of it, so that cards of one name
 * stay apart; a last coat that still dries, but is not on the clock, is put back; and one that is counts as on the card.
 */
export const adoptCoats = async (card: JobCard, products: Products, now: number): Promise<void> => {
  const { store } = await loadClock();
  const coats = adopted(store.coats, card.id, card.coats);
  if (coats.some((coat, index) => coat !== store.coats[index]))
    await changeClock((there) => ({ ...there, coats: adopted(there.coats, card.id, card.coats) }));
  const last = lastCoatNow(card, products, now);
  if (!last) return;
  const drying = last.reading.kind === 'running' && last.reading.stage !== 'cured';
  const there = coats.find((coat) => coat.card === card.id);
  if (!there && drying) await startClock(last.coat, products, now);
  // One for which no time can be told stays on the clock, with what the card knows of its nights.
  else if (there && canonical(there) !== canonical(last.coat))
    await changeClock((clock) => inItsPlace(clock, last.coat, products));
};

/** The clock with the coat of a card as the card has it now: another device may have laid one below it, or above. */
export const inItsPlace = (clock: ClockStore, coat: LaidCoat, products: Products): ClockStore => {
  const product = entryOf(products, coat.product);
  const was = clock.coats.filter(({ card }) => card === coat.card).map(({ id }) => id);
  const [first] = was;
  return {
    ...clock,
    coats: clock.coats.flatMap((one) => (one.id === first ? [coat] : was.includes(one.id) ? [] : [one])),
    products: { ...clock.products, ...(product && { [coat.product]: product }) },
    ...(clock.current !== undefined && was.includes(clock.current) && { current: coat.id }),
  };
};

/** After a new coat, what she said of the old film is over. */
export const forgetStage = (): void => {
  keepCase(without(readCase(), 'stage'));
};

/**
 * The facts that a walk from this card begins with. While the clock runs it tells stage and hours, which go on;
 * kept as her own word they would stand still.
 */
export const caseOfCard = async (card: JobCard, products: Products, now: number): Promise<Case> => {
  const facts = factsOfCard(card, products, now);
  const last = lastCoatNow(card, products, now);
  if (last?.reading.kind !== 'running' || last.reading.stage === 'cured') return facts;
  if (!(await startClock(last.coat, products, now))) return facts;
  return without(without(facts, 'stage'), 'hours-since-coat');
};
