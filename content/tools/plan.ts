import type { WeatherWords } from '#engine/calc/say-weather.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { Plan } from '#engine/model/plan.ts';
import { readClockWords } from './clock-words.ts';
import type { ContentRoot } from './files.ts';
import { type Mention, orThrow, readTable, type Table } from './table.ts';

const mentions = (plan: Plan): Mention[] => [
  ...plan.looks.flatMap(({ defects }, row) =>
    defects.map((id, at): Mention => ({ kind: 'defect', id, path: ['looks', row, 'defects', at] })),
  ),
  ...(['coats', 'fitness'] as const).flatMap((table) =>
    plan[table].flatMap(({ products = [] }, row) =>
      products.map((id, at): Mention => ({ kind: 'product', id, path: [table, row, 'products', at] })),
    ),
  ),
  ...plan.turn.handled.flatMap(({ products = [] }, row) =>
    products.map(
      (id, at): Mention => ({ kind: 'product', id, path: ['turn', 'handled', row, 'products', at] }),
    ),
  ),
  ...plan.picks.map(
    ({ product: id }, row): Mention => ({ kind: 'product', id, path: ['picks', row, 'product'] }),
  ),
  ...plan.refuse.map((id, at): Mention => ({ kind: 'rule', id, path: ['refuse', at] })),
];

/** The tables of the finishing schedule, or every fault in them. */
export const planTable = (known: Knowledge, root: ContentRoot): Table<Plan> =>
  readTable(known, root, 'content/plan.yaml', Plan, mentions);

/**
 * The tables of the finishing schedule, and what it says of weather in the words of the clock; throws every fault as a
 * line `file:line: what; what to do`.
 */
export const readPlan = (known: Knowledge, root: ContentRoot): Plan & { readonly words: WeatherWords } => {
  const plan = orThrow(planTable(known, root));
  const { weather, 'weather-before': before, 'weather-while': during } = readClockWords(root);
  return { ...plan, words: { weather, 'weather-before': before, 'weather-while': during } };
};
