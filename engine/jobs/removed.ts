import { CARD_LISTS, type CardList, MOST, MOST_CARDS_REMOVED } from '../model/card-limits.ts';
import type { CardRemoval, JobCard, RemovedCard } from '../model/job-card.ts';

const same = (one: CardRemoval, list: CardList, id: string): boolean => one.list === list && one.id === id;

export const isRemoved = ({ removed }: JobCard, list: CardList, id: string): boolean =>
  removed?.some((one) => same(one, list, id)) ?? false;

/** Nothing rather than an empty list, so that a card without removals is as it was before there were any. */
const kept = (removals: readonly CardRemoval[]): CardRemoval[] | undefined =>
  removals.length ? [...removals] : undefined;

/** The newest first, and where the times are the same by what they name; so many as a card holds. */
const newest = (removals: readonly CardRemoval[]): CardRemoval[] =>
  [...removals]
    .sort((one, two) => two.at - one.at || (`${one.list} ${one.id}` < `${two.list} ${two.id}` ? -1 : 1))
    .slice(0, MOST.removed);

/** What stands on the card as taken off, without one that is back. */
export const withoutRemoval = ({ removed }: JobCard, list: CardList, id: string): CardRemoval[] | undefined =>
  kept(removed?.filter((one) => !same(one, list, id)) ?? []);

export const withRemoval = (card: JobCard, removal: CardRemoval): CardRemoval[] =>
  newest([removal, ...(withoutRemoval(card, removal.list, removal.id) ?? [])]);

/** What was taken off on either side, each at its latest. */
export const removedOfBoth = (one: JobCard, two: JobCard): readonly CardRemoval[] => {
  const latest = new Map<string, CardRemoval>();
  for (const removal of [...(one.removed ?? []), ...(two.removed ?? [])]) {
    const key = `${removal.list} ${removal.id}`;
    const before = latest.get(key);
    if (!before || removal.at > before.at) latest.set(key, removal);
  }
  return [...latest.values()];
};

type Entry = { readonly id: string; readonly changedAt?: number | undefined };

/**
 * The removals that still count against these cards: of a single one those of what is not there, of two those that came
 * after the last correction on either side.
 */
export const stillRemoved = (
  removals: readonly CardRemoval[],
  cards: readonly Pick<JobCard, CardList>[],
): CardRemoval[] | undefined => {
  const last = new Map<string, number>();
  for (const card of cards)
    for (const list of CARD_LISTS)
      for (const { id, changedAt = 0 } of card[list] as readonly Entry[]) {
        const key = `${list} ${id}`;
        const at = cards.length === 1 ? Number.POSITIVE_INFINITY : changedAt;
        last.set(key, Math.max(last.get(key) ?? 0, at));
      }
  return kept(newest(removals.filter(({ list, id, at }) => at > (last.get(`${list} ${id}`) ?? -1))));
};

/** Entries that no longer name what is gone. */
export const unnamed = <T extends object, K extends keyof T>(
  items: readonly T[],
  key: K,
  gone: readonly unknown[],
): T[] =>
  items.map((item) => {
    if (!gone.includes(item[key])) return item;
    const { [key]: _gone, ...rest } = item;
    return rest as T;
  });

/** Cards that were taken away on either side, each at its latest, the newest first. */
export const cardsRemoved = (...sides: readonly (readonly RemovedCard[])[]): readonly RemovedCard[] => {
  const latest = new Map<string, RemovedCard>();
  for (const removed of sides.flat()) {
    const before = latest.get(removed.id);
    if (!before || removed.at > before.at) latest.set(removed.id, removed);
  }
  return [...latest.values()]
    .sort((one, two) => two.at - one.at || (one.id < two.id ? -1 : 1))
    .slice(0, MOST_CARDS_REMOVED);
};
