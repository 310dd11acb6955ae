import type { Span } from '../plain/span.ts';
import { HOUR_MS } from '../plain/time.ts';

/**
 * Why the next coat holds only on a dulled film. `always`: a can that dries fast is too hard before one that dries slowly
 * is surely ready, so there is no time for an unsanded coat; `perhaps` and `surely`: that time is over.
 */
export type Late = 'always' | 'perhaps' | 'surely';

/** To look, rub, wipe and lay takes about so long: a shorter time for an unsanded coat is none. Common practice, no source. */
const LEAST_WINDOW = HOUR_MS;

/** Whether the film may be too hard for an unsanded coat before, or hardly after, it is surely ready for one. */
export const hasNoWindow = (deadline: Span, recoat: Span): boolean =>
  deadline.from < recoat.to + LEAST_WINDOW;

/** Why a coat laid at `at` needs a dulled film; nothing where it may go on as it is. */
export const lateAt = (at: number, deadline: Span | undefined, recoat: Span): Late | undefined => {
  if (!deadline) return undefined;
  if (at >= deadline.to) return 'surely';
  if (hasNoWindow(deadline, recoat)) return 'always';
  return at >= deadline.from ? 'perhaps' : undefined;
};
