import { type Action, actionKey, actionOf, actOf, beginWith, holdOff, stepsOfAct } from './act.ts';
import { canCheck, stageOf } from './answers.ts';
import { type Case, withAnswer } from './case.ts';
import type { Knowledge } from './knowledge.ts';
import { type Leaf, type Met, possible } from './leaves.ts';
import type { Family } from './model/family.ts';
import type { QuestionId } from './model/ids.ts';
import type { Act } from './model/remedy.ts';
import type { Stage } from './model/stage.ts';
import type { Step } from './model/step.ts';
import { isTaken } from './resolve.ts';
import { type Fired, fire } from './rules.ts';
import { type SharedSteps, sharedSteps } from './shared-steps.ts';

/** A fact that the result rests on. */
export type Used = { readonly fact: string; readonly value: string | number; readonly how: string };

/** What one answer of a check would leave: the causes, and what to do where they agree on it. */
export type Meaning = { readonly leaves: readonly Leaf[]; readonly action: Action | undefined };

/** The check that decides between the causes still possible, and what either answer would mean. */
export type Check = {
  readonly question: string;
  /** The stage from which it harms nothing; undefined where it can be made now. */
  readonly from: Stage | undefined;
  readonly yes: Meaning;
  readonly no: Meaning;
};

type Common = {
  readonly leaves: readonly Leaf[];
  /** The kinds of top coat that show these flaws. */
  readonly families: readonly Family[];
  readonly fired: Fired;
  readonly trace: readonly Used[];
};

export type Walked =
  /** How dry is it? Asked first, since it decides what hands may do. */
  | ({ readonly kind: 'stage' } & Common)
  | ({ readonly kind: 'question'; readonly question: string; readonly of: string } & Common)
  /** What to do now. Several leaves: causes not yet told apart, or not to be told apart now. */
  | ({
      readonly kind: 'outcome';
      readonly action: Action;
      readonly certain: boolean;
      /** The question that would go on to the cause, though it changes nothing now. */
      readonly goOn: string | undefined;
      /** The question that she could not tell: its sure check would decide. */
      readonly unsureAt: string | undefined;
      /** What decides where causes are still open and nothing more is asked now. */
      readonly check: Check | undefined;
      /** Repairs still possible begin alike: these steps are right whichever it is. */
      readonly shared: SharedSteps | undefined;
    } & Common)
  /** The cause alone, where the stage is left open: the remedy answers for every stage. */
  | ({
      readonly kind: 'cause';
      readonly certain: boolean;
      readonly unsureAt: string | undefined;
      readonly check: Check | undefined;
    } & Common);

export type WalkOptions = {
  /** Go on to the cause where the action is known already, or where the stage is not known. */
  readonly forCause?: boolean;
};

/**
 * The next question that can change what to do, or the outcome with its trace. Pure: same facts, same result.
 * Every walk ends: each question answered or doubted is never asked again, and trees are finite.
 * Throws only for a defect that the knowledge does not hold.
 */
export const walk = (known: Knowledge, on: Case, defect: string, options: WalkOptions = {}): Walked => {
  const { leaves, met } = possible(known, on, defect);
  const stage = stageOf(on);
  const families = [...new Set(leaves.flatMap((leaf) => known.get('defect', leaf.of).families))];
  const common = (ahead: readonly Step[] = []): Common => ({
    leaves,
    families,
    fired: fire(known, on, ahead, families),
    trace: traceOf(on, met),
  });
  const unsureAt = met.find((one) => one.answer === 'unsure')?.question;
  const next = unsureAt ? undefined : nextOpen(met);
  const certain = leaves.length === 1;

  if (!stage) {
    if (!options.forCause) return { kind: 'stage', ...common() };
    if (next) return { kind: 'question', question: next.question, of: next.of, ...common() };
    return {
      kind: 'cause',
      certain,
      unsureAt,
      check: checkThatDecides(known, on, defect, undefined, met),
      ...common(),
    };
  }

  const acts = leaves.map((leaf) => actOf(known, on, leaf, stage));
  const keys = new Set(acts.map((act, index) => actionKey(act, leaves[index] as Leaf)));
  if (next && (options.forCause || (keys.size > 1 && endings(known, on, defect, stage).size > 1)))
    return { kind: 'question', question: next.question, of: next.of, ...common() };

  const shared =
    keys.size > 1 && acts.every((act) => act.do === 'repair')
      ? sharedSteps(known, on, leaves, families)
      : undefined;
  const action = keys.size === 1 ? actionOf(known, acts) : shared ? beginWith(known) : holdOff(known);
  return {
    kind: 'outcome',
    action,
    certain,
    goOn: next?.question,
    unsureAt,
    check: next ? undefined : checkThatDecides(known, on, defect, stage, met),
    shared,
    ...common(
      shared
        ? shared.at.flatMap((at) => known.get('remedy', shared.remedy).steps[at] ?? [])
        : stepsAhead(known, on, action, acts, leaves, families),
    ),
  };
};

