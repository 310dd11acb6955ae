import type { FeatureOf } from '../../model/board.ts';
import { type Board, pour, raise, roughen, scatter, stain } from '../field.ts';
import { between, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { cover, disc, stroke, wander } from '../stamp.ts';

const AMBER_JELLY = [0.2, 0.65, 1.5] as const;
const CLEAR_JELLY = [0.04, 0.05, 0.08] as const;

/** Lumps of jelly under the coat, and folded strips of torn skin. */
export const gel = (b: Board, f: FeatureOf<'gel'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const jelly = f.color === 'amber' ? AMBER_JELLY : CLEAR_JELLY;
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 1.4) / 2;
    const skin = next() < f.skins;
    const id = Math.floor(next() * 1e6);
    if (skin) {
      // A torn strip of skin, folded on itself and laid under by the coat.
      const length = radius * between(next, 3, 7);
      const half = radius * between(next, 0.25, 0.5);
      const line = wander(next, point, next() * 6.28, length, 2.2 / Math.max(1, radius), 0.25);
      stroke(b, line, half + 1, (i, d, run) => {
        const ragged = half * (0.75 + 0.45 * noise(run / 0.9, d > 0 ? 2 : 5, id) - 0.35 * (run / length));
        const share = Math.max(0, cover(b, ragged - d, half * 2));
        const crease = 0.5 + 0.5 * noise(run / 1.1, d / 0.4, id + 1);
        raise(b, i, share * (30 + 45 * crease) + 16 * Math.exp(-Math.max(0, d - ragged) / 0.35));
        stain(b, i, jelly, share * (0.35 + 0.3 * crease));
        roughen(b, i, 0.05, share * 0.6);
      });
      continue;
    }
    disc(b, point, radius * 2.6, (i, d, dx, dy) => {
      const edge = radius * (1 + 0.22 * noise((dx / radius) * 0.6 + 4.4, (dy / radius) * 0.6 + 2.7, id));
      const t = d / edge;
      const share = Math.max(0, cover(b, edge - d, radius * 2));
      // The coat lies over the lump and slopes off from it.
      const lump = Math.exp(-((t * 1.05) ** 2.6));
      raise(
        b,
        i,
        radius * (170 * lump + 30 * lump * noise(dx / (radius * 0.8), dy / (radius * 0.8), id + 1)) +
          10 * Math.exp(-((t / 1.9) ** 2)),
      );
      stain(b, i, jelly, 0.9 * lump);
      if (f.color !== 'amber') scatter(b, i, 0.05 * share);
      pour(b, i, radius * 120 * lump);
      roughen(b, i, 0.012, share);
    });
  }
};
