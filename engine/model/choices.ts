import { z } from 'zod';
import { FACTS } from './facts.ts';
import { FAMILIES } from './family.ts';
import { TRIALS, WEARS } from './plan.ts';

const words = z.string().min(1).max(64);

/** One thing that can be told, with the words for each of its values. */
const choice = <V extends string>(values: readonly V[]) =>
  z.strictObject({
    ask: words.describe('The question, or the words before the list.'),
    values: z.record(z.enum(values), words).describe('The answer for every value.'),
  });

/** What the forms ask, and the words for every answer. */
export const Choices = z.strictObject({
  piece: choice(FACTS.piece.values),
  age: choice(['none', ...FACTS.age.values]).extend({
    'as-told': z
      .record(z.enum(['since-1993']), words)
      .describe('The answer that stands for none too, where that is not asked apart.'),
  }),
  base: choice(FACTS.base.values),
  'base-tone': choice(FACTS['base-tone'].values),
  family: choice(FAMILIES),
  sheen: choice(FACTS.sheen.values),
  applicator: choice(FACTS.applicator.values),
  hardener: choice(FACTS.hardener.values),
  part: choice(FACTS.part.values),
  trials: choice(TRIALS),
  wear: choice(WEARS),
});
export type Choices = z.infer<typeof Choices>;
