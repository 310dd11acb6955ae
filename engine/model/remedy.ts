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
  on: z.preprocess((v) => (v instanceof Date ? v.toISOString().slice(0, 10) : v), z.iso.date()),
  what: z.string().min(8),
  why: z.string().min(8),
});

/** A procedure, with an answer for every stage of the film. */
export const Remedy = z.strictObject({
  name: z.string().min(4).describe('What is done, as an order: "Sand back and recoat".'),
  summary: z.string().min(20).describe('One sentence: when this is right.'),
  now: z.strictObject({
    wet: Act,
    setting: Act,
    'dry-to-touch': Act,
    recoatable: Act,
    cured: Act,
    overdue: Act.optional().describe('For a film that is still tacky after three times its drying time.'),
  }),
  steps: z.array(Step).min(1),
  worked: z.string().min(12).describe('How to know that it worked.'),
  'if-not': z.strictObject({
    say: z.string().min(12),
    remedy: RemedyId.optional().describe('The next thing to try.'),
  }),
  prevent: z.array(z.string().min(8)).min(1),
  claims: z.array(Claim).min(1),
  changes: z.array(Change).default([]),
});
export type Remedy = z.infer<typeof Remedy>;
