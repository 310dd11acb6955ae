/**
 * How sure the ear is of what it heard, in steps. Only their order and the bar (`SURE` of heard.ts, 0.7) matter; they were
 * ordered by hand and weighed on the open posts (test/words/README.md).
 */

/** Words are never taken for surer. */
export const MOST = 0.95;
/** Told from the last coat on: it goes before all other times. */
export const OF_THE_LAST = MOST;
/** Said outright, in a number or with its unit: "68 °F", "two days ago". */
export const OUTRIGHT = 0.92;
/** Said so that one other reading is left: "three thin coats", "9:30 … 1 pm". */
export const PLAINLY = 0.85;
/** Said, and borne out by what stands beside it. */
export const SAID = 0.8;
/** Follows from what is said, with the usual meaning of the words. */
export const FOLLOWS = 0.74;
/** Just enough to be taken as told. */
export const JUST = 0.72;
/** Doubted: it is likely, and not taken as told. */
export const DOUBTED = 0.6;
/** As likely as not. */
export const HALF = 0.5;
