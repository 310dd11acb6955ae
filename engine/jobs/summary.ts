import type { JobCard } from '../model/job-card.ts';
import { coatsInOrder } from './coat.ts';

export type CardState = 'planned' | 'under-way' | 'curing' | 'handed-over';

/** What the list of the jobs shows of a card. Times in epoch milliseconds. */
export type CardSummary = {
  readonly id: string;
  readonly name: string;
  readonly kind: JobCard['kind'];
  readonly state: CardState;
  readonly coats: number;
  readonly lastCoat: { readonly laidAt: number; readonly product: string } | undefined;
  readonly openFlaws: number;
  readonly photos: number;
  readonly changedAt: number;
};

const stateOf = (card: JobCard, lastLaidAt: number | undefined): CardState => {
  if (card.handedOverAt !== undefined) return 'handed-over';
  if (lastLaidAt === undefined) return 'planned';
  const { finishedAt } = card;
  return finishedAt !== undefined && finishedAt >= lastLaidAt ? 'curing' : 'under-way';
};

/** A card in short. It is curing once she has said that its last coat is laid, until another coat is laid. */
export const summaryOf = (card: JobCard): CardSummary => {
  const last = coatsInOrder(card).at(-1);
  return {
    id: card.id,
    name: card.name,
    kind: card.kind,
    state: stateOf(card, last?.laidAt),
    coats: card.coats.length,
    lastCoat: last && { laidAt: last.laidAt, product: last.product },
    openFlaws: card.flaws.filter(({ settledAt }) => settledAt === undefined).length,
    photos: card.photos.length,
    changedAt: card.changedAt,
  };
};
