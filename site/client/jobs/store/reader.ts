import type { JobCard } from '#engine/model/job-card.ts';
import type { CardRead } from '#engine/model/one-card.ts';

export type CardReader = (raw: unknown) => CardRead<JobCard>;

/** The schema library is heavy, so it comes only when a card is opened or written. */
export const cardReader = async (): Promise<CardReader> => {
  const { readCard } = await import('./schema.ts');
  return (raw) => readCard(raw);
};
