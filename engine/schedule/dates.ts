import type { Family } from '../model/family.ts';
import type { Plan } from '../model/plan.ts';
import { DAY_MS, HOUR_MS, type Stretch } from '../plain/time.ts';
import type { Job } from './job.ts';

/** When the buyer may do what, epoch milliseconds. Of a range the late end is the one to promise. */
export type Dates = {
  readonly handle: number;
  readonly lightUse: Stretch;
  readonly fullUse: Stretch;
  readonly handOver: number;
};

/** What the dates depend on, beside the film. */
export type Use = Pick<Job, 'kind' | 'trials' | 'label'> & Partial<Pick<Job, 'wear'>>;

const noSooner = ({ from, to }: Stretch, than: number): Stretch => ({
  from: Math.max(from, than),
  to: Math.max(to, than),
});

/**
 * Children and food wait for full cure, and so do water and heat that come to it daily; never less than the table says.
 * All others wait for light use.
 */
export const datesOf = (
  plan: Pick<Plan, 'careful' | 'handle' | 'airing'>,
  job: Use,
  family: Family,
  end: { readonly to: number; readonly recoat: Stretch; readonly handle?: Stretch | undefined },
  light: Stretch,
  cure: Stretch,
): Dates => {
  const careful = job.trials.length > 0 || job.kind === 'childs-item' || job.kind === 'food-surface';
  // A can that gives a cure time knows its film; without one the careful figure holds.
  const least = careful && !job.label?.minutes.cure ? end.to + plan.careful.days * DAY_MS : 0;
  const strict = job.trials.some((trial) => trial === 'child' || trial === 'food' || job.wear === 'high');
  const handle = Math.max(end.handle?.to ?? end.to + plan.handle.hours * HOUR_MS, end.recoat.to);
  // What may not be lifted yet is not used either, however early the film may be ready.
  const lightUse = noSooner(light, handle);
  const fullUse = noSooner(cure, Math.max(least, lightUse.from));
  const handOver =
    strict || job.kind === 'childs-item' || job.kind === 'food-surface' ? fullUse.to : lightUse.to;
  // An oil goes on smelling in a closed piece long after it is dry.
  const airing = plan.airing.find(({ families }) => families.includes(family))?.days ?? 0;
  return { handle, lightUse, fullUse, handOver: Math.max(handOver, handle, end.to + airing * DAY_MS) };
};
