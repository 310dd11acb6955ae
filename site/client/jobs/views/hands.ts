import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../parts/data.ts';
import type { CardEdit, Changed } from '../store/index.ts';

/** How the parts of a card read and write it. */
export type CardHands = {
  /** The card with all that waits to be written. */
  readonly card: () => JobCard;
  /** True once it is written. */
  readonly now: (by: CardEdit) => Promise<boolean>;
  /** Written after a rest, for typing. */
  readonly soon: (by: CardEdit) => void;
  /** Another way of writing to this card, in its turn. True once it is written. */
  readonly run: (work: (seen: JobCard) => Promise<Changed>) => Promise<boolean>;
  /** Whether something waits to be written. */
  readonly pending: () => boolean;
  /** Something stands in a field that can not be saved as it is. */
  readonly hold: (held: boolean) => void;
};

export type CardActsProps = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly hands: CardHands;
  /** Writes what waits and hands back the card. */
  readonly written: () => Promise<JobCard>;
};
