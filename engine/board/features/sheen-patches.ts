import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scatter, stain } from '../field.ts';
import { patches } from '../mask.ts';
import { between, ease, noise, random, rough } from '../noise.ts';

type SheenPatches = FeatureOf<'sheen-patches'>;

/** Thirsty wood looks gray where the oil is gone from its face. */
const THIRST = [-0.16, -0.2, -0.26] as const;

/** How dull a place is, 0 as the rest to 1, or below 0 where it is shinier. */
type Dullness = (x: number, y: number) => number;

/** Clouds drawn out along the strokes: the film sank in more or less. */
const flashing = (size: number, from: number): Dullness => {
  const island = patches(size * 1.35, from, 0.46, 0.5);
  return (x, y) => {
    const ragged = 1.6 * rough(x / 6, y / 5, from + 5, 2);
    return 2 * island(x * 0.75 + ragged, y + ragged) - 1;
  };
};

/** Islands that a cloth did not reach or that drank the wax: drawn out along the arc of the arm, with clear edges. */
const buffed = (b: Board, size: number, from: number): Dullness => {
  const next = random(from);
  const cx = b.widthMm * between(next, -0.5, 0.1);
  const cy = b.heightMm * between(next, 1.4, 2.1);
  const island = patches(size, from, 0.46, 0.16);
  return (x, y) => {
    const reach = Math.hypot(x - cx, y - cy);
    const run = Math.atan2(y - cy, x - cx) * b.heightMm * 1.6;
    const thread = noise(run / 30, reach / 0.8, from + 1) + 0.6 * noise(run / 18, reach / 0.35, from + 2);
    const dull = island(run * 0.45 + 0.28 * thread, reach + 0.25 * thread);
    return dull * (1 + 0.2 * thread) - 0.5 * (1 - dull) * (1 + thread);
  };
};

/** Soft bands and end grain drank the oil. */
const thirsty = (size: number, from: number): Dullness => {
  const island = patches(size * 1.3, from, 0.48, 0.7);
  return (x, y) =>
    ease(
      0.15,
      1,
      island(x * 0.6, y) + 0.4 * noise(x / 26, y / 1.5, from + 3) + 0.3 * rough(x / 9, y / 0.6, from + 4, 2),
    );
};

/** Places of other shine and the same color, with no relief; in oil the thirsty ones are gray and dry, too. */
export const sheenPatches = (b: Board, f: SheenPatches, from: number): void => {
  const size = f['size-mm'];
  const dullness =
    f.follows === 'cloth'
      ? buffed(b, size, from)
      : f.follows === 'grain'
        ? thirsty(size, from)
        : flashing(size, from);
  everywhere(b, (i, x, y) => {
    const dull = dullness(x, y);
    // One grade runs into the next: what shines more by as much as it shines less elsewhere.
    const grade = Math.min(1, Math.max(-1, dull));
    b.roughness[i] = Math.min(0.3, b.roughness[i]! * Math.exp(f.strength * (grade > 0 ? 1.35 : 0.9) * grade));
    if (f.follows === 'grain' && dull > 0) {
      stain(b, i, THIRST, f.strength * dull * 0.9);
      scatter(b, i, 0.025 * f.strength * dull);
    }
  });
};
