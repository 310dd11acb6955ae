import { z } from 'zod';
import { PAINTS, WOODS } from './board.ts';
import { FACTS } from './facts.ts';
import { FAMILIES } from './family.ts';
import { DefectId, QuestionId } from './ids.ts';
import { DOINGS } from './remedy.ts';
import { Claim } from './source.ts';
import { STAGES, STANDINGS } from './stage.ts';

const says = z.string().min(3).max(160);
const oneOf = z.array(says).min(1).describe('Ways to say it; one is taken.');

/** A thing that hands are tempted to do and that is never right where it is offered, with its ground. */
const Temptation = Claim.extend({
  id: z.string().regex(/^[a-z-]+$/),
  offer: says.describe('The answer as it is offered.'),
  at: z.array(z.enum(STAGES)).min(1).describe('The stages at which it tempts.'),
  not: z.array(z.enum(DOINGS)).default([]).describe('Not offered where one of these is right.'),
  says: z.string().min(12).describe('What it would have done.'),
});

/** What is said of each answer to "until when?". */
const WAITS = ['touched-now', 'worked-now', 'can', 'half', 'cure', 'range'] as const;

/**
 * What practice boards are told with: how people write, what hands are offered, and what each board of a flaw shows.
 */
export const PracticeWords = z.strictObject({
  piece: oneOf,
  coat: z.record(z.enum(FAMILIES), oneOf),
  'coat-of': z
    .record(DefectId, oneOf)
    .default({})
    .describe('Flaw → what was laid, where only one such coat shows it.'),
  laid: z
    .record(z.enum(FACTS.applicator.values), oneOf)
    .describe('{coat}, {piece} and {over} are filled in.'),
  color: z.record(z.enum(PAINTS), says),
  wood: z.record(z.enum(WOODS), says),
  'over-paint': z.array(z.strictObject({ base: z.enum(['chalk-paint', 'latex-paint']), say: says })).min(1),
  'over-wood': z.strictObject({ stain: says, 'bare-wood': says }),
  sheen: z.record(z.enum(FACTS.sheen.values), says),
  coats: z.strictObject({ first: says, second: says, more: says }).describe('{number} is filled in.'),
  'only-mine': oneOf.describe('That nothing old lies below.'),
  'not-known': oneOf.describe('That what lies below is old and nobody knows of what kind.'),
  stage: z.record(z.enum(STANDINGS), oneOf),
  'stage-unsanded': z
    .record(z.enum(STANDINGS), oneOf)
    .describe('The same of wax and oil, which leave no drip to try and are never sanded.'),
  weather: oneOf.describe('{fahrenheit}, {celsius} and {humidity} are filled in.'),
  can: oneOf.describe('{touch} and {recoat} are filled in.'),
  times: oneOf.describe('{laid} and {now} are filled in.'),
  hands: z.record(z.enum(DOINGS), says).describe('What hands do, as an answer that can be chosen.'),
  'wait-on-a-dry-film': says.describe('The same for a wait where nothing is soft any more.'),
  'repair-of-a-sticky-film': says.describe('The same for a repair of a film that stayed soft past its time.'),
  temptations: z.array(Temptation).min(4),
  waits: z.record(z.enum(WAITS), Claim).describe('What is said of each answer to until when.'),
  shows: z
    .record(DefectId, z.array(z.record(QuestionId, z.enum(['yes', 'no']))))
    .describe('Flaw → for each of its boards in their order, the answers that the picture gives.'),
});
export type PracticeWords = z.infer<typeof PracticeWords>;
