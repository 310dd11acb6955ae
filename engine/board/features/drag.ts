import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

/** A pad or brush that stuck: the film is torn along the stroke and piled up in dunes across it. */
export const drag = (b: Board, f: FeatureOf<'drag'>, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle - 7);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = half * 0.5;
  everywhere(b, (i, x, y) => {
    const u = (x - cx) * c + (y - cy) * s;
    const v = -(x - cx) * s + (y - cy) * c;
    const torn = noise(u / 22, v / 1.1, from) + 0.5 * noise(u / 9, v / 0.4, from + 1);
    const side = 1 - ease(wide * 0.6, wide * 1.05, Math.abs(v) + 1.3 * rough(u / 6, v / 3, from + 2, 2));
    const start = ease(-half, -half * 0.8, u + 2.5 * torn);
    const inside = side * start * (1 - ease(half * 0.8, half * 1.05, u + 3 * torn));
    if (inside === 0) return;
    const pile = ease(-half * 0.2, half * 0.75, u);
    const dune = Math.sin((2 * Math.PI * (u + 1.6 * noise(u / 9, v / 5, from + 3))) / (1.7 + 1.1 * pile));
    raise(b, i, f['height-um'] * inside * (0.3 * torn * (1 - pile) + pile * (0.45 + 0.55 * dune)));
    scaleFilm(b, i, 1 - 0.75 * inside * (1 - pile) * ease(-0.2, 0.5, torn));
    roughen(b, i, 0.12, inside * (0.4 + 0.5 * ease(-0.1, 0.5, torn)));
    scatter(b, i, 0.02 * inside * ease(0, 0.6, torn));
  });
};
