import { clockProduct } from '#engine/clock.ts';
import type { Knowledge } from '#engine/index.ts';
import { coatOfRepair, type Lays } from '#engine/jobs.ts';
import type { Care } from '#engine/model/care.ts';
import type { Choices } from '#engine/model/choices.ts';
import type { Plan } from '#engine/model/plan.ts';
import { pick } from '#engine/plain/pick.ts';
import { LEAD, TWO_PART } from './lead.ts';

const names = (entries: readonly { readonly id: string; readonly name: string }[]) =>
  Object.fromEntries(entries.map(({ id, name }) => [id, name]));

const laysOf = (known: Knowledge): Lays =>
  Object.fromEntries(
    known.remedies.flatMap(({ id, steps }) => {
      const coat = coatOfRepair(steps);
      return coat ? [[id, coat]] : [];
    }),
  );

const sourcesOf = ({ says, 'too-thick': tooThick }: Plan['sanding']): readonly string[] =>
  [...Object.values(says).flatMap(({ grounds }) => grounds), ...tooThick].flatMap(
    ({ source }) => source ?? [],
  );

/** What the job cards need beside the cards: figures of the products and what everything is called. */
export const jobsData = (
  known: Knowledge,
  plan: Plan,
  care: Care,
  bases: Choices['base']['values'],
  titleOf: (source: string) => string,
) => ({
  products: Object.fromEntries(
    known.products.map((product) => [product.id, { ...clockProduct(product), ambering: product.ambering }]),
  ),
  /** Of the plan what the dates of a hand-over rest on. */
  plan: { handle: plan.handle, airing: plan.airing, careful: plan.careful, night: plan.night },
  /** What the drawn film rests on. */
  sanding: plan.sanding,
  sources: Object.fromEntries(sourcesOf(plan.sanding).map((source) => [source, titleOf(source)])),
  bases,
  /** What stands at the head of a card with old paint that may hold lead. */
  lead: pick(known.get('rule', LEAD), 'kind', 'title', 'say'),
  /** And of one with isocyanate in its film. */
  twoPart: pick(known.get('rule', TWO_PART), 'kind', 'title', 'say'),
  care,
  defects: names(known.defects),
  remedies: names(known.remedies),
  /** Repairs that leave a top coat on the piece, which the clock has to count. */
  lays: laysOf(known),
  questions: Object.fromEntries(known.questions.map(({ id, ask }) => [id, ask])),
});
export type JobsData = ReturnType<typeof jobsData>;
