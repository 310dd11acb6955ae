import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen } from '../field.ts';
import { patches } from '../mask.ts';

/** Islands where the film sank in or lies thicker: other sheen, same color, no relief. */
export const sheenPatches = (b: Board, f: FeatureOf<'sheen-patches'>, from: number): void => {
  const island = patches(f['size-mm'] * 1.2, from, 0.46, f.edge === 'hard' ? 0.07 : 0.26);
  everywhere(b, (i, x, y) => {
    const share = island(x, y);
    const here = b.roughness[i]!;
    roughen(b, i, here * 0.35, f.strength * (1 - share) * 0.7);
    roughen(b, i, here * 2.6 + 0.05, f.strength * share);
  });
};
