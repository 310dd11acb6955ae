import type { Widening } from '../calc/drying/coat.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { filled } from '../plain/filled.ts';

/** Why a time is a range: one sentence, empty where nothing made it wide. */
export const sayReasons = ({ range }: Pick<ClockWords, 'range'>, reasons: readonly Widening[]): string => {
  const words = reasons.map((reason) => range[reason]);
  const last = words.at(-1);
  if (!last) return '';
  const some = words.slice(0, -1).join(', ');
  return some ? filled(range.more, { some, last }) : filled(range.one, { why: last });
};
