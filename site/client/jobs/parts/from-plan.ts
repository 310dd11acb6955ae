import type { LaidCoat } from '#engine/clock.ts';
import { newCard } from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import type { CardCoat, JobCard } from '#engine/model/job-card.ts';
import { HOUR_MS } from '#engine/plain/time.ts';
import type { Job } from '#engine/schedule.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { CAN_FIELDS } from '../../clock/fields.ts';
import { canDraft, labelOf } from '../../clock/refill.ts';
import type { Touched } from '../../clock/standing.ts';
import { newId } from '../../shared/id.ts';
import { onlyDefined } from '../../shared/only-defined.ts';
import { askForLastingStorage } from '../../shared/persist.ts';
import { LOOSE, sayBoth } from '../../shared/say-both-faces.ts';
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

/** Whether the plan of a card coats parts on both faces, of those that the piece has. */
export const onBothFaces = ({ plan = '', parts }: Pick<JobCard, 'plan' | 'parts'>): boolean => {
  const told = new URLSearchParams(plan).get('both')?.split(',') ?? [];
  return LOOSE.some((part) => told.includes(part) && (parts?.[part]?.count ?? 0) > 0);
};

/** What its can says, in the same way. */
export const canOf = ({ coats, product, label }: JobCard, laid: string | undefined): LaidCoat['label'] => {
  const last = coats.findLast((coat) => coat.product === laid)?.label;
  return (last ?? (laid === product ? label : undefined)) as LaidCoat['label'];
};

/**
 * A coat whose form held the can of its card: untouched it stays with the card, and what the form does not ask of a can
 * (limits, coverage, solids) goes along with what was changed.
 */
export const withCan = (card: JobCard, laid: LaidCoat): LaidCoat => {
  const can = canOf(card, laid.product);
  if (!can || !laid.label) return laid;
  // Rounded as in the form, whose units may be either.
  const touched: Touched = (...names) =>
    (['us', 'metric'] as const).every((units) => {
      const [was, is] = [canDraft(can, units), canDraft(laid.label, units)];
      return names.some((name) => was[name] !== is[name]);
    });
  if (touched(...CAN_FIELDS)) return { ...laid, label: labelOf({ label: can }, laid, touched) };
  return { ...laid, label: can === card.label ? undefined : can };
};

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
