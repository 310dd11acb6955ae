import { type Board, dim, everywhere, raise, tint } from '../field.ts';
import { between, ease, noise, random, start } from '../noise.ts';
import type { Figure } from './figure.ts';
import type { Grain, Knot } from './grain.ts';

/** Rings of the branch across a knot. */
const RINGS = 7;

/**
 * A branch cut across: its own close rings, bark along part of its edge, a check from its heart, and tinted wood about
 * it.
 */
export const drawKnot = (b: Board, grain: Grain, { late, streak }: Figure, at: Knot, seed: number): void => {
  const next = random(start(seed, 2));
  const edge = [late[0] * 0.5, late[1] * 0.4, late[2] * 0.36] as const;
  const body = [late[0] * 0.8, late[1] * 0.66, late[2] * 0.6] as const;
  const turn = between(next, 0, Math.PI);
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  everywhere(b, (i, x, y) => {
    const plain = grain.knot(x, y);
    if (plain > 2.6) return;
    const far =
      plain * (1 + 0.14 * noise(x / 6, y / 6, seed + 30) + 0.03 * noise(x / 1.2, y / 1.2, seed + 35));
    tint(b, i, streak, 0.55 * ease(2.5, 0.9, far));
    if (far > 1.15) return;
    const inside = ease(1.08, 0.94, far);
    tint(b, i, body, 0.92 * inside);
    const ring =
      0.5 + 0.5 * Math.sin(2 * Math.PI * (far ** 1.4 * RINGS + 0.5 * noise(x / 3, y / 3, seed + 31)));
    const grainy = 0.16 * noise(x / 0.5, y / 0.5, seed + 32);
    tint(
      b,
      i,
      edge,
      inside * Math.max(0, 0.24 * ring + 0.4 * ease(0.45, 1, far) + 0.3 * ease(0.16, 0, far) + grainy),
    );
    const bark = Math.exp(-(((far - 0.99) / 0.05) ** 2)) * ease(-0.2, 0.5, noise(x / 5, y / 5, seed + 33));
    const [u, v] = [x - at[0], y - at[1]];
    const off = Math.abs(v * cosine - u * sine + 0.5 * noise(x / 2, y / 2, seed + 34));
    const check =
      ease(0.16, 0.03, off * (1 + 1.5 * far)) * ease(0.8, 0.5, far + 0.25 * noise(u, v, seed + 36));
    const dark = 1 - 0.75 * Math.max(bark, check);
    dim(b, i, [dark, dark * 0.97, dark * 0.95]);
    raise(b, i, -9 * check - 5 * bark);
  });
};
