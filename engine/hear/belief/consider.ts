import { answerBy } from '../../case/answers.ts';
import type { Answer } from '../../case/case.ts';
import { holds } from '../../case/condition.ts';
import type { Question } from '../../model/question.ts';
import { reached, STAGES, type Stage } from '../../model/stage.ts';
import { entryOf } from '../../plain/entry-of.ts';
import { YES_CHANCE } from '../../see/matrix.ts';
import { isSprayedAlready } from '../times/past-step.ts';
import type { Heard } from '../words/heard.ts';
import { type Bears, type Belief, believe, bent, type Evidence, isFit, nextAsked, toldBy } from './belief.ts';
import { isCall } from './is-call.ts';
import type { ActWords, FreshWay, Mind, ToldFacts, ToldRule } from './mind.ts';

/** What to ask next. `stage`: how dry it is. `age`: how old the paint below is, where a stop may lie ahead. */
export type NextAsked =
  | { readonly kind: 'stage' }
  | { readonly kind: 'age' }
  | { readonly kind: 'question'; readonly question: string; readonly ask: string; readonly how: string };

export type LikelyFlaw = { readonly defect: string; readonly name: string; readonly chance: number };

/** What to do now. */
export type ActNow = ActWords & {
  /** Whether nearly all that is likely asks for the same hands. */
  readonly sure: boolean;
  /** The flaw, where one is as good as sure. */
  readonly flaw?: LikelyFlaw | undefined;
  /** What hands do to the likeliest flaw hangs on a question: until it is answered the film is left alone. */
  readonly hangs?: true;
};

/** Where it stands: the flaws, the stop that comes first, what to do, and what would tell most. */
export type Considered = {
  readonly likely: readonly LikelyFlaw[];
  readonly stage: Stage | undefined;
  /** Sticky long past its time: it has hands of its own, whatever the stage. */
  readonly overdue: boolean;
  /** Rules that what is told or said calls for: stops before cautions, and before both what has happened already. */
  readonly warnings: readonly ToldRule[];
  readonly now: ActNow | undefined;
  readonly next: NextAsked | undefined;
  readonly belief: Belief;
};

/** From here on one flaw, or one thing to do, is as good as sure. */
const SURE_FLAW = 0.9;
const SURE_HANDS = 0.85;
/** So likely a flaw's own word goes before what is said in general. */
const OWN = 0.5;
/** Answers after which a wet or setting coat gets its verdict, the stage not counted. */
const URGENT_ASKED = 2;
/** Who was asked so often has told what they can: what is likely then stands beside each other. */
const MOST_ASKED = 8;
/** A question must be expected to tell at least so many bits of what hands would do. */
const LEAST_BITS = 0.03;

const bits = (parts: Iterable<number>): number => {
  let sum = 0;
  for (const part of parts) if (part > 0) sum -= part * Math.log2(part);
  return sum;
};

/** The row of `hands` for a film at this stage; sticky long past its time it has one of its own. */
const rowOf = (stage: Stage, overdue: boolean): number =>
  overdue && (stage === 'setting' || stage === 'dry-to-touch') ? STAGES.length : STAGES.indexOf(stage);

/** Chance of each act in a row of `hands`. A flaw that may ask for several shares its chance among them. */
const handsOf = (mind: Mind, chances: ArrayLike<number>, row: number): Map<number, number> => {
  const acts = new Map<number, number>();
  mind.hands[row]?.forEach((marks, d) => {
    for (const mark of marks) acts.set(mark, (acts.get(mark) ?? 0) + (chances[d] ?? 0) / marks.length);
  });
  return acts;
};

/** Bits of what hands would do that a question is expected to tell. */
const handBits = (mind: Mind, belief: Belief, row: number, question: number, errs: number): number => {
  const signs = mind.matrix.signs[question] ?? '';
  let expected = bits(handsOf(mind, belief.chances, row).values());
  for (const answer of ['yes', 'no'] as const) {
    const weights = belief.chances.map((chance, d) => {
      const yes = bent(YES_CHANCE[signs.charCodeAt(d) - 48] ?? 0.5, errs);
      return chance * (answer === 'yes' ? yes : 1 - yes);
    });
    const share = weights.reduce((sum, weight) => sum + weight, 0);
    if (share <= 0) continue;
    const after = weights.map((weight) => weight / share);
    expected -= share * bits(handsOf(mind, after, row).values());
  }
  return expected;
};

/** The question that tells most of what hands would do; of equals the easiest. */
const forHands = (mind: Mind, belief: Belief, stage: Stage, bears: Bears): string | undefined => {
  let best: { question: string; worth: number } | undefined;
  mind.matrix.questions.forEach((question, at) => {
    if (belief.known.has(question) || !isFit(mind, at, bears)) return;
    const worth =
      handBits(mind, belief, STAGES.indexOf(stage), at, 0.04) - 0.01 * ((mind.matrix.effort[at] ?? 1) - 1);
    if (worth >= LEAST_BITS && (!best || worth > best.worth + 1e-9)) best = { question, worth };
  });
  return best?.question;
};

