import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { ease, noise, random } from '../noise.ts';
import { type Point, placed, radians } from '../stamp.ts';

/** A place the brush never met: bare, with fingers of the last bristles at its ends and a few threads of film across. */
export const holiday = (b: Board, f: FeatureOf<'holiday'>, from: number): void => {
  const center = placed(b, random(from), f.at);
  const turn = radians(f.angle - 3);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  // A hungry brush skips twice: a small one lies beside the large one.
  const skips: { at: Point; half: number; wide: number }[] = [
    { at: center, half: f['length-mm'] / 2, wide: f['width-mm'] / 2 },
    {
      at: [center[0] + f['length-mm'] * 0.16, center[1] + f['width-mm'] * 0.82],
      half: f['length-mm'] * 0.24,
      wide: f['width-mm'] * 0.13,
    },
  ];
  everywhere(b, (i, x, y) => {
    let d = 1e9;
    let u = 0;
    let v = 0;
    for (const { at, half, wide } of skips) {
      const along = (x - at[0]) * c + (y - at[1]) * s;
      const across = -(x - at[0]) * s + (y - at[1]) * c;
      if (Math.abs(along) > half * 1.4 || Math.abs(across) > wide * 1.6) continue;
      const bristle = noise(along > 0 ? 3 : 9, across / 0.55, from) + 0.7 * noise(5, across / 1.9, from + 1);
      const end = Math.abs(along) - half * (0.78 + 0.3 * bristle);
      const belly = Math.sqrt(Math.max(0, 1 - (along / (half * 1.15)) ** 2));
      const side =
        Math.abs(across) -
        wide * (0.25 + 0.75 * belly) * (1 + 0.16 * noise(along / 11, across > 0 ? 1 : 5, from + 3));
      const here = Math.max(end * 0.4, side);
      if (here < d) [d, u, v] = [here, along, across];
    }
    if (d > 3) return;
    const threads = noise(u / 30, v / 0.4, from + 6) + 0.5 * noise(u / 12, v / 0.25, from + 7);
    const kept = 0.8 * ease(0.42, 0.8, threads + 0.5 * ease(-1.6, 0, d));
    const film = b.film[i]!;
    const missed = (1 - ease(-0.15, 0.12, d + 0.1 * threads)) * (1 - kept);
    raise(b, i, -film * missed + 8 * Math.exp(-(((d - 0.45) / 0.4) ** 2)));
    b.film[i] = film * (1 - missed);
    roughen(b, i, b.bareRoughness, missed);
  });
};
