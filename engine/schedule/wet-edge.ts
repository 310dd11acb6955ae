import type { Build } from './build.ts';
import type { Job, PlanTables } from './job.ts';
import { largestFace } from './piece.ts';

/**
 * Whether the largest face can be laid while its edge is still wet. `fits`: all of it. `split`: one full-length
 * stroke, so that a stop belongs at an edge. `slower`: not even that: a slower product, an extender or a second hand.
 */
export type WetEdge = {
  readonly verdict: 'fits' | 'split' | 'slower';
  readonly part: string;
  readonly faceSquareMeters: number;
  /** What one load of the tool covers, m². */
  readonly loadSquareMeters: number;
  readonly faceMinutes: number;
  readonly strokeMinutes: number;
  /** The early end of the open time, minutes: the one to count on. */
  readonly openMinutes: number;
};

/** The time to lay the largest face against the open time, which comes in for the weather at hand. */
export const wetEdgeOf = (
  plan: PlanTables,
  job: Job,
  build: Build,
  openMinutes: number,
): WetEdge | undefined => {
  const tool = plan.tools.find(({ applicator }) => applicator === job.applicator);
  const face = largestFace(job.parts);
  if (!tool || !face) return undefined;
  const pace = tool['square-meters-per-minute'];
  const faceMinutes = face.squareMeters / pace;
  const band = (tool['band-millimeters'] * face.longMillimeters) / 1e6;
  const strokeMinutes = Math.min(band, face.squareMeters) / pace;
  return {
    verdict: faceMinutes <= openMinutes ? 'fits' : strokeMinutes <= openMinutes ? 'split' : 'slower',
    part: face.part,
    faceSquareMeters: face.squareMeters,
    loadSquareMeters: tool['load-milliliters'] / build.wet,
    faceMinutes,
    strokeMinutes,
    openMinutes,
  };
};
