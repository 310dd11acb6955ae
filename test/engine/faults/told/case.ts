import type { Fault } from '#engine/faults/issue.ts';

/** An invented fault, what its sentence must name of what is wrong, and of what to do. */
export type Case = readonly [fault: Fault, inWhat: readonly string[], inMend: readonly string[]];
export const near = { nearest: 'qnear' };
export const far = { nearest: undefined };
