import { z } from 'zod';
import { DefectId, RemedyId } from './ids.ts';
import { Claim } from './source.ts';

/** A lesson for beginners, with a practice board. */
export const Lesson = z.strictObject({
  title: z.string().min(4),
  summary: z.string().min(20),
  minutes: z.int().min(2).max(120),
  needs: z.array(z.string().min(3)).min(1),
  practice: z.array(z.string().min(12)).min(2).describe('What to do on the practice board, step by step.'),
  see: z.array(z.string().min(12)).min(1).describe('What to look for on the board.'),
  defects: z.array(DefectId).default([]),
  remedies: z.array(RemedyId).default([]),
  claims: z.array(Claim).min(1),
});
export type Lesson = z.infer<typeof Lesson>;
