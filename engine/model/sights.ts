import { z } from 'zod';
import { DefectId, QuestionId } from './ids.ts';

const heading = z.string().min(4).max(64);

/** content/sights.yaml: what catches the eye, by which the first page groups the flaws. */
export const Sights = z.strictObject({
  groups: z
    .array(
      z.strictObject({
        title: heading.describe('What is seen or felt, in the words of one who sees it.'),
        signs: z
          .array(QuestionId)
          .default([])
          .describe('A flaw that shows one of these stands here, unless an earlier group has it.'),
        last: z
          .array(QuestionId)
          .default([])
          .describe('A flaw that shows one of these, and no sign of any group, stands here.'),
        face: DefectId.optional().describe(
          'The flaw whose picture stands for the group; left out, the one met most often.',
        ),
        also: z
          .array(DefectId)
          .default([])
          .describe('Flaws that stand in another group, and that eyes look for here as well.'),
      }),
    )
    .min(1),
  rest: heading.describe('The heading for flaws that show none of these.'),
});
export type Sights = z.infer<typeof Sights>;
