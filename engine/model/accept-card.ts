import { isOneOf } from '../plain/entry-of.ts';
import type { CardFault } from './card-fault.ts';
import { CARD_LISTS, MOST } from './card-limits.ts';
import type { JobCard } from './job-card.ts';
import { type CardRead, readCard } from './one-card.ts';

/** What would not be read back: the field by its name on the card, and a sentence to stand beside it. */
type Refusal = { readonly field: string; readonly says: string };

/** Fields that hold an instant, by the last part of their name. */
const INSTANTS = /(At|at)$/;

const whole = (field: string, { says }: CardFault, card: JobCard): string => {
  if (isOneOf(CARD_LISTS, field) && card[field].length > MOST[field])
    return `A card holds ${MOST[field]} ${field} at most, so nothing was added. Begin a second card for this piece.`;
  if (field === 'madeAt' || field === 'changedAt')
    return 'The clock of this device shows a day that cannot be right, so nothing was kept. Set it, then try again.';
  if (INSTANTS.test(field.split(', ').at(-1) ?? ''))
    return 'This day lies before 1970 or after 2199, so it was not kept. Give the whole year.';
  return `This ${says}`;
};

/** The same reader, over the same text that storage holds. */
const readBack = (card: JobCard): CardRead<JobCard> => {
  try {
    return readCard(JSON.parse(JSON.stringify(card)));
  } catch {
    return readCard(undefined);
  }
};

/**
 * Why a card that is about to be kept would not be read back, a sentence a field; empty where it would. Ask it before a
 * change is shown as taken. Never throws.
 */
export const refusalsOf = (card: JobCard): readonly Refusal[] => {
  const read = readBack(card);
  if (read.ok) return [];
  return read.faults.map((fault) => ({ field: fault.field, says: whole(fault.field, fault, card) }));
};
