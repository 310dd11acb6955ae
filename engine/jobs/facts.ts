import { type Case, emptyCase, withFact, without } from '../case/case.ts';
import { factsOf } from '../clock/facts.ts';
import { pieceOf } from '../fitness/case.ts';
import { isInFact } from '../model/facts.ts';
import type { JobCard } from '../model/job-card.ts';
import { coatsInOrder, laidCoatOf } from './coat.ts';
import { layersOf, type Products, productOf } from './layers.ts';
import { trialsOf } from './use.ts';

const ofPiece = (card: JobCard): Case => {
  let on = withFact(emptyCase(), 'piece', pieceOf({ kind: card.kind, trials: trialsOf(card) }));
  on = withFact(on, 'base', card.base);
  on = withFact(on, 'base-tone', card.tone);
  if (card.sheen) on = withFact(on, 'sheen', card.sheen);
  // Only her own paint lies on it, which is no older.
  return withFact(on, 'age', card.age === 'none' ? 'since-1993' : card.age);
};

/** The film of all coats, where every one of them is told; a film that is only supposed is no fact. */
const withFilm = (on: Case, card: JobCard, products: Products): Case => {
  const { total, unknown, supposed } = layersOf(card, products);
  const film = Math.round((total.from + total.to) / 2);
  return unknown || supposed || !isInFact('film-micrometers', film)
    ? without(on, 'film-micrometers')
    : withFact(on, 'film-micrometers', film, 'computed');
};

/** Of a coat whose product is not known here: what the card itself tells. */
const ofUnknown = (card: JobCard, products: Products): Case => {
  const last = coatsInOrder(card).at(-1);
  const product = productOf(products, card.product);
  let on = emptyCase();
  if (last && isInFact('coat-number', card.coats.length)) on = withFact(on, 'coat-number', card.coats.length);
  if (last?.applicator) on = withFact(on, 'applicator', last.applicator);
  return !last && product ? withFact(on, 'family', product.family) : on;
};

/**
 * All that a card knows, as facts for a walk at `now`, epoch milliseconds. The stage, the air and the hours are those of
 * the last coat, as the clock has them; nothing is told that the card does not hold.
 */
export const factsOfCard = (card: JobCard, products: Products, now: number): Case => {
  const piece = ofPiece(card);
  const last = coatsInOrder(card).at(-1);
  const product = productOf(products, last?.product);
  if (!last || !product) return { ...ofUnknown(card, products), ...piece };
  const coat = laidCoatOf(card, last);
  const clock = factsOf(product, coat, now, products);
  return withFilm({ ...clock, ...piece }, card, products);
};
