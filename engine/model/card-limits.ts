/**
 * The version of the card as it is written now. A change of shape raises it and adds a migration.
 * 1: the first. 2: what was taken off is noted with its time, entries tell when they were corrected, and the nights.
 * 3: a label holds no time that no can prints. 4: that a repair laid no coat is a field of it, no sentence in its note.
 */
export const CARD_VERSION = 4;

/**
 * What one card may hold. Far more than any piece needs, since two cards that are merged keep all of both. Of what was
 * taken off the newest are kept.
 */
export const MOST = { coats: 100, flaws: 400, repairs: 400, photos: 200, removed: 500 } as const;

/** So many cards that were taken away are remembered, the newest of them. */
export const MOST_CARDS_REMOVED = 500;

/** The lists of a card whose entries can be taken off. */
export const CARD_LISTS = ['coats', 'flaws', 'repairs', 'photos'] as const;
export type CardList = (typeof CARD_LISTS)[number];

/** The latest time that a card may hold, epoch milliseconds: the first moment of 2200. The earliest is 0, in 1970. */
export const LATEST_INSTANT = 7_258_118_400_000;

/** Letters in the name of a piece, in its notes, and in the line below a photo. */
export const MOST_LETTERS = { name: 80, notes: 4000, caption: 300 } as const;

/** What can have gone on, and how far, in one coat: far beyond any piece, but numbers that can be reckoned with. */
export const AMOUNT = {
  milliliters: { min: 0.01, max: 1_000_000 },
  squareMeters: { min: 0.0001, max: 10_000 },
} as const;
