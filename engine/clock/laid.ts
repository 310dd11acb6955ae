import type { LaidCoat } from './coat.ts';

/** More coats do not lie on one piece. */
const MOST_BELOW = 20;

/**
 * Whether two coats are on one piece. A job card tells it for sure; where one of them knows of no card (laid on the
 * clock alone, or kept before cards were told apart), the name of the piece has to.
 */
export const onOnePiece = (one: LaidCoat, two: LaidCoat): boolean =>
  one.card !== undefined && two.card !== undefined
    ? one.card === two.card
    : one.piece.toLowerCase() === two.piece.toLowerCase();

/**
 * The clock with one coat more on top. A new coat buries the one below it: one coat a piece is on the clock. A name that
 * two cards share tells neither of them, so a coat without a card then buries no coat of theirs.
 */
export const withLaid = (coats: readonly LaidCoat[], coat: LaidCoat): readonly LaidCoat[] => {
  const below = coats.filter((one) => one.id !== coat.id && onOnePiece(one, coat));
  const cards = new Set(below.flatMap(({ card }) => card ?? []));
  const buried = below.filter(
    ({ card }) => coat.card !== undefined || card === undefined || cards.size === 1,
  );
  const [only] = cards;
  const under = buried
    .flatMap((one) => [one, ...(one.below ?? [])])
    .map(({ below: _deeper, flaw: _flaw, ...one }) => one)
    .slice(0, MOST_BELOW);
  // Where the name tells of one card, the new coat is on that card's piece.
  const top = {
    ...coat,
    ...(coat.card === undefined && cards.size === 1 && { card: only }),
    ...(coat.below === undefined && under.length && { below: under }),
  };
  return [top, ...coats.filter((one) => one.id !== coat.id && !buried.includes(one))];
};

/** Coats that were kept before they knew their card: those that a card holds, by their ids, learn of it. */
export const adopted = (
  coats: readonly LaidCoat[],
  card: string,
  held: readonly { readonly id: string }[],
): readonly LaidCoat[] => {
  const ids = new Set(held.map(({ id }) => id));
  return coats.map((coat) => (coat.card === undefined && ids.has(coat.id) ? { ...coat, card } : coat));
};
