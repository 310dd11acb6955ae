import * as v from 'valibot';
import { DECK, type Deck, keep, recall } from './storage.ts';

/** Two decks of one learner as one: of each flaw what was practised last. Boards are counted where more were. */
export const mergedDecks = (one: Deck, other: Deck): Deck => {
  const cards = { ...one.cards };
  for (const [name, card] of Object.entries(other.cards))
    if ((card.lastReview ?? 0) > (cards[name]?.lastReview ?? -1)) cards[name] = card;
  const more = other.boards > one.boards ? other : one;
  return { ...more, cards };
};

/** Progress that a file holds; nothing where there is none, or none that can be read. */
export const deckIn = (raw: unknown): Deck | undefined => {
  const read = v.safeParse(DECK, raw);
  return read.success && read.output.boards ? read.output : undefined;
};

/** Adds progress of a file to what was learned here. False where this browser keeps nothing. */
export const bringDeck = (deck: Deck): boolean => {
  const here = recall('practice');
  return keep('practice', here ? mergedDecks(here, deck) : deck);
};
