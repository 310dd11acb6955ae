import type { Calendar } from '../clock/nights.ts';
import type { Build } from './build.ts';
import type { Job, PlanProduct, PlanTables } from './job.ts';

/** What every part of a plan rests on: the tables, the job, its product as the can has it, the days, and the film. */
export type Planning = {
  readonly plan: PlanTables;
  readonly job: Job;
  readonly product: PlanProduct;
  readonly calendar: Calendar;
  readonly build: Build;
};
