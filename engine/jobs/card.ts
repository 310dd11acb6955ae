import type { CardList } from '../model/card-limits.ts';
import { CARD_VERSION, LATEST_INSTANT } from '../model/card-limits.ts';
import type { CardCoat, CardFlaw, CardPhoto, CardRepair, JobCard } from '../model/job-card.ts';
import { isRemoved, unnamed, withoutRemoval, withRemoval } from './removed.ts';

/** What a card must be told at its start; the rest may come later. */
export type CardStart = Pick<JobCard, 'name' | 'kind' | 'base' | 'tone' | 'age'> &
  Partial<Omit<JobCard, 'version' | 'id' | 'madeAt' | 'changedAt'>>;

type Fixed = 'version' | 'id' | 'madeAt' | 'changedAt';
/** Fields to set. A field that may be missing is taken away with `undefined`. */
export type CardChange = {
  readonly [K in Exclude<keyof JobCard, Fixed>]?: undefined extends JobCard[K]
    ? JobCard[K] | undefined
    : JobCard[K];
};

/** A new card. The id has letters, digits and hyphens; `now` is in epoch milliseconds. */
export const newCard = (given: CardStart, id: string, now: number): JobCard => ({
  coats: [],
  flaws: [],
  repairs: [],
  photos: [],
  notes: '',
  ...given,
  version: CARD_VERSION,
  id,
  madeAt: now,
  changedAt: now,
});

/** A card with some fields set anew. Its `changedAt` always rises, even where the clock of the device went back. */
export const changed = (card: JobCard, change: CardChange, now: number): JobCard => {
  const fields = Object.entries({ ...card, ...change }).filter(([, value]) => value !== undefined);
  return {
    ...(Object.fromEntries(fields) as JobCard),
    version: CARD_VERSION,
    id: card.id,
    madeAt: card.madeAt,
    changedAt: timeOfChange(card, now),
  };
};

/** When something of a list came to be. */
const timeOf = (item: CardCoat | CardFlaw | CardRepair | CardPhoto): number => {
  if ('laidAt' in item) return item.laidAt;
  if ('foundAt' in item) return item.foundAt;
  return 'doneAt' in item ? item.doneAt : item.takenAt;
};

/** By time, and where the times are the same by id. */
export const inOrder = <T extends CardCoat | CardFlaw | CardRepair | CardPhoto>(items: readonly T[]): T[] =>
  [...items].sort(
    (one, two) => timeOf(one) - timeOf(two) || (one.id < two.id ? -1 : one.id > two.id ? 1 : 0),
  );

/** The time of a change: later than all before it, even where the clock of the device went back, as far as times go. */
const timeOfChange = ({ changedAt }: JobCard, now: number): number =>
  Math.min(LATEST_INSTANT, Math.max(now, changedAt + 1));

type Item = CardCoat | CardFlaw | CardRepair | CardPhoto;

/**
 * The card with `item` in a list, in the place of the one with its id if there is one. What was corrected, or taken off
 * before, tells when, so that it counts against an older version of it in a file.
 */
const put = (card: JobCard, list: CardList, item: Item, now: number): JobCard => {
  const items: readonly Item[] = card[list];
  const others = items.filter(({ id }) => id !== item.id);
  const known = others.length < items.length || isRemoved(card, list, item.id);
  const dated = known ? { ...item, changedAt: timeOfChange(card, now) } : item;
  const change = { [list]: inOrder([...others, dated]), removed: withoutRemoval(card, list, item.id) };
  return changed(card, change, now);
};

/** The card without an entry, and what goes with it. */
const takeOff = (card: JobCard, list: CardList, id: string, more: CardChange, now: number): JobCard => {
  const items: readonly { readonly id: string }[] = card[list];
  if (!items.some((item) => item.id === id)) return changed(card, more, now);
  const removed = withRemoval(card, { list, id, at: timeOfChange(card, now) });
  return changed(card, { ...more, [list]: items.filter((item) => item.id !== id), removed }, now);
};

/** The card with a coat laid, or a coat of the same id corrected. */
export const withCoat = (card: JobCard, coat: CardCoat, now: number): JobCard =>
  put(card, 'coats', coat, now);

export const withFlaw = (card: JobCard, flaw: CardFlaw, now: number): JobCard =>
  put(card, 'flaws', flaw, now);

export const withRepair = (card: JobCard, repair: CardRepair, now: number): JobCard =>
  put(card, 'repairs', repair, now);

export const withPhoto = (card: JobCard, photo: CardPhoto, now: number): JobCard =>
  put(card, 'photos', photo, now);

/** The card without a coat; its flaws stay and no longer name it. */
export const withoutCoat = (card: JobCard, id: string, now: number): JobCard =>
  takeOff(card, 'coats', id, { flaws: unnamed(card.flaws, 'coat', [id]) }, now);

/** The card without a flaw; its repairs stay and no longer name it. */
export const withoutFlaw = (card: JobCard, id: string, now: number): JobCard =>
  takeOff(card, 'flaws', id, { repairs: unnamed(card.repairs, 'flaw', [id]) }, now);

export const withoutRepair = (card: JobCard, id: string, now: number): JobCard =>
  takeOff(card, 'repairs', id, {}, now);

export const withoutPhoto = (card: JobCard, id: string, now: number): JobCard =>
  takeOff(card, 'photos', id, {}, now);

/** What was taken off `before` is put back, and what named it then names it again. All else stays as it is now. */
export const putBack = (
  card: JobCard,
  before: JobCard,
  list: Exclude<CardList, 'photos'>,
  id: string,
  now: number,
): JobCard => {
  const item = before[list].find((one) => one.id === id);
  if (!item) return card;
  const back = put(card, list, item, now);
  const named = <T extends { id: string }>(items: readonly T[], as: readonly T[], key: keyof T): T[] =>
    items.map((one) => {
      const was = as.find((other) => other.id === one.id);
      return one[key] === undefined && was?.[key] === id ? { ...one, [key]: id } : one;
    });
  return {
    ...back,
    ...(list === 'coats' && { flaws: named(back.flaws, before.flaws, 'coat') }),
    ...(list === 'flaws' && { repairs: named(back.repairs, before.repairs, 'flaw') }),
  };
};
