import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen, scatter } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';

/** Passes of a loaded cloth: arcs of different shine with fine ridges along the arc. */
export const waxSmear = (b: Board, f: FeatureOf<'wax-smear'>, from: number): void => {
  const next = random(from);
  const width = f['width-mm'];
  const passes = Array.from({ length: Math.max(6, Math.round((2.4 * b.heightMm) / width)) }, () => ({
    x: between(next, -0.1, 0.9) * b.widthMm,
    y: between(next, 0.5, 1.7) * b.heightMm,
    radius: between(next, 0.35, 1.05) * b.widthMm,
    half: width * between(next, 0.3, 0.55),
    wet: next() < 0.5,
    id: Math.floor(next() * 1e6),
  }));
  everywhere(b, (i, x, y) => {
    for (const pass of passes) {
      const dx = x - pass.x;
      const dy = y - pass.y;
      const off = Math.sqrt(dx * dx + dy * dy) - pass.radius;
      if (Math.abs(off) > pass.half) continue;
      const angle = Math.atan2(dy, dx) * pass.radius;
      const thread = noise(angle / 26, off / 0.7, pass.id);
      const share =
        (1 - ease(pass.half * 0.8, pass.half, Math.abs(off))) *
        ease(-0.5, 0.35, noise(angle / 30, off / 4, pass.id + 1));
      raise(b, i, 2.6 * f.strength * thread * share + (Math.abs(off) > pass.half * 0.86 ? 2 : 0) * share);
      roughen(b, i, pass.wet ? 0.02 : 0.15, 0.75 * f.strength * share);
      scatter(b, i, 0.035 * f.strength * share * (0.6 + 0.6 * thread));
    }
  });
};
