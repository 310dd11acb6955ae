import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, raise, roughen } from '../field.ts';
import { ease, noise, random, rough } from '../noise.ts';
import { traceOf, wipesOver } from '../wipes.ts';

/** Every so manyth pixel is looked at. */
const SAMPLED = 13;

/** Film that drew together: islands with a rounded shore and beads left behind, the ground bare between them. */
export const crawling = (b: Board, f: FeatureOf<'crawling'>, from: number): void => {
  const size = f['size-mm'];
  const land = new Float32Array(b.height.length);
  const wiped = (
    f.follows === 'cloth'
      ? wipesOver(b, random(from), {
          count: 5,
          width: size * 1.5,
          radius: [b.widthMm * 0.5, b.widthMm * 1.2],
        })
      : []
  ).map(traceOf);
  everywhere(b, (i, x, y) => {
    let level = rough((x + 1.2 * rough(x / 5, y / 5, from + 4, 2)) / size, y / size, from, 2);
    for (const at of wiped) {
      const { share, thread } = at(x, y);
      if (share > 0) level -= share * (1.1 + 0.5 * thread);
    }
    // Small beads that lost touch with the islands.
    const bead = noise(x / (size * 0.16), y / (size * 0.16), from + 6);
    land[i] = level + 0.5 * ease(0.45, 0.95, bead) * ease(0.6, -0.1, -level);
  });
  // A sample tells the level below which the wanted share lies.
  const sample = land.filter((_, n) => n % SAMPLED === 0).sort();
  const level = sample[Math.floor(f.bare * (sample.length - 1))]!;
  everywhere(b, (i, x, y) => {
    const inland = (land[i]! - level) * size * 0.55;
    const wet = ease(-0.12, 0.12, inland);
    const ridge = f['ridge-um'] * Math.exp(-(((inland - 0.85) / 0.65) ** 2));
    const film = b.film[i]!;
    raise(
      b,
      i,
      wet * (film * ease(-0.1, 0.7, inland) + ridge) -
        2 * (1 - wet) +
        1.5 * (1 - wet) * noise(x / 30, y / 0.7, from + 8),
    );
    b.film[i] = wet * (film + ridge);
    roughen(b, i, b.bareRoughness, 1 - wet);
  });
};
