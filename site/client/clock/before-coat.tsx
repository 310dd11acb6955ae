import type { LaidCoat } from '#engine/clock.ts';
import type { Judgement } from '#engine/fitness.ts';
import { sayLong } from '#engine/plain/say-span.ts';
import { ended } from '#engine/plain/text.ts';
import { DAY_HOURS, MINUTE_MS } from '#engine/plain/time.ts';
import { MAYBE_TWO_PART } from '../../shared/lead.ts';
import { Caution } from '../shared/caution.tsx';
import { counted } from '../shared/counted.ts';
import { sayDateTime } from '../shared/say-date.ts';

const VERDICTS = {
  go: 'Fine for this coat',
  care: 'Fine for this coat, with care',
  wait: 'Not yet',
  no: 'Do not lay it',
} as const;

/** The verdict in few words; what it still hangs on stands in it, so that it never runs ahead of the question below. */
const sayVerdict = ({ verdict, cautions }: Pick<Judgement, 'verdict' | 'cautions'>): string =>
  (verdict === 'go' || verdict === 'care') && cautions.some(({ id }) => id === MAYBE_TWO_PART)
    ? `${VERDICTS[verdict]}, if nothing is mixed into it`
    : VERDICTS[verdict];

/** Never less than the wait: past two days in whole days, else in whole hours. */
const sayHours = (hours: number): string => {
  const whole = Math.ceil(hours);
  if (whole > 2 * DAY_HOURS) return sayLong(Math.ceil(whole / DAY_HOURS), 'day');
  return whole === 1 ? 'an hour' : sayLong(whole, 'h');
};

type Because = Pick<Judgement, 'noes' | 'wait'>;

/** Why a coat is not to be laid, or not yet, each reason with its way out. Empty where it may be. */
const sayNoes = ({ noes, wait }: Because): readonly string[] => {
  const says = noes.map(({ says: why, instead, earliest }) =>
    [why, instead, earliest !== undefined && `Not before ${sayDateTime(earliest)}.`]
      .filter(Boolean)
      .join(' '),
  );
  const waits = wait && !noes.some(({ code }) => code === 'base');
  return waits ? [...says, `${wait.row.why} It needs about ${sayHours(wait.hours)} more.`] : says;
};

/** A coat that was laid longer ago than this lies already, whatever is said of it. */
const JUST_NOW = 5 * MINUTE_MS;

/** Why she is asked once more before this coat is noted; empty where there is nothing to ask. */
export const reasonsAgainst = (
  judgement: Judgement | undefined,
  { laidAt }: Pick<LaidCoat, 'laidAt'>,
  now: number,
): readonly string[] => (judgement && now - laidAt < JUST_NOW ? sayNoes(judgement) : []);

/** Stops stand whole, each by itself; of the cautions the first is one line to open, the others are counted below it. */
const Cautions = ({ cautions }: Pick<Judgement, 'cautions'>) => {
  const stops = cautions.filter(({ kind }) => kind === 'stop');
  const [first, ...more] = cautions.filter(({ kind }) => kind !== 'stop');
  return (
    <>
      {stops.map((rule) => (
        <Caution key={rule.id} rule={rule} />
      ))}
      {/* What it asks in one line: all of it would lie half below the button that stays in reach of the thumb. */}
      {first && (
        <details key={first.id} class="caution">
          <summary>
            <b>{ended(first.title)}</b>
          </summary>
          <p>{first.say}</p>
        </details>
      )}
      {more.length > 0 && (
        <details class="fold cautions">
          <summary>{counted(more.length, 'more caution')}</summary>
          {more.map((rule) => (
            <Caution key={rule.id} rule={rule} />
          ))}
        </details>
      )}
    </>
  );
};

/** What stands before a coat: whether it may be laid, the cautions, and what to mind of product, piece and weather. */
export const BeforeCoat = ({ judgement }: { readonly judgement: Judgement }) => {
  const { verdict, cautions, care, weatherCare } = judgement;
  const stops = verdict === 'no' || verdict === 'wait';
  // A stop that forbids it stands whole below; a caution that does is said here, and there no more.
  const whole = new Set(cautions.filter(({ kind }) => kind === 'stop').map(({ id }) => id));
  const noes = judgement.noes.filter(({ rule }) => !rule || !whole.has(rule));
  const others = cautions.filter(({ id }) => !noes.some(({ rule }) => rule === id));
  return (
    <>
      <b class={stops ? 'label stop' : 'label'}>{sayVerdict(judgement)}</b>
      {sayNoes({ ...judgement, noes }).map((says) => (
        <p key={says}>{says}</p>
      ))}
      {weatherCare.map((says) => (
        <p key={says}>{says}</p>
      ))}
      <Cautions cautions={others} />
      {care.map(({ why, instead }) => (
        <p key={why} class="small">
          {why} {instead}
        </p>
      ))}
    </>
  );
};
