import type { FeatureOf } from '../../model/board.ts';
import { groundBelow } from '../base.ts';
import { type Board, everywhere, raise, roughen, scatter, uncover } from '../field.ts';
import { between, ease, noise, type Random, random } from '../noise.ts';
import { type Point, placed } from '../stamp.ts';

/** Distance outside (+) or inside (−) a place broken out along straight cracks, mm. */
const broken = (next: Random, [cx, cy]: Point, radius: number, corners: number, seed: number) => {
  const turn = next() * 6.28;
  const points = Array.from({ length: corners }, (_, n): Point => {
    const angle = turn + ((n + between(next, -0.32, 0.32)) * 6.2832) / corners;
    const reach = radius * between(next, 0.62, 1.25);
    return [cx + Math.cos(angle) * reach * 1.25, cy + Math.sin(angle) * reach];
  });
  return (x: number, y: number): number => {
    const px = x + 0.25 * noise(x / 1.6, y / 1.6, seed) + 0.5 * noise(x / 6, y / 6, seed + 1);
    const py = y + 0.25 * noise(x / 1.6, y / 1.6, seed + 2);
    let nearest = 1e9;
    let inside = false;
    for (let n = 0, m = corners - 1; n < corners; m = n++) {
      const [ax, ay] = points[m]!;
      const [bx, by] = points[n]!;
      const [ex, ey] = [bx - ax, by - ay];
      const t = Math.min(1, Math.max(0, ((px - ax) * ex + (py - ay) * ey) / (ex * ex + ey * ey)));
      nearest = Math.min(nearest, (px - ax - t * ex) ** 2 + (py - ay - t * ey) ** 2);
      if (ay > py !== by > py && px < ax + ((py - ay) / ey) * ex) inside = !inside;
    }
    return Math.sqrt(nearest) * (inside ? -1 : 1);
  };
};

/** Film that let go: broken out along cracks, its rim curled up thin and pale with air below it, one flake hanging on. */
export const peel = (b: Board, f: FeatureOf<'peel'>, from: number): void => {
  const next = random(from);
  const center = placed(b, next, f.at);
  const radius = f['size-mm'] / 2;
  const edge = broken(next, center, radius * 0.95, 9, from);
  const hinge = next() * 6.28;
  const flake = broken(
    next,
    [center[0] + Math.cos(hinge) * radius * 0.5, center[1] + Math.sin(hinge) * radius * 0.42],
    radius * 0.42,
    6,
    from + 7,
  );
  const ground =
    f.under === 'base'
      ? undefined
      : groundBelow(b, f.under === 'wood' ? { wood: 'oak' } : { paint: 'white' }, from);
  const lift = f['lift-um'];
  everywhere(b, (i, x, y) => {
    const d = edge(x, y);
    if (d > radius) return;
    const film = b.film[i]!;
    if (d < 0) {
      const bare = 1 - ease(-0.42, 0, d);
      const torn = Math.exp(-(((d + 0.12) / 0.12) ** 2));
      const strokes = noise(x / 40, y / 0.8, from + 3);
      if (ground) uncover(b, i, ground, bare);
      b.film[i] = film * (1 - bare);
      scatter(b, i, 0.2 * torn);
      raise(b, i, (ground ? ground.height[i]! * 0.6 - film - 30 : 3 * strokes - film) * bare);
      roughen(b, i, ground ? b.bareRoughness : 0.075, bare);
      b.haze[i] = b.haze[i]! * (1 - bare);
      const piece = flake(x, y);
      const share = film > 0 ? ease(0, 0.35, -piece) : 0;
      if (share > 0) {
        // It curls like a shaving: low where it still holds, high at its free tip.
        const out = ((center[0] - x) * Math.cos(hinge) + (center[1] - y) * Math.sin(hinge)) / radius + 0.5;
        const curl = Math.max(0, out);
        raise(
          b,
          i,
          share * (40 + lift * (0.15 + 1.1 * curl * curl) + 16 * noise(x / 2.2, y / 2.2, from + 8)),
        );
        b.film[i] = Math.max(b.film[i]!, film * share);
        scatter(b, i, 0.12 + 0.14 * Math.min(1, curl) + 0.15 * (1 - share));
        roughen(b, i, 0.05, share);
      }
      return;
    }
    // Round it the film has lost its hold: pale with air below it, and lifted toward the break.
    const stands = ease(-0.5, 0.5, noise(x / (radius * 0.55), y / (radius * 0.55), from + 4));
    const loose = 0.6 + radius * (0.05 + 0.3 * stands) + 0.35 * noise(x / 2, y / 2, from + 5);
    if (d > loose * 1.15) return;
    const rise = Math.max(0, 1 - d / loose);
    raise(b, i, lift * (0.15 + 0.85 * stands) * rise ** 2.4 + 5 * ease(0, 0.12, rise));
    scatter(
      b,
      i,
      (0.035 + 0.11 * rise) * ease(0, 0.1, rise) * (0.8 + 0.4 * noise(x / 1.4, y / 1.4, from + 6)),
    );
  });
};
