import { clockProduct } from '#engine/clock.ts';
import type { Knowledge } from '#engine/index.ts';
import type { Plan } from '#engine/model/plan.ts';
import type { PlanTables } from '#engine/schedule/job.ts';
import { ruleData } from './rule-data.ts';

/** What a browser needs to plan: the tables, the figures of the products, the rules, the names of the flaws. */
export const planData = (known: Knowledge, { presets: _, ...plan }: Plan & PlanTables) => ({
  plan,
  products: known.products.map((product) => ({
    id: product.id,
    ...clockProduct(product),
    ambering: product.ambering,
    'square-meters-per-liter': product['square-meters-per-liter'],
  })),
  rules: known.rules.map((rule) => ({ ...ruleData(rule), ...(rule.lead && { lead: rule.lead }) })),
  defects: Object.fromEntries(
    plan.looks.flatMap(({ defects }) => defects.map((id) => [id, known.get('defect', id).name])),
  ),
});
export type PlanData = ReturnType<typeof planData>;
