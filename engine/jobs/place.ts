import type { CardCoat, JobCard } from '../model/job-card.ts';
import { coatsInOrder } from './coat.ts';

/** A coat that one with another time would pass: the one `number` from the lowest, 1 or more. */
export type Passed = { readonly coat: CardCoat; readonly number: number; readonly lies: 'below' | 'above' };

/**
 * The coat that `coat` would pass if it stood on the card in place of the one with its id; nothing where the order
 * stays. Coats lie in the order of their times, so a slip in a time would turn the film upside down.
 */
export const passedBy = (card: JobCard, coat: CardCoat): Passed | undefined => {
  const before = coatsInOrder(card);
  const at = before.findIndex(({ id }) => id === coat.id);
  if (at < 0) return undefined;
  const after = coatsInOrder({ ...card, coats: before.map((one) => (one.id === coat.id ? coat : one)) });
  const now = after.findIndex(({ id }) => id === coat.id);
  if (now === at) return undefined;
  const lies = now < at ? 'below' : 'above';
  const number = lies === 'below' ? at : at + 2;
  const passed = before[number - 1];
  return passed && { coat: passed, number, lies };
};
