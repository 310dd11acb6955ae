import { z } from 'zod';

/** The words of one thing to do: the verdict in large type and what is said when several causes share it. */
export const DoingWords = z.strictObject({
  verdict: z.string().min(4).max(40),
  say: z.string().min(12),
  not: z.string().min(6),
  again: z.string().min(8).describe('When to look again.'),
});
export type DoingWords = z.infer<typeof DoingWords>;
