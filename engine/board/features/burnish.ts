import type { FeatureOf } from '../../model/board.ts';
import { type Board, everywhere, roughen } from '../field.ts';
import { between, random } from '../noise.ts';
import { type Point, placed, radians } from '../stamp.ts';
import { traceOf, type Wipe } from '../wipes.ts';

/** However dull it was, rubbing brings it to about a semi-gloss; what shone already comes nearer to a mirror. */
const RUBBED = 0.034;

/** A matte film rubbed glossy: the same stroke a few times over, each a little aside, without relief or edge. */
export const burnish = (b: Board, f: FeatureOf<'burnish'>, from: number): void => {
  const next = random(from);
  const [cx, cy] = placed(b, next, f.at);
  const turn = radians(f.angle - 14);
  const half = f['length-mm'] / 2;
  const wide = f['width-mm'] / 2;
  const rubs = Array.from({ length: 6 }, (): Wipe => {
    const aside = between(next, -0.5, 0.5) * wide;
    const on = between(next, -0.14, 0.14) * half;
    const middle: Point = [
      cx + Math.cos(turn) * on - Math.sin(turn) * aside,
      cy + Math.sin(turn) * on + Math.cos(turn) * aside,
    ];
    return {
      middle,
      heading: turn + between(next, -0.07, 0.07),
      radius: -half * 3.4,
      half: half * between(next, 0.9, 1.25),
      wide: wide * between(next, 0.6, 1),
      drift: between(next, -0.05, 0.05),
      id: Math.floor(next() * 1e6),
    };
  }).map(traceOf);
  everywhere(b, (i, x, y) => {
    let shine = 0;
    for (const at of rubs) {
      const { share, thread } = at(x, y);
      shine += (1 - shine) * share * (0.42 + 0.16 * thread);
    }
    if (shine === 0) return;
    const rubbed = Math.min(RUBBED, b.roughness[i]! * 0.3);
    roughen(b, i, rubbed, Math.min(1, 1.2 * f.strength * shine));
  });
};
