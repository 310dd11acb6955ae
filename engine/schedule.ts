/** The finishing schedule. It has no clock of its own: a start and a calendar come in, epoch milliseconds go out. */
export type { Units } from './calc/units.ts';
export { type Calendar, nightOf } from './clock/nights.ts';
export type { No } from './fitness/no.ts';
export { fitnessOf } from './fitness/rows.ts';
export { type Can, cansFor, litersOf } from './schedule/amount.ts';
export { type Build, buildOf } from './schedule/build.ts';
export { type Dates, datesOf, type Use } from './schedule/dates.ts';
export type { Night } from './schedule/dry.ts';
export type {
  BothFaces,
  CanLabel,
  Job,
  LoosePart,
  Part,
  Parts,
  PlanProduct,
  Trial,
  Turning,
  Wear,
} from './schedule/job.ts';
export type { Face } from './schedule/layings.ts';
export type { CoatTimes, Outcome, Planned, Refusal } from './schedule/outcome.ts';
export { areaOf, largestFace } from './schedule/piece.ts';
export { schedule } from './schedule/plan.ts';
export { sayStep } from './schedule/say-step.ts';
export type { PlanStep } from './schedule/steps.ts';
export { type WetEdge, wetEdgeOf } from './schedule/wet-edge.ts';
export { firstFit } from './schedule/windows.ts';
