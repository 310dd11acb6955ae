import { dueOf, type LaidCoat, sayNow } from '#engine/clock.ts';
import { clockWords } from '../../shared/clock-words.ts';
import looks from '../../styles/many-clocks.css?inline';
import { wear } from '../shared/late-style.ts';
import { piecesApart } from './apart.ts';
import { CoatOnClock, readCoat, SameAir } from './coat.tsx';

wear(looks);

/** What hands do now with a coat, and what comes next of it. */
const lineOf = (coat: LaidCoat, { now, style, ...shown }: Omit<Shown, 'coat' | 'rank' | 'acts'>) => {
  const { reading } = readCoat({ coat, now, ...shown });
  const said = reading && sayNow(clockWords, reading, now, style);
  const state = said?.large ?? clockWords['no-time'].verdict;
  return { coat, state, due: dueOf(clockWords, reading, now, style) };
};

type Shown = Parameters<typeof CoatOnClock>[0];
type Props = Omit<Shown, 'coat' | 'rank'> & {
  readonly coats: readonly LaidCoat[];
  /** The one that answers in the questions. */
  readonly current: LaidCoat | undefined;
  /** So many are shown. */
  readonly most: number;
};

/**
 * All coats on the clock. One stands whole; of several each is a line that says what hands do now and what comes next of
 * it, the soonest on top, with the rest of it folded below, and what holds for all is said once.
 */
export const CoatList = ({ coats, current, most, ...shown }: Props) => {
  const [only, ...more] = coats;
  if (!only) return null;
  if (!more.length) return <CoatOnClock key={only.id} coat={only} rank="one" {...shown} />;
  const { now, style } = shown;
  const lines = coats
    .map((coat) => lineOf(coat, shown))
    .toSorted((one, two) => one.due.at - two.due.at || one.coat.laidAt - two.coat.laidAt)
    .slice(0, most);
  const apart = piecesApart(coats, shown.products, now, style);
  return (
    <>
      {lines.map(({ coat, state, due }) => (
        <details key={coat.id} class="one-of-many" open={coat === current}>
          <summary>
            <span>
              <strong>{state}</strong> <b>{[coat.piece, apart.get(coat.id)].filter(Boolean).join(', ')}:</b>{' '}
              {due.says}
            </span>
          </summary>
          <CoatOnClock coat={coat} rank={coat === current ? 'current' : 'other'} {...shown} />
        </details>
      ))}
      <SameAir units={style.units} />
    </>
  );
};
