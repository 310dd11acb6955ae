import { CHAIN } from '../calc/drying/milestone.ts';
import { STAGES, type Stage } from '../model/stage.ts';
import { MINUTE, type Running } from './reading.ts';

/** Where each stage lies on the line from laid (0) to cured (1). `sure` to `to`: the next one may have begun. */
export type LifeLine = {
  readonly now: number;
  readonly bands: readonly {
    readonly stage: Stage;
    readonly from: number;
    readonly sure: number;
    readonly to: number;
  }[];
};

const ENDS = CHAIN.filter((milestone) => milestone !== 'light-use');
/** A cured film goes on for ever; the line gives it a little room. */
const CURED_SHARE = 0.06;

/** The life of a film on a line where each doubling takes the same room, since it runs from minutes to weeks. */
export const lifeLine = ({ moments }: Running, laidAt: number, now: number): LifeLine => {
  const minutes = (at: number) => Math.max(0, at - laidAt) / MINUTE;
  const whole = Math.log1p(minutes(moments.cure.to)) / (1 - CURED_SHARE);
  const place = (at: number) => Math.min(1, Math.log1p(minutes(at)) / whole);
  let before = 0;
  const bands = STAGES.map((stage, index) => {
    const end = ENDS[index];
    const moment = end && moments[end];
    const band = {
      stage,
      from: before,
      sure: moment ? place(moment.from) : 1,
      to: moment ? place(moment.to) : 1,
    };
    before = band.to;
    return { ...band, sure: Math.max(band.from, band.sure) };
  });
  return { now: place(now), bands };
};
