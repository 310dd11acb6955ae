import type { No } from '../fitness/no.ts';
import type { Job, PlanTables } from './job.ts';

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
export const tooShort = ({ hours }: Pick<Job, 'hours'>, minutes: number): No => ({
  code: 'hours',
  says: hours.days.some(Boolean)
    ? `One session takes about ${minutes} minutes without a stop, and your hours leave ${Math.max(0, hours.to - hours.from)}.`
    : 'No day of the week is ticked.',
  instead: 'Give longer hours, or plan the piece in parts: top one day, sides the next.',
});
