/** The rule over old paint that may hold lead, by its id. */
export const LEAD = 'lead-before-sanding';
