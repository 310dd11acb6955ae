import { type ClockProduct, type LaidCoat, sayInstant, type TimeStyle } from '#engine/clock.ts';
import { toldApart } from '#engine/plain/apart.ts';
import { entryOf } from '#engine/plain/entry-of.ts';

/** What is said beside the names of pieces that are called alike, by the ids of their coats. */
export const piecesApart = (
  coats: readonly LaidCoat[],
  products: Readonly<Record<string, ClockProduct>>,
  now: number,
  style: TimeStyle,
): ReadonlyMap<string, string> =>
  toldApart(
    coats.map((coat) => ({ ...coat, name: coat.piece })),
    [
      ({ product }) => entryOf(products, product)?.name.toLowerCase() ?? product,
      ({ coatNumber }) => `coat ${coatNumber}`,
      ({ laidAt }) => `laid ${sayInstant(laidAt, now, style)}`,
    ],
  );
