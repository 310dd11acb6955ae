import type { FeatureOf } from '../../model/board.ts';
import { type Board, dim, everywhere, raise, roughen } from '../field.ts';
import { between, ease, noise, random } from '../noise.ts';

/** Where the face ends, as a share of the picture; below it the edge is seen at a slant. */
const ENDS = 0.86;
/** An edge that looks away from the window. */
const AWAY = 0.56;
/** A rope hides what it lies on no more than the rest of the film: so much of it counts as clear. */
const CLEAR = 0.2;

type Tear = { x: number; half: number; down: number };

/** What ran over the edge before it set: beads and short tears that hang on it, mm below the arris. */
const tears = (b: Board, from: number, half: number): Tear[] => {
  const next = random(from);
  const room = b.heightMm * (1 - ENDS);
  return Array.from({ length: Math.max(1, Math.round(b.widthMm / 14)) }, () => ({
    x: next() * b.widthMm,
    half: half * between(next, 0.8, 1.9),
    down: room * between(next, 0.15, 0.8, 1.6),
  }));
};

/**
 * Lower edge of the board: the film left the arris and stands as a rope just inside it; a little ran over and hangs in
 * beads.
 */
export const fatEdge = (b: Board, f: FeatureOf<'fat-edge'>, from: number): void => {
  const half = f['width-mm'] / 2;
  const inset = f['inset-mm'];
  const hanging = tears(b, from, half);
  const border = b.heightMm * ENDS;
  everywhere(b, (i, x, y) => {
    const inside = border - y + 0.07 * noise(x / 6, 3, from + 3);
    const arris = inside + 0.03 * noise(x / 0.7, 4, from + 4);
    if (inside > inset + half * 8) return;
    const swell = 0.95 + 0.2 * noise(x / 17, 6, from) + 0.05 * noise(x / 6, 9, from);
    const at = inset + half * (0.85 + 0.3 * swell) + 0.12 * noise(x / 13, 2, from);
    // Steep toward the edge, running out into the face.
    const wide =
      half *
      (inside > at
        ? 1.3 + 0.6 * swell + 0.16 * noise(x / 8, 1, from + 7)
        : 0.78 + 0.08 * noise(x / 6, 3, from + 8));
    const rope = f['height-um'] * Math.exp(-(((inside - at) / wide) ** 2)) * Math.max(0.6, swell);
    const bare = ease(inset * 0.8, inset * 0.35, arris) * ease(-0.3, 0.1, arris);
    let bead = 0;
    for (const { x: middle, half: broad, down } of hanging) {
      const t = (x - middle + 0.12 * broad * noise(y / 0.8, middle, from + 6)) / broad;
      if (t * t > 6) continue;
      // Drawn thin over the arris; it hangs thick at its lower end, and is cut off short there.
      const below = -inside / down;
      const body = ease(-0.7, 0.55, below) * ease(1.12, 0.7, below + 0.22 * t * t);
      bead = Math.max(bead, broad * Math.exp(-1.5 * t * t) * body);
    }
    // The arris was eased, here more and there less.
    const eased = 0.42 + 0.3 * noise(x / 5, 8, from + 9);
    const turned = ease(0.35 + eased, -0.3 - eased, arris);
    raise(b, i, rope - b.film[i]! * bare - 170 * turned + 50 * bead);
    const strokes = 1 + 0.05 * noise(x / 14, y / 0.5, from + 5);
    const shade = 1 - (1 - AWAY) * turned * strokes * (1 - 0.3 * Math.min(1, bead));
    dim(b, i, [shade, shade, shade * (1 + 0.03 * turned)]);
    b.film[i] = (b.film[i]! + CLEAR * rope) * (1 - 0.93 * bare);
    roughen(b, i, b.bareRoughness, 0.8 * bare * (1 - 0.8 * Math.min(1, 3 * bead)));
  });
};
