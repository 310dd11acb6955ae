import type { Case } from '../case/case.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { DoingWords } from '../model/doing.ts';
import type { Act, Doing, Remedy } from '../model/remedy.ts';
import type { Stage } from '../model/stage.ts';
import type { Step } from '../model/step.ts';
import type { LeaveLeaf } from '../model/tree.ts';
import type { Leaf } from './leaves.ts';

/** An act for each stage, whole or no more than what hands do. */
type ActsOf<A> = { readonly [S in Stage]: A } & { readonly overdue?: A | undefined };
/** What hands do in an act, and what of it can hurt; without the words. */
export type HandsDo = Pick<Act, 'do' | 'does'>;
/** What hands do for each remedy. */
export type DoingReads = { readonly remedy: { readonly now: ActsOf<HandsDo> } };
/** What hands do, and the words for it. */
export type ActReads = { readonly remedy: Pick<Remedy, 'now'>; readonly doing: DoingWords };

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

/** Surplus oil or wax is wiped off while it is wet, be the flaw left as it is or not. */
const leaving = ({ as }: Pick<LeaveLeaf, 'as'>, stage: Stage): Doing =>
  as && stage === 'wet' ? 'wipe-back' : LEAVE_IT[stage];

/** The act for a stage; for a film that is overdue its own, where there is one. */
const actAt = <A>(now: ActsOf<A>, on: Case, stage: Stage): A => {
  const overdue = on.overdue?.value === 'yes' && (stage === 'setting' || stage === 'dry-to-touch');
  return (overdue && now.overdue) || now[stage];
};

/** What hands do at one leaf at a stage. */
export const doingOf = (known: Knows<DoingReads>, on: Case, leaf: Leaf, stage: Stage): HandsDo =>
  'leave' in leaf ? { do: leaving(leaf, stage) } : actAt(known.get('remedy', leaf.remedy).now, on, stage);

/** The act of one leaf at a stage, in its words. */
export const actOf = (known: Knows<ActReads>, on: Case, leaf: Leaf, stage: Stage): Act => {
  if (!('leave' in leaf)) return actAt(known.get('remedy', leaf.remedy).now, on, stage);
  const doing = leaving(leaf, stage);
  const words = known.get('doing', doing);
  return { do: doing, say: doing === 'wipe-back' ? words.say : leaf.leave, not: words.not };
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
export const actionKey = (act: Pick<Act, 'do'>, leaf: Leaf): string =>
  act.do === 'repair' || act.do === 'stop' ? `${act.do}:${'remedy' in leaf ? leaf.remedy : ''}` : act.do;

/** The act in the words shown: a single cause speaks for itself, several share the general words. */
export const actionOf = (known: Knows<Pick<ActReads, 'doing'>>, acts: readonly Act[]): Action => {
  const [first] = acts;
  if (!first) throw new Error('no act to put into words: every tree ends in at least one leaf');
  const words = known.get('doing', first.do);
  const alike = acts.every((act) => act.say === first.say);
  return {
    do: first.do,
    verdict: (alike && first.verdict) || words.verdict,
    say: alike ? first.say : words.say,
    not: alike ? first.not : words.not,
    again: (alike && first.again) || words.again,
  };
};

/** Causes that can not be told apart and ask for different hands: nothing is lost by leaving the film alone. */
export const holdOff = (known: Knows<Pick<ActReads, 'doing'>>): Action => {
  const { verdict, say, not, again } = known.get('doing', 'unsure');
  return { do: 'leave', verdict, say, not, again };
};

/** Repairs that can not be told apart yet and begin alike: the beginning is right whichever it is. */
export const beginWith = (known: Knows<Pick<ActReads, 'doing'>>): Action => {
  const { verdict, say, not, again } = known.get('doing', 'begin');
  return { do: 'repair', verdict, say, not, again };
};
