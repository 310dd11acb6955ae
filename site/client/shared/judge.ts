import { type Judgement, judgeLaying, type Laying, noesOfAll } from '#engine/fitness.ts';
import { planRules } from '../../shared/plan-rules.ts';
import type { Units } from './form/units.ts';
import { planTables } from './plan-tables.ts';

/** When the coat would be laid, epoch milliseconds, and the units that numbers are said in. */
type How = { readonly at?: number; readonly units: Units };

/**
 * What is to be said of a coat before it is laid; nothing of a product that is not known here, or of air that can not be
 * read. What fits on what is one judgement, the same as in a plan.
 */
export const judgeCoat = async (
  product: string,
  laying: Laying,
  how: How,
): Promise<Judgement | undefined> => {
  const { celsius, relativeHumidity } = laying.day;
  if (!Number.isFinite(celsius) || !Number.isFinite(relativeHumidity)) return undefined;
  const data = await planTables();
  const found = data.products.find(({ id }) => id === product);
  return found && judgeLaying(data.plan, planRules(data), laying, found, { ...how, dries: true });
};

/** What forbids a coat of which only the kind is known, the `family` of the facts. */
export const noesOfKind = async (
  family: unknown,
  laying: Laying,
  units: Units,
): Promise<Judgement['noes']> => {
  const data = await planTables();
  const products = data.products.filter((product) => product.family === family);
  return noesOfAll(data.plan, planRules(data), laying, products, units);
};
