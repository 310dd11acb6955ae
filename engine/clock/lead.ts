import type { LaidCoat } from './coat.ts';

/**
 * Whether old paint on the piece may hold lead: then nothing on it is sanded before a test of every layer. What is said in
 * the place of every word on sanding stands in content/clock.yaml.
 */
export const mayHoldLead = (age: LaidCoat['age']): boolean => age === 'before-1993' || age === 'unknown';
