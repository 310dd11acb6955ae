import type { Plan } from '../model/plan.ts';
import { isOneOf } from '../plain/entry-of.ts';
import type { Laying, LayingProduct } from './laying.ts';

export type FitnessRow = Plan['fitness'][number];
export type BaseWait = Plan['waits'][number];

/** Whether a row that names these speaks of this; what is not known no row speaks of. */
export const named = (list: readonly string[] | undefined, value: string | undefined): boolean =>
  !list || isOneOf(list, value);

/** What speaks against this product for this use, the hardest first. Empty: it is fit. */
export const fitnessOf = (
  plan: Pick<Plan, 'fitness'>,
  { wear, base, ownBelow, tone, sheen, trials }: Laying,
  product: LayingProduct,
): readonly FitnessRow[] =>
  plan.fitness
    .filter(
      (row) =>
        named(row.families, product.family) &&
        named(row.products, product.id) &&
        named(row.wear, wear) &&
        named(row.bases, base) &&
        named(row.below, ownBelow?.family) &&
        named(row.tones, tone) &&
        named(row.sheens, sheen) &&
        (!row.trials || row.trials.some((trial) => trials?.includes(trial))),
    )
    .sort((one, two) => Number(two.verdict === 'no') - Number(one.verdict === 'no'));

/** How long the base must have dried before this product, hours at 20 °C; nothing where it need not. */
export const baseWait = (
  plan: Pick<Plan, 'waits'>,
  { base }: Laying,
  product: LayingProduct,
): BaseWait | undefined =>
  plan.waits.find((row) => named(row.bases, base) && named(row.families, product.family));

const OIL_BASES: readonly Laying['base'][] = ['stain', 'oil-paint'];
const TABLE_CELSIUS = 20;

/**
 * Hours that the base needs in the air at hand, day and night in equal parts. An oil takes about twice as long for each
 * 10 °C below the tables' 20 °C: common practice, no source. Warmth is not counted on to hasten it.
 */
export const baseHoursOf = ({ base, day, night }: Laying, { hours }: BaseWait): number => {
  const below = TABLE_CELSIUS - (day.celsius + (night ?? day).celsius) / 2;
  return OIL_BASES.includes(base) ? hours * Math.max(1, 2 ** (below / 10)) : hours;
};
