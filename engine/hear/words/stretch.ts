import type { Match } from './match.ts';

/** A stretch of words as a match that names nothing: to ask how it is said needs no more than its place. */
export const stretch = (from: number, to: number): Match => ({
  sense: '',
  kind: '',
  of: [],
  from,
  to,
  size: 2,
});
