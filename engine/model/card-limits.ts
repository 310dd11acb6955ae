/** The version of the card as it is written now. A change of shape raises it and adds a migration. */
export const CARD_VERSION = 1;

/** What one card may hold. Far more than any piece needs, since two cards that are merged keep all of both. */
export const MOST = { coats: 100, flaws: 400, repairs: 400, photos: 200 } as const;
