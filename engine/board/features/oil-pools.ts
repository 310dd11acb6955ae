import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise, roughen, stain } from '../field.ts';
import { ease, noise, rough } from '../noise.ts';

const HONEY = [0.16, 0.46, 1.05] as const;

/** Oil left standing: thick, shining, honey-colored puddles drawn out along the grain on a face wiped dull. */
export const oilPools = (b: Board, f: FeatureOf<'oil-pools'>, from: number): void => {
  const size = f['size-mm'];
  everywhere(b, (i, x, y) => {
    const u = x + 3 * noise(x / 9, y / 6, from + 1);
    const v = y + 1.2 * noise(x / 9, y / 6, from + 2);
    const level =
      rough(u / (size * 1.7), v / (size * 0.8), from, 2) + 0.05 * noise(x / 12, y / 0.8, from + 3) - 0.14;
    const deep = ease(0, 0.62, level);
    const shore = ease(-0.1, 0.12, level);
    roughen(b, i, 0.2, 1 - shore);
    if (shore === 0) return;
    raise(b, i, f['height-um'] * (0.3 * shore + 0.7 * Math.sqrt(deep)));
    pour(b, i, f['height-um'] * deep);
    stain(b, i, HONEY, f.strength * (0.5 * shore + 1.3 * deep));
    roughen(b, i, 0.009, shore);
  });
};