/** The first question on the way, not told or not to be checked now, whose answer would leave other causes. */
const checkThatDecides = (
  known: Knowledge,
  on: Case,
  defect: string,
  stage: Stage | undefined,
  met: readonly Met[],
): Check | undefined => {
  const one = met.find(({ answer }) => answer === 'unsure') ?? met.find(({ answer }) => answer === undefined);
  if (!one) return undefined;
  const meaning = (answer: 'yes' | 'no'): Meaning => {
    const { leaves } = possible(known, withAnswer(on, one.question as QuestionId, answer), defect);
    if (!stage) return { leaves, action: undefined };
    const acts = leaves.map((leaf) => actOf(known, on, leaf, stage));
    const same = new Set(acts.map((act, index) => actionKey(act, leaves[index] as Leaf))).size === 1;
    return { leaves, action: same ? actionOf(known, acts) : undefined };
  };
  return {
    question: one.question,
    from: canCheck(known, on, one.question) ? undefined : known.get('question', one.question)['safe-from'],
    yes: meaning('yes'),
    no: meaning('no'),
  };
};

/** What the answers that can still be given may lead hands to do; questions that can't be checked now are left open. */
const endings = (known: Knowledge, on: Case, defect: string, stage: Stage): ReadonlySet<string> => {
  const { leaves, met } = possible(known, on, defect);
  const next = nextOpen(met);
  if (!next) {
    const keys = new Set(leaves.map((leaf) => actionKey(actOf(known, on, leaf, stage), leaf)));
    const [only] = keys;
    return new Set([keys.size === 1 && only ? only : 'leave']);
  }
  const found = new Set<string>();
  for (const answer of ['yes', 'no'] as const) {
    for (const key of endings(known, withAnswer(on, next.question as QuestionId, answer), defect, stage))
      found.add(key);
    if (found.size > 1) break; // told apart: that is all that is asked
  }
  return found;
};

/** The first question on the way down that is not answered. One that can't be checked now is passed over. */
const nextOpen = (met: readonly Met[]): Met | undefined => met.find((one) => one.open);

/** The steps that she may come to take; a step that the facts rule out calls for no caution. */
const stepsAhead = (
  known: Knowledge,
  on: Case,
  action: Action,
  acts: readonly Act[],
  leaves: readonly Leaf[],
  families: readonly Family[],
): readonly Step[] => {
  if (action.do !== 'repair') {
    // Of several causes only what each of them asks for is sure to be done.
    const does = (acts[0]?.does ?? []).filter((hazard) => acts.every((act) => act.does?.includes(hazard)));
    return stepsOfAct({ do: action.do, say: action.say, ...(does.length && { does }) });
  }
  return leaves
    .flatMap((leaf) => ('remedy' in leaf ? known.get('remedy', leaf.remedy).steps : []))
    .filter((step) => isTaken(known, on, step, families) !== 'no');
};

const traceOf = (on: Case, met: readonly Met[]): Used[] => {
  const stage = on.stage;
  const used: Used[] = stage ? [{ fact: 'stage', value: stage.value, how: stage.how }] : [];
  for (const one of met)
    if (one.answer && !used.some((fact) => fact.fact === one.question))
      used.push({ fact: one.question, value: one.answer, how: on[one.question]?.how ?? 'follows' });
  return used;
};
