import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { counted } from '../../shared/counted.ts';
import { plainId } from '../../shared/plain-id.ts';
import { sayDate } from '../../shared/say-date.ts';
import type { Listed } from '../store/listed.ts';

/** More coats than these look alike at the size of a thumbnail. */
const MOST_DRAWN = 6;

const STATES = {
  planned: 'no coat yet',
  'under-way': 'under way',
  curing: 'curing',
  'handed-over': 'handed over',
} as const;

const UNREADABLE = 'could not be read; open it to mend it, or to save what is there';
const stateOf = ({ summary }: Listed): string => {
  if (!summary) return UNREADABLE;
  const { coats, openFlaws, lastCoat, state } = summary;
  return [
    STATES[state] ?? plainId(state),
    coats && lastCoat ? `${counted(coats, 'coat')}, the last ${sayDate(lastCoat.laidAt)}` : '',
    openFlaws ? counted(openFlaws, 'open flaw') : '',
  ]
    .filter(Boolean)
    .join('; ');
};

type Props = {
  readonly listed: Listed;
  readonly broken: boolean;
  /** What may be done now, once it is known. */
  readonly now: string | undefined;
  /** What tells it from other cards of its name. */
  readonly apart: string | undefined;
};

/** One card in the list: its coats as a stack, its name, what may be done now, and how it stands. */
export const CardRow = ({ listed, broken, now, apart }: Props) => (
  <li>
    <a href={jobCardUrl(listed.id)}>
      {/* The coats as a stack on their base: what the words beside it say, at a glance. */}
      <span class="stack" aria-hidden="true">
        {Array.from({ length: Math.min(listed.summary?.coats ?? 0, MOST_DRAWN) }, (_, coat) => (
          <i key={coat} />
        ))}
      </span>
      <b>{listed.summary?.name ?? `Card ${listed.id}`}</b>
      {apart && <span class="apart">{apart}</span>}
      {listed.summary?.coats !== 0 && listed.summary?.state !== 'handed-over' && (
        <span class="may">{!broken && now}</span>
      )}
      <span class="state">{broken ? UNREADABLE : stateOf(listed)}</span>
    </a>
  </li>
);
