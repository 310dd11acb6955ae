import { ANSWERS, type Answer, type Case, emptyCase, withAnswer } from '../case/case.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import type { QuestionId } from '../model/ids.ts';
import { STAGES, STANDINGS, type Standing } from '../model/stage.ts';
import { answersOverdue, withStanding } from './standing.ts';
import { type Walked, walk } from './walk.ts';

/** One stop on the way through a defect's tree, at an address made of what is known there. */
export type TreeNode = {
  /**
   * Segments: `cause`, `stage-<stage>` or `stage-overdue` first, then `<question>-<answer>`; with answers, `cause` is
   * left out.
   */
  readonly address: readonly string[];
  readonly stage: Standing | undefined;
  readonly on: Case;
  readonly walked: Walked;
  /** The walk has gone over into this other defect's tree. */
  readonly handover: string | undefined;
};

/** The address of a case in a defect's tree: its stage, then its answers in the order asked. */
export const addressOf = (
  stage: Standing | undefined,
  answers: readonly (readonly [string, Answer])[],
): string[] => {
  const segments = answers.map(([question, answer]) => `${question}-${answer}`);
  if (stage) return [`stage-${stage}`, ...segments];
  return segments.length ? segments : ['cause'];
};

/**
 * Every node of a defect's tree: for each stage, for a film that is overdue where the tree has an answer to that, and
 * once with the stage left open to find the cause.
 */
export function* nodesOf(known: Knowledge, defect: string): Generator<TreeNode> {
  yield* below(known, defect, undefined, emptyCase(), []);
  for (const stage of answersOverdue(known, defect) ? STANDINGS : STAGES)
    yield* below(known, defect, stage, withStanding(emptyCase(), stage, 'answered'), []);
}

function* below(
  known: Knowledge,
  defect: string,
  stage: Standing | undefined,
  on: Case,
  answers: readonly (readonly [string, Answer])[],
): Generator<TreeNode> {
  const walked = walk(known, on, defect, { forCause: stage === undefined });
  const over = walked.kind === 'question' && walked.of !== defect ? walked.of : undefined;
  yield { address: addressOf(stage, answers), stage, on, walked, handover: over };
  if (walked.kind !== 'question' || over) return;
  const question = walked.question;
  for (const answer of ANSWERS)
    yield* below(known, defect, stage, withAnswer(on, question, answer), [...answers, [question, answer]]);
}

/** What an address says: the stage and the answers that the knowledge still knows. Anything else is dropped. */
export const readAddress = (
  known: { readonly has: (kind: 'question', id: string) => boolean },
  segments: readonly string[],
): { readonly stage: Standing | undefined; readonly answers: readonly (readonly [QuestionId, Answer])[] } => {
  let stage: Standing | undefined;
  const answers: [QuestionId, Answer][] = [];
  const isQuestion = (id: string): id is QuestionId => known.has('question', id);
  for (const segment of segments) {
    const cut = segment.lastIndexOf('-');
    const question = segment.slice(0, cut);
    const answer = ANSWERS.find((one) => one === segment.slice(cut + 1));
    const wanted = STANDINGS.find((one) => segment === `stage-${one}`);
    if (wanted) stage = wanted;
    else if (answer && isQuestion(question)) answers.push([question, answer]);
  }
  return { stage, answers };
};
