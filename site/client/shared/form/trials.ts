import type { Trial } from '#engine/schedule.ts';

/** What a piece may meet, in the order of the form. */
export const TRIALS = ['water', 'heat', 'child', 'food'] as const satisfies readonly Trial[];
