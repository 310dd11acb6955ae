import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, raise, roughen } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';
import { places } from '../places.ts';
import { disc, type Point } from '../stamp.ts';

/**
 * Film drawn back from specks of oil: dishes with a raised rim, in clusters, small ones beside large, often bare in the
 * middle.
 */
export const craters = (b: Board, f: FeatureOf<'craters'>, from: number): void => {
  const next = random(from);
  const [low, high] = f['diameter-mm'];
  const dish = (point: Point, radius: number) => {
    const rim = (9 + 6 * radius) * between(next, 0.5, 1.2);
    const lean = next() * 6.28;
    const sharp = between(next, 0.6, 1.25);
    const id = Math.floor(next() * 1e6);
    disc(b, point, radius * 2.1, (i, d, dx, dy) => {
      const out =
        0.14 * noise((dx / radius) * 0.7 + 2.6, (dy / radius) * 0.7 + 5.1, id) +
        0.03 * noise((dx / radius) * 2.3, (dy / radius) * 2.3, id + 3);
      const t = d / (radius * (1 + out));
      const film = b.film[i]!;
      const deep = 1 - ease(0.35 * sharp, 1, t);
      // The film drew back more to one side: the rim is heavy there and hardly seen across from it.
      const side =
        0.55 + 0.55 * Math.cos(Math.atan2(dy, dx) - lean) + 0.3 * noise(dx / radius + 9, dy / radius, id + 2);
      const crest = (t - 1.1) / (t > 1.1 ? 0.46 : 0.24);
      raise(b, i, -(film + 4) * deep + rim * Math.max(0.08, side) * Math.exp(-(crest ** 2)));
      const bare = f.bare * (1 - ease(0.4, 0.7 + 0.2 * sharp, t + 0.5 * out));
      b.film[i] = film * (1 - Math.max(bare, deep * 0.7));
      raise(b, i, 2 * bare * noise(dx / 0.5, dy / 0.5, id + 1));
      roughen(b, i, b.bareRoughness, bare);
    });
    if (next() < 0.4) {
      const speck: Point = [
        point[0] + between(next, -0.3, 0.3) * radius,
        point[1] + between(next, -0.3, 0.3) * radius,
      ];
      // The speck of oil or dust that it all began with.
      disc(b, speck, between(next, 0.06, 0.13), (i) => {
        raise(b, i, 12);
        dim(b, i, [0.3, 0.3, 0.3]);
      });
    }
  };
  for (const point of places(b, next, f['per-cm2'])) {
    const radius = between(next, low, high, 2) / 2;
    dish(point, radius);
    for (let n = Math.floor(between(next, 0, 3.2, 1.8)); n > 0; n--) {
      const heading = next() * 6.28;
      const small = Math.max(low / 2, 0.4) * between(next, 0.7, 1.3);
      const away = radius + small + between(next, 0.6, 3.5);
      dish([point[0] + Math.cos(heading) * away, point[1] + Math.sin(heading) * away], small);
    }
  }
};
