import type { Knows } from '../knowledge/knowledge.ts';
import type { Question } from '../model/question.ts';
import { reached, STAGES, type Stage } from '../model/stage.ts';
import { isOneOf } from '../plain/entry-of.ts';
import type { Answer, Case } from './case.ts';
import { holds, type Lookup } from './condition.ts';

/** What is read of a question to answer it from other facts, and to know when it may be checked. */
export type AnswerReads = { readonly question: Pick<Question, 'known' | 'safe-from'> };

/** The drying stage of the film, where it is known: one that is overdue has a skin and is not dry inside. */
export const stageOf = ({ stage, overdue }: Case): Stage | undefined => {
  if (isOneOf(STAGES, stage?.value)) return stage.value;
  return overdue?.value === 'yes' ? 'dry-to-touch' : undefined;
};

/** The rules by which other facts answer a question; nothing where there is no such question. */
type AnswerRules = (question: string) => Question['known'] | undefined;

/**
 * The answer to a question as far as what is told gives it: by her, or following from other facts. What she could not
 * tell is told by a fact that comes later. Answers that follow from each other in a circle count as unknown.
 */
export const answerBy = (
  rulesOf: AnswerRules,
  told: Lookup,
  question: string,
  asking: readonly string[] = [],
): Answer | undefined => {
  const given = told(question);
  if (given === 'yes' || given === 'no') return given;
  const doubt = given === 'unsure' ? given : undefined;
  const rules = asking.includes(question) ? undefined : rulesOf(question);
  if (!rules?.length) return doubt;
  const lookup = (fact: string) =>
    rulesOf(fact) ? answerBy(rulesOf, told, fact, [...asking, question]) : told(fact);
  return rules.find((rule) => holds(rule.when, lookup) === 'yes')?.answer ?? doubt;
};

/** The answer to a question as far as the case knows it. */
export const answerOf = (known: Knows<AnswerReads>, on: Case, question: string): Answer | undefined => {
  const given = on[question]?.value;
  // Most are answered by her, and most that are not follow from nothing else: these need no way through the rules.
  if (given === 'yes' || given === 'no') return given;
  const rules = known.has('question', question) ? known.get('question', question).known : undefined;
  return rules?.length ? following(known, on, question) : given === 'unsure' ? given : undefined;
};

const following = (known: Knows<AnswerReads>, on: Case, question: string): Answer | undefined =>
  answerBy(
    (id) => (known.has('question', id) ? known.get('question', id).known : undefined),
    (fact) => on[fact]?.value,
    question,
  );

/** Whether checking harms nothing at the stage that the film is known to be in; unknown stages forbid nothing. */
export const canCheck = (known: Knows<AnswerReads>, on: Case, question: string): boolean => {
  const stage = stageOf(on);
  return !stage || reached(stage, known.get('question', question)['safe-from']);
};

/**
 * The stage that must be sure before a check is made, where what is told does not reach it. A film of which nothing is
 * told may be wet: a walk to the cause may lead to such a check, but whoever asks it says first what it waits for.
 */
export const waitsFor = (known: Knows<AnswerReads>, on: Case, question: string): Stage | undefined => {
  const from = known.get('question', question)['safe-from'];
  return reached(stageOf(on) ?? 'wet', from) ? undefined : from;
};

/** A lookup for conditions: facts and answers alike. */
export const lookupIn =
  (known: Knows<AnswerReads>, on: Case) =>
  (fact: string): string | number | undefined =>
    known.has('question', fact) ? answerOf(known, on, fact) : on[fact]?.value;
