import { cameFromHere } from '../shared/came-from-here.ts';
import { keep, recall } from '../shared/storage.ts';
import { NOTHING_TOLD, type TellState, writeState } from './state.ts';

/** A number made of the words, so that they need not be kept. */
const markOf = (state: TellState): number => {
  let mark = 0;
  for (const letter of writeState(state)) mark = (Math.imul(mark, 31) + letter.charCodeAt(0)) >>> 0;
  return mark;
};

/** Notes that these words were told in this browser. */
export const markAsOwn = (state: TellState): void => {
  keep('told-here', markOf(state));
};

/** Whether the words came with a link from elsewhere, and were not told here. */
export const isOfSomebodyElse = (state: TellState): boolean =>
  !cameFromHere() && writeState(state) !== writeState(NOTHING_TOLD) && recall('told-here') !== markOf(state);
