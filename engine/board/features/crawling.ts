import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { ease, rough } from '../noise.ts';

/** Film that drew together: islands with a rounded ridge at the shore and the base bare between them. */
export const crawling = (b: Board, f: FeatureOf<'crawling'>, from: number): void => {
  const size = f['size-mm'];
  const land = new Float32Array(b.height.length);
  everywhere(b, (i, x, y) => {
    land[i] = rough((x + 1.2 * rough(x / 5, y / 5, from + 4, 2)) / size, y / size, from, 2);
  });
  const level = Float32Array.from(land).sort()[Math.floor(f.bare * (land.length - 1))]!;
  everywhere(b, (i) => {
    const inland = (land[i]! - level) * size * 0.55;
    const wet = ease(-0.12, 0.12, inland);
    const ridge = f['ridge-um'] * Math.exp(-(((inland - 0.85) / 0.65) ** 2));
    const film = b.film[i]!;
    raise(b, i, wet * (film * ease(-0.1, 0.7, inland) + ridge) - 2 * (1 - wet));
    b.film[i] = wet * (film + ridge);
    roughen(b, i, b.bareRoughness, 1 - wet);
  });
};
