import { z } from 'zod';
import { HAZARD_NAMES } from './hazard.ts';
import { RemedyId } from './ids.ts';
import { Claim } from './source.ts';
import { Step } from './step.ts';

/**
 * What to do at this moment.
 * leave: hands off, look again later. wait: dry, but not ready. lift, tip-off, wick, wash-off: the moves that
 * an open film allows. wipe-back: take surplus oil or wax off. repair: follow the steps. accept: leave it as it is.
 * stop: do nothing more until something else is settled.
 */
export const DOINGS = [
  'leave',
  'wait',
  'lift',
  'tip-off',
  'wick',
  'wash-off',
  'wipe-back',
  'repair',
  'accept',
  'stop',
] as const;
export type Doing = (typeof DOINGS)[number];

export const Act = z.strictObject({
  do: z.enum(DOINGS),
  say: z.string().min(12).describe('What to do now and why, in one or two short sentences.'),
  not: z.string().min(6).describe('What not to do now.'),
  verdict: z
    .string()
    .min(4)
    .max(40)
    .optional()
    .describe(
      'The order in large type, where hands do it otherwise than such acts commonly say: "Buff it now".',
    ),
  again: z
    .string()
    .min(12)
    .optional()
    .describe('When to look again, where it is not when such acts commonly say.'),
  does: z
    .array(z.enum(HAZARD_NAMES))
    .min(1)
    .optional()
    .describe('What the words ask for that can hurt someone, as with a step: a room that is warmed.'),
});
export type Act = z.infer<typeof Act>;

export const Change = z.strictObject({
  on: z
    .preprocess((v) => (v instanceof Date ? v.toISOString().slice(0, 10) : v), z.iso.date())
    .describe('The day, as year-month-day.'),
  what: z.string().min(8).describe('What changed.'),
  why: z.string().min(8).describe('Why it changed.'),
});

/** A procedure, with an answer for every stage of the film. */
export const Remedy = z.strictObject({
  name: z.string().min(4).describe('What is done, as an order: "Sand back and recoat".'),
  summary: z.string().min(20).describe('One sentence: when this is right.'),
  now: z
    .strictObject({
      wet: Act,
      setting: Act,
      'dry-to-touch': Act,
      recoatable: Act,
      cured: Act,
      overdue: Act.optional().describe('For a film that is still tacky after three times its drying time.'),
    })
    .describe('What hands do at each stage of the film; what is usual stands in content/acts.yaml.'),
  steps: z
    .array(Step)
    .min(1)
    .describe('The procedure; a name of content/steps.yaml stands for shared steps.'),
  worked: z.string().min(12).describe('How to know that it worked.'),
  'if-not': z
    .strictObject({
      say: z.string().min(12).describe('What to do where it did not work.'),
      remedy: RemedyId.optional().describe('The next thing to try.'),
    })
    .describe('What to do where it did not work.'),
  prevent: z.array(z.string().min(8)).min(1).describe('What would have prevented it, one thing a line.'),
  claims: z.array(Claim).min(1).describe('Every statement that matters, and how we know it.'),
  changes: z.array(Change).default([]).describe('What changed, and when; the oldest with its day alone.'),
});
export type Remedy = z.infer<typeof Remedy>;
