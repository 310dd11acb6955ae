import { z } from 'zod';
import { BoardRecipe } from './board/recipe.ts';
import { Condition } from './condition.ts';
import { Claim } from './source.ts';
import { STAGES } from './stage.ts';

/** How an answer is found. `probe` needs a drop of water, tape, a rag or a tool. */
export const SENSES = ['look', 'touch', 'smell', 'remember', 'probe'] as const;

/** A yes/no question that a beginner can answer. It sets one fact, named like the question. */
export const Question = z.strictObject({
  ask: z
    .string()
    .min(8)
    .regex(/\?$/, 'end the question with a question mark')
    .describe('The question, in plain words.'),
  how: z.string().min(12).describe('How to check, in one sentence.'),
  by: z.enum(SENSES).describe('The sense or means that answers it.'),
  'safe-from': z
    .enum(STAGES)
    .describe('The first drying stage at which the check harms nothing: wet = always safe to do.'),
  yes: z.string().min(4).describe('What yes is like.'),
  no: z.string().min(4).describe('What no is like.'),
  sure: z.string().min(12).describe('The cheapest way to make certain, for someone who cannot tell.'),
  'on-the-piece': z
    .string()
    .min(12)
    .optional()
    .describe(
      'How it is told, or counted, on a piece that came finished: without the can, the day or whoever laid it. Needed where both checks rest on one of these.',
    ),
  effort: z.int().min(1).max(3).describe('1 at a glance, 2 takes a moment, 3 needs a tool or a wait.'),
  known: z
    .array(z.strictObject({ when: Condition, answer: z.enum(['yes', 'no']) }))
    .default([])
    .describe('When other facts already give the answer, so that it is never asked.'),
  usually: z
    .enum(['yes', 'no'])
    .optional()
    .describe('What flaws show that do not give a sign for it: for a question about one special mark, no.'),
  'every-flaw': z
    .enum(['yes', 'no', 'mostly-yes', 'mostly-no', 'either'])
    .optional()
    .describe('For a first question, asked of every flaw: what those show that say nothing of it.'),
  boards: z
    .strictObject({ yes: BoardRecipe, no: BoardRecipe })
    .optional()
    .describe('The pair of boards; needed where the question is answered by looking at the film.'),
  'no-boards': z
    .string()
    .optional()
    .describe('Why a looking question has no pair (it is read off the can, say).'),
  claims: z.array(Claim).default([]).describe('Statements that the question rests on, and how we know them.'),
});
export type Question = z.infer<typeof Question>;
