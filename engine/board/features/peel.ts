import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { blot } from '../mask.ts';
import { ease, noise, random } from '../noise.ts';
import { placed } from '../stamp.ts';

/** Film that let go: a bare place, and a rim of skin standing up with air below it, which looks white. */
export const peel = (b: Board, f: FeatureOf<'peel'>, from: number): void => {
  const radius = f['size-mm'] / 2;
  const edge = blot(placed(b, random(from), f.at), radius * 0.85, from, 0.75, 1.35, -20);
  everywhere(b, (i, x, y) => {
    const d = edge(x, y) + 0.35 * noise(x / 1.4, y / 1.4, from + 2);
    const film = b.film[i]!;
    if (d < 0) {
      const bare = 1 - ease(-0.15, 0, d);
      b.film[i] = film * (1 - bare);
      raise(b, i, -film * bare);
      roughen(b, i, b.bareRoughness, bare);
      return;
    }
    const stands = 0.45 + 0.55 * ease(-0.3, 0.4, noise(x / (radius * 0.7), y / (radius * 0.7), from + 4));
    const reach = 1.1 + radius * 0.16 * stands;
    if (d > reach * 3) return;
    const lift = Math.exp(-d / reach);
    raise(b, i, f['lift-um'] * stands * lift * lift);
    scatter(b, i, 0.4 * stands * ease(0.3, 0.4, lift));
  });
};
