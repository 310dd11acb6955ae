import { dueOf, type LaidCoat } from '#engine/clock.ts';
import looks from '../../styles/many-clocks.css?inline';
import { wear } from '../shared/late-style.ts';
import { piecesApart } from './apart.ts';
import { CoatOnClock, readCoat, SameAir } from './coat.tsx';

wear(looks);

type Shown = Parameters<typeof CoatOnClock>[0];
type Props = Omit<Shown, 'coat' | 'rank'> & {
  readonly coats: readonly LaidCoat[];
  /** The one that answers in the questions. */
  readonly current: LaidCoat | undefined;
  /** So many are shown. */
  readonly most: number;
};

/**
 * All coats on the clock. One stands whole; of several each is a line that says what comes next of it, the soonest on top,
 * with the rest of it folded below, and what holds for all is said once.
 */
export const CoatList = ({ coats, current, most, ...shown }: Props) => {
  const [only, ...more] = coats;
  if (!only) return null;
  if (!more.length) return <CoatOnClock key={only.id} coat={only} rank="one" {...shown} />;
  const { now, style } = shown;
  const lines = coats
    .map((coat) => ({ coat, due: dueOf(readCoat({ coat, ...shown }).reading, now, style) }))
    .toSorted((one, two) => one.due.at - two.due.at || one.coat.laidAt - two.coat.laidAt)
    .slice(0, most);
  const apart = piecesApart(coats, shown.products, now, style);
  return (
    <>
      {lines.map(({ coat, due }) => (
        <details key={coat.id} class="one-of-many" open={coat === current}>
          <summary>
            <b>{[coat.piece, apart.get(coat.id)].filter(Boolean).join(', ')}:</b> {due.says}
          </summary>
          <CoatOnClock coat={coat} rank={coat === current ? 'current' : 'other'} {...shown} />
        </details>
      ))}
      <SameAir units={style.units} />
    </>
  );
};
