import {
  adopted,
  type ClockStore,
  clockDoubt,
  clockNow,
  type LaidCoat,
  layOnClock,
  type Products,
  type Reading,
  replaceOnClock,
  takeOffClock,
} from '#engine/clock.ts';
import { type Case, without } from '#engine/index.ts';
import { canonical } from '#engine/jobs/canonical.ts';
import { coatsInOrder, factsOfCard, laidCoatOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { keepCase, readCase } from '../../case/store.ts';
import { changeClock } from '../../clock/store.ts';

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

const isDoubted = ({ seenAt }: ClockStore, now: number): boolean => clockDoubt(seenAt, now) !== undefined;

/**
 * Puts a coat on the clock in place of the piece's last. True once it is on the disk; false where the browser does not
 * keep it, or the clock of the device is to be doubted.
 */
export const startClock = async (coat: LaidCoat, products: Products, now: number): Promise<boolean> => {
  if (!entryOf(products, coat.product)) return false;
  const { before, onDisk } = await changeClock((there) =>
    isDoubted(there, now) ? there : layOnClock(there, { coat, products, now }),
  );
  return onDisk && !isDoubted(before, now);
};

/** Corrects a coat that is on the clock; one that is not there stays off it. */
export const correctClock = async (coat: LaidCoat, products: Products): Promise<void> => {
  await changeClock((there) => replaceOnClock(there, [coat.id], { coat, products }));
};

/** Takes a coat off the clock. True where it was on it. */
export const stopClock = async (id: string): Promise<boolean> => {
  const { before, store } = await changeClock((there) => takeOffClock(there, id));
  return store.coats.length < before.coats.length;
};

/**
 * When a card is opened: a coat that was put on the clock before it knew its card learns of it, so that cards of one name
 * stay apart; a last coat that still dries, but is not on the clock, is put back; and one that is counts as on the card.
 */
export const adoptCoats = async (card: JobCard, products: Products, now: number): Promise<void> => {
  const last = lastCoatNow(card, products, now);
  const drying = last?.reading.kind === 'running' && last.reading.stage !== 'cured';
  await changeClock((clock) => {
    const coats = adopted(clock.coats, card.id, card.coats);
    const known = coats.some((coat, index) => coat !== clock.coats[index]) ? { ...clock, coats } : clock;
    if (!last) return known;
    const there = coats.find((coat) => coat.card === card.id);
    // One for which no time can be told stays on the clock, with what the card knows of its nights.
    if (there)
      return canonical(there) === canonical(last.coat) ? known : inItsPlace(known, last.coat, products);
    return drying && !isDoubted(clock, now) ? layOnClock(known, { coat: last.coat, products, now }) : known;
  });
};

/** The clock with the coat of a card as the card has it now: another device may have laid one below it, or above. */
export const inItsPlace = (clock: ClockStore, coat: LaidCoat, products: Products): ClockStore => {
  const was = clock.coats.filter(({ card }) => card === coat.card).map(({ id }) => id);
  return replaceOnClock(clock, was, { coat, products });
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
