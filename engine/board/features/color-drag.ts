import type { FeatureOf } from '../../model/board.ts';
import { groundBelow, type Rgb } from '../base.ts';
import { type Board, everywhere, raise, roughen, tint, uncover } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { traceOf, wipesOver } from '../wipes.ts';

type ColorDrag = FeatureOf<'color-drag'>;
const PORE_UM = -5;

/** Where two colors meet, the brush took one with it and drew it out over the other, bristle by bristle. */
const brushed = (b: Board, f: ColorDrag, from: number, ground: Readonly<Board>, color: Rgb): void => {
  const width = f['width-mm'];
  everywhere(b, (i, x, y) => {
    const border = b.widthMm * 0.36 + 0.14 * (y - b.heightMm / 2) + 0.25 * noise(y / 5, 1, from);
    const v = y - 0.05 * x + 0.8 * noise(x / 40, y / 16, from + 4);
    const u = x - border;
    const bristle = noise(u / 60, v / 0.7, from + 1) + 0.6 * noise(u / 30, v / 0.3, from + 2);
    const stroke = ease(-0.55, 0.35, noise(7, v / width, from) + 0.25 * noise(u / 30, v / 3, from + 3));
    const reach = width * (1.3 + 4 * stroke * ease(-0.7, 0.9, noise(3, v / 1.4, from + 5) + 0.5 * bristle));
    if (u > 0) {
      const drawn = f.strength * stroke * (1 - ease(0, reach, u)) * ease(-0.75, 0.55, bristle);
      uncover(b, i, ground, 1);
      tint(b, i, color, Math.min(1, 1.5 * drawn));
    } else {
      // Behind the border the color is worn thin in the same strokes.
      const worn = f.strength * stroke * ease(0.25, 0.9, bristle) * (1 - ease(width * 0.6, width * 2, -u));
      uncover(b, i, ground, 0.55 * worn);
    }
    raise(b, i, 3 * bristle * stroke);
  });
};

/** A cloth rubs the color off the high places, in its arcs; the pores keep it, and what came off lies about as a smear. */
const rubbed = (b: Board, f: ColorDrag, from: number, ground: Readonly<Board>, color: Rgb): void => {
  const traces = wipesOver(b, random(from), {
    count: 8,
    width: f['width-mm'] * 2.4,
    radius: [b.widthMm * 0.6, b.widthMm * 1.5],
  }).map(traceOf);
  everywhere(b, (i, x, y) => {
    let rub = 0;
    let threads = 0;
    for (const at of traces) {
      const { share, thread } = at(x, y);
      rub += share * (0.55 + 0.18 * thread);
      threads += share * thread;
    }
    const high = rough(x / 13, y / 9, from + 3, 3);
    const off = ease(0.5, 0.95, rub * (0.62 + 0.3 * f.strength) + 0.55 * high);
    const pore = ground.height[i]! < PORE_UM ? 0.25 : 1;
    uncover(b, i, ground, off * pore);
    const smear = ease(0.1, 0.9, 0.4 * threads + 0.3 * noise(x / 5, y / 5, from + 6) + 0.35);
    if (off > 0) tint(b, i, color, 0.5 * (1 - off) * off + 0.3 * off * smear);
    raise(b, i, off * (ground.height[i]! * 0.5 - 12));
    roughen(b, i, 0.26, off);
    roughen(b, i, 0.1, 0.5 * Math.min(1, rub) * (1 - off));
  });
};

/** Loosened color: drawn out by the brush, or rubbed off by the cloth. */
export const colorDrag = (b: Board, f: ColorDrag, from: number): void => {
  const color: Rgb = [b.red[0]!, b.green[0]!, b.blue[0]!];
  const ground = groundBelow(b, f.under === 'white' ? { paint: 'white' } : { wood: 'oak' }, from);
  if (f.tool === 'brush') brushed(b, f, from, ground, color);
  else rubbed(b, f, from, ground, color);
};
