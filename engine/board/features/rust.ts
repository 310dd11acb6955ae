import type { FeatureOf } from '../../model/board.ts';
import { type Board, raise, stain, tint } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc, type Point, stroke, wander } from '../stamp.ts';

type Rust = FeatureOf<'rust'>;
const CORE = { orange: [0.075, 0.026, 0.012], 'blue-black': [0.025, 0.028, 0.042] } as const;
const CRUST = { orange: [0.34, 0.1, 0.02], 'blue-black': [0.06, 0.065, 0.09] } as const;
const HALO = { orange: [0.1, 0.55, 1.3], 'blue-black': [1, 0.9, 0.7] } as const;

/** One bit of iron: a dark core with a ragged crust, the brown drawn out to one side, a thin stain far round it. */
const point = (b: Board, f: Rust, next: Random, at: Point, radius: number): void => {
  const id = Math.floor(next() * 1e6);
  const turn = next() * 6.28;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const tail = between(next, 1, 3.2, 2);
  const bled = between(next, 1.6, 4, 1.4);
  const strong = between(next, 0.3, 1);
  disc(b, at, radius * (bled + tail) + 0.4, (i, _d, dx, dy) => {
    const u = dx * c + dy * s;
    const v = dy * c - dx * s;
    const drawn = u > 0 ? u / tail : u;
    const ragged =
      0.3 * noise((dx / radius) * 0.7 + 2, (dy / radius) * 0.7, id) +
      0.12 * noise(dx / 0.2, dy / 0.2, id + 1);
    const t = Math.hypot(drawn, v) / radius;
    const halo =
      Math.exp(-((t / bled) ** 1.4) * 2) *
      (0.8 + 0.5 * noise(dx / (radius * 1.6), dy / (radius * 1.6), id + 2));
    stain(b, i, HALO[f.color], Math.max(0, 0.8 * strong * halo));
    const crust = Math.max(0, cover(b, radius * (1.15 + ragged - t), radius * 2));
    tint(b, i, CRUST[f.color], crust * (0.45 + 0.3 * strong) * ease(1.7, 0.2, t));
    const core = ease(0.7, 0.2, t - 0.5 * ragged) * Math.min(1, (radius * 2) / b.pitch);
    tint(b, i, CORE[f.color], 0.9 * core * (0.45 + 0.55 * strong));
    raise(b, i, 5 * crust);
  });
};

/**
 * Points of iron left by steel wool: specks of all sizes in loose trails, and a few rusted threads, each in its stain.
 */
export const rust = (b: Board, f: Rust, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const trails = places(b, next, f['per-cm2'] * 0.16);
  for (const at of places(b, next, f['per-cm2'])) {
    const trail = trails[Math.floor(next() * trails.length)]!;
    const away = between(next, -1, 1) * 7;
    const near: Point =
      next() < 0.55 ? [trail[0] + away, trail[1] + away * 0.2 + between(next, -1.6, 1.6)] : at;
    point(b, f, next, near, between(next, low, high, 3) / 2);
  }
  for (let n = Math.max(2, Math.round(b.widthMm / 12)); n > 0; n--) {
    const length = between(next, 0.8, 4, 1.4);
    const half = between(next, 0.02, 0.05);
    const line = wander(
      next,
      [next() * b.widthMm, next() * b.heightMm],
      between(next, -0.6, 0.6),
      length,
      1.6,
      0.2,
    );
    const id = Math.floor(next() * 1e6);
    stroke(b, line, 0.7, (i, d, run) => {
      const here = ease(-0.9, 0.1, noise(run / 1.9, 3, id));
      stain(b, i, HALO[f.color], 0.4 * here * Math.exp(-d / 0.22));
      tint(b, i, CRUST[f.color], 0.8 * here * Math.max(0, cover(b, half - d, half * 2)));
    });
  }
};
