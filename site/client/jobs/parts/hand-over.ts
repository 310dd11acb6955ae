import { careOf } from '#engine/jobs/care.ts';
import { datesOfCard } from '#engine/jobs/care-dates.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { lower } from '#engine/plain/text.ts';
import { calendarAt } from '../../shared/calendar.ts';
import { sayLongDate } from '../../shared/say-date.ts';
import type { JobsData } from './data.ts';
import { cardVerdict } from './verdict.ts';

/** Why a piece is not handed over now, in a sentence; nothing where it may be. */
export const handOverRefusal = (card: JobCard, data: JobsData, now: number): string | undefined => {
  const dates = datesOfCard(card, data.products, data.plan, calendarAt);
  const care = careOf(card, data.products, data.care, dates);
  if (care.kind === 'no') return `Not to be handed over. ${care.why.map(({ say }) => say).join(' ')}`;
  if (!card.coats.length)
    return 'Not to be handed over yet: no coat is on the card. Note the coats first, so that the care card tells the right dates.';
  const { doing, verdict } = cardVerdict(card, data, now);
  return doing === 'leave' || doing === 'wipe-back'
    ? `Not to be handed over yet: ${lower(verdict)}. A film that may not be touched is not carried away.`
    : undefined;
};

/** Why a piece is better not handed over yet, though it may be; nothing from its day on. */
export const handOverDoubt = (card: JobCard, data: JobsData, now: number): string | undefined => {
  const dates = datesOfCard(card, data.products, data.plan, calendarAt);
  return dates.kind === 'dates' && now < dates.handOver
    ? `By its dates it is ready to hand over on ${sayLongDate(dates.handOver)}. Until then wrapping, stacking and loads mark the film.`
    : undefined;
};
