/** A scenario: what is planned, what must come of it, and what is said where a flaw is in hand. */

import { walk } from '#engine/index.ts';
import type { Job, Outcome } from '#engine/schedule.ts';
import { advise, caseOf, forbiddenIn } from '../../cases/advise.ts';
import type { TroubleCase } from '../../cases/case-file.ts';
import { known } from './sheet.ts';

/** What the evidence asks of one plan. All fields but `gets` may be left out. */
export type Wanted = {
  readonly job: Job;
  /** `plan`, or the code of a reason that must be among those of the refusal. */
  readonly gets: 'plan' | 'rule' | 'use' | 'weather' | 'base' | 'drying' | 'hours';
  /** What the refusal must say, or what it must offer instead. */
  readonly because?: readonly RegExp[];
  /** No coat sooner, hours from the start; of a refusal, what it gives as the earliest. */
  readonly notBefore?: number;
  readonly coats?: readonly [number, number];
  /** Least hours between the end of a coat and the start of the next. */
  readonly between?: number;
  /** Rules that must stand before the work, or before a step of it. */
  readonly rules?: readonly string[];
  readonly care?: readonly RegExp[];
  /** Flaws to look for at some step. */
  readonly looks?: readonly string[];
  /** Least days from the last coat. */
  readonly handOver?: number;
  readonly fullUse?: number;
  readonly check?: (got: Outcome) => void;
};

/** A flaw in hand, and what must be said of it. */
export type InHand = Pick<TroubleCase, 'defect' | 'facts' | 'yes' | 'no'> & {
  readonly does: string;
  readonly says: readonly RegExp[];
  /** What must be warned of, in the action's own words or in a rule that stands beside it. */
  readonly warns?: readonly RegExp[];
  readonly stops?: readonly string[];
  /** Steps of the repair, in this order. */
  readonly steps?: readonly RegExp[];
  /** Doings, steps or remedies that would contradict the evidence. */
  readonly never: readonly string[];
  /** The first question that must be asked. */
  readonly asks?: string;
};

export type Scenario = {
  readonly title: string;
  /** What the evidence says; where it leaves room, how it is read. */
  readonly evidence: string;
  readonly plans: readonly Wanted[];
  readonly inHand?: readonly InHand[];
};

/** Every rule that stands in an outcome, as the page shows it. */
export const rulesIn = (got: Outcome): readonly string[] => [
  ...got.cautions.map(({ id }) => id),
  ...(got.kind === 'plan' ? got.steps.flatMap(({ before }) => before.map(({ id }) => id as string)) : []),
];

/** All words of a refusal. */
export const wordsOf = (got: Outcome): string =>
  got.kind === 'no' ? got.why.map(({ says, instead }) => `${says} ${instead ?? ''}`).join(' ') : '';

/** What she is told of a flaw in hand: the action, the rules beside it, the steps, and what of it is forbidden. */
export const toldOf = (one: InHand) => {
  const trouble: TroubleCase = {
    title: one.defect,
    source: 'common-practice',
    right: 'act',
    acceptable: [one.does],
    forbidden: [...one.never],
    stops: [...(one.stops ?? [])],
    file: '',
    defect: one.defect,
    facts: one.facts,
    yes: one.yes,
    no: one.no,
  };
  // What she tells at once is known before the first question; what is asked is looked at without it.
  const answered = (answer: 'yes' | 'no') =>
    Object.fromEntries(one[answer].map((question) => [question, { value: answer, how: 'told' as const }]));
  const told = { ...caseOf(trouble), ...answered('yes'), ...answered('no') };
  const advice = advise(known, trouble, one.defect, told);
  const cold = advise(known, trouble, one.defect, caseOf(trouble));
  const walked = walk(known, advice.on, one.defect);
  if (walked.kind !== 'outcome') throw new Error(`${one.defect} does not end in an action`);
  const { action, fired } = walked;
  const rules = [...fired.stops, ...fired.holds, ...fired.cautions];
  return {
    doing: advice.doing,
    asked: cold.asked,
    /** Where she tells nothing but the facts, and stops at the first action. */
    coldDoing: cold.doing,
    says: action.say,
    warns: [action.not, ...rules.map(({ say }) => say)].join(' '),
    rules: rules.map(({ id }) => id as string),
    steps: advice.leaves.flatMap((leaf) =>
      'remedy' in leaf ? known.get('remedy', leaf.remedy).steps.map(({ say }) => say) : [],
    ),
    forbidden: [advice, cold].flatMap((each) => forbiddenIn(known, each, one.never, one.stops ?? [])),
  };
};
