import { newCard } from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import { HOUR_MS } from '#engine/plain/time.ts';
import type { Job } from '#engine/schedule.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { newId } from '../../shared/id.ts';
import { onlyDefined } from '../../shared/only-defined.ts';
import { askForLastingStorage } from '../../shared/persist.ts';
import { sayBoth } from '../../shared/say-both-faces.ts';
import { addCard } from '../store/index.ts';

/**
 * What a coat of this product is laid with: the tool of the coat below, or of the plan that the card was made of. It
 * tells the film, which the plan reckoned with too.
 */
export const toolOf = (
  { coats, product, plan }: JobCard,
  laid: string | undefined,
): CardCoat['applicator'] => {
  const last = coats.findLast((coat) => coat.product === laid)?.applicator;
  if (last || !plan || laid !== product) return last;
  const told = new URLSearchParams(plan).get('tool');
  return FACTS.applicator.values.find((tool) => tool === told);
};

/** What is mixed into it, in the same way: it is the same can. */
export const hardenerOf = (
  { coats, product, plan }: JobCard,
  laid: string | undefined,
): CardCoat['hardener'] => {
  const last = coats.findLast((coat) => coat.product === laid);
  if (last || !plan || laid !== product) return last?.hardener;
  const told = new URLSearchParams(plan).get('hardener');
  return FACTS.hardener.values.find((hardener) => hardener === told);
};

/**
 * What a card is to know of parts that are turned: it counts the film of one face, so a coat that is on it twice would
 * be twice as thick.
 */
export const notesOf = ({ both }: Pick<Job, 'both'>): string =>
  both
    ? `Planned with ${sayBoth(both)}. Note the coats of the front here, and not those of the back: the film is counted on one face. When the backs are coated, and when it is turned, stands in the plan.`
    : '';

/** Makes a job card of a plan and keeps it; the address of the card. Throws a `JobsFault`. */
export const cardFromPlan = async (job: Job, link: string): Promise<string> => {
  const { piece, kind, base, tone, age, sheen, product, parts, trials, label, baseHours, start, night } = job;
  const card = newCard(
    {
      name: piece,
      kind,
      base,
      tone,
      age,
      sheen,
      product,
      parts,
      trials: [...trials],
      plan: link.replace(/^#/, ''),
      notes: notesOf(job),
      night: onlyDefined(night),
      ...(label && { label: onlyDefined(label) }),
      ...(baseHours !== undefined && { baseLaidAt: Math.round(start - baseHours * HOUR_MS) }),
    },
    newId(),
    Date.now(),
  );
  await addCard(card);
  void askForLastingStorage();
  return jobCardUrl(card.id);
};
