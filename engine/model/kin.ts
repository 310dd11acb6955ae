import { z } from 'zod';

const words = z.coerce
  .string()
  .regex(
    /^[a-z0-9]+( [a-z0-9]+)?$/,
    'write one or two words in small letters, without marks or an apostrophe',
  );

/** content/hear/kin.yaml: words, and pairs of neighbors, that say the same in this trade. */
export const Kin = z.strictObject({
  kin: z
    .record(
      z.string().regex(/^[a-z]+(-[a-z]+)*$/, 'write small letters and hyphens alone'),
      z.array(words).min(2).describe('Words, or pairs of words, that say it.'),
    )
    .describe('What is said → the words that say it. A word may stand in more than one group.'),
});
export type Kin = z.infer<typeof Kin>;
