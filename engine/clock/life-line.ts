import { STAGES, type Stage } from '../model/stage.ts';
import type { Running } from './reading.ts';

type Band = {
  readonly stage: Stage;
  readonly from: number;
  /** Up to here the stage is sure; from here to `to` the next one may have begun. */
  readonly sure: number;
  readonly to: number;
};

/** Where each stage and `now` lie on the line from laid (0) to well cured (1). */
export type LifeLine = { readonly now: number; readonly bands: readonly Band[] };

const ENDS = ['open', 'touch', 'recoat', 'cure'] as const;
const SHARE = 1 / STAGES.length;

const part = (at: number, from: number, to: number): number =>
  to > from ? Math.min(1, Math.max(0, (at - from) / (to - from))) : 1;

/** The life of a film, each stage equally wide: it runs from minutes to weeks, so no one scale would show both. */
export const lifeLine = ({ moments }: Running, laidAt: number, now: number): LifeLine => {
  let begun = laidAt;
  let place = 0;
  const bands = STAGES.map((stage, index): Band => {
    const from = index * SHARE;
    const end = ENDS[index];
    if (!end) {
      // A cured film stays so: the mark rests in the middle of its band.
      if (now >= begun) place = from + SHARE / 2;
      return { stage, from, sure: 1, to: 1 };
    }
    const moment = moments[end];
    if (now >= begun) place = from + SHARE * part(now, begun, moment.to);
    const sure = from + SHARE * part(moment.from, begun, moment.to);
    begun = moment.to;
    return { stage, from, sure, to: from + SHARE };
  });
  return { now: place, bands };
};
