import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { placed, radians } from '../stamp.ts';

type Print = FeatureOf<'print'>;
/** How deep the pattern is pressed at a place measured from the middle of the print, 0–1. */
type Press = (u: number, v: number) => { inside: number; press: number };

const cloth = (f: Print, from: number): Press => {
  const half = f['size-mm'] / 2;
  const k = Math.PI / f['pitch-mm'];
  return (u, v) => {
    const fray = 1.6 * rough(u / 7, v / 7, from, 2) + 0.5 * noise(u / 1.2, v / 1.2, from + 4);
    const edge = Math.max(Math.abs(u) - half * 1.2, Math.abs(v) - half) + fray;
    // It lay in a slack wave; no two threads are of one thickness, and one here and there is a slub.
    const slack = 0.9 * noise(u / 14, v / 12, from + 7);
    const warp =
      u +
      slack +
      0.35 * noise(u / 9, v / 6, from + 1) +
      0.3 * f['pitch-mm'] * noise(u / (f['pitch-mm'] * 1.4), v / 25, from + 8);
    const weft =
      v +
      0.8 * slack +
      0.35 * noise(u / 6, v / 9, from + 2) +
      0.3 * f['pitch-mm'] * noise(u / 25, v / (f['pitch-mm'] * 1.4), from + 9);
    const over = Math.sin(k * warp) * Math.sin(k * weft) > 0;
    const thread = over ? Math.abs(Math.sin(k * warp)) : Math.abs(Math.sin(k * weft));
    // It was pressed harder toward one corner and did not touch everywhere.
    // Where it lay in a fold it bore harder, and beside the fold it bridged.
    const across = 0.55 * u + 0.8 * v + 2.4 * noise(u / 16, 2, from + 12);
    const fold =
      Math.exp(-(((across - half * 0.3) / 1.6) ** 2)) - 0.7 * Math.exp(-(((across - half * 0.3) / 5) ** 2));
    const weight =
      0.6 + 0.4 * ((u - v) / (2 * half)) + 0.7 * rough(u / 12, v / 12, from + 3, 2) + 0.55 * fold;
    return {
      inside: 1 - ease(-half * 0.35, 1, edge + half * 0.12 * rough(u / 9, v / 9, from + 6, 2)),
      press:
        thread *
        Math.min(1, Math.max(0, weight)) *
        (0.7 + 0.5 * noise(u / 1.1, v / 1.1, from + 10)) *
        ease(-0.5, 0.1, rough(u / 5, v / 4, from + 11, 2) + 0.25),
    };
  };
};

/**
 * How many ridges lie between the core and a place: a whorl that winds outward, a loop open to one side, or an arch.
 */
const ridges = (half: number, seed: number): ((u: number, v: number, pitch: number) => number) => {
  const kind = (seed >>> 3) % 3;
  const side = seed & 4 ? 1 : -1;
  const [ku, kv] = [0.12 * half * side, -0.1 * half];
  if (kind === 0)
    return (u, v, pitch) => {
      const [du, dv] = [(u - ku) * 1.2, (v - kv) * 0.82];
      return Math.hypot(du, dv) + (pitch * Math.atan2(dv, du) * side) / (2 * Math.PI);
    };
  if (kind === 1)
    return (u, v) => {
      // Legs of the loop lean to one side and open as they go down.
      const down = Math.max(0, v - kv);
      const du = (u - ku - 0.55 * side * down) / (1 + 0.5 * (down / half) ** 1.5);
      return Math.sqrt((du * 1.1) ** 2 + Math.min(0, v - kv) ** 2 * 0.8 + 0.02);
    };
  return (u, v) => v + 0.75 * half * Math.exp(-((u / (half * 0.36)) ** 2) - (v / half - 0.3) ** 2);
};

