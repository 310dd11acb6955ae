/** The rule over old paint that may hold lead, by its id. */
export const LEAD = 'lead-before-sanding';

/** The rule that asks whether anything is mixed into a finish, by its id. */
export const MAYBE_TWO_PART = 'is-a-hardener-in-it';

/** The rule over a finish with isocyanate in it, by its id. */
export const TWO_PART = 'hardener-isocyanate';
