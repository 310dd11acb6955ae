import type { Board } from './field.ts';
import { between, ease, noise, type Random } from './noise.ts';
import type { Point } from './stamp.ts';

/** One pass of a cloth: an arc, as an arm moves, that starts and lifts somewhere. */
export type Wipe = {
  /** Middle of the pass, mm. */
  middle: Point;
  /** Its direction there, radians. */
  heading: number;
  /** Radius of the arc, mm; large is nearly straight. */
  radius: number;
  /** Half its length and half its width, mm. */
  half: number;
  wide: number;
  /** How far the arc opens or closes, mm aside for each mm run: no arm draws a true circle. */
  drift: number;
  id: number;
};

/** What a pass leaves at a place: how much of it, 0–1, and where in the pass that is, mm. */
export type WipeTrace = { share: number; run: number; off: number; thread: number };

/** Passes over the whole board, each in its own arc. */
export const wipesOver = (
  b: Board,
  next: Random,
  { count, width, radius }: { count: number; width: number; radius: readonly [number, number] },
): Wipe[] =>
  Array.from({ length: count }, () => ({
    middle: [between(next, -0.05, 1.05) * b.widthMm, between(next, -0.05, 1.05) * b.heightMm],
    // Most go along the board or round in its arms' way, some straight across what was wiped before.
    heading: between(next, -0.9, 0.9) + (next() < 0.35 ? Math.PI / 2 : 0),
    radius: between(next, ...radius) * (next() < 0.8 ? 1 : -1),
    half: between(next, 0.22, 0.5) * b.widthMm,
    wide: (width / 2) * between(next, 0.5, 1.2, 1.3),
    drift: between(next, -0.16, 0.16),
    id: Math.floor(next() * 1e6),
  }));

/** The trace of one pass: threads along it, feathered sides, and ends that run out thread by thread. */
export const traceOf = ({ middle, heading, radius, half, wide, drift, id }: Wipe) => {
  const cx = middle[0] - Math.sin(heading) * radius;
  const cy = middle[1] + Math.cos(heading) * radius;
  const long = Math.abs(radius);
  // Linen is coarser than a stocking, and no cloth is the same all over.
  const coarse = 0.55 + 1.1 * ((id % 97) / 97);
  const base = Math.atan2(middle[1] - cy, middle[0] - cx);
  const trace: WipeTrace = { share: 0, run: 0, off: 0, thread: 0 };
  const farthest = half * 1.3 + wide;
  return (x: number, y: number): WipeTrace => {
    trace.share = 0;
    if (Math.abs(x - middle[0]) > farthest || Math.abs(y - middle[1]) > farthest) return trace;
    const dx = x - cx;
    const dy = y - cy;
    const straight = Math.sqrt(dx * dx + dy * dy) - long;
    if (Math.abs(straight) > wide * 1.3 + half * Math.abs(drift) * 1.3) return trace;
    let angle = Math.atan2(dy, dx) - base;
    if (angle > Math.PI) angle -= 2 * Math.PI;
    else if (angle < -Math.PI) angle += 2 * Math.PI;
    const run = angle * long;
    if (Math.abs(run) > half * 1.3) return trace;
    const off = straight + drift * run + 0.22 * wide * noise(run / (wide * 2.6 + 5), 7, id + 4);
    if (Math.abs(off) > wide) return trace;
    // A cloth lies in folds: each has threads of its own fineness, which come and go as it turns in the hand.
    const turned = off + 0.22 * wide * noise(run / (wide * 3), off / wide, id + 6);
    const fineness = coarse * (1 + 0.7 * noise(turned / (wide * 0.45), run / 60, id + 5));
    const broad = noise(run / 26, turned / (1.1 * fineness) + 0.6 * (run / 26), id);
    const thin = noise(run / 11, turned / (0.34 * fineness) + 0.6 * (run / 11), id + 1);
    const felt = ease(-0.5, 0.35, noise(run / 15, turned / (wide * 0.3), id + 7));
    const thread = (broad + 0.5 * thin) * (0.3 + 0.9 * felt);
    // The cloth bears harder here than there, and each fold of it lifts at its own time.
    const fold = noise(run / 70, off / (wide * 0.35), id + 2);
    const bears = 0.55 + 0.65 * noise(run / 13, off / (wide * 0.9), id + 3);
    const ends = 1 - ease(half * 0.25, half, Math.abs(run) + half * (0.05 * thread + 0.42 * fold));
    const sides = 1 - ease(wide * 0.35, wide, Math.abs(off) + wide * 0.34 * noise(run / 9, 3, id));
    trace.share = ends * sides * Math.min(1, Math.max(0, bears));
    trace.run = run;
    trace.off = off;
    trace.thread = thread;
    return trace;
  };
};
