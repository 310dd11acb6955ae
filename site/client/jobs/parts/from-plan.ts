import { newCard } from '#engine/jobs.ts';
import type { Job } from '#engine/schedule.ts';
import { HOUR } from '#engine/time.ts';
import { jobCardUrl } from '../../../shared/jobs-urls.ts';
import { newId } from '../../shared/id.ts';
import { onlyDefined } from '../../shared/only-defined.ts';
import { askForLastingStorage } from '../../shared/persist.ts';
import { addCard } from '../store/index.ts';

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
      night: onlyDefined(night),
      ...(label && { label: onlyDefined(label) }),
      ...(baseHours !== undefined && { baseLaidAt: Math.round(start - baseHours * HOUR) }),
    },
    newId(),
    Date.now(),
  );
  await addCard(card);
  void askForLastingStorage();
  return jobCardUrl(card.id);
};