const isUrgent = (stage: Stage, told: ToldFacts): boolean =>
  (stage === 'wet' || stage === 'setting') && told['overdue'] !== 'yes';

const questionNext = (mind: Mind, question: string | undefined): NextAsked | undefined => {
  if (question === undefined) return undefined;
  const { ask = '', how = '' } = mind.questions[mind.matrix.questions.indexOf(question)] ?? {};
  return { kind: 'question', question, ask, how };
};

/** Old paint may lie below, and nobody has told how old it is. */
const ageIsOpen = (told: ToldFacts): boolean =>
  told['age'] === undefined && (told['base'] === 'old-finish' || told['piece'] === 'valuable');

/**
 * How pressing a rule is: where somebody has to be called, a case that is told before what has happened at large, then
 * harm under way, stops, cautions, and last what belongs to a step that is over; of each the stops first.
 */
const rankOf = (rule: ToldRule, isOver: boolean): number => {
  const pressing = isCall(rule) ? (rule.atOnce ? 0 : 1) : rule.atOnce ? 2 : isOver ? 4 : 3;
  return 2 * pressing + (rule.isStop || pressing === 4 ? 0 : 1);
};

/** The step that the rule guards is told as over, and no harm of it is under way. */
const isOverFor = (rule: ToldRule, heard: Heard | undefined, isDry: boolean): boolean =>
  heard !== undefined &&
  rule.done !== undefined &&
  !rule.atOnce &&
  !isCall(rule) &&
  (rule.ofStep
    ? !isDry && isSprayedAlready(heard.text)
    : heard.dangers.some((one) => one.rule === rule.id && one.past === true));

const isBehind = (rule: ToldRule, isDry: boolean): boolean =>
  rule.isPast === true || rule.toldLast === true || (isDry && rule.ofStep === true);

const past = ({ done = '', lead, ...rule }: ToldRule): ToldRule => ({
  ...rule,
  say: done,
  isStop: false,
  isPast: true,
});

/**
 * The rules that facts fire and those that words call for, each once, the most pressing first. A rule brings only those
 * of its cases that are told. A dry coat was sprayed long ago: what guards spraying is for the next one.
 */
const warningsOf = (mind: Mind, told: ToldFacts, heard: Heard | undefined): readonly ToldRule[] => {
  const of = (fact: string) => told[fact];
  const fired = mind.fired.filter(({ when, and, isLenient }) => {
    const truth = holds(when, of);
    return (truth === 'yes' || (isLenient && truth === 'unknown')) && (!and || holds(and, of) === 'yes');
  });
  const said = mind.dangers.filter(({ id }) => heard?.dangers.some(({ rule }) => rule === id));
  const isDry = reached((told['stage'] as Stage | undefined) ?? 'wet', 'dry-to-touch');
  // What words call for is told of, whatever else fires it.
  const called = new Set(said.map(({ id }) => id));
  return [...said, ...fired.filter(({ id }) => !called.has(id))]
    .map(({ atOnce, calls: own = [], callsAtOnce, ...rule }): ToldRule => {
      const told = heard?.urgent.filter((one) => one.rule === rule.id) ?? [];
      const cases = [...new Set(told.flatMap(({ at }) => atOnce?.[at] ?? []))];
      const calls = [...new Set([...own, ...told.flatMap(({ at }) => callsAtOnce?.[at] ?? [])])];
      return { ...rule, ...(cases.length && { atOnce: cases }), ...(calls.length && { calls }) };
    })
    .map((rule) => (isOverFor(rule, heard, isDry) ? past(rule) : rule))
    .map((rule) => ({ rule, rank: rankOf(rule, isBehind(rule, isDry)) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ rule }) => rule);
};

/**
 * Where it stands with all that is known: the likeliest flaws, the stops that the facts fire, what to do now, and what
 * to ask next. Never asks what is known, nor what harms the film at its stage. Pure.
 */
