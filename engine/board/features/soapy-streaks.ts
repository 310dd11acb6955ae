import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, stain } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { disc, type Point, stroke, trickle } from '../stamp.ts';

type SoapyStreaks = FeatureOf<'soapy-streaks'>;
const TAN = [0.13, 0.42, 1.05] as const;

/** One run that dried flat: wider and narrower by turns, darkest along its shores, its foot a wide flat stain. */
const track = (
  b: Board,
  f: SoapyStreaks,
  next: Random,
  top: Point,
  length: number,
  half: number,
): Point[] => {
  const id = Math.floor(next() * 1e6);
  const line = trickle(next, top, length, half * between(next, 0.5, 1.3));
  const foot = half * between(next, 1.5, 5);
  const spread = between(next, 0.15, 0.8);
  const faint = between(next, 0.5, 1);
  stroke(b, line, half * 2.4, (i, d, run) => {
    const swells = Math.max(
      0.25,
      0.85 + 0.75 * noise(run / (half * 5), 1, id) + 0.3 * noise(run / half, 4, id),
    );
    const end = ease(length - foot * 1.5, length - half, run);
    const wide = half * (0.5 * swells + spread * end);
    const ragged = wide * (1 + 0.25 * noise(run / 1.2, d, id + 1));
    const share =
      (1 - ease(ragged * 0.75, ragged * 1.05, d)) *
      ease(0, length * 0.3, run) *
      (1 - ease(length - half * 0.4, length + half * 0.3, run));
    if (share <= 0) return;
    const shore =
      Math.exp(-(((d - ragged * 0.86) / Math.max(0.12, ragged * 0.16)) ** 2)) *
      (0.35 + 0.8 * Math.max(0, noise(run / 3, 8, id) + 0.4));
    const patchy = 0.55 + 0.5 * noise(run / 6, d / half, id + 2) + 0.5 * end;
    stain(
      b,
      i,
      TAN,
      f.strength *
        faint *
        share *
        (0.2 + 0.42 * Math.max(0.1, patchy) * (0.4 + 0.8 * Math.max(0, 1 - (d / ragged) ** 2)) + 0.2 * shore),
    );
    roughen(b, i, 0.01, Math.min(1, share * 1.5));
    // Syrup: it still stands round on the coat, thickest at its foot.
    const round = Math.max(0, 1 - (d / ragged) ** 2);
    raise(b, i, share * (2 + half * (4 + 6 * end) * round * (0.7 + 0.5 * patchy)));
  });
  return line;
};

/** Leached soap: damp gathered to drops above, ran down in tracks that join and part, and dried flat, shining and sticky, pale as weak tea. */
export const soapyStreaks = (b: Board, f: SoapyStreaks, from: number): void => {
  const next = random(from);
  for (let n = 0; n < f.count; n++) {
    const top: Point = [between(next, 0.02, 0.98) * b.widthMm, between(next, -0.3, 0.04) * b.heightMm];
    const length = between(next, 0.25, 1.15, 1.1) * b.heightMm;
    const half = (f['width-mm'] / 2) * between(next, 0.3, 1.5, 1.5);
    const line = track(b, f, next, top, length, half);
    if (next() > 0.45) continue;
    const fork = line[Math.floor(line.length * between(next, 0.25, 0.7))]!;
    const beside: Point = [fork[0] + between(next, -0.6, 0.6) * half, fork[1]];
    track(b, f, next, beside, length * between(next, 0.2, 0.6), half * between(next, 0.4, 0.8));
  }
  for (let n = f.count * 9; n > 0; n--) {
    const radius = between(next, 0.12, 1.1, 3.2);
    const at: Point = [next() * b.widthMm, next() ** 2.2 * b.heightMm * 0.6];
    const id = Math.floor(next() * 1e6);
    const faint = between(next, 0.2, 0.9);
    disc(b, at, radius * 1.3, (i, _d, dx, dy) => {
      const t = Math.hypot(dx, dy * 0.85) / (radius * (1 + 0.25 * noise(dx / radius + 2, dy / radius, id)));
      if (t >= 1.1) return;
      const shore =
        Math.exp(-(((t - 0.86) / 0.16) ** 2)) * Math.max(0.15, 0.5 + noise(dx / radius, dy / radius, id + 1));
      const cap = Math.max(0, 1 - t * t);
      stain(b, i, TAN, f.strength * faint * (0.14 * ease(1.05, 0.9, t) + 0.4 * cap + 0.12 * shore));
      raise(b, i, radius * faint * 26 * cap);
      roughen(b, i, 0.012, 0.9 * ease(1.05, 0.9, t));
    });
  }
};
