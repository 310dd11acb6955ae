import { z } from 'zod';
import { BoardRecipe } from './board/recipe.ts';
import { FAMILIES } from './family.ts';
import { DefectId, QuestionId } from './ids.ts';
import { Change } from './remedy.ts';
import { Claim, Ground } from './source.ts';
import { Branch } from './tree.ts';

/** What a defect shows for a question: always, mostly (some nine times in ten), or both alike. */
export const SIGNS = ['yes', 'no', 'mostly-yes', 'mostly-no', 'either'] as const;
export type Sign = (typeof SIGNS)[number];

export const Defect = z.strictObject({
  name: z.string().min(4).describe('The name that she would use, in plain words.'),
  summary: z.string().min(20).describe('What it is, in one or two sentences.'),
  'while-wet': z
    .string()
    .min(40)
    .max(200)
    .describe(
      'What she must hear of it while the coat is wet or setting: is it normal, does it go, what makes it worse.',
    ),
  'at-once': z
    .string()
    .min(40)
    .max(240)
    .optional()
    .describe('What is done this minute, before anything is asked: a spill that stands there.'),
  'at-once-for': z
    .enum(['spill', 'coat'])
    .optional()
    .describe(
      'When that is said of a story: where it tells of a fresh spill, or of a coat that may still be fresh.',
    ),
  'while-setting': z
    .string()
    .min(40)
    .max(200)
    .optional()
    .describe(
      'The same once it sets, where the hands of a wet coat are right no more: oil is wiped while it is wet.',
    ),
  'while-wet-rests-on': Ground.describe('How we know what while-wet and while-setting say.'),
  also: z.array(z.string().min(3)).min(4).describe('Other names and what people type, in lay words.'),
  standard: z
    .array(z.strictObject({ term: z.string(), in: z.string() }))
    .default([])
    .describe('The term of a standard, and which standard.'),
  covers: z
    .array(z.string())
    .default([])
    .describe('Entries of the evidence that this page answers for (names of the flaws merged here).'),
  often: z
    .enum(['common', 'occasional', 'rare'])
    .describe('How often a refinisher meets it; the search for the flaw weighs it.'),
  families: z.array(z.enum(FAMILIES)).min(1).describe('Kinds of top coat that it is met on.'),
  looks: z.string().min(20).describe('What it looks like and feels like, wet, dry and in low side light.'),
  shows: z.string().min(8).describe('When it shows.'),
  signs: z.partialRecord(QuestionId, z.enum(SIGNS)).describe('Question → what this defect shows.'),
  'look-alikes': z.array(DefectId).describe('Defects that are mistaken for this one.'),
  tree: Branch.describe('The conversation: questions, each with a yes and a no, down to a repair or an end.'),
  after: z
    .strictObject({
      rest: z
        .string()
        .min(20)
        .max(220)
        .describe('Whether the rest of the piece is at risk, and how to see it.'),
      buyer: z
        .string()
        .min(20)
        .max(220)
        .optional()
        .describe('What a buyer has to be told, where there is anything.'),
    })
    .optional()
    .describe('What to think of once it is mended. Common practice, no source.'),
  prevent: z.array(z.string().min(8)).min(1).describe('What prevents it, one thing a line.'),
  boards: z
    .array(BoardRecipe)
    .max(4)
    .default([])
    .describe('Recipes of its pictures, the one that tells it best first.'),
  claims: z.array(Claim).min(1).describe('Every statement that matters, and how we know it.'),
  changes: z.array(Change).default([]).describe('What changed, and when; the oldest with its day alone.'),
});
export type Defect = z.infer<typeof Defect>;
