import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { stray } from '../mask.ts';
import { between, ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

/**
 * A pad or brush that stuck in its path: the film is torn dull behind it, and piled up in dunes of unequal height where
 * it was pulled on.
 */
export const drag = (b: Board, f: FeatureOf<'drag'>, from: number): void => {
  const next = random(from);
  const [cx, cy] = placed(b, next, f.at);
  const turn = radians(f.angle - 7);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = f['length-mm'] / 2;
  const wide = half * between(next, 0.4, 0.56);
  const bow = between(next, 0.35, 0.7) * (next() < 0.5 ? -1 : 1);
  const widens = between(next, 0.1, 0.4);
  everywhere(b, (i, x, y) => {
    const u = (x - cx) * c + (y - cy) * s;
    if (Math.abs(u) > half * 1.7) return;
    const v = -(x - cx) * s + (y - cy) * c + (bow * u * u) / (half * 2.6);
    const torn = noise(u / 22, v / 1.1, from) + 0.5 * noise(u / 9, v / 0.4, from + 1);
    const fold = noise(1.5, v / (wide * 0.7), from + 4) + 0.4 * noise(4.5, v / 1.4, from + 5);
    // It bit in little by little, each fold of the pad at its own time, and let go as raggedly.
    const border = wide * (0.75 + widens * (u / half)) * (1 + 0.2 * stray(u, 5, half * 0.5, from + 2));
    const side = 1 - ease(border * 0.55, border * 1.1, Math.abs(v) + 0.9 * rough(u / 5, v / 3, from + 2, 2));
    const start = ease(-half * 1.1, -half * 0.25, u + half * (0.45 * fold + 0.08 * torn));
    const inside = side * start * (1 - ease(half * 0.7, half * 1.15, u + half * (0.38 * fold + 0.06 * torn)));
    if (inside === 0) return;
    raise(b, i, -0.75 * inside * Math.min(0, b.height[i]!));
    const pile = ease(-half * 0.3, half * 0.75, u + half * 0.3 * fold);
    // Small ridges square to the path, side by side, which fork and shift a little against one another.
    const slides = 1.1 * noise(u / 11, v / 5, from + 7) + 0.3 * noise(u / 3, v / 1.6, from + 8);
    const phase = (u + slides + 0.09 * v * v * Math.sign(bow) + 0.22 * v) / (0.85 + 0.5 * pile + 0.2 * fold);
    const crest = Math.sin(2 * Math.PI * phase);
    const broken = ease(-0.5, 0.4, noise(u / 1.6, v / 2.6, from + 6) + 0.6 * noise(u / 8, v / 5, from + 9));
    const dune =
      (crest > 0 ? crest : 0.6 * crest) * (0.12 + 0.95 * broken) + 0.2 * noise(u / 0.9, v / 0.5, from + 10);
    raise(b, i, f['height-um'] * inside * (0.26 * torn * (1 - 0.7 * pile) + pile * (0.38 + 0.5 * dune)));
    scaleFilm(b, i, 1 - 0.7 * inside * (1 - pile) * ease(-0.3, 0.5, torn));
    // What was dragged along lies in the pores, too.
    roughen(b, i, 0.12, inside * (0.7 + 0.3 * ease(-0.1, 0.5, torn)) * (1 - 0.25 * pile));
    scatter(b, i, 0.03 * inside * (1 - pile) * ease(-0.2, 0.6, torn));
  });
};
