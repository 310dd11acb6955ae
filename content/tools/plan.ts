import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { Knowledge } from '#engine/knowledge.ts';
import { Plan } from '#engine/model/plan.ts';

const FILE = 'content/plan.yaml';

/** The tables of the finishing schedule, checked against the knowledge: every id in them must be there. */
export const readPlan = (known: Knowledge, root: string): Plan => {
  const plan = Plan.parse(parse(readFileSync(join(root, FILE), 'utf8')));
  const tables = [
    plan.coats,
    plan.film,
    plan.tools,
    plan.fitness,
    plan.waits,
    plan['test-patch'],
    plan.prepare,
  ];
  const rows = [...tables, plan.between].flat() as readonly { source?: string; grade: string }[];
  const missing = [
    ...rows.flatMap(({ source }) => (source && !known.has('source', source) ? [`source ${source}`] : [])),
    ...plan.looks.flatMap(({ defects }) =>
      defects.filter((id) => !known.has('defect', id)).map((id) => `defect ${id}`),
    ),
    ...[...plan.coats, ...plan.fitness].flatMap(({ products = [] }) =>
      products.filter((id) => !known.has('product', id)).map((id) => `product ${id}`),
    ),
    ...plan.refuse.filter((id) => !known.has('rule', id)).map((id) => `rule ${id}`),
  ];
  const bare = rows.filter(
    ({ source, grade }) => !source && (grade === 'published' || grade === 'from-memory'),
  );
  if (bare.length)
    throw new Error(`${FILE}: ${bare.length} rows are ${bare[0]?.grade} and name no source; add it`);
  if (missing.length) throw new Error(`${FILE}: there is no ${missing.join(', no ')}; correct the id`);
  return plan;
};
