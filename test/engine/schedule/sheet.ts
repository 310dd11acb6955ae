/** The real tables and products, and a plain job to vary in tests. */

import {
  type Calendar,
  type Job,
  type Outcome,
  type Planned,
  type PlanProduct,
  schedule,
  type Units,
} from '#engine/schedule.ts';
import { readPlan } from '../../../content/tools/plan.ts';
import { known } from '../../content/real/knowledge.ts';

export { known };
export const plan = readPlan(known, process.cwd());

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;

/** Days of 24 hours from instant 0, a Monday. */
export const calendar: Calendar = { at: (day, minute) => day * DAY + minute * MINUTE, weekday: 1 };

const preset = (id: string) => {
  const found = plan.presets.find((one) => one.id === id);
  if (!found) throw new Error(`no preset ${id}`);
  return found;
};

/** A dresser in latex paint, water-based by brush at 23 °C and 50 %, from nine to six, unless told otherwise. */
export const job = (more: Partial<Job> = {}, of = 'dresser'): Job => {
  const { piece, parts, wear, trials } = preset(of);
  return {
    piece: 'test',
    kind: piece,
    parts,
    base: 'latex-paint',
    baseHours: 48,
    tone: 'dark',
    age: 'none',
    wear,
    trials,
    product: 'water-based-polyurethane',
    sheen: 'satin',
    applicator: 'brush',
    day: { celsius: 23, relativeHumidity: 0.5 },
    night: { celsius: 18, relativeHumidity: 0.6 },
    inSun: false,
    start: 9 * HOUR,
    hours: { from: 9 * 60, to: 18 * 60, days: [true, true, true, true, true, true, true] },
    ...more,
  };
};

export const productOf = (id: string): PlanProduct => known.get('product', id) as unknown as PlanProduct;

export const outcome = (one: Job, units?: Units): Outcome =>
  schedule(plan, known, one, productOf(one.product), calendar, units);

export const planned = (one: Job): Planned => {
  const got = outcome(one);
  if (got.kind === 'no') throw new Error(`refused: ${got.why.map(({ says }) => says).join(' ')}`);
  return got;
};

/** The codes of a refusal, or `plan`. */
export const codes = (one: Job): string => {
  const got = outcome(one);
  return got.kind === 'no' ? [...new Set(got.why.map(({ code }) => code))].join(' ') : 'plan';
};
