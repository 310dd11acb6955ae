import {
  type Action,
  type ActReads,
  actionKey,
  actionOf,
  actOf,
  beginWith,
  type DoingReads,
  doingOf,
  type HandsDo,
  holdOff,
  stepsOfAct,
} from './act.ts';
import { type AnswerReads, canCheck, stageOf } from './answers.ts';
import { type Case, withAnswer } from './case.ts';
import type { TreeReads } from './compiled/trees.ts';
import type { Knows } from './knowledge.ts';
import { type Leaf, type MetQuestion, possible } from './leaves.ts';
import type { Defect } from './model/defect.ts';
import type { Family } from './model/family.ts';
import type { QuestionId } from './model/ids.ts';
import type { Stage } from './model/stage.ts';
import type { Step } from './model/step.ts';
import { isTaken, type StepReads } from './resolve.ts';
import { type FiredRules, type FiringRule, fire, type RuleEntry, type Rules } from './rules.ts';
import { type SharedSteps, sharedSteps } from './shared-steps.ts';

/** What is read to find the next question. */
export type WayReads = TreeReads & AnswerReads & DoingReads;
/** What is read to decide what hands do, and what warns of it. */
type DecideReads = WayReads & StepReads & { readonly defect: Pick<Defect, 'families'> };
/** What is read to walk: all of that, and the words of what hands do. */
type WalkReads = DecideReads & ActReads;

/** A fact that the result rests on. */
export type Used = { readonly fact: string; readonly value: string | number; readonly how: string };

/** What one answer of a check would leave: the causes, and what to do where they agree on it. */
export type Meaning = { readonly leaves: readonly Leaf[]; readonly action: Action | undefined };

/** The check that decides between the causes still possible, and what either answer would mean. */
export type Check = {
  readonly question: QuestionId;
  /** The stage from which it harms nothing; undefined where it can be made now. */
  readonly from: Stage | undefined;
  readonly yes: Meaning;
  readonly no: Meaning;
};

type AskedNext = { readonly question: QuestionId; readonly of: string };
type Common<R> = {
  readonly leaves: readonly Leaf[];
  /** The kinds of top coat that show these flaws. */
  readonly families: readonly Family[];
  readonly fired: FiredRules<R>;
};

/** Where a walk stands and what hands do there, without the words for it. */
export type Decided<R = RuleEntry> = Common<R> &
  (
    | { readonly kind: 'stage' }
    | { readonly kind: 'cause' }
    | ({ readonly kind: 'question' } & AskedNext)
    | {
        readonly kind: 'outcome';
        readonly action: Pick<Action, 'do'>;
        /** Repairs still possible begin alike: these steps are right whichever it is. */
        readonly shared: SharedSteps | undefined;
      }
  );

export type Walked<R = RuleEntry> = Common<R> & { readonly trace: readonly Used[] } & (
    | /** How dry is it? Asked first, since it decides what hands may do. */
    { readonly kind: 'stage' }
    | ({
        readonly kind: 'question';
      } & AskedNext) /** What to do now. Several leaves: causes not yet told apart, or not to be told apart now. */
    | {
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
      } /** The cause alone, where the stage is left open: the remedy answers for every stage. */
    | {
        readonly kind: 'cause';
        readonly certain: boolean;
        readonly unsureAt: string | undefined;
        readonly check: Check | undefined;
      }
  );

export type WalkOptions = {
  /** Go on to the cause where the action is known already, or where the stage is not known. */
  readonly forCause?: boolean;
};

/** Where a walk stands, and all that it met on the way there. */
type Stand = {
  readonly kind: Walked['kind'];
  readonly leaves: readonly Leaf[];
  readonly met: readonly MetQuestion[];
  readonly stage: Stage | undefined;
  readonly unsureAt: string | undefined;
  readonly next: MetQuestion | undefined;
  /** Whether all causes still possible have hands do the same. */
  readonly alike: boolean;
};

const keysOf = (
  known: Knows<DoingReads>,
  on: Case,
  leaves: readonly Leaf[],
  stage: Stage,
): ReadonlySet<string> => new Set(leaves.map((leaf) => actionKey(doingOf(known, on, leaf, stage), leaf)));

const standOf = (
  known: Knows<WayReads>,
  on: Case,
  defect: string,
  { forCause = false }: WalkOptions,
): Stand => {
  const { leaves, met } = possible(known, on, defect);
  const stage = stageOf(on);
  const unsureAt = met.find((one) => one.answer === 'unsure')?.question;
  const next = unsureAt ? undefined : nextOpen(met);
  const alike = stage !== undefined && keysOf(known, on, leaves, stage).size === 1;
  const asks = next && (forCause || (stage && !alike && endings(known, on, defect, stage).size > 1));
  const kind = !stage && !forCause ? 'stage' : asks ? 'question' : stage ? 'outcome' : 'cause';
  return { kind, leaves, met, stage, unsureAt, next, alike };
};

/** The question that a walk asks next, and the defect whose tree it stands in; nothing where it asks none. */
export const nextQuestion = (
  known: Knows<WayReads>,
  on: Case,
  defect: string,
  options: WalkOptions = {},
): AskedNext | undefined => {
  const { kind, next } = standOf(known, on, defect, options);
  return kind === 'question' && next ? { question: next.question, of: next.of } : undefined;
};

