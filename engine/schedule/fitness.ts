import type { Plan } from '../model/plan.ts';
import type { Job, PlanProduct } from './job.ts';

export type FitnessRow = Plan['fitness'][number];

const named = <T>(list: readonly T[] | undefined, value: T): boolean => !list || list.includes(value);

/** What speaks against this product for this use, the hardest first. Empty: it is fit. */
export const fitnessOf = (plan: Plan, job: Job, product: PlanProduct): readonly FitnessRow[] =>
  plan.fitness
    .filter(
      (row) =>
        named(row.families, product.family) &&
        named(row.products, product.id as never) &&
        named(row.wear, job.wear) &&
        named(row.bases, job.base) &&
        named(row.tones, job.tone) &&
        named(row.sheens, job.sheen) &&
        (!row.trials || row.trials.some((trial) => job.trials.includes(trial))),
    )
    .sort((one, two) => Number(two.verdict === 'no') - Number(one.verdict === 'no'));

/** How long the base must have dried before this product, hours at 20 °C; nothing where it need not. */
export const baseWait = (plan: Plan, job: Job, product: PlanProduct): Plan['waits'][number] | undefined =>
  plan.waits.find((row) => row.bases.includes(job.base) && named(row.families, product.family));

const OIL_BASES: readonly Job['base'][] = ['stain', 'oil-paint'];
const TABLE_CELSIUS = 20;

/**
 * Hours that the base needs in the air at hand, day and night in equal parts. An oil takes about twice as long for each
 * 10 °C below the tables' 20 °C: common practice, no source. Warmth is not counted on to hasten it.
 */
export const baseHoursOf = ({ base, day, night }: Job, { hours }: Plan['waits'][number]): number => {
  const below = TABLE_CELSIUS - (day.celsius + night.celsius) / 2;
  return OIL_BASES.includes(base) ? hours * Math.max(1, 2 ** (below / 10)) : hours;
};
