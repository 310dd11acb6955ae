import type { Case } from './case.ts';
import type { Knowledge } from './knowledge.ts';
import type { Leaf } from './leaves.ts';
import type { Act, Doing } from './model/remedy.ts';
import type { Stage } from './model/stage.ts';
import type { Step } from './model/step.ts';

/** What to do now, in the words shown. */
export type Action = {
  readonly do: Doing;
  readonly verdict: string;
  readonly say: string;
  readonly not: string;
  readonly again: string;
};

/** Doings of 'leave it as it is': while the film is not dry it is left in peace, then it is good. */
const LEAVE_IT: Record<Stage, Doing> = {
  wet: 'leave',
  setting: 'leave',
  'dry-to-touch': 'wait',
  recoatable: 'accept',
  cured: 'accept',
};

/** The act of one leaf at a stage. */
export const actOf = (known: Knowledge, on: Case, leaf: Leaf, stage: Stage): Act => {
  if ('leave' in leaf) {
    const doing = LEAVE_IT[stage];
    return { do: doing, say: leaf.leave, not: known.get('doing', doing).not };
  }
  const { now } = known.get('remedy', leaf.remedy);
  const overdue = on.overdue?.value === 'yes' && (stage === 'setting' || stage === 'dry-to-touch');
  return overdue && now.overdue ? now.overdue : now[stage];
};

/** A cloth full of finish is an oily rag whether a repair calls it a step or not. */
const WIPED: Step = { kind: 'wipe', with: 'dry-cloth', of: 'same', say: 'Wipe it off.' };
/** An open coat is washed off with what thins it. */
const WASHED: Step = { kind: 'wipe', with: 'thinner', say: 'Wash it off.' };
const BY_DOING: Partial<Record<Doing, readonly Step[]>> = {
  'wash-off': [WIPED, WASHED],
  'wipe-back': [WIPED],
  wick: [WIPED],
};

/** What hands do in an act before any repair begins, as steps, so that the same cautions stand before them. */
export const stepsOfAct = ({ do: doing, say, does }: Pick<Act, 'do' | 'say' | 'does'>): readonly Step[] => [
  ...(BY_DOING[doing] ?? []),
  ...(does ? [{ kind: 'look', say, does } as const] : []),
];

/** Acts are the same action where hands do the same: repairs only within one remedy. */
export const actionKey = (act: Act, leaf: Leaf): string =>
  act.do === 'repair' || act.do === 'stop' ? `${act.do}:${'remedy' in leaf ? leaf.remedy : ''}` : act.do;

/** The act in the words shown: a single cause speaks for itself, several share the general words. */
export const actionOf = (known: Knowledge, acts: readonly Act[]): Action => {
  const [first] = acts;
  if (!first) throw new Error('no act to put into words: every tree ends in at least one leaf');
  const words = known.get('doing', first.do);
  const alike = acts.every((act) => act.say === first.say);
  return {
    do: first.do,
    verdict: words.verdict,
    say: alike ? first.say : words.say,
    not: alike ? first.not : words.not,
    again: (alike && first.again) || words.again,
  };
};

/** Causes that can not be told apart and ask for different hands: nothing is lost by leaving the film alone. */
export const holdOff = (known: Knowledge): Action => {
  const { verdict, say, not, again } = known.get('doing', 'unsure');
  return { do: 'leave', verdict, say, not, again };
};

/** Repairs that can not be told apart yet and begin alike: the beginning is right whichever it is. */
export const beginWith = (known: Knowledge): Action => {
  const { verdict, say, not, again } = known.get('doing', 'begin');
  return { do: 'repair', verdict, say, not, again };
};
