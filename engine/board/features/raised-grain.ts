import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter, stain, tint } from '../field.ts';
import { blot, turned } from '../mask.ts';
import { between, ease, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, placed, radians, stroke, wander } from '../stamp.ts';

type RaisedGrain = FeatureOf<'raised-grain'>;
const OIL = [0.1, 0.24, 0.5] as const;
const FIBER = { dry: [0.74, 0.6, 0.42], oiled: [0.66, 0.46, 0.24] } as const;

/** How much of it lies at a place, 0–1. */
type Within = (x: number, y: number) => number;

const within = (b: Board, f: RaisedGrain, from: number): Within => {
  const radius = f['diameter-mm'] / 2;
  if (radius === 0) return () => 1;
  const at = placed(b, random(from), f.at);
  const edge = blot(at, radius, from, 0.1);
  return (x, y) =>
    Math.abs(x - at[0]) > radius * 1.3 || Math.abs(y - at[1]) > radius * 1.3
      ? 0
      : 1 - ease(-radius * 0.25, radius * 0.12, edge(x, y));
};

/**
 * Single hairs of wood, short, fine and bent, nearly along the grain and thickest on the soft early wood; oil glues a
 * few to tufts.
 */
const whiskers = (b: Board, f: RaisedGrain, from: number, lies: Within): void => {
  const next = random(from);
  const color = f.oiled ? FIBER.oiled : FIBER.dry;
  for (const point of places(b, next, f.oiled ? 330 : 300)) {
    const soft =
      noise(point[0] / 30, point[1] / 1.9, from + 8) + 0.5 * noise(point[0] / 7, point[1] / 0.6, from + 9);
    if (lies(...point) < 0.5 || soft < between(next, -0.7, 0.5)) continue;
    const tuft = f.oiled && next() < 0.13 ? Math.ceil(between(next, 2, 5)) : 1;
    // Most are stubs; a few tore out long, and some of those lie flat and curled.
    const torn = next() < 0.06;
    // They stand the way the wood was cut; a few were pushed back.
    const heading = f.angle - 9 + between(next, -1, 1) ** 3 * 34 + (next() < 0.12 ? 180 : 0);
    const curl = between(next, 0.4, torn ? 5 : 2.4);
    const stands = between(next, 0.2, 1.25, 1.4);
    const pale = between(next, 0.1, 0.85, 1.5);
    const thick = between(next, 0.5, 1.25, 1.3);
    for (let n = 0; n < tuft; n++) {
      const length = torn ? between(next, 0.7, 2.6, 1.6) : between(next, 0.14, tuft > 1 ? 1.3 : 0.95, 1.8);
      const half = thick * between(next, 0.013, 0.025);
      const root = [
        point[0] + between(next, -0.05, 0.05) * tuft,
        point[1] + between(next, -0.03, 0.03) * tuft,
      ] as const;
      const bend = between(next, -9, 9) * (tuft > 1 ? 1.4 : 1);
      const line = wander(next, root, radians(heading + bend), length, curl, 0.12);
      const lifts = between(next, 0.1, 0.8);
      stroke(b, line, 0.08, (i, d, run) => {
        const t = Math.min(1, run / length);
        const share = Math.max(0, cover(b, half * (1.2 - 0.8 * t) - d, half * 2));
        // It comes up out of the face little by little; it has no blunt end there.
        const out = ease(-0.1, lifts, t);
        raise(b, i, f['height-um'] * stands * (f.oiled ? 0.4 + 0.5 * t : 0.35 + 1.05 * t) * out * share);
        tint(b, i, color, pale * (0.3 + 0.7 * out) * share);
        if (f.oiled) roughen(b, i, 0.06, share * out);
      });
    }
  }
};

/** Swollen fibers: sharp ridges along the grain, and single whiskers that stand. */
export const raisedGrain = (b: Board, f: RaisedGrain, from: number): void => {
  const { along, across } = turned(f.angle);
  const ridges = f.oiled ? 0.17 : 0.27;
  const lies = within(b, f, from);
  everywhere(b, (i, x, y) => {
    const share = lies(x, y);
    if (share === 0) return;
    const u = along(x, y);
    const v = across(x, y) + 1.5 * noise(u / 40, across(x, y) / 15, from + 2);
    const ridge = 1 - Math.abs(noise(u / 17, v / 0.55, from));
    const fine = 1 - Math.abs(noise(u / 8, v / 0.21, from + 6));
    const stood = ease(-0.6, 0.5, noise(u / 24, v / 2.6, from + 7));
    const fuzz = Math.max(
      0,
      0.7 * noise(u / 1.7, v / 0.3, from + 1) + 0.6 * noise(u / 0.6, v / 0.17, from + 3),
    );
    const combed = ridges * stood * (0.5 * ridge ** 3 + 0.55 * fine ** 3);
    raise(b, i, f['height-um'] * share * (1.25 * combed + (0.08 + 0.1 * stood) * fuzz));
    if (f.oiled) {
      const soaked = ease(-0.4, 0.5, noise(u / 14, v / 3, from + 4) + 0.4 * noise(u / 5, v / 0.8, from + 5));
      stain(b, i, OIL, share * (0.8 + 0.8 * soaked));
      roughen(b, i, 0.22 - 0.14 * soaked, 0.9 * share);
    } else {
      roughen(b, i, 0.22, 0.85 * share);
      scatter(b, i, share * (0.012 + 0.03 * fuzz));
    }
  });
  whiskers(b, f, from, lies);
};
