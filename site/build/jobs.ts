import { clockProduct } from '#engine/clock.ts';
import { readCare } from '../../content/tools/care.ts';
import { choices } from '../shared/choices.ts';
import { knowledge } from './knowledge.ts';
import { plan } from './plan.ts';

const names = (entries: readonly { readonly id: string; readonly name: string }[]) =>
  Object.fromEntries(entries.map(({ id, name }) => [id, name]));

/** What the job cards need beside the cards: figures of the products and what everything is called. */
export const jobsData = () => ({
  products: Object.fromEntries(
    knowledge.products.map((product) => [
      product.id,
      { ...clockProduct(product), ambering: product.ambering, 'rags-self-heat': product['rags-self-heat'] },
    ]),
  ),
  /** Of the plan what the dates of a hand-over rest on. */
  plan: { handle: plan.handle, airing: plan.airing, careful: plan.careful, night: plan.night },
  /** What the drawn film rests on. */
  sanding: plan.sanding,
  bases: choices.base.values,
  care: readCare(knowledge, process.cwd()),
  defects: names(knowledge.defects),
  remedies: names(knowledge.remedies),
  questions: Object.fromEntries(knowledge.questions.map(({ id, ask }) => [id, ask])),
});
export type JobsData = ReturnType<typeof jobsData>;
