import { CARD_VERSION } from '../model/card-limits.ts';
import type { CardCoat, CardFlaw, CardPhoto, CardRepair, JobCard } from '../model/job-card.ts';

/** What a card must be told at its start; the rest may come later. */
export type Given = Pick<JobCard, 'name' | 'kind' | 'base' | 'tone' | 'age'> &
  Partial<Omit<JobCard, 'version' | 'id' | 'madeAt' | 'changedAt'>>;

type Fixed = 'version' | 'id' | 'madeAt' | 'changedAt';
/** Fields to set. A field that may be missing is taken away with `undefined`. */
export type Change = {
  readonly [K in Exclude<keyof JobCard, Fixed>]?: undefined extends JobCard[K]
    ? JobCard[K] | undefined
    : JobCard[K];
};

/** A new card. The id has letters, digits and hyphens; `now` is in epoch milliseconds. */
export const newCard = (given: Given, id: string, now: number): JobCard => ({
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
export const changed = (card: JobCard, change: Change, now: number): JobCard => {
  const fields = Object.entries({ ...card, ...change }).filter(([, value]) => value !== undefined);
  return {
    ...(Object.fromEntries(fields) as JobCard),
    version: CARD_VERSION,
    id: card.id,
    madeAt: card.madeAt,
    changedAt: Math.max(now, card.changedAt + 1),
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

/** The list with `item` in it, in the place of the one with its id if there is one. */
const put = <T extends CardCoat | CardFlaw | CardRepair | CardPhoto>(items: readonly T[], item: T): T[] =>
  inOrder([...items.filter(({ id }) => id !== item.id), item]);

const gone = <T extends { id: string }>(items: readonly T[], id: string): T[] =>
  items.filter((item) => item.id !== id);

/** The card with a coat laid, or a coat of the same id corrected. */
export const withCoat = (card: JobCard, coat: CardCoat, now: number): JobCard =>
  changed(card, { coats: put(card.coats, coat) }, now);

export const withFlaw = (card: JobCard, flaw: CardFlaw, now: number): JobCard =>
  changed(card, { flaws: put(card.flaws, flaw) }, now);

export const withRepair = (card: JobCard, repair: CardRepair, now: number): JobCard =>
  changed(card, { repairs: put(card.repairs, repair) }, now);

export const withPhoto = (card: JobCard, photo: CardPhoto, now: number): JobCard =>
  changed(card, { photos: put(card.photos, photo) }, now);

/** The card without a coat; its flaws stay and no longer name it. */
export const withoutCoat = (card: JobCard, id: string, now: number): JobCard => {
  const flaws = card.flaws.map(({ coat, ...flaw }) =>
    coat === undefined || coat === id ? flaw : { ...flaw, coat },
  );
  return changed(card, { coats: gone(card.coats, id), flaws }, now);
};

/** The card without a flaw; its repairs stay and no longer name it. */
export const withoutFlaw = (card: JobCard, id: string, now: number): JobCard => {
  const repairs = card.repairs.map(({ flaw, ...repair }) =>
    flaw === undefined || flaw === id ? repair : { ...repair, flaw },
  );
  return changed(card, { flaws: gone(card.flaws, id), repairs }, now);
};

export const withoutRepair = (card: JobCard, id: string, now: number): JobCard =>
  changed(card, { repairs: gone(card.repairs, id) }, now);

export const withoutPhoto = (card: JobCard, id: string, now: number): JobCard =>
  changed(card, { photos: gone(card.photos, id) }, now);
