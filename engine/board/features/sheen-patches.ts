import type { FeatureOf } from '../../model/board.ts';
import { type Board, inBands, scatter, stain } from '../field.ts';
import { carried, patches, settled } from '../mask.ts';
import { drawnOut, ease, noise, random, rough } from '../noise.ts';
import type { Steps } from '../steps.ts';
import { traceOf, wipesOver } from '../wipes.ts';

type SheenPatches = FeatureOf<'sheen-patches'>;

/** Thirsty wood looks gray where the oil is gone from its face. */
const THIRST = [-0.16, -0.2, -0.26] as const;

/** How much rougher a film is at its dullest and at its shiniest, as powers of e; a gloss that sank in differs most. */
const [DULLER, SUNK, SHINIER] = [1.35, 1.9, 0.9];

/** How dull a place is, 0 as the rest to 1, or below 0 where it is shinier. */
type Dullness = (x: number, y: number) => number;

/**
 * Islands where the film sank in more or less, a little longer along the strokes; their borders fray out bristle by
 * bristle.
 */
const flashing = (size: number, from: number): Dullness => {
  const island = patches(size, from, 0.5, 0.62);
  const lane = patches(size * 0.4, from + 60, 0.4, 0.7);
  return (x, y) => {
    const bristle = drawnOut(x, y + 0.1 * x, 9, 0.9, from + 5);
    const far = 1.6 * drawnOut(x, y - 0.08 * x, 14, 3.4, from + 6) + 2 * rough(x / 16, y / 9, from + 7, 2);
    const grain = rough(x / 4, y / 3, from + 8, 2) + 0.7 * noise(x / 0.6, y / 0.6, from + 9);
    return (
      1.7 * island(x * 0.75 + 0.5 * far, y + 0.3 * far) +
      0.5 * lane(x * 0.5 + 0.4 * far, y) +
      0.09 * grain +
      0.06 * bristle -
      1.05
    );
  };
};

/**
 * Wax that a cloth left: shining in the lanes it rubbed, dull in the hollows between that drank it or that it passed
 * over; each thread of the cloth went on a little over the border.
 */
const buffed = (b: Board, size: number, from: number): Dullness => {
  const island = patches(size * 0.9, from, 0.56, 1.1);
  const lanes = wipesOver(b, random(from), {
    count: 12,
    width: size * 0.62,
    radius: [b.widthMm * 0.5, b.widthMm * 1.6],
  }).map(traceOf);
  return (x, y) => {
    let rubbed = 0;
    let threads = 0;
    for (const at of lanes) {
      const { share, thread } = at(x, y);
      rubbed += (1 - rubbed) * share * (0.75 + 0.3 * thread);
      threads += share * thread;
    }
    const grain = 0.5 * noise(x / 0.5, y / 0.5, from + 7) + 1.1 * (settled(x, y, from + 8) - 1);
    const hollow = ease(0, 1, island(x * 0.75 + 0.3 * y, y) + 0.4 * threads - 0.6 * rubbed + 0.14 * grain);
    return 1.2 * hollow * (1 - 0.6 * rubbed) - 1.1 * rubbed * (1 - hollow) + 0.5 * threads + 0.2 * grain;
  };
};

/**
 * Soft bands and end grain drank the oil: drawn out along the fibers, some of them much farther than their neighbors.
 */
const thirsty = (size: number, from: number): Dullness => {
  const island = patches(size * 1.15, from, 0.48, 0.75);
  return (x, y) => {
    const bent = y + 0.7 * noise(x / 9, y / 6, from + 5);
    const far = carried(x, bent, 3, from + 3);
    const fiber = drawnOut(x, bent, 6, 0.5, from + 4) + 0.7 * drawnOut(x, bent, 2.2, 0.24, from + 6);
    return ease(
      0.05,
      1.05,
      island(x * 0.62 + 0.5 * far, y) + 0.09 * fiber + 0.2 * rough(x / 6, y / 3, from + 8, 2),
    );
  };
};

/** Places of other shine and the same color, with no relief; in oil the thirsty ones are gray and dry, too. */
export function* sheenPatches(b: Board, f: SheenPatches, from: number): Steps {
  const size = f['size-mm'];
  const dullness =
    f.follows === 'cloth'
      ? buffed(b, size, from)
      : f.follows === 'grain'
        ? thirsty(size, from)
        : flashing(size, from);
  yield* inBands(b, (i, x, y) => {
    const dull = dullness(x, y);
    // One grade runs into the next: what shines more by as much as it shines less elsewhere.
    const grade = Math.min(1, Math.max(-1, dull));
    const most = grade < 0 ? SHINIER : f.follows === 'cloth' ? DULLER : SUNK;
    b.roughness[i] = Math.min(0.3, b.roughness[i]! * Math.exp(f.strength * most * grade));
    if (f.follows === 'grain' && dull > 0) {
      stain(b, i, THIRST, f.strength * dull * 1.15);
      scatter(b, i, 0.034 * f.strength * dull);
    }
  });
}
