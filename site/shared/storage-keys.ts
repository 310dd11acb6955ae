/** The names of all that is kept in `localStorage`; a name is never given a second meaning. */
export const LOCAL_KEYS = {
  /** What is known of the piece. */
  case: 'halfdry.case',
  /** From which card a walk began. */
  'card-in-hand': 'halfdry.card',
  /** How many job cards there are, and how many changes no export holds. */
  'job-marks': 'halfdry.jobs',
  /** The form of the coat clock, as typed. */
  'clock-form': 'halfdry.clock.form',
  /** Her own cans, each by its name, with what it says. */
  cans: 'halfdry.cans',
  /** That a coat runs: only so that a page keeps room for its strip. The coats themselves lie in a database. */
  'coat-runs': 'halfdry.coat-runs',
  /** What was put back from the second copies, until she has been told. */
  'cards-back': 'halfdry.jobs.back',
  'coats-back': 'halfdry.clock.back',
  /** Where the coats on the clock were kept before they had a database; read once and taken over. */
  'old-clock': 'halfdry.clock',
  /** What was practised, and when each flaw comes back. */
  practice: 'halfdry.practice',
  /** A number made of what was last told to the page that listens: words that give another came with a link. */
  'told-here': 'halfdry.told-here',
} as const;

/** And in `sessionStorage`, as long as the tab is open. */
export const SESSION_KEYS = {
  /** The form of the finishing schedule, as typed. */
  'schedule-form': 'halfdry.schedule',
  /** Which faces the first page of the visit was set in; the others keep to it. */
  face: 'halfdry.face',
} as const;

/** What second copies are made of, each kind in a cache of its own. */
export type CopyKind = 'cards' | 'photos' | 'aside' | 'removed' | 'clock';
/** Its name. The service worker clears no cache that is called so. */
export const copyName = (kind: CopyKind): string => `halfdry.copy.${kind}`;
