import { type AnswerReads, canCheck, stageOf, waitsFor } from '../case/answers.ts';
import { type Case, withAnswer } from '../case/case.ts';
import type { Knows } from '../knowledge/knowledge.ts';
import type { Defect } from '../model/defect.ts';
import type { Family } from '../model/family.ts';
import type { QuestionId } from '../model/ids.ts';
import type { Doing } from '../model/remedy.ts';
import type { Stage } from '../model/stage.ts';
import type { Step } from '../model/step.ts';
import { type FiredRules, type FiringRule, fire, type RuleEntry, type Rules } from '../rules/rules.ts';
import { type StepReads, takenOf } from '../steps/resolve.ts';
import {
  type Action,
  type ActReads,
  actionOf,
  actOf,
  beginWith,
  doingOf,
  type HandsDo,
  holdOff,
  stepsOfAct,
} from './act.ts';
import { type Leaf, type MetQuestion, possible } from './leaves.ts';
import {
  areAlike,
  doubtedIn,
  firstOpen,
  handsAt,
  questionThatChanges,
  type WayReads,
} from './next-question.ts';
import { type SharedSteps, sharedSteps } from './shared-steps.ts';

export type { WayReads };

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
  /** The stage from which it harms nothing; undefined where it can be made now, whatever the film. */
  readonly from: Stage | undefined;
  /** An answer may call for a move that only an open film allows, so that the check is of use as long as it flows. */
  readonly passes: boolean;
  readonly yes: Meaning;
  readonly no: Meaning;
};

/** A question, and the defect whose tree the walk is in: another one only once it has surely gone over. */
type AskedNext = { readonly question: QuestionId; readonly of: string };
type Common<R> = {
  readonly leaves: readonly Leaf[];
  /** The kinds of top coat that show these flaws. */
  readonly families: readonly Family[];
  readonly fired: FiredRules<R>;
};

/** How dry is it? Asked first, since it decides what hands may do. */
type AtStage = { readonly kind: 'stage' };

type Asking = { readonly kind: 'question' } & AskedNext;

/** The repairs still possible begin alike: these steps are right whichever it is. */
type BegunAlike = { readonly shared: SharedSteps | undefined };

/** What decides where causes are still open, and nothing more is asked now. */
type LeftOpen = {
  readonly certain: boolean;
  /** The question that she could not tell and whose sure check would decide. */
  readonly unsureAt: string | undefined;
  readonly check: Check | undefined;
};

/** What to do now. Several leaves: causes not yet told apart, or not to be told apart now. */
type Outcome = LeftOpen &
  BegunAlike & {
    readonly kind: 'outcome';
    readonly action: Action;
    /** Whether all causes still possible have hands do the same. */
    readonly alike: boolean;
    /** The question that would go on to the cause, though it changes nothing now. */
    readonly goOn: string | undefined;
  };

/** The cause alone, where the stage is left open: the remedy answers for every stage. */
type AtCause = LeftOpen & { readonly kind: 'cause' };

/**
 * What she could not tell on the way here and still would decide, in the order met, and the stage from which the check
 * harms nothing, where nobody has told how dry the film is.
 */
type Doubted = { readonly doubted: readonly QuestionId[]; readonly from: Stage | undefined };

/** Where a walk stands and what hands do there, without the words for it. */
export type Decided<R = RuleEntry> = Common<R> &
  (
    | AtStage
    | Pick<AtCause, 'kind'>
    | Asking
    | (Pick<Outcome, 'kind' | 'shared'> & { readonly action: Pick<Action, 'do'> })
  );

/** Where a walk stands, in words, with what was met on the way. */
export type Walked<R = RuleEntry> = Common<R> & { readonly trace: readonly Used[] } & (
    | AtStage
    | (Asking & Doubted)
    | Outcome
    | AtCause
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
  /** What she could not tell and keeps both branches. */
  readonly doubted: readonly QuestionId[];
  /** The first question that could be answered, asked or not. */
  readonly open: QuestionId | undefined;
  readonly asks: AskedNext | undefined;
  /** Whether all causes still possible have hands do the same. */
  readonly alike: boolean;
};

const standOf = (
  known: Knows<WayReads>,
  on: Case,
  defect: string,
  { forCause = false }: WalkOptions,
): Stand => {
  const { leaves, met } = possible(known, on, defect);
  const stage = stageOf(on);
  const hands = stage && handsAt(known, on, stage);
  const doubted = doubtedIn(met);
  const open = firstOpen(met);
  const alike = hands !== undefined && areAlike(leaves, hands);
  // The cause is not told by what others would settle, so a doubt ends the way there.
  const toCause = doubted.length ? undefined : open;
  const question = forCause ? toCause : hands && questionThatChanges(known, on, defect, hands);
  const asks = question && askedIn(met, question, defect);
  const kind = !stage && !forCause ? 'stage' : asks ? 'question' : stage ? 'outcome' : 'cause';
  return { kind, leaves, met, stage, doubted, open, asks, alike };
};

