import { z } from 'zod';

/** The words of one thing to do: the verdict in large type and what is said when several causes share it. */
export const DoingWords = z.strictObject({
  verdict: z.string().min(4).max(40).describe('The verdict in large type.'),
  say: z.string().min(12).describe('What is said where several causes share it.'),
  not: z.string().min(6).describe('What not to do now.'),
  again: z.string().min(8).describe('When to look again.'),
});
export type DoingWords = z.infer<typeof DoingWords>;
