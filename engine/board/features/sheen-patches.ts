import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, scatter, stain } from '../field.ts';
import { carried, patches } from '../mask.ts';
import { ease, random, rough } from '../noise.ts';
import { traceOf, wipesOver } from '../wipes.ts';

type SheenPatches = FeatureOf<'sheen-patches'>;

/** Thirsty wood looks gray where the oil is gone from its face. */
const THIRST = [-0.16, -0.2, -0.26] as const;

/** How dull a place is, 0 as the rest to 1, or below 0 where it is shinier. */
type Dullness = (x: number, y: number) => number;

/** Lanes drawn out along the strokes, of unequal length and shine: the film sank in more or less. */
const flashing = (size: number, from: number): Dullness => {
  const island = patches(size * 1.1, from, 0.46, 0.8);
  const lane = patches(size * 0.5, from + 60, 0.4, 0.7);
  return (x, y) => {
    const far = carried(x, y, 6, from + 5);
    return 1.5 * island(x * 0.5 + 0.5 * far, y) + 0.6 * lane(x * 0.16 + 0.12 * far, y) - 1.05;
  };
};

/** Wax that a cloth left: shining in the lanes it rubbed, dull in the hollows between that drank it or that it passed over. */
const buffed = (b: Board, size: number, from: number): Dullness => {
  const island = patches(size * 0.85, from, 0.5, 0.26);
  const lanes = wipesOver(b, random(from), {
    count: 13,
    width: size * 0.75,
    radius: [b.widthMm * 0.35, b.widthMm * 1.3],
  }).map(traceOf);
  return (x, y) => {
    let rubbed = 0;
    let threads = 0;
    for (const at of lanes) {
      const { share, thread } = at(x, y);
      rubbed += (1 - rubbed) * share * (0.75 + 0.3 * thread);
      threads += share * thread;
    }
    const hollow = island(x, y) * (0.8 + 0.4 * rough(x / 5, y / 4, from + 7, 2));
    return 1.25 * hollow * (1 - 0.85 * rubbed) - 0.85 * rubbed * (1 - hollow) + 0.12 * threads - 0.05;
  };
};

/** Soft bands and end grain drank the oil: drawn out along the fibers, some of them much farther than their neighbors. */
const thirsty = (size: number, from: number): Dullness => {
  const island = patches(size * 1.15, from, 0.48, 0.75);
  return (x, y) => {
    const far = carried(x, y, 7, from + 3);
    return ease(0.12, 1.05, island(x * 0.55 + 0.55 * far, y) + 0.35 * rough(x / 11, y / 0.7, from + 4, 2));
  };
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
