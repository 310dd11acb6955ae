import type { JobCard } from '#engine/model/job-card.ts';
import type { CardRead } from '#engine/model/one-card.ts';

/** Reads a card from anywhere, and says of one that is about to be kept why it would not be read back. */
export type CardReader = {
  (raw: unknown): CardRead<JobCard>;
  readonly refusals: (card: JobCard) => readonly { readonly field: string; readonly says: string }[];
};

/** The schema library is heavy, so it comes only when a card is opened or written. */
export const cardReader = async (): Promise<CardReader> => {
  const { readCard, refusalsOf } = await import('./schema.ts');
  return Object.assign((raw: unknown) => readCard(raw), { refusals: refusalsOf });
};
