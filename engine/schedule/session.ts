import type { No } from '../fitness/no.ts';
import { filled } from '../plain/filled.ts';
import type { Job, PlanTables } from './job.ts';
import type { Planning } from './planning.ts';

/** A part of the plan, or what forbids it. */
export type Fits<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly no: No };

/** A part of a session is told in steps of five minutes. */
const STEP = 5;

/** Minutes as they are told. */
export const roundedUp = (minutes: number): number => Math.ceil(minutes / STEP) * STEP;

/** Minutes to sand a whole coat, and to lay one with this tool. */
export const workOn = (
  { work, tools }: Pick<PlanTables, 'work' | 'tools'>,
  { applicator }: Pick<Job, 'applicator'>,
  squareMeters: number,
): { readonly sand: number; readonly lay: number } => {
  const pace = tools.find((tool) => tool.applicator === applicator)?.['square-meters-per-minute'];
  return {
    sand: roundedUp(work['sand-minutes-per-square-meter'] * squareMeters),
    lay: roundedUp(work['set-up-minutes'] + (pace ? squareMeters / pace : 0)),
  };
};

/** Her hours hold no session of so many minutes. */
export const tooShort = ({ plan, job: { hours } }: Pick<Planning, 'plan' | 'job'>, minutes: number): No => {
  const { 'no-day': never, 'hours-too-short': short } = plan.noes;
  const left = String(Math.max(0, hours.to - hours.from));
  return {
    code: 'hours',
    says: hours.days.some(Boolean) ? filled(short.why, { session: String(minutes), hours: left }) : never.why,
    instead: short.instead,
  };
};