/** The question to ask, and where the walk is: it has gone over into another tree where all before is answered. */
const askedIn = (met: readonly MetQuestion[], question: QuestionId, defect: string): AskedNext => {
  const first = met.find(({ answer }) => answer !== 'yes' && answer !== 'no');
  return { question, of: first?.question === question ? first.of : defect };
};

/** The question that a walk asks next; nothing where it asks none. */
export const nextQuestion = (
  known: Knows<WayReads>,
  on: Case,
  defect: string,
  options: WalkOptions = {},
): AskedNext | undefined => standOf(known, on, defect, options).asks;

const decideAt = <R extends FiringRule>(
  known: Knows<DecideReads> & Rules<R>,
  on: Case,
  { kind, leaves, stage, asks, alike }: Stand,
): Decided<R> => {
  const families = [...new Set(leaves.flatMap((leaf) => known.get('defect', leaf.of).families))];
  const common = (ahead: readonly Step[] = []): Common<R> => ({
    leaves,
    families,
    fired: fire(known, on, ahead, families),
  });
  if (kind === 'question' && asks) return { kind, ...asks, ...common() };
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
  const { leaves, met, stage, doubted, open, alike } = stand;
  const trace = traceOf(on, met);
  if (decided.kind === 'stage') return { ...decided, trace };
  if (decided.kind === 'question')
    return { ...decided, doubted, from: waitsFor(known, on, decided.question), trace };
  const certain = leaves.length === 1;
  const goOn = doubted.length ? undefined : open;
  // Hands that hold off until a check is made are told which, though more could be asked for the cause.
  const holdsOff = decided.kind === 'outcome' && !alike && !decided.shared;
  const check = goOn && !holdsOff ? undefined : checkThatDecides(known, on, defect, stand);
  const unsureAt = doubted.length ? check?.question : undefined;
  if (decided.kind === 'cause') return { ...decided, certain, unsureAt, check, trace };
  const acts = alike && stage ? leaves.map((leaf) => actOf(known, on, leaf, stage)) : undefined;
  const action = acts ? actionOf(known, acts) : decided.shared ? beginWith(known) : holdOff(known);
  return { ...decided, action, certain, alike, goOn, unsureAt, check, trace };
};

/** What hands do, or leave, whether the film still flows or not. */
const OF_ANY_FILM: readonly Doing[] = ['leave', 'wait', 'accept', 'stop', 'repair'];

/**
 * Of what she could not tell the question by which most is settled; else the first on the way that can't be checked now
 * or was not asked.
 */
const checkThatDecides = (
  known: Knows<WayReads & ActReads>,
  on: Case,
  defect: string,
  { leaves, met, stage, doubted }: Stand,
): Check | undefined => {
  const meaning = (question: QuestionId, answer: 'yes' | 'no'): Meaning => {
    const { leaves: left } = possible(known, withAnswer(on, question, answer), defect);
    if (!stage || !areAlike(left, handsAt(known, on, stage))) return { leaves: left, action: undefined };
    const acts = left.map((leaf) => actOf(known, on, leaf, stage));
    return { leaves: left, action: actionOf(known, acts) };
  };
  const checkBy = (question: QuestionId): Check => ({
    question,
    from: waitsFor(known, on, question),
    passes:
      stage === 'wet' && leaves.some((leaf) => !OF_ANY_FILM.includes(doingOf(known, on, leaf, stage).do)),
    yes: meaning(question, 'yes'),
    no: meaning(question, 'no'),
  });
  const settles = ({ yes, no }: Check) => Number(!!yes.action) + Number(!!no.action);
  const open = met.flatMap(({ answer, question }) => (answer === undefined ? [question] : []));
  const other = open.find((question) => !canCheck(known, on, question)) ?? open[0];
  const checks = (doubted.length ? doubted : other ? [other] : []).map(checkBy);
  return checks.sort((a, b) => settles(b) - settles(a))[0];
};

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
  return leaves.flatMap((leaf) =>
    'remedy' in leaf ? takenOf(known, on, leaf.remedy, families).map(({ step }) => step) : [],
  );
};

const traceOf = (on: Case, met: readonly MetQuestion[]): Used[] => {
  const stage = on.stage;
  const used: Used[] = stage ? [{ fact: 'stage', value: stage.value, how: stage.how }] : [];
  for (const one of met)
    if (one.answer && !used.some((fact) => fact.fact === one.question))
      used.push({ fact: one.question, value: one.answer, how: on[one.question]?.how ?? 'follows' });
  return used;
};
