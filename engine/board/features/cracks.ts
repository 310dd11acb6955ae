import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter, tint } from '../field.ts';
import { between, cells, ease, random, rough } from '../noise.ts';
import { cover, stroke, wander } from '../stamp.ts';

type Cracks = FeatureOf<'cracks'>;
const SHADE = [0.02, 0.017, 0.014] as const;

/** Straight checks, often across the grain, in families of the same direction. */
const coldCheck = (b: Board, f: Cracks, from: number): void => {
  const next = random(from);
  const half = f['width-um'] / 2000;
  const crack = (x: number, y: number, heading: number, length: number) =>
    stroke(b, wander(next, [x, y], heading, length, 0.07, 0.7), half + b.pitch, (i, d, run) => {
      const share = Math.max(0, cover(b, half - d, half * 2)) * ease(0, 2, Math.min(run, length - run) + 0.3);
      raise(b, i, -22 * share);
      scatter(b, i, 0.3 * share);
    });
  for (let x = -0.1 * b.widthMm; x < b.widthMm; x += f['spacing-mm'] * between(next, 0.4, 1.6)) {
    const length = between(next, 0.25, 1.1) * b.heightMm;
    crack(x, between(next, -0.2, 0.7) * b.heightMm, Math.PI / 2 - 0.16 + between(next, -0.06, 0.06), length);
    if (next() < 0.3) crack(x, next() * b.heightMm, between(next, -0.1, 0.25), between(next, 2, 9));
  }
};

/** Nets: the borders between cells. */
const net = (b: Board, f: Cracks, from: number): void => {
  const s = f['spacing-mm'];
  const scales = f.pattern === 'alligator';
  const mud = f.pattern === 'mud';
  const half = f['width-um'] / 2000;
  const cell = { first: 0, second: 0, id: 0 };
  everywhere(b, (i, x, y) => {
    const bend = 0.16 * rough((2 * x) / s, (2 * y) / s, from + 1, 2);
    cells(x / (scales ? s * 1.5 : s) + bend, y / s - bend, from, cell);
    const inside = (cell.second - cell.first) * s * 0.5;
    const uneven = mud || scales ? 1 + 0.5 * rough(x / 3, y / 3, from + 3, 1) : 1;
    const gap = Math.max(0, cover(b, half * uneven - inside, half * 2));
    const curl = mud ? 45 * Math.exp(-inside / (s * 0.14)) : 0;
    const scale = scales ? 70 * ease(0, s * 0.3, inside) : 0;
    raise(b, i, (curl + scale) * (1 - gap) - (mud || scales ? 90 : 26) * gap);
    tint(b, i, SHADE, gap * (mud || scales ? 0.8 : 0.5));
    if (!mud && !scales) scatter(b, i, 0.1 * gap);
    roughen(b, i, 0.3, gap);
  });
};

/** Broken film. */
export const cracks = (b: Board, f: Cracks, from: number): void =>
  f.pattern === 'cold-check' ? coldCheck(b, f, from) : net(b, f, from);
