/**
 * The moments of a drying film, in the order in which they come. `sand-if-beyond` is a deadline on the side:
 * from then on the next coat holds only on a sanded film.
 */
export const MILESTONES = ['open', 'touch', 'recoat', 'light-use', 'cure', 'sand-if-beyond'] as const;
export type Milestone = (typeof MILESTONES)[number];

/** Those that every film passes, one after another. */
export const CHAIN = ['open', 'touch', 'recoat', 'light-use', 'cure'] as const satisfies readonly Milestone[];
export type ChainMilestone = (typeof CHAIN)[number];

/**
 * What a can may print a time for: those, from when it may be handled, and from when till when no coat goes on. Those
 * are no links of the chain: one can has them before the next coat, another behind.
 */
export const PRINTED = [...MILESTONES, 'handle', 'no-coat'] as const;
export type Printed = (typeof PRINTED)[number];

/** What each moment is called in a sentence. */
export const MILESTONE_WORDS: Readonly<Record<Printed, string>> = {
  open: 'end of open time',
  touch: 'time to dry to touch',
  recoat: 'time to recoat',
  'light-use': 'time to light use',
  cure: 'time to full cure',
  'sand-if-beyond': 'time beyond which to sand before recoating',
  handle: 'time to handle',
  'no-coat': 'time closed to coats',
};
