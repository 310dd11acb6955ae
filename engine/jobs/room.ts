import { CARD_LISTS, type CardList, MOST } from '../model/card-limits.ts';
import type { JobCard } from '../model/job-card.ts';

/** How much of a list a card still takes. */
export type Room = { readonly held: number; readonly most: number; readonly left: number };

/** What a card still takes of each list, so that a limit is told before it is reached. */
export const roomOf = (card: JobCard): Readonly<Record<CardList, Room>> =>
  Object.fromEntries(
    CARD_LISTS.map((list) => {
      const held = card[list].length;
      return [list, { held, most: MOST[list], left: Math.max(0, MOST[list] - held) }];
    }),
  ) as Record<CardList, Room>;

/**
 * Which of the chosen things a list takes and which stay out, in their order, so that these can be named. `most` where a
 * device keeps fewer than a card can hold.
 */
export const fitting = <T>(
  card: JobCard,
  list: CardList,
  chosen: readonly T[],
  most: number = MOST[list],
): { readonly taken: readonly T[]; readonly beyond: readonly T[] } => {
  const left = Math.max(0, Math.min(most, MOST[list]) - card[list].length);
  return { taken: chosen.slice(0, left), beyond: chosen.slice(left) };
};
