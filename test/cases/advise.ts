/** Walks a case as she would: tells what is known up front, answers what is asked, takes the action given. */
import { answerOf } from '#engine/case/answers.ts';
import { type Answer, type Case, type Leaf, resolve, walk } from '#engine/index.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { meansOf } from '#engine/rules/hazards.ts';
import { isOfSteps, rulesForStep } from '#engine/rules/rules.ts';
import type { TroubleCase } from './case-file.ts';

/** What the clock knows of a running coat. */
export const CLOCK = ['stage', 'family', 'sheen', 'base-tone'];
/** What decides about safety is asked of every piece, whichever flaw it has. */
const PIECE = ['piece', 'age', 'hardener', 'overdue'];

export type Advice = {
  /** The doing shown; `unsure` where a check must decide first. */
  readonly doing: string;
  readonly leaves: readonly Leaf[];
  /** Stop rules that stand before everything, or before one of the steps ahead. */
  readonly stops: ReadonlySet<string>;
  /** Questions asked before the action, the stage counted as one. */
  readonly asked: readonly string[];
  readonly on: Case;
};

/** The case with all its facts, and with only those of `upFront` and of the piece. */
export const caseOf = (trouble: TroubleCase, upFront?: readonly string[]): Case =>
  Object.fromEntries(
    Object.entries(trouble.facts)
      .filter(([name]) => !upFront || upFront.includes(name) || PIECE.includes(name))
      .map(([name, value]) => [name, { value, how: 'told' as const }]),
  );

const answer = (known: Knowledge, trouble: TroubleCase, question: string): Answer => {
  if (trouble.yes.includes(question)) return 'yes';
  if (trouble.no.includes(question)) return 'no';
  return answerOf(known, caseOf(trouble), question) ?? 'unsure';
};

/** The action for a flaw of the case. `from` holds what is known when the walk begins. */
export const advise = (known: Knowledge, trouble: TroubleCase, defect: string, from: Case): Advice => {
  let on = from;
  const asked: string[] = [];
  for (;;) {
    const walked = walk(known, on, defect);
    if (walked.kind === 'stage') {
      asked.push('stage');
      on = { ...on, stage: { value: trouble.facts['stage'] ?? 'recoatable', how: 'answered' } };
    } else if (walked.kind === 'question') {
      asked.push(walked.question);
      on = { ...on, [walked.question]: { value: answer(known, trouble, walked.question), how: 'answered' } };
    } else if (walked.kind === 'outcome') {
      const unsure = walked.action.verdict === known.get('doing', 'unsure').verdict;
      return {
        doing: unsure ? 'unsure' : walked.action.do,
        leaves: walked.leaves,
        stops: new Set(walked.fired.stops.map((rule) => rule.id)),
        asked,
        on,
      };
    } else throw new Error(`${defect} ends without an action`);
  }
};

const remediesOf = (advice: Advice): string[] =>
  advice.doing === 'repair' ? advice.leaves.flatMap((leaf) => ('remedy' in leaf ? [leaf.remedy] : [])) : [];

const does = (known: Knowledge, remedy: string, on: Case, wanted: string): boolean => {
  const said = new Set(resolve(known, remedy, on).map((step) => step.say));
  return known
    .get('remedy', remedy)
    .steps.some(
      (step) =>
        said.has(step.say) &&
        (wanted === step.kind || meansOf(step).some((means) => wanted === `${step.kind}/${means}`)),
    );
};

/** True where all that is advised is something that the case accepts, and each stop that it asks for stands there. */
export const isAcceptable = (
  known: Knowledge,
  advice: Advice,
  acceptable: readonly string[],
  stops: readonly string[],
): boolean => {
  if (!stops.every((stop) => advice.stops.has(stop))) return false;
  if (acceptable.includes('stop') && (stops.length > 0 || advice.doing === 'stop')) return true;
  const remedies = remediesOf(advice);
  if (remedies.length === 0) return acceptable.includes(advice.doing);
  return remedies.every((remedy) =>
    acceptable.some(
      (one) =>
        one === remedy ||
        (one.startsWith('does:') && does(known, remedy, advice.on, one.slice('does:'.length))),
    ),
  );
};

/** Rules that give a stop's warning where less is known of the piece. */
const STANDS_FOR: Readonly<Record<string, readonly string[]>> = {
  'vapor-and-flame-when-spraying': ['if-you-spray'],
  'oily-rags': ['what-is-in-the-can'],
};

/**
 * What is advised though the case forbids it. A step behind a stop that the case itself asks for is not advised;
 * a stop of the whole piece forbids every step.
 */
export const forbiddenIn = (
  known: Knowledge,
  advice: Advice,
  forbidden: readonly string[],
  stops: readonly string[],
): string[] => {
  const whole = stops.some((stop) => advice.stops.has(stop) && !isOfSteps(known.get('rule', stop)));
  const behind = (remedy: string, kind: string) =>
    whole ||
    known
      .get('remedy', remedy)
      .steps.filter((step) => step.kind === kind)
      .every((step) =>
        rulesForStep(known, advice.on, step).some((rule) =>
          stops.some((stop) => stop === rule.id || STANDS_FOR[stop]?.includes(rule.id)),
        ),
      );
  const remedies = remediesOf(advice);
  return forbidden.filter(
    (one) =>
      (!whole && (one === advice.doing || remedies.includes(one))) ||
      remedies.some(
        (remedy) => does(known, remedy, advice.on, one.replace('does:', '')) && !behind(remedy, one),
      ),
  );
};

/** The causes left at the end where she goes on to the cause, though it may change nothing now. */
const causesOf = (known: Knowledge, trouble: TroubleCase): string[] => {
  let on = caseOf(trouble);
  for (;;) {
    const walked = walk(known, on, trouble.defect, { forCause: true });
    if (walked.kind !== 'question') return walked.leaves.map((leaf) => leaf.cause ?? '');
    on = { ...on, [walked.question]: { value: answer(known, trouble, walked.question), how: 'answered' } };
  }
};

/** True where each cause told in the end fits the pattern of the case. */
export const namesTheCause = (known: Knowledge, trouble: TroubleCase): boolean =>
  !trouble.cause || causesOf(known, trouble).every((cause) => new RegExp(trouble.cause ?? '').test(cause));

/** The action in words, for the list of misses. */
export const told = (advice: Advice): string => {
  const leaves = advice.leaves.map((leaf) => ('remedy' in leaf ? leaf.remedy : 'leave it'));
  return `${advice.doing} (${leaves.join(', ')}: ${[...new Set(advice.leaves.map((leaf) => leaf.cause))].join(' / ')})${advice.stops.size ? `; stops ${[...advice.stops].join(', ')}` : ''}; asked ${advice.asked.join(', ') || 'nothing'}`;
};
