import type { LaidCoat } from './coat.ts';

/** Whether old paint on the piece may hold lead: then nothing on it is sanded before a test of every layer. */
export const mayHoldLead = (age: LaidCoat['age']): boolean => age === 'before-1993' || age === 'unknown';

/** What stands in the place of every word on sanding, the same on the clock, on a card and in a reminder. */
export const LEAD_WORDS = {
  soft: 'It is dry to the touch, but soft inside. Do not sand it: the old paint below may hold lead.',
  ready:
    'Do not sand or dull it: the old paint below may hold lead. Wipe it with a damp cloth and let it dry.',
  late: 'Do not sand or dull it: the old paint below may hold lead. Have every layer tested first; until then no further coat, for it may not hold.',
  film: 'Do not sand it, not even lightly: the old paint below may hold lead. Coat over it while it needs no sanding; have every layer tested before anything else.',
} as const;