export const consider = (mind: Mind, evidence: Evidence): Considered => {
  const belief = believe(mind, evidence);
  const told: ToldFacts = { ...(evidence.heard ? toldBy(evidence.heard) : {}), ...evidence.told };
  const stage = told['stage'] as Stage | undefined;
  const overdue = told['overdue'] === 'yes';
  const likely = [...belief.chances.keys()]
    .map((d) => ({
      defect: mind.matrix.defects[d] ?? '',
      name: mind.names[d] ?? '',
      chance: belief.chances[d] ?? 0,
    }))
    .sort((a, b) => b.chance - a.chance || (a.defect < b.defect ? -1 : 1));
  const warnings = warningsOf(mind, told, evidence.heard);
  const bears: Bears = { stage, waits: new Set(warnings.flatMap(({ waits = [] }) => waits)) };
  const [first] = likely;
  const flaw = first && first.chance >= SURE_FLAW ? first : undefined;
  const asked = Object.values(evidence.told).filter((value) =>
    ['yes', 'no', 'unsure'].includes(String(value)),
  ).length;

  if (stage === undefined)
    return { likely, stage, overdue, warnings, belief, now: undefined, next: { kind: 'stage' } };
  const row = rowOf(stage, overdue);
  const hands = [...handsOf(mind, belief.chances, row)].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  const [mark = 0, chance = 0] = hands[0] ?? [];
  const words = mind.words[mark];
  let now: ActNow | undefined = words && { ...words, sure: chance >= SURE_HANDS, flaw };
  if (isUrgent(stage, told)) {
    const own = ownWay(mind, belief, told, stage, first);
    if (own && 'asks' in own) {
      const question = mayAsk(mind, belief, bears, own.asks) ? own.asks : undefined;
      const verdict = leaveIt(mind, now, flaw);
      const waits = verdict && { ...verdict, hangs: true as const };
      return { likely, stage, overdue, warnings, belief, now: waits, next: questionNext(mind, question) };
    }
    const its = own && ('words' in own ? own.words : mind.words[own.act]);
    // Its own word for the same hands; other hands only where hardly any other flaw is left.
    if (now && its && (its.do === now.do || (first?.chance ?? 0) >= SURE_HANDS))
      now = { ...its, sure: now.sure || its.do !== now.do, flaw };
    const question = now?.sure || asked >= URGENT_ASKED ? undefined : forHands(mind, belief, stage, bears);
    const verdict = question === undefined && !now?.sure ? leaveIt(mind, now, flaw) : now;
    // Other hands, and the flaw is not sure enough for them: not until that is known.
    const waits = its && verdict && its.do !== verdict.do && verdict.do === 'leave' && !verdict.sure;
    return {
      likely,
      stage,
      overdue,
      warnings,
      belief,
      now: waits ? { ...verdict, hangs: true } : verdict,
      next: questionNext(mind, question),
    };
  }
  if (ageIsOpen(told)) return { likely, stage, overdue, warnings, belief, now, next: { kind: 'age' } };
  // What may not even be looked at is asked of no further: the stop comes first, and the flaw is told after it.
  const hasTold = asked + Number('stage' in evidence.told) + Number('age' in evidence.told);
  const next =
    flaw || hasTold >= MOST_ASKED || bears.waits.has('look') ? undefined : nextAsked(mind, belief, bears);
  return { likely, stage, overdue, warnings, belief, now, next: questionNext(mind, next) };
};

type AnswerNow = (question: string, known: Question['known']) => Answer | undefined;

/** Where a way stands by the answers known; a question that changes nothing any more is passed over. */
const wayNow = (way: FreshWay, answerNow: AnswerNow): FreshWay => {
  if (!('asks' in way)) return way;
  const answer = answerNow(way.asks, way.known);
  if (answer === 'yes' || answer === 'no') return wayNow(way[answer], answerNow);
  const [yes, no] = [wayNow(way.yes, answerNow), wayNow(way.no, answerNow)];
  const alike =
    ('act' in yes && 'act' in no && yes.act === no.act) ||
    ('words' in yes && 'words' in no && yes.words.say === no.words.say);
  return alike ? yes : { ...way, yes, no };
};

/** What the page of the likeliest flaw says of a coat that moves, as far as answers are known. */
const ownWay = (
  mind: Mind,
  belief: Belief,
  told: ToldFacts,
  stage: Stage,
  first: LikelyFlaw | undefined,
): FreshWay | undefined => {
  if (!first || first.chance < OWN || (stage !== 'wet' && stage !== 'setting')) return undefined;
  const way = entryOf(mind.fresh[stage], first.defect);
  const fact = (name: string) => told[name];
  return (
    way &&
    wayNow(
      way,
      (question, known) =>
        belief.known.get(question) ?? answerBy((id) => (id === question ? known : undefined), fact, question),
    )
  );
};

/** A question of the table that is open and harms nothing now. */
const mayAsk = (mind: Mind, belief: Belief, bears: Bears, question: string): boolean => {
  const at = mind.matrix.questions.indexOf(question);
  return at >= 0 && !belief.known.has(question) && isFit(mind, at, bears);
};

/** Where a wet film is not told apart nothing is lost by leaving it alone. */
const leaveIt = (mind: Mind, now: ActNow | undefined, flaw: LikelyFlaw | undefined): ActNow | undefined => {
  const words = mind.words[mind.acts.indexOf('leave')];
  return words ? { ...words, sure: false, flaw } : now;
};