const decideAt = <R extends FiringRule>(
  known: Knows<DecideReads> & Rules<R>,
  on: Case,
  { kind, leaves, stage, next, alike }: Stand,
): Decided<R> => {
  const families = [...new Set(leaves.flatMap((leaf) => known.get('defect', leaf.of).families))];
  const common = (ahead: readonly Step[] = []): Common<R> => ({
    leaves,
    families,
    fired: fire(known, on, ahead, families),
  });
  if (kind === 'question' && next) return { kind, question: next.question, of: next.of, ...common() };
  if (kind === 'cause') return { kind, ...common() };
  if (kind !== 'outcome' || !stage) return { kind: 'stage', ...common() };
  const acts = leaves.map((leaf) => doingOf(known, on, leaf, stage));
  const repairs = !alike && acts.every((act) => act.do === 'repair');
  const shared = repairs ? sharedSteps(known, on, leaves, families) : undefined;
  const together = alike ? acts[0]?.do : undefined;
  const action = { do: together ?? (shared ? 'repair' : 'leave') };
  const ahead = shared
    ? shared.at.flatMap((at) => known.get('remedy', shared.remedy).steps[at] ?? [])
    : stepsAhead(known, on, action, acts, leaves, families);
  return { kind, action, shared, ...common(ahead) };
};

/**
 * What hands do for a case, or what is asked first, without the words: for a page that has them already. Pure.
 * Throws only for a defect that the knowledge does not hold.
 */
export const decide = <R extends FiringRule>(
  known: Knows<DecideReads> & Rules<R>,
  on: Case,
  defect: string,
  options: WalkOptions = {},
): Decided<R> => decideAt(known, on, standOf(known, on, defect, options));

/**
 * The next question that can change what to do, or the outcome with its trace. Pure: same facts, same result.
 * Every walk ends: each question answered or doubted is never asked again, and trees are finite.
 * Throws only for a defect that the knowledge does not hold.
 */
export const walk = <R extends FiringRule>(
  known: Knows<WalkReads> & Rules<R>,
  on: Case,
  defect: string,
  options: WalkOptions = {},
): Walked<R> => {
  const stand = standOf(known, on, defect, options);
  const decided = decideAt(known, on, stand);
  const { leaves, met, stage, unsureAt, next, alike } = stand;
  const trace = traceOf(on, met);
  const certain = leaves.length === 1;
  const check = () => checkThatDecides(known, on, defect, stage, met);
  if (decided.kind === 'cause') return { ...decided, certain, unsureAt, check: check(), trace };
  if (decided.kind !== 'outcome') return { ...decided, trace };
  const acts = alike && stage ? leaves.map((leaf) => actOf(known, on, leaf, stage)) : undefined;
  const action = acts ? actionOf(known, acts) : decided.shared ? beginWith(known) : holdOff(known);
  return {
    ...decided,
    action,
    certain,
    goOn: next?.question,
    unsureAt,
    check: next ? undefined : check(),
    trace,
  };
};

/** The first question on the way, not told or not to be checked now, whose answer would leave other causes. */
const checkThatDecides = (
  known: Knows<WayReads & ActReads>,
  on: Case,
  defect: string,
  stage: Stage | undefined,
  met: readonly MetQuestion[],
): Check | undefined => {
  const one = met.find(({ answer }) => answer === 'unsure') ?? met.find(({ answer }) => answer === undefined);
  if (!one) return undefined;
  const meaning = (answer: 'yes' | 'no'): Meaning => {
    const { leaves } = possible(known, withAnswer(on, one.question, answer), defect);
    if (!stage) return { leaves, action: undefined };
    if (keysOf(known, on, leaves, stage).size > 1) return { leaves, action: undefined };
    const acts = leaves.map((leaf) => actOf(known, on, leaf, stage));
    return { leaves, action: actionOf(known, acts) };
  };
  return {
    question: one.question,
    from: canCheck(known, on, one.question) ? undefined : known.get('question', one.question)['safe-from'],
    yes: meaning('yes'),
    no: meaning('no'),
  };
};

/** What the answers that can still be given may lead hands to do; questions that can't be checked now are left open. */
const endings = (known: Knows<WayReads>, on: Case, defect: string, stage: Stage): ReadonlySet<string> => {
  const { leaves, met } = possible(known, on, defect);
  const next = nextOpen(met);
  if (!next) {
    const keys = keysOf(known, on, leaves, stage);
    const [only] = keys;
    return new Set([keys.size === 1 && only ? only : 'leave']);
  }
  const found = new Set<string>();
  for (const answer of ['yes', 'no'] as const) {
    for (const key of endings(known, withAnswer(on, next.question, answer), defect, stage)) found.add(key);
    if (found.size > 1) break; // told apart: that is all that is asked
  }
  return found;
};

/** The first question on the way down that is not answered. One that can't be checked now is passed over. */
const nextOpen = (met: readonly MetQuestion[]): MetQuestion | undefined => met.find((one) => one.open);

/** The steps that she may come to take; a step that the facts rule out calls for no caution. */
const stepsAhead = (
  known: Knows<AnswerReads & StepReads>,
  on: Case,
  action: Pick<Action, 'do'>,
  acts: readonly HandsDo[],
  leaves: readonly Leaf[],
  families: readonly Family[],
): readonly Step[] => {
  if (action.do !== 'repair') {
    // Of several causes only what each of them asks for is sure to be done.
    const does = (acts[0]?.does ?? []).filter((hazard) => acts.every((act) => act.does?.includes(hazard)));
    return stepsOfAct({ do: action.do, say: '', ...(does.length && { does }) });
  }
  return leaves
    .flatMap((leaf) => ('remedy' in leaf ? known.get('remedy', leaf.remedy).steps : []))
    .filter((step) => isTaken(known, on, step, families) !== 'no');
};

const traceOf = (on: Case, met: readonly MetQuestion[]): Used[] => {
  const stage = on.stage;
  const used: Used[] = stage ? [{ fact: 'stage', value: stage.value, how: stage.how }] : [];
  for (const one of met)
    if (one.answer && !used.some((fact) => fact.fact === one.question))
      used.push({ fact: one.question, value: one.answer, how: on[one.question]?.how ?? 'follows' });
  return used;
};
