import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { disc, stroke, trickle } from '../stamp.ts';

type Runs = FeatureOf<'runs'>;

const tears = (b: Board, f: Runs, from: number): void => {
  const next = random(from);
  for (let n = 0; n < f.count; n++) {
    const x = ((n + between(next, 0.25, 0.75)) / f.count) * b.widthMm;
    const length = f['length-mm'] * between(next, 0.6, 1.1);
    const top = between(next, 0.04, Math.max(0.06, 0.9 - length / b.heightMm)) * b.heightMm;
    const half = (f['width-mm'] / 2) * between(next, 0.75, 1.1);
    const line = trickle(next, [x, top], length, 0.25);
    // It broke out of a swelling that had gathered above.
    disc(b, [x, top], half * 4, (i, _d, dx, dy) => {
      const swell = 0.07 * f['height-um'] * Math.exp(-((dx / (half * 1.9)) ** 2) - (dy / (half * 1.1)) ** 2);
      raise(b, i, swell);
      pour(b, i, swell);
    });
    stroke(b, line, half * 1.3, (i, d, run) => {
      const t = Math.min(1, run / length);
      const wide = half * (0.42 + 0.2 * ease(0, 0.7, t) + 0.42 * ease(0.68, 0.93, t));
      const section = Math.max(0, 1 - (d / wide) ** 2);
      const rise =
        f['height-um'] * (0.16 * ease(0, 0.3, t) + 0.2 * t + 0.64 * ease(0.6, 0.95, t)) * section ** 0.85;
      raise(b, i, rise);
      pour(b, i, rise);
    });
  }
};

const curtain = (b: Board, f: Runs, from: number): void => {
  const lobes = b.widthMm / Math.max(1, f.count);
  const lip = f['width-mm'];
  const drop = Math.min(f['length-mm'], b.heightMm * 0.5);
  everywhere(b, (i, x, y) => {
    const phase = (2 * Math.PI * x) / lobes + 1.6 * noise(x / 24, 3, from);
    const lobe = 0.5 - 0.5 * Math.cos(phase);
    const hang = (Math.sin(phase / 2) ** 2 + 0.04) ** 0.4;
    const edge =
      b.heightMm * 0.36 +
      drop * (0.25 * noise(x / 30, 1, from) + 0.55 * hang * (0.8 + 0.4 * noise(x / lobes, 9, from)));
    const above = edge - y;
    if (above < -0.8) return;
    const body = Math.exp(-Math.max(0, above - lip * 0.5) / (lip * 1.3));
    const rise = f['height-um'] * ease(-0.8, lip * 0.6, above) * (0.12 + 0.88 * body) * (0.55 + 0.45 * lobe);
    const fade = ease(0, b.heightMm * 0.2, y);
    raise(b, i, rise * fade);
    pour(b, i, rise * fade);
  });
};

/** Film that slid down an upright face. */
export const runs = (b: Board, f: Runs, from: number): void =>
  f.shape === 'tears' ? tears(b, f, from) : curtain(b, f, from);
