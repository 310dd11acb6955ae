import { STAGES } from '../model/stage.ts';
import { entryOf } from '../plain/entry-of.ts';
import type { LaidCoat } from './coat.ts';
import { clockNow, type Reading } from './reading.ts';
import type { ClockStore } from './store.ts';

/** What can not be read says nothing about hands, so it comes behind all that can. */
const UNREAD = STAGES.length;

const readingOf = ({ products }: ClockStore, coat: LaidCoat, now: number): Reading | undefined => {
  const product = entryOf(products, coat.product);
  return product && clockNow(product, coat, now, products);
};

/** How far a film is, and when it is further; what no time is promised for is not touched either. */
const placeOf = (reading: Reading | undefined): readonly [rank: number, until: number] => {
  if (reading?.kind === 'refused') return [STAGES.indexOf('setting'), Number.NEGATIVE_INFINITY];
  if (reading?.kind !== 'running') return [UNREAD, 0];
  const { stage, handsOff, moments } = reading;
  const rank = STAGES.indexOf(stage);
  return [handsOff ? Math.min(rank, STAGES.indexOf('setting')) : rank, moments.recoat.to];
};

/** The coats on a clock, the wettest first: of several hands go by that one. Of two that are alike the one laid last. */
export const wettestFirst = (store: ClockStore, now: number): readonly LaidCoat[] =>
  store.coats
    .map((coat) => ({ coat, place: placeOf(readingOf(store, coat, now)) }))
    .toSorted(
      (
        { coat: { laidAt: one }, place: [rank, until] },
        { coat: { laidAt: two }, place: [otherRank, other] },
      ) => rank - otherRank || (rank < STAGES.indexOf('recoatable') ? other - until : 0) || two - one,
    )
    .map(({ coat }) => coat);

/** The coats that bear no other yet, the wettest first. */
export const unreadyOf = (store: ClockStore, now: number): readonly LaidCoat[] =>
  wettestFirst(store, now).filter(
    (coat) => placeOf(readingOf(store, coat, now))[0] < STAGES.indexOf('recoatable'),
  );
