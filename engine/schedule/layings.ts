import type { Turning } from './job.ts';

/** A face of what is turned. The front is the one that is seen. */
export type Face = 'back' | 'front';

/** One coat on one face, from 1; without a face where nothing is turned. */
export type Laying = { readonly face?: Face | undefined; readonly number: number };

/**
 * What is laid, in order. The front comes last either way: its last coat is never laid on points, nor on anything else.
 */
export const layingsOf = (coats: number, turned: Turning | undefined): readonly Laying[] => {
  const numbers = Array.from({ length: coats }, (_, index) => index + 1);
  const on = (face: Face) => (number: number) => ({ face, number });
  if (!turned) return numbers.map((number) => ({ number }));
  return turned === 'each-face'
    ? [...numbers.map(on('back')), ...numbers.map(on('front'))]
    : numbers.flatMap((number) => [on('back')(number), on('front')(number)]);
};
