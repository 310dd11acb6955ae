import { z } from 'zod';
import { DefectId, RemedyId, RuleId, TermId } from './ids.ts';
import { Claim } from './source.ts';

/** The parts of the course, in their order. */
export const LESSON_PARTS = [
  'before',
  'ready',
  'laying',
  'between',
  'wax-and-below',
  'safe',
  'sold',
] as const;

/** What is drawn for a lesson from the engine's own figures. */
export const LESSON_DRAWINGS = [
  'drying',
  'strokes',
  'film-build',
  'low-light',
  'grooves',
  'dew-point',
] as const;

/** A lesson for beginners, with a practice board. */
export const Lesson = z.strictObject({
  title: z.string().min(4).describe('What is learned, in a few words.'),
  summary: z.string().min(20).describe('What it is about, in one sentence.'),
  part: z.enum(LESSON_PARTS).describe('The part of the course that it stands in.'),
  place: z.int().min(1).max(99).describe('Where it stands in the whole course, 1 first.'),
  minutes: z.int().min(2).max(120).describe('Work on the practice board, waits left out.'),
  wait: z
    .string()
    .min(4)
    .optional()
    .describe('How long it takes with the waits, where a coat must dry: "Two days".'),
  needs: z.array(z.string().min(3)).min(1).describe('What must lie ready.'),
  practice: z.array(z.string().min(12)).min(2).describe('What to do on the practice board, step by step.'),
  see: z.array(z.string().min(12)).min(1).describe('What to look for on the board.'),
  drawing: z.enum(LESSON_DRAWINGS).optional().describe('A drawing from the engine’s own figures.'),
  boards: z
    .array(
      z.strictObject({
        defect: DefectId,
        board: z.int().min(1).max(4).default(1).describe('Which of its boards, 1 first.'),
        say: z.string().min(12).describe('What to see on it.'),
      }),
    )
    .max(4)
    .default([])
    .describe('Boards of flaws that it shows.'),
  boardless: z.string().min(12).optional().describe('Why no board is shown, where none would explain it.'),
  terms: z.array(TermId).default([]).describe('Words that it uses.'),
  rules: z.array(RuleId).default([]).describe('Cautions that it gives.'),
  defects: z.array(DefectId).default([]).describe('Flaws that it is about.'),
  remedies: z.array(RemedyId).default([]).describe('Repairs that it is about.'),
  items: z
    .array(z.strictObject({ level: z.enum(['look', 'stage', 'case']), flaw: DefectId, seed: z.int().min(0) }))
    .min(5)
    .max(10)
    .describe('Practice boards of its own: a level, a flaw and any whole number.'),
  claims: z.array(Claim).min(1).describe('Every statement that matters, and how we know it.'),
});
export type Lesson = z.infer<typeof Lesson>;
