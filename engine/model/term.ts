import { z } from 'zod';

/** A word of the trade, explained. */
export const Term = z.strictObject({
  term: z.string().min(2).describe('The word.'),
  also: z.array(z.string()).default([]).describe('Other words for it.'),
  means: z.string().min(20).describe('What it means, in one or two plain sentences.'),
  standard: z.string().optional().describe('The standard that defines it, with how it was read.'),
});
export type Term = z.infer<typeof Term>;
