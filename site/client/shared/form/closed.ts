/** What is said where of the hours in which no coat goes on only one end is given. */
export const BOTH_ENDS =
  'Give both: the hours from which no coat goes on, and those after which one does again. 0 where a coat goes on at any time.';

/** Whether of those hours one end is missing; zero alone says that there are none. */
export const isOneEnd = (from: number | undefined, to: number | undefined): boolean =>
  (from === undefined) !== (to === undefined) && (from ?? to) !== 0;
