import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { ease, noise, random } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

/** A place the brush never met: the base, dry, with sharp borders that follow the strokes. */
export const holiday = (b: Board, f: FeatureOf<'holiday'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = f['width-mm'] / 2;
  everywhere(b, (i, x, y) => {
    const u = (x - cx) * c + (y - cy) * s;
    const v = -(x - cx) * s + (y - cy) * c;
    const string = noise(3, v / 0.7, from) + 0.6 * noise(7, v / 2.4, from + 1);
    const end = Math.abs(u) - half * (0.82 + 0.3 * (u > 0 ? string : noise(11, v / 0.8, from + 2)));
    const side = Math.abs(v) - wide * (0.85 + 0.25 * noise(u / 14, v > 0 ? 1 : 5, from + 3));
    const d = Math.max(end * 0.5, side);
    const film = b.film[i]!;
    const missed = 1 - ease(-0.12, 0.12, d);
    raise(b, i, -film * missed + 7 * Math.exp(-(((d - 0.3) / 0.3) ** 2)));
    b.film[i] = film * (1 - missed);
    roughen(b, i, b.bareRoughness, missed);
  });
};
