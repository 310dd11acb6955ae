import { clockProduct } from '#engine/clock.ts';
import type { Knowledge } from '#engine/index.ts';
import type { Plan } from '#engine/model/plan.ts';

/** What a browser needs to plan: the tables, the figures of the products, the rules, the names of the flaws. */
export const planData = (known: Knowledge, plan: Plan) => ({
  plan: { ...plan, presets: undefined },
  products: known.products.map((product) => ({
    id: product.id,
    ...clockProduct(product),
    ambering: product.ambering,
  })),
  rules: known.rules.map(({ id, kind, level, title, say, when, hazards, sure, always, ...rule }) => ({
    id,
    kind,
    level,
    title,
    say,
    when,
    hazards,
    sure,
    always,
    'unless-known-no': rule['unless-known-no'],
  })),
  defects: Object.fromEntries(
    plan.looks.flatMap(({ defects }) => defects.map((id) => [id, known.get('defect', id).name])),
  ),
});
export type PlanData = ReturnType<typeof planData>;
