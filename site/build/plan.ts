import { clockProduct } from '#engine/clock.ts';
import { readPlan } from '../../content/tools/plan.ts';
import { knowledge } from './knowledge.ts';

/** The tables of the finishing schedule. */
export const plan = readPlan(knowledge, process.cwd());

/** What a browser needs to plan: the tables, the figures of the products, the rules, the names of the flaws. */
export const planData = () => ({
  plan: { ...plan, presets: undefined },
  products: knowledge.products.map((product) => ({
    id: product.id,
    ...clockProduct(product),
    ambering: product.ambering,
  })),
  rules: knowledge.rules.map(({ id, kind, level, title, say, when, hazards, sure, always, ...rule }) => ({
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
    plan.looks.flatMap(({ defects }) => defects.map((id) => [id, knowledge.get('defect', id).name])),
  ),
});
export type PlanData = ReturnType<typeof planData>;
