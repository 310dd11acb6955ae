import { airOf } from '../fitness/entries.ts';
import type { Laying } from '../fitness/laying.ts';
import type { CardCoat, JobCard } from '../model/job-card.ts';
import { HOUR_MS } from '../plain/time.ts';
import { coatsInOrder, labelOf } from './coat.ts';
import { trialsOf } from './use.ts';

/** A coat that is about to be laid on the piece of a card. Over a coat of her own the base has been covered already. */
export const layingOfCard = (card: JobCard, coat: CardCoat, inSun = false): Laying => {
  const first = coatsInOrder(card).every(({ id, laidAt }) => id === coat.id || laidAt >= coat.laidAt);
  const { baseLaidAt } = card;
  return {
    kind: card.kind,
    trials: trialsOf(card),
    wear: 'normal',
    base: card.base,
    onOwnCoat: !first,
    ...(baseLaidAt !== undefined && { baseHours: (coat.laidAt - baseLaidAt) / HOUR_MS }),
    tone: card.tone,
    age: card.age,
    sheen: card.sheen,
    applicator: coat.applicator,
    hardener: coat.hardener,
    label: labelOf(card, coat),
    day: airOf(coat),
    night: card.night,
    inSun,
  };
};
