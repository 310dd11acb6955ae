import { summaryOf } from '#engine/jobs/summary.ts';
import type { JobCard } from '#engine/model/job-card.ts';

type Summary = ReturnType<typeof summaryOf>;
/** What the list shows of a card; nothing of a record that is no card, but that it is there. */
export type Listed = {
  readonly id: string;
  readonly changedAt: number;
  /** Sorts the last changed to the front, so that the first of the list can be read without the rest. */
  readonly order: number;
  readonly summary: Summary | undefined;
};

/** A record that is not a card must not stop the list, nor a change of version. */
export const listedOf = (id: string, record: JobCard): Listed => {
  try {
    const changedAt = Number(record.changedAt);
    if (record.id !== id || !Number.isFinite(changedAt)) throw new TypeError('no card');
    return { id, changedAt, order: -changedAt, summary: summaryOf(record) };
  } catch {
    return { id, changedAt: 0, order: 0, summary: undefined };
  }
};
