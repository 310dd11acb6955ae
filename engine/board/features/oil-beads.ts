import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, stain } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { inPore } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

type OilBeads = FeatureOf<'oil-beads'>;

const OIL = [0.14, 0.29, 0.5] as const;
/** How tall a bead stands, as a share of its radius: oil wets wood and film, and lies flat. */
const TALL = 0.065;
/** Light spreads in a bead and about it: so much film a µm of its height leaves what lies below evenly lit. */
const CLEAR = 7;
/** A veil that is less than this share of the thickest was wiped away. */
const WIPED = 0.5;

/**
 * A bead that is still liquid: a clear cap, deeper in color where it is thick; some stand, others have spread flat and
 * run out along the grain.
 */
const bead = (b: Board, next: Random, point: Point, radius: number, color: number): void => {
  // What is small stands; what is large has sunk under its own weight and run out along the fibers.
  const spread = between(next, 0.5, 1) * Math.min(1, radius / 0.2);
  const tall = radius * 1000 * TALL * between(next, 0.75, 1.1) * (1 - 0.75 * spread);
  const long = between(next, 1.05, 1.3 + 1.5 * spread, 1.2);
  const lean = between(next, -0.25, 0.25);
  const out = 0.16 + 0.3 * spread;
  const off = between(next, -0.5, 0.5);
  const steep = between(next, 1, 1.5) + 0.2 * spread;
  const id = Math.floor(next() * 1e6);
  disc(b, point, radius * long * 1.5, (i, _d, dx, dy) => {
    const v = dy + lean * dx;
    // Its border is held by a pore here and drawn on along a fiber there.
    const bays =
      noise((dx / radius) * 0.6 + 5, (v / radius) * 0.75, id) +
      0.7 * spread * noise(dx / (radius * 2.2), v / (radius * 0.4), id + 1);
    const t = Math.hypot(dx / long, v) / (radius * Math.max(0.5, 1 + out * bays));
    if (t >= 1) return;
    // Its top stands aside where the pore still feeds it.
    const top =
      1 +
      off * (dx / (radius * long)) * (1 - t) +
      0.1 * spread * noise(dx / (radius * 0.7), v / (radius * 0.5), id + 2);
    const cap = (1 - t ** 3) ** steep * top;
    raise(b, i, tall * cap);
    pour(b, i, CLEAR * tall * cap);
    const wet = ease(1, 0.82, t);
    // It gathers the light of the window on its far side.
    const gathered = ease(-0.3, 0.8, (dx / long + v) / (radius * 1.4)) * cap * (1 - 0.7 * spread);
    stain(
      b,
      i,
      OIL,
      color * wet * (0.6 + 0.5 * cap + 0.4 * Math.exp(-(((t - 0.9) / 0.09) ** 2)) - 0.6 * gathered),
    );
    // What it covers it wets: no veil dulls the color there.
    b.haze[i] = b.haze[i]! * (1 - 0.78 * wet);
    roughen(b, i, 0.008 + 0.03 * spread, wet);
  });
};

/** A bead that set: a crust with a steep border. */
const scab = (b: Board, next: Random, point: Point, radius: number): void => {
  const tall = radius * 70 * between(next, 0.7, 1.2);
  const long = between(next, 1.15, 2, 1.5);
  const id = Math.floor(next() * 1e6);
  disc(b, point, radius * 3, (i, _d, dx, dy) => {
    const ragged = 0.3 * noise((dx / radius) * 0.8 + 5, (dy / radius) * 0.8, id);
    const t = Math.hypot(dx / long, dy) / (radius * (1 + ragged));
    if (t >= 1.3) return;
    stain(b, i, OIL, 0.75 * Math.exp(-(t ** 4)));
    const dome = Math.max(0, 1 - t ** 4) * (0.8 + 0.3 * noise(dx / 0.4, dy / 0.4, id + 1));
    raise(b, i, tall * dome);
    pour(b, i, tall * 2 * dome);
    roughen(b, i, 0.009, ease(1.1, 0.85, t));
  });
};

/** The wood round a bead is soaked dark, far along the grain and in threads. */
const soak = (b: Board, next: Random, point: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const reach = between(next, 1.4, 2.6);
  disc(b, point, radius * reach * 1.6, (i, _d, dx, dy) => {
    const threads = 1 + 0.35 * noise(dx / 2.2, dy / 0.22, id) + 0.25 * noise(dx / 0.9, dy / 0.5, id + 1);
    const away = Math.hypot(dx / reach, dy / 1.25) / (radius * threads);
    const wet = ease(1.1, 0.85, away);
    if (wet === 0) return;
    stain(b, i, OIL, 0.62 * wet);
    roughen(b, i, 0.03, 0.7 * wet);
  });
};

/** Rows of places along the grain, each on its pore. */
const rows = (b: Board, f: OilBeads, next: Random): Point[] => {
  const count = Math.max(1, Math.round((f['per-cm2'] * b.widthMm * b.heightMm) / 100));
  const points: Point[] = [];
  while (points.length < count) {
    let [x, y] = [between(next, -0.1, 0.9) * b.widthMm, next() * b.heightMm];
    for (let left = Math.ceil(between(next, 1, 11, 1.5)); left > 0 && points.length < count; left--) {
      points.push(inPore(b, [x, y]));
      x += between(next, 0.5, 3.4, 1.6);
      y += between(next, -0.18, 0.18);
    }
  }
  return points;
};

/**
 * Oil wept from pores: clear beads along the grain, each on its pore in a wet halo; later scabs. On a veil of sweat it
 * lies as dew, with none where a finger wiped.
 */
export const oilBeads = (b: Board, f: OilBeads, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const veil = b.haze.reduce((most, here) => Math.max(most, here), 0);
  for (const point of rows(b, f, next)) {
    const radius = between(next, low, high, veil > 0 ? 4.5 : 3) / 2;
    if (veil > 0) {
      const [column, row] = [Math.floor(point[0] / b.pitch), Math.floor(point[1] / b.pitch)];
      const here = b.haze[row * b.columns + column] ?? 0;
      if (column < b.columns && here > WIPED * veil) bead(b, next, point, radius, 0.22);
    } else if (f.set) {
      soak(b, next, point, radius);
      scab(b, next, point, radius);
    } else {
      soak(b, next, point, radius);
      bead(b, next, point, radius, 0.46);
    }
  }
};
