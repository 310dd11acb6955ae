import { readNumber } from '../shared/form/number.ts';
import { MOST_IN_A_SET } from './state.ts';

/** How many boards were asked for, or what is wrong with it. */
export const setSize = (
  text: string,
): { readonly count: number } | { readonly count?: never; readonly says: string } => {
  const count = readNumber(text);
  if (count === undefined || Number.isNaN(count)) return { says: 'Give the number of boards as a number.' };
  if (!Number.isInteger(count)) return { says: 'Give a whole number of boards.' };
  return count >= 1 && count <= MOST_IN_A_SET
    ? { count }
    : { says: `A set has 1 to ${MOST_IN_A_SET} boards.` };
};
