/** The service door of the job cards: what checks cards against the schema. Pages fetch it only when they need it. */
export { refusalsOf } from './accept-card.ts';
export { jobFileOf, jobFileSchema, readJobFile } from './job-file.ts';
export { readCard } from './one-card.ts';
export { salvageCard } from './salvage-card.ts';
