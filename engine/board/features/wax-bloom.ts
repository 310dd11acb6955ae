import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { patches } from '../mask.ts';
import { ease, noise, rough } from '../noise.ts';

/** Powder on top of the wax: matte, grainy, wiped thin along the last strokes. */
export const waxBloom = (b: Board, f: FeatureOf<'wax-bloom'>, from: number): void => {
  const patch = patches(16, from, 0.6, 0.7);
  everywhere(b, (i, x, y) => {
    const lies = f.spread === 'even' ? 0.85 : patch(x, y);
    const wiped = 0.7 + 0.5 * noise(x / 40 + y / 90, y / 2.2, from + 1);
    const powder = ease(-0.35, 0.6, rough(x / 0.45, y / 0.45, from + 2, 2));
    const share = lies * Math.max(0, wiped) * powder;
    scatter(b, i, 0.34 * f.strength * share);
    raise(b, i, 5 * share);
    roughen(b, i, 0.26, 0.8 * lies);
  });
};
