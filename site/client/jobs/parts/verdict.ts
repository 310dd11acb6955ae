import { sayNow } from '#engine/clock.ts';
import { adviceOf, coatOwed, layersOf, openFlaw } from '#engine/jobs.ts';
import type { CardFlaw, JobCard } from '#engine/model/job-card.ts';
import { clockWords } from '../../../shared/clock-words.ts';
import type { JobsData } from '../../../shared/jobs-data.ts';
import { pageUnits, sayDate } from '../../shared/say-date.ts';
import { timeStyle } from '../../shared/time-style.ts';
import { lastCoatNow } from './clock.ts';
import { nameIn } from './names.ts';

export type CardVerdict = {
  readonly verdict: string;
  /** By the clock: the late end alone, for large letters, and the early end to stand small behind it. */
  readonly large?: string;
  readonly earliest?: string | undefined;
  readonly doing: string;
  readonly why: string;
  /** The film is thicker than it should be: no other coat is offered. */
  readonly enough?: boolean;
  /** The coat that this is said of. */
  readonly coat?: string;
  /** The flaw that is asked after: was it repaired for good? */
  readonly gone?: CardFlaw;
};

/** Whether no other coat is laid as long as this is said. */
export const isNotYet = (doing: string): boolean => ['leave', 'wait', 'wipe-back'].includes(doing);

/** What the clock says of a coat alone, on a card that has many: by its number. */
const ofCoat = (number: number, why: string): string =>
  why.startsWith('It ') ? `Coat ${number} ${why.slice('It '.length)}` : `Coat ${number}. ${why}`;

/** What is to do with the piece by its last coat alone. */
const byCoat = (card: JobCard, data: JobsData, now: number): CardVerdict => {
  const last = lastCoatNow(card, data.products, now);
  if (last) {
    const { reading } = last;
    // The card knows the film of every coat, which the clock can only count.
    const { risk, pastMost } = adviceOf(data.sanding, clockWords, layersOf(card, data.products), card.age);
    const thin = risk === 'high';
    const { why, ...said } = sayNow(
      clockWords,
      // The flaw is named below.
      reading.kind === 'running' ? { ...reading, thin, pastMost, flaw: undefined } : reading,
      now,
      { ...timeStyle(), units: pageUnits() },
    );
    const { id: coat, coatNumber } = last.coat;
    return { ...said, coat, enough: pastMost !== undefined, why: ofCoat(coatNumber, why) };
  }
  return card.coats.length
    ? {
        verdict: 'No time can be told',
        doing: 'leave',
        why: 'The product of the last coat is not known here. Go by its can.',
      }
    : {
        verdict: 'No coat yet',
        doing: 'repair',
        why: 'When the first one is down, lay it here and its clock starts.',
      };
};

/** An open flaw comes before the next coat: what its walk said of waiting, or of not coating over it, still holds. */
const withFlaw = (card: JobCard, data: JobsData, by: CardVerdict): CardVerdict => {
  const open = openFlaw(card);
  if (!open) return by;
  const name = nameIn(data.defects, open.flaw.defect).toLowerCase();
  if (['leave', 'stop', 'wipe-back'].includes(by.doing))
    return { ...by, why: `${by.why} Open on this card: ${name}.` };
  if (open.repair)
    return {
      verdict: 'Look: is the flaw gone?',
      enough: by.enough ?? false,
      doing: 'wait',
      gone: open.flaw,
      why: `Repaired ${sayDate(open.repair.doneAt)}: ${name}. If not, its name below leads on from how it is now. By the clock: ${by.verdict}.`,
    };
  return {
    verdict: `First the flaw: ${name}`,
    enough: by.enough ?? false,
    doing: 'wait',
    why: `It is open. No coat over it before its own page says so. By the clock: ${by.verdict}.`,
  };
};

/** What is to do with the piece now. */
export const cardVerdict = (card: JobCard, data: JobsData, now: number): CardVerdict => {
  if (card.handedOverAt !== undefined)
    return {
      verdict: 'Handed over',
      doing: 'repair',
      why: `On ${sayDate(card.handedOverAt)}. The care card still tells the dates.`,
    };
  const owed = coatOwed(card, data.lays);
  if (owed)
    return {
      verdict: 'Hands off the coat of the repair',
      doing: 'leave',
      why: `Its clock does not run yet. Noted ${sayDate(owed.doneAt)}: ${nameIn(data.remedies, owed.remedy)}. Put its coat on the clock, with the time it was laid.`,
    };
  return withFlaw(card, data, byCoat(card, data, now));
};
