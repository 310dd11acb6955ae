/** The kinds of top coat, by what they are thinned with and how they harden. */
export const FAMILIES = [
  'water-based',
  'oil-based',
  'wipe-on',
  'shellac',
  'lacquer',
  'water-lacquer',
  'wax',
  'oil',
  'hardwax-oil',
] as const;

export type Family = (typeof FAMILIES)[number];

/** Finishes that leave no film on the wood, or next to none. */
export const NO_FILM: readonly Family[] = ['wax', 'oil', 'hardwax-oil'];

/** All others: what dries as a film. */
export const WITH_FILM: readonly Family[] = FAMILIES.filter((family) => !NO_FILM.includes(family));

/** Finishes that lie in the surface: what little film they make is buffed, never sanded. */
export const UNSANDED: readonly Family[] = ['wax', 'oil'];

/** Finishes of which only what the wood takes in may stay: the surplus comes off while it is open. */
export const WIPED_OFF: readonly Family[] = ['wax', 'oil', 'hardwax-oil'];
