import type { JobCard } from '#engine/model/job-card.ts';
import type { JobsData } from '../parts/data.ts';
import { AnotherLike } from './another-like.tsx';
import { CardFiles } from './card-files.tsx';
import { HandOver } from './hand-over.tsx';
import type { CardHands } from './hands.ts';

export type CardActsProps = {
  readonly card: JobCard;
  readonly data: JobsData;
  readonly hands: CardHands;
  /** Writes what waits and hands back the card. */
  readonly written: () => Promise<JobCard>;
};

/** What can be done with a whole card, beside laying a coat. */
export const CardActs = ({ card, data, hands, written }: CardActsProps) => (
  <div class="card-acts">
    <HandOver card={card} data={data} hands={hands} written={written} />
    <AnotherLike card={card} written={written} />
    <CardFiles card={card} written={written} />
  </div>
);