const finger = (f: Print, from: number): Press => {
  const half = f['size-mm'] / 2;
  const pitch = f['pitch-mm'];
  const count = ridges(half, from);
  return (u, v) => {
    const edge =
      Math.hypot(u / 0.74, v * (v > 0 ? 0.95 : 1.08)) - half * (0.92 + 0.2 * noise(u / 7, v / 7, from));
    // Ridges wander, end and fork.
    const bend =
      0.8 * noise(u / 5, v / 5, from + 1) +
      pitch * (0.5 * noise(u / 1.7, v / 1.7, from + 5) + 0.25 * noise(u / 0.7, v / 0.7, from + 9));
    const wave = Math.sin((2 * Math.PI * (count(u, v, pitch) + bend)) / pitch);
    // Grease clogs the furrows where the finger bore hardest.
    const clogged = 0.7 * ease(-0.1, 0.7, rough(u / 4, v / 4, from + 12, 2));
    const ridge = ease(-0.55 - clogged, 0.6 - clogged, wave + 0.5 * noise(u / 0.45, v / 0.45, from + 8));
    const touched = ease(
      -0.85,
      0.15,
      noise(u / 3.6, v / 2.8, from + 2) + 0.5 * noise(u / 1.1, v / 1.1, from + 4) + 0.1,
    );
    const shown = ridge * touched * Math.max(0.15, 0.75 + 0.5 * noise(u / 7, v / 7, from + 3));
    // It fades as the ball of the finger rounds off, without a border.
    const outline =
      (1 - ease(-half * 0.55, half * 0.06, edge + half * 0.12 * noise(u / 2.2, v / 2.2, from + 7))) ** 1.2;
    if (f.smear === 0) return { inside: outline, press: shown };
    // The finger slid on as it left: its ridges run out into threads.
    const slid = ease(-half * 0.5, half * 0.5, u + 0.2 * v);
    const width = 1 - ease(half * 0.45, half * 0.85, Math.abs(v) + half * 0.16 * noise(u / 6, 1, from));
    const strand = noise(2, v / 1.3, from + 10) + 0.5 * noise(6, v / 0.4, from + 11);
    const out = half * (1 + 1.5 * f.smear * (0.6 + 0.5 * strand));
    const trail = width * ease(-half * 0.2, half * 0.4, u) * (1 - ease(half * 0.5, out, u));
    const threads = 0.4 + 0.6 * noise(u / 16, v / 0.5, from + 6);
    return {
      inside: Math.max(outline, trail),
      press: shown * outline * (1 - f.smear * slid) + f.smear * 0.6 * trail * Math.max(0, threads),
    };
  };
};

const wrap = (f: Print): Press => {
  const pitch = Math.max(f['pitch-mm'], 3);
  const half = f['size-mm'] / 2;
  return (u, v) => {
    const line = Math.round(v / (pitch * 0.866));
    const shift = line & 1 ? pitch / 2 : 0;
    const du = u - shift - Math.round((u - shift) / pitch) * pitch;
    const dv = v - line * pitch * 0.866;
    const d = Math.hypot(du, dv) / (pitch * 0.4);
    const edge = Math.max(Math.abs(u) - half * 1.3, Math.abs(v) - half);
    return {
      inside: 1 - ease(-1, 1, edge),
      press: Math.exp(-(((d - 0.86) / 0.2) ** 2)) + 0.35 * (1 - ease(0.7, 1, d)),
    };
  };
};

const object = (f: Print, from: number): Press => {
  const half = f['size-mm'] / 2;
  return (u, v) => {
    const edge = Math.max(Math.abs(u) - half, Math.abs(v) - half * 0.7) + 0.25 * noise(u / 3, v / 3, from);
    const line = Math.exp(-(((edge + 0.7) / 0.5) ** 2));
    return {
      inside: 1 - ease(-0.3, 0.3, edge),
      press: Math.max(line, 0.4 + 0.3 * rough(u / 5, v / 5, from + 1, 3)),
    };
  };
};

/** The film was still soft when something lay on it. */
export const print = (b: Board, f: Print, from: number): void => {
  const [cx, cy] = placed(b, random(from), f.at);
  const turn = radians(f.angle + (f.pattern === 'finger' ? 24 : 8));
  const patterns = { cloth, finger, wrap, object } as const;
  const press = patterns[f.pattern](f, from);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  // Nothing of a print lies farther from its middle, slid or not.
  const farthest = f['size-mm'] * 1.4;
  everywhere(b, (i, x, y) => {
    if (Math.abs(x - cx) > farthest || Math.abs(y - cy) > farthest) return;
    const p = press((x - cx) * c + (y - cy) * s, -(x - cx) * s + (y - cy) * c);
    if (p.inside === 0) return;
    raise(b, i, -f['depth-um'] * p.inside * p.press);
    roughen(b, i, 0.15, Math.min(1, 0.95 * p.inside * p.press));
    scatter(b, i, 0.016 * p.inside * p.press);
  });
};
