import { z } from 'zod';
import { FAMILIES } from './family.ts';
import { DefectId, LessonId, RuleId } from './ids.ts';

const words = z.string().min(4).max(64);

/** The places of the site that a step can lead to, beside pages of the content. */
const TOOLS = ['can', 'schedule', 'clock', 'jobs'] as const;

/** content/first-coat.yaml: a first top coat from the can to the care card. */
export const FirstCoat = z.strictObject({
  cleaners: z
    .array(
      z.strictObject({
        cleaner: words.describe('What the can says takes it off the brush while it is wet.'),
        families: z.array(z.enum(FAMILIES)).min(1).describe('The kinds of finish whose can says so.'),
      }),
    )
    .min(1),
  steps: z
    .array(
      z.strictObject({
        title: words.describe('What is done, as an order.'),
        say: z.string().min(20).max(400).describe('Two to five short sentences.'),
        tool: z
          .strictObject({ is: z.enum(TOOLS), name: words })
          .optional()
          .describe('A place of the site that helps with it, and the words of its link.'),
        rules: z.array(RuleId).default([]).describe('Cautions that it gives.'),
        lessons: z.array(LessonId).default([]).describe('Where to learn more.'),
        defects: z.array(DefectId).default([]).describe('Flaws that it is about.'),
        board: DefectId.describe('The flaw whose first board it shows.'),
        shows: words.describe('What the board shows.'),
      }),
    )
    .min(1),
});
export type FirstCoat = z.infer<typeof FirstCoat>;
