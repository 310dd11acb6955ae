import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen } from '../field.ts';
import { between, ease, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc } from '../stamp.ts';

/** Film drawn back from a speck of oil: a flat dish, a raised rim, often the base in the middle. */
export const craters = (b: Board, f: FeatureOf<'craters'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 1.6) / 2;
    const rim = 16 + 9 * radius;
    const turn = next() * 6.28;
    disc(b, point, radius * 2.1, (i, d, dx, dy) => {
      const t = d / (radius * (1 + 0.05 * Math.sin(2 * Math.atan2(dy, dx) + turn)));
      const film = b.film[i]!;
      const dish = 1 - ease(0.45, 1, t);
      raise(b, i, -(film + 6) * dish + rim * Math.exp(-(((t - 1.12) / 0.24) ** 2)));
      const bare = f.bare * (1 - ease(0.5, 0.72, t));
      b.film[i] = film * (1 - Math.max(bare, dish * 0.7));
      roughen(b, i, b.bareRoughness, bare);
    });
    disc(b, point, radius * 0.07 + 0.05, (i) => {
      raise(b, i, 14);
    });
  }
};
