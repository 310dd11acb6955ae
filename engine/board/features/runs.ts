import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, pour, raise } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { stroke, trickle } from '../stamp.ts';

type Runs = FeatureOf<'runs'>;

/**
 * Tears out of one heavy band: it sagged first, then broke through where it was thickest; some ran far, some hardly,
 * two joined.
 */
const tears = (b: Board, f: Runs, from: number): void => {
  const next = random(from);
  const lift = new Float32Array(b.height.length);
  const band = b.heightMm * between(next, 0.1, 0.17);
  everywhere(b, (i, x, y) => {
    const swell = 0.5 + 0.9 * noise(x / 11, 3, from) + 0.35 * noise(x / 4, 5, from);
    const hem = band + f['width-mm'] * (0.5 * noise(x / 9, 1, from + 1) + 0.5 * Math.max(0, swell));
    const d = y - hem;
    lift[i] =
      0.13 *
      f['height-um'] *
      Math.max(0.1, swell) *
      Math.exp(-((d / (d > 0 ? f['width-mm'] * 0.4 : b.heightMm * 0.13)) ** 2));
  });
  for (let n = 0; n < f.count + 2; n++) {
    const long = n < f.count;
    const x = ((n + between(next, 0.1, 0.9)) / (f.count + 2)) * b.widthMm;
    const length = f['length-mm'] * (long ? between(next, 0.35, 1.25) : between(next, 0.2, 0.4));
    const half = (f['width-mm'] / 2) * between(next, 0.6, 1.25);
    const top = band * between(next, 0.5, 1.1);
    const line = trickle(next, [x, top], length, between(next, 0.15, 0.6));
    const id = Math.floor(next() * 1e6);
    const tall = f['height-um'] * (long ? between(next, 0.5, 1) : 0.35);
    const bulb = Math.min(half * between(next, 1.8, 4.2), length * 0.45);
    const thin = between(next, 0.3, 0.6);
    stroke(b, line, half * 3.2, (i, d, run) => {
      const t = Math.min(1, run / length);
      // Broad where it left the band, drawn thin on the way, heavy at its foot.
      const root = Math.exp(-run / (half * 2.6));
      const foot = ease(length - bulb * 1.4, length - half * 0.5, run);
      const wide = half * (thin + 1.9 * root + (0.95 - thin) * foot + 0.1 * noise(run / 4, 2, id));
      const section = Math.exp(-((d / (wide * 0.68)) ** 2));
      const rise =
        tall *
        section *
        (0.14 + 0.1 * t + 0.66 * foot - 0.05 * root) *
        ease(-half, half * 3, run) *
        (1 + 0.14 * noise(run / 3, 5, id));
      lift[i] = Math.max(lift[i]!, rise) + 0.25 * Math.min(lift[i]!, rise);
    });
  }
  for (let i = 0; i < lift.length; i++) {
    raise(b, i, lift[i]!);
    pour(b, i, lift[i]!);
  }
};

/** A whole width of film that slid: folds of unequal breadth and reach, thick at the lip, thin above. */
const curtain = (b: Board, f: Runs, from: number): void => {
  const lobes = b.widthMm / Math.max(1, f.count);
  const lip = f['width-mm'];
  const drop = Math.min(f['length-mm'], b.heightMm * 0.5);
  everywhere(b, (i, x, y) => {
    const phase =
      (2 *
        Math.PI *
        (x + lobes * (0.42 * noise(x / (lobes * 1.3), 3, from) + 0.12 * noise(x / (lobes * 0.5), 8, from)))) /
      lobes;
    const which = Math.floor(phase / (2 * Math.PI));
    const reach = 0.55 + 0.75 * ease(-0.6, 0.6, noise(which * 1.7 + 0.4, 5.5, from + 2));
    const lobe = 0.5 - 0.5 * Math.cos(phase);
    // Between two folds the hem hangs back; a broad fold has a broad foot.
    const hang = reach * lobe * (1.6 - 0.6 * lobe) + 0.35 * noise(x / (lobes * 1.6), 9, from + 1);
    const edge = b.heightMm * 0.34 + drop * (0.2 * noise(x / 30, 1, from) + 0.55 * hang);
    const above = edge - y;
    if (above < -1.5) return;
    const heavy = 0.3 + 0.7 * lobe * reach;
    const body = Math.exp(-((Math.max(0, above - lip * 0.45) / (lip * (0.8 + heavy))) ** 1.3));
    const foot = ease(-1.2, lip * 0.75, above);
    const rise =
      f['height-um'] * foot * (0.1 + 0.9 * body) * heavy * (1 + 0.1 * noise(x / 6, y / 9, from + 4));
    const fade = ease(0, b.heightMm * 0.25, y);
    raise(b, i, rise * fade);
    pour(b, i, rise * fade);
  });
};

/** Film that slid down an upright face. */
export const runs = (b: Board, f: Runs, from: number): void =>
  f.shape === 'tears' ? tears(b, f, from) : curtain(b, f, from);
