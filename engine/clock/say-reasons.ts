import { WIDENING_WORDS, type Widening } from '../calc/drying/coat.ts';

/** Why a time is a range: one sentence, empty where nothing made it wide. */
export const sayReasons = (reasons: readonly Widening[]): string => {
  const words = reasons.map((reason) => WIDENING_WORDS[reason]);
  const last = words.at(-1);
  if (!last) return '';
  const rest = words.slice(0, -1).join(', ');
  return `A range, because ${rest ? `${rest} and ${last}` : last}.`;
};
