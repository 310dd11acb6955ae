import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, roughen, scatter, stain } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { disc, type Point, stroke, trickle } from '../stamp.ts';

type SoapyStreaks = FeatureOf<'soapy-streaks'>;
/** Soap dries milky; what else was drawn out of the film gathers in its shores as a weak tan. */
const TAN = [0.17, 0.5, 1.15] as const;
const MILK = 0.26;
const CREAM = [1.16, 1, 0.66] as const;

/** What lies at a place: milk, tan, and how much is covered at all. */
const leave = (b: Board, i: number, share: number, milk: number, tan: number): void => {
  scatter(b, i, MILK * Math.max(0, milk));
  stain(b, i, TAN, Math.max(0, tan));
  roughen(b, i, 0.014, 0.85 * share);
};

/**
 * One run that dried flat: wider and narrower by turns, thin in its middle, its shores and its foot thick with what it
 * carried.
 */
const track = (
  b: Board,
  f: SoapyStreaks,
  next: Random,
  top: Point,
  length: number,
  half: number,
): Point[] => {
  const id = Math.floor(next() * 1e6);
  const line = trickle(next, top, length, half * between(next, 0.3, 0.9));
  const foot = half * between(next, 1.5, 6);
  const spread = between(next, 0.05, 0.45);
  const faint = between(next, 0.35, 1);
  stroke(b, line, half * 2.2, (i, d, run) => {
    const swells = Math.max(
      0.2,
      0.8 + 0.6 * noise(run / (half * 7), 1, id) + 0.25 * noise(run / half, 4, id),
    );
    const end = ease(length - foot * 1.5, length - half, run);
    const wide = half * (0.55 * swells + spread * end);
    const ragged = wide * (1 + 0.2 * noise(run / 1.4, d, id + 1));
    // It began as a film of damp with no border, and stopped where it had dried.
    const share = (1 - ease(ragged * 0.5, ragged * 1.12, d)) * ease(0, length * 0.5, run);
    if (share <= 0) return;
    const shore =
      Math.exp(-(((d - ragged * 0.84) / Math.max(0.13, ragged * 0.2)) ** 2)) *
      Math.max(0.08, 0.5 + 0.9 * noise(run / 4, 8, id));
    const threads = noise(run / 14, d / 0.35, id + 3);
    const patchy = 0.5 + 0.55 * noise(run / 8, d / half, id + 2) + 0.2 * threads;
    const left = f.strength * faint * share;
    leave(
      b,
      i,
      share,
      left * (0.03 + 0.18 * Math.max(0, patchy) + 0.62 * shore + 0.35 * end),
      left * (0.05 + 0.1 * Math.max(0, patchy) + 0.34 * shore + 0.2 * end),
    );
    raise(
      b,
      i,
      left *
        (9 * (1 - (d / (ragged * 1.12)) ** 2) +
          16 * shore +
          14 * end * (1 - (d / (half * 2.2)) ** 2) +
          2 * patchy),
    );
  });
  return line;
};

/** A drop that never ran: a pale spot with a shore. */
const spot = (b: Board, f: SoapyStreaks, next: Random): void => {
  const radius = between(next, 0.1, 1, 3.4);
  const at: Point = [next() * b.widthMm, next() ** 1.8 * b.heightMm * 0.8];
  const id = Math.floor(next() * 1e6);
  const faint = between(next, 0.15, 0.8);
  disc(b, at, radius * 1.5, (i, _d, dx, dy) => {
    const t =
      Math.hypot(dx, dy * 0.8) / (radius * (1 + 0.3 * noise(dx / radius + 2, (0.8 * dy) / radius, id)));
    if (t >= 1.15) return;
    const share = ease(1.1, 0.85, t);
    const shore =
      Math.exp(-(((t - 0.86) / 0.18) ** 2)) * Math.max(0.1, 0.5 + noise(dx / radius, dy / radius, id + 1));
    const left = f.strength * faint * share;
    leave(b, i, share, left * (0.1 + 0.75 * shore), left * (0.05 + 0.3 * shore));
    raise(b, i, left * (3 + 9 * shore));
  });
};

/**
 * Leached soap: damp gathered to drops above, ran down in tracks that join and part, and dried flat and shining, milky
 * with tan shores.
 */
export const soapyStreaks = (b: Board, f: SoapyStreaks, from: number): void => {
  const next = random(from);
  b.veil = [...CREAM];
  for (let n = 0; n < f.count; n++) {
    const top: Point = [between(next, 0.02, 0.98) * b.widthMm, between(next, -0.3, 0.12) * b.heightMm];
    const length = between(next, 0.3, 1.35, 1.1) * b.heightMm;
    const half = (f['width-mm'] / 2) * between(next, 0.25, 1.5, 1.7);
    const line = track(b, f, next, top, length, half);
    if (next() > 0.5) continue;
    const fork = line[Math.floor(line.length * between(next, 0.2, 0.7))]!;
    const beside: Point = [fork[0] + between(next, -0.6, 0.6) * half, fork[1]];
    track(b, f, next, beside, length * between(next, 0.2, 0.6), half * between(next, 0.35, 0.8));
  }
  for (let n = f.count * 7; n > 0; n--) spot(b, f, next);
};
