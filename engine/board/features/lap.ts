import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, raise, roughen, scaleFilm, scatter } from '../field.ts';
import { turned } from '../mask.ts';
import { drawnOut, ease, noise } from '../noise.ts';

/**
 * Where one pass overlapped a setting one: a band of double film, darker and of other sheen, its edges a ridge of
 * bristle ends.
 */
export const lap = (b: Board, f: FeatureOf<'lap'>, from: number): void => {
  const { along, across } = turned(f.angle);
  const width = f['width-mm'];
  const half = f['overlap-mm'] / 2;
  const offset = across(b.widthMm / 2, b.heightMm / 2);
  const phase = width > b.heightMm * 0.6 ? 0 : width * 0.22;
  everywhere(b, (i, x, y) => {
    const u = along(x, y);
    const v =
      across(x, y) - offset + phase + 1.7 * noise(u / 42, 3, from) + 0.3 * noise(u / 13, 9, from) + 0.05 * u;
    const nearest = Math.round(v / width);
    const side = v - nearest * width;
    const hand = side > 0 ? 1 : 4;
    const bristle = drawnOut(u, v, 34, 0.8, from + 5) + 0.5 * drawnOut(u, v, 18, 0.35, from + 6);
    // The two edges wander each by itself, and one of them melted in along part of its way.
    const edge =
      half * (1 + 0.22 * noise(u / 19, hand + nearest * 7, from + 1)) +
      0.3 * noise(u / 2.5, hand, from + 2) +
      (side > 0 ? 0.1 : 0.75) * bristle;
    // The coat that had set ends hard; the one laid over it runs out as its bristles did.
    const sharp =
      (side > 0 ? 0.75 : 0.1) + 0.25 * ease(-0.4, 0.35, noise(u / 24, hand + nearest * 5, from + 3));
    const d = Math.abs(side);
    const soft = 0.2 + 1.1 * (1 - sharp);
    const band = 1 - ease(edge - soft, edge + soft, d);
    const ridge = sharp * Math.exp(-(((d - edge) / 0.42) ** 2)) * (0.8 + 0.4 * noise(u / 5, hand, from + 4));
    raise(b, i, f['ridge-um'] * (0.3 * band + ridge + 0.14 * bristle * (0.5 + band)));
    scaleFilm(b, i, Math.max(0.3, 1 + 0.9 * f.strength * band + 0.08 * bristle));
    roughen(b, i, b.roughness[i]! * 2.2 + 0.015, Math.min(1, f.strength * band * (0.9 + 0.2 * bristle)));
    scatter(b, i, Math.max(0, 0.016 * f.strength * band * (1 + 0.4 * bristle)));
    // The second pass was laid on more here than there.
    const laid = 0.85 + 0.45 * noise(u / 21, nearest * 3, from + 7);
    const deep = f.strength * band * laid * (1 + 0.16 * bristle);
    dim(b, i, [1 - 0.4 * deep, 1 - 0.48 * deep, 1 - 0.56 * deep]);
  });
};
