import { CARD_LISTS, type CardList, MOST } from '../model/card-limits.ts';
import type { CardRemoval, JobCard, RemovedCard } from '../model/job-card.ts';
import { inOrder } from './card.ts';
import { type CardFields, later, mergeFields } from './merge-fields.ts';
import { cardsRemoved, removedOfBoth, stillRemoved, unnamed } from './removed.ts';

type Entry = { readonly id: string; readonly changedAt?: number | undefined };

/** Without what is taken off by these removals, and without the names of it on what is left. */
const without = (card: JobCard, removed: readonly CardRemoval[]): JobCard => {
  const off = (list: CardList) => removed.flatMap((one) => (one.list === list ? one.id : []));
  const left = <T extends Entry>(list: CardList, items: readonly T[]): T[] => {
    const gone = new Set(off(list));
    return items.filter(({ id }) => !gone.has(id));
  };
  return {
    ...card,
    coats: inOrder(left('coats', card.coats)),
    flaws: inOrder(unnamed(left('flaws', card.flaws), 'coat', off('coats'))),
    repairs: inOrder(unnamed(left('repairs', card.repairs), 'flaw', off('flaws'))),
    photos: inOrder(left('photos', card.photos)),
  };
};

/** A card as one of its content always is: lists in order, and nothing both there and taken off. */
export const sorted = ({ removed, ...card }: JobCard): JobCard => {
  const still = removed && stillRemoved(removed, [card]);
  return { ...without(card, still ?? []), ...(still && { removed: still }) };
};

/** The fields beside the lists. */
export const fieldsOf = ({ coats, flaws, repairs, photos, removed, ...fields }: JobCard): CardFields =>
  fields;

/** The entries of both; where both have one, that which was corrected later, else that of the newer card. */
const united = <T extends Entry>(ones: readonly T[], twos: readonly T[], age: number): T[] => {
  const held = new Map(ones.map((item) => [item.id, item]));
  for (const two of twos) {
    const one = held.get(two.id);
    const own = one && (one.changedAt ?? 0) - (two.changedAt ?? 0);
    held.set(two.id, one ? later(one, two, own || age) : two);
  }
  return [...held.values()];
};

/**
 * Fields of the newer card, with what only the other tells, and the notes of both; coats, flaws, repairs and photos of
 * both, by id, but for those that one side took off and the other has not corrected since.
 */
export const mergeTwo = (one: JobCard, two: JobCard): JobCard => {
  const age = one.changedAt - two.changedAt;
  const removed = stillRemoved(removedOfBoth(one, two), [one, two]);
  // First off on both sides, then together: else a tie could be decided otherwise when it is done again.
  const [mine, theirs] = [without(one, removed ?? []), without(two, removed ?? [])];
  return sorted({
    ...mergeFields(fieldsOf(one), fieldsOf(two), age),
    coats: united(mine.coats, theirs.coats, age),
    flaws: united(mine.flaws, theirs.flaws, age),
    repairs: united(mine.repairs, theirs.repairs, age),
    photos: united(mine.photos, theirs.photos, age),
    ...(removed && { removed }),
  });
};

export const tooLarge = (card: JobCard): boolean => CARD_LISTS.some((list) => card[list].length > MOST[list]);

export const byId = (cards: readonly JobCard[]): Map<string, JobCard> => {
  const held = new Map<string, JobCard>();
  for (const card of cards) {
    const before = held.get(card.id);
    const merged = before ? mergeTwo(before, sorted(card)) : sorted(card);
    held.set(card.id, before && tooLarge(merged) ? before : merged);
  }
  return held;
};

/**
 * Both sets of cards as one, by id, mine first. Loses nothing but what one side took off, and the other has not corrected
 * since. Merging again changes nothing, and both sides get the same cards.
 */
export const mergeCards = (mine: readonly JobCard[], theirs: readonly JobCard[]): readonly JobCard[] => [
  ...byId([...byId(mine).values(), ...byId(theirs).values()]).values(),
];

/** The cards of one device, and which it took away. */
export type Shelf = { readonly cards: readonly JobCard[]; readonly removed: readonly RemovedCard[] };

/** Both shelves as one. A card that was taken away comes back only where it was changed later than that. */
export const mergeShelves = (mine: Shelf, theirs: Shelf): Shelf => {
  const removed = cardsRemoved(mine.removed, theirs.removed);
  const at = new Map(removed.map((one) => [one.id, one.at]));
  const cards = mergeCards(mine.cards, theirs.cards).filter(
    ({ id, changedAt }) => (at.get(id) ?? Number.NEGATIVE_INFINITY) <= changedAt,
  );
  const there = new Set(cards.map(({ id }) => id));
  return { cards, removed: removed.filter(({ id }) => !there.has(id)) };
};
