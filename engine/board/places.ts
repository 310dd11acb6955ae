import type { Board } from './field.ts';
import type { Random } from './noise.ts';
import type { Point } from './stamp.ts';

/** More bodies than this are not told apart in a picture. */
const MOST = 3000;

export type Along = 'scattered' | 'pores' | 'strokes' | 'edge';

const bell = (next: Random): number => (next() + next() + next()) / 1.5 - 1;

/** Places for `perCm2` bodies: anywhere, in rows over pores, in tool tracks, or along the upper edge. */
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
      const length = 3 + 9 * next();
      for (let run = 0; run < length && points.length < count; run += 0.5 + 1.4 * next())
        points.push([x + run, y + 0.25 * bell(next)]);
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
