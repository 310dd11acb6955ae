import type { Board } from './field.ts';
import type { Random } from './noise.ts';
import type { Point } from './stamp.ts';

/** More bodies than this are not told apart in a picture. */
const MOST = 3000;
/** A pore of the wood is a furrow at least this deep, µm, and is looked for this far across the grain, mm. */
const PORE_UM = -4;
const LOOKED_MM = 0.8;

export type Along = 'scattered' | 'pores' | 'strokes' | 'edge';

const bell = (next: Random): number => (next() + next() + next()) / 1.5 - 1;

/** The nearest open pore above or below a place; the place itself where the wood has none. */
export const inPore = (b: Board, [x, y]: Point): Point => {
  const column = Math.min(b.columns - 1, Math.max(0, Math.floor(x / b.pitch)));
  const row = Math.floor(y / b.pitch);
  const far = Math.ceil(LOOKED_MM / b.pitch);
  for (let away = 0; away <= far; away++) {
    for (const at of [row - away, row + away]) {
      if (at < 0 || at >= b.rows) continue;
      const i = at * b.columns + column;
      const here = b.height[i]!;
      const deepest = here <= (b.height[i - b.columns] ?? here) && here <= (b.height[i + b.columns] ?? here);
      if (here < PORE_UM && deepest) return [x, (at + 0.5) * b.pitch];
    }
  }
  return [x, y];
};

/** Places for `perCm2` bodies: anywhere, in the pores, in tool tracks, or along the upper edge. */
export const places = (b: Board, next: Random, perCm2: number, along: Along = 'scattered'): Point[] => {
  const count = Math.min(MOST, Math.max(1, Math.round((perCm2 * b.widthMm * b.heightMm) / 100)));
  const points: Point[] = [];
  const anywhere = (): Point => [next() * b.widthMm, next() * b.heightMm];
  if (along === 'scattered') for (let n = 0; n < count; n++) points.push(anywhere());
  else if (along === 'edge')
    for (let n = 0; n < count; n++) points.push([next() * b.widthMm, next() ** 3 * b.heightMm]);
  else if (along === 'pores') {
    while (points.length < count) {
      const [x, y] = anywhere();
      const length = 1 + 9 * next() ** 2;
      for (let run = 0; run < length && points.length < count; run += 0.3 + 2.2 * next() ** 1.5)
        points.push(inPore(b, [x + run, y + 0.25 * bell(next)]));
    }
  } else {
    const tracks = Math.max(2, Math.round(b.heightMm / 16));
    for (let n = 0; n < count; n++) {
      const track = (Math.floor(next() * tracks) + 0.5) * (b.heightMm / tracks);
      points.push([next() ** 1.7 * b.widthMm, track + bell(next) * 2.6]);
    }
  }
  return points;
};
