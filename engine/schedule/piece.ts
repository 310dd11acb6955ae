import type { Plan } from '../model/plan.ts';
import { keysOf } from '../plain/entry-of.ts';
import type { Job, Part, Parts } from './job.ts';

const SQUARE_MILLIMETERS = 1e6;

/** One face of a part, m²; a leg is square, and its face is one of four. */
const faceSquareMeters = ({ long, wide }: Parts[Part]): number => (long * wide) / SQUARE_MILLIMETERS;

/** Area to coat, m²: all faces, and a share for moldings and edges. */
export const areaOf = (parts: Parts, extra: Plan['extra']): number => {
  const faces = keysOf(parts).map(
    (part) => parts[part].count * faceSquareMeters(parts[part]) * (part === 'leg' ? 4 : 1),
  );
  return faces.reduce((sum, face) => sum + face, 0) * (1 + extra.share);
};

/** What is laid at a time where parts are turned, m². */
export type FaceAreas = {
  /** The backs of what is turned; 0 where nothing is. */
  readonly back: number;
  /** Their fronts with the edges, and all that is not turned: where nothing is, the whole piece. */
  readonly front: number;
};

/** The area of each face, m². Edges and moldings are coated once, with the front, so no share for them is on the back. */
export const faceAreasOf = (
  { parts, both }: Pick<Job, 'parts' | 'both'>,
  extra: Plan['extra'],
): FaceAreas => ({
  back: (both?.parts ?? []).reduce((sum, part) => sum + parts[part].count * faceSquareMeters(parts[part]), 0),
  front: areaOf(parts, extra),
});

/** How many single parts are turned. */
export const turnedCount = ({ parts, both }: Pick<Job, 'parts' | 'both'>): number =>
  (both?.parts ?? []).reduce((sum, part) => sum + parts[part].count, 0);

type LargeFace = { readonly part: Part; readonly squareMeters: number; readonly longMillimeters: number };

/** The largest face that has to be laid in one go; nothing where there is none. */
export const largestFace = (parts: Parts): LargeFace | undefined =>
  keysOf(parts)
    .filter((part) => parts[part].count > 0)
    .map((part) => ({
      part,
      squareMeters: faceSquareMeters(parts[part]),
      longMillimeters: Math.max(parts[part].long, parts[part].wide),
    }))
    .sort((one, two) => two.squareMeters - one.squareMeters)[0];
