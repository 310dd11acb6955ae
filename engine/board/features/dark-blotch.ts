import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, stain } from '../field.ts';
import { patches } from '../mask.ts';
import { noise, rough } from '../noise.ts';

const BROWN = [0.7, 1.1, 1.6] as const;

/** Dark clouds: wax grabs with a hard tide edge; oil and stain sink in softly along the grain. */
export const darkBlotch = (b: Board, f: FeatureOf<'dark-blotch'>, from: number): void => {
  const hard = f.edge === 'hard';
  const cloud = patches(f['size-mm'] * 1.3, from, 0.42, hard ? 0.1 : 0.6);
  everywhere(b, (i, x, y) => {
    const share = cloud(hard ? x : x * 0.5, y + (hard ? 0 : 1.2 * noise(x / 8, y / 1.5, from + 3)));
    if (share === 0) return;
    const tide = hard ? 0.35 * Math.exp(-(((share - 0.5) / 0.3) ** 2)) : 0;
    const uneven = 0.75 + 0.45 * rough(x / 5, y / 5, from + 5, 3);
    stain(b, i, BROWN, 1.15 * f.strength * (share * uneven + tide));
  });
};
