import { summaryOf } from '#engine/jobs/summary.ts';
import type { JobCard } from '#engine/model/job-card.ts';

/** What the list shows of a card; nothing of a record that is no card, but that it is there. */
export type Listed = {
  readonly id: string;
  readonly changedAt: number;
  /** Sorts the last changed to the front, so that the first of the list can be read without the rest. */
  readonly order: number;
  readonly summary: ReturnType<typeof summaryOf> | undefined;
};

export const listedOf = (card: JobCard): Listed => ({
  id: card.id,
  changedAt: card.changedAt,
  order: -card.changedAt,
  summary: summaryOf(card),
});

/** A record that is no card stands last, and must not stop the list. */
export const unreadableListed = (id: string): Listed => ({ id, changedAt: 0, order: 0, summary: undefined });
