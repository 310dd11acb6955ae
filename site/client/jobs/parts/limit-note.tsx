import { roomOf } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';

/** From this share on the end is told before it is reached. */
const NEAR = 0.9;

/** How many more a list takes, once that is worth knowing. */
export const LimitNote = ({ list, card }: { list: 'coats' | 'flaws' | 'repairs'; card: JobCard }) => {
  const { held, most, left } = roomOf(card)[list];
  if (held < most * NEAR) return null;
  return (
    <p class="small">
      {left > 0
        ? `Room for ${left} more on this card, of ${most}.`
        : `This card is full: it holds ${most} ${list}. Begin a second card for this piece.`}
    </p>
  );
};
