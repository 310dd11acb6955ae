/** The service door of the job cards: what checks cards against the schema. Pages fetch it only when they need it. */
export { type JobFileRead, jobFileOf, jobFileSchema, readJobFile } from './job-file.ts';
export { type CardRead, readCard } from './one-card.ts';
