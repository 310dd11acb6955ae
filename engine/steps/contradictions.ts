import type { Case } from '../case/case.ts';
import type { Truth } from '../case/condition.ts';
import type { WayOut } from '../faults/mend.ts';
import type { ConditionInput } from '../model/condition.ts';
import type { Step } from '../model/step.ts';
import { isHerCoat, isHersByHand } from './her-own.ts';

/**
 * A step that can not be right where this is told of the piece, with the way out where a condition or other words are
 * not all.
 */
export type Contradiction = WayOut & {
  /** One fact and its values; any of them speaks against the step. */
  readonly told: ConditionInput;
  readonly step: (step: Step) => boolean;
  /** What it does that can not be right, as it is told behind the step's words. */
  readonly why: string;
  /** Whether the step is simply left out; otherwise its author gives it a condition or other words. */
  readonly leftOut: boolean;
};

const NEVER_STAINED = ['bare-wood', 'chalk-paint', 'milk-paint', 'latex-paint', 'oil-paint', 'laminate'];
const PAINTED = ['chalk-paint', 'milk-paint', 'latex-paint', 'oil-paint', 'laminate'];
const NOT_FLAT = ['edge', 'inside-corner', 'carving', 'leg'];
const IN_THE_CAN = ['stir', 'smear', 'thin', 'extender', 'fresh-batch'];

const isOfStain = (step: Step): boolean =>
  (step.kind === 'coat' && step.product === 'stain') ||
  (step.kind === 'test-patch' && step.tries === 'stain') ||
  (step.kind === 'wait' && step.of === 'stain');

/** The bleach, the mixing of it, and the rinse that takes its acid off. */
const isOfBleach = (step: Step): boolean =>
  (step.kind === 'wipe' && (step.with === 'wood-bleach' || step.of === 'wood-bleach')) ||
  (step.kind === 'mix' && step.what === 'wood-bleach');

const says = (step: Step, words: RegExp): boolean => words.test(step.say);

const BY_HAND = /\b(brush(es)?|roller|pad|foam tool|strokes?|rag|cloth)\b/i;
const BY_SPRAY = /\b(spray(ed)?|mist|gun|pass(es)?|nozzle)\b/i;
/** A tool that is told for details alone lays nothing of the rest. */
const IN_DETAILS = /\b(in|for|at) (the )?(details?|corners?|grooves?|moldings?)\b[^.;:,]*/gi;
const NO_BLOCK = /\b(no|without a) block\b/i;
const STEEL_WOOL = /\bsteel wool\b/i;
const DENIES = /\b(no|not|never|without|instead of)\b[^.]{0,40}steel wool/i;

export const CONTRADICTIONS: readonly Contradiction[] = [
  {
    told: { applicator: 'aerosol' },
    step: (step) => step.kind === 'mix' && IN_THE_CAN.includes(step.what),
    why: 'stirs or mixes in what may be a spray can, which is not opened',
    leftOut: true,
  },
  {
    told: { applicator: 'aerosol' },
    step: (step) => step.kind === 'mix' && step.what === 'tint' && !says(step, /spray can/i),
    why: 'tints what may be a spray can, which is not opened',
    mend: 'say in the step what to take in place of a spray can, or add a when: that shuts this out',
    leftOut: false,
  },
  {
    told: { base: NEVER_STAINED },
    step: isOfStain,
    why: 'works with stain, which goes on stained wood only',
    leftOut: true,
  },
  {
    told: { base: PAINTED },
    step: isOfBleach,
    why: 'works with wood bleach, which does nothing to paint',
    leftOut: true,
  },
  {
    told: { part: NOT_FLAT },
    step: (step) => step.kind === 'sand' && says(step, /\b(block|sander)\b/i) && !says(step, NO_BLOCK),
    why: 'sands with a block, which rubs an edge through and reaches into no corner, carving or turning',
    mend: 'add except: { part: [edge, inside-corner, carving, leg] } to it and - sand-by-part below it, or say where there is no block',
    leftOut: false,
  },
  {
    told: { family: 'shellac' },
    step: (step) => step.kind === 'sand' && says(step, /\bsoap/i) && !says(step, /\bshellac\b/i),
    why: 'wets shellac with soapy water, which whitens it',
    mend: 'say in the step what wets the paper on shellac (mineral oil), or add a when: that shuts this out',
    leftOut: false,
  },
  {
    told: { base: ['chalk-paint', 'milk-paint'] },
    step: (step) =>
      step.kind === 'wipe' &&
      step.with === 'soapy-water' &&
      says(step, /\b(rinse|clean water|clear water)\b/i) &&
      !says(step, /\b(chalk|wrung[- ]out|bare wood)\b/i),
    why: 'washes with running water what may be chalk or milk paint laid open, which water lifts at any age',
    mend: 'say in the step that such paint takes only a wrung-out cloth, or add a when: that shuts this out',
    leftOut: false,
  },
  {
    told: { applicator: ['spray-gun', 'aerosol'] },
    step: (step) => isHerCoat(step) && says(step, BY_HAND) && !says(step, BY_SPRAY),
    why: 'tells how to lay a coat by hand',
    mend: 'if it is for both, leave the tool out of the sentence; if it is for brushing alone,',
    mark: 'by: hand',
    leftOut: false,
  },
  {
    told: { applicator: ['spray-gun', 'aerosol'] },
    step: (step) => isHersByHand(step) && !BY_HAND.test(step.say.replace(IN_DETAILS, '')),
    why: 'has by: hand and names no tool for the whole coat',
    mend: 'name that tool (with a soft brush), or delete by: hand and say nothing of a tool',
    leftOut: false,
  },
  {
    told: { applicator: ['brush', 'roller', 'pad', 'sponge', 'cloth'] },
    step: (step) => isHerCoat(step) && says(step, BY_SPRAY) && !says(step, BY_HAND),
    why: 'tells how to spray',
    mend: 'if it is for both, leave the spraying out of the sentence; if it is for spraying alone,',
    mark: 'by: spray',
    leftOut: false,
  },
  {
    told: { family: ['water-based', 'water-lacquer'] },
    step: (step) => says(step, STEEL_WOOL) && !says(step, DENIES),
    why: 'names steel wool, whose shreds rust below a water-based finish',
    mend: 'name a synthetic pad in place of the steel wool, or add a when: that shuts this out',
    leftOut: false,
  },
];

/** Each single fact that leaves steps out, as a case, with the steps. */
export const LEAVE_OUT: readonly { readonly told: Case; readonly step: Contradiction['step'] }[] =
  CONTRADICTIONS.filter(({ leftOut }) => leftOut).flatMap(({ told, step }) =>
    Object.entries(told).flatMap(([fact, values]) =>
      [values].flat().map((value) => ({
        told: { [fact]: { value: String(value), how: 'told' as const } },
        step,
      })),
    ),
  );

/** Whether what is told leaves a step out. */
export const contradicted = (step: Step, ask: (condition: ConditionInput) => Truth): boolean =>
  CONTRADICTIONS.some((one) => one.leftOut && one.step(step) && ask(one.told) === 'yes');
