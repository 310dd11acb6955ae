import { newCard } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import type { CanLabel, Job } from '#engine/schedule.ts';
import { cardUrl } from '../../../shared/jobs-urls.ts';
import { newId } from '../../shared/id.ts';
import { askToStay } from '../../shared/persist.ts';
import { addCard } from '../store/index.ts';

const HOUR = 3_600_000;

/** Without the keys that hold nothing: the store keeps only what was told. */
const told = <T extends object>(given: CanLabel | Job['night']): T => JSON.parse(JSON.stringify(given)) as T;

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
      night: told<NonNullable<JobCard['night']>>(night),
      ...(label && { label: told<NonNullable<JobCard['label']>>(label) }),
      ...(baseHours !== undefined && { baseLaidAt: Math.round(start - baseHours * HOUR) }),
    },
    newId(),
    Date.now(),
  );
  await addCard(card);
  void askToStay();
  return cardUrl(card.id);
};
