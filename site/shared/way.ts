import {
  type Answer,
  addressOf,
  answerOf,
  type Case,
  emptyCase,
  type Knowledge,
  type Standing,
  walk,
  withAnswer,
  withStanding,
} from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';

/**
 * The address of the page of `defect`'s tree that goes on from what is known: the answers that the case has are
 * followed as far as they reach. With no stage, the way to the cause. The page always exists: it mirrors `nodesOf`.
 */
export const addressFor = (
  known: Knowledge,
  defect: string,
  stage: Standing | undefined,
  on: Case,
): readonly string[] => {
  let here: Case = stage ? withStanding(emptyCase(), stage) : emptyCase();
  const answers: [string, Answer][] = [];
  for (;;) {
    const walked = walk(known, here, defect, { forCause: !stage });
    if (walked.kind !== 'question' || walked.of !== defect) break;
    const answer = answerOf(known, on, walked.question);
    if (!answer) break;
    here = withAnswer(here, walked.question as QuestionId, answer);
    answers.push([walked.question, answer]);
  }
  return addressOf(stage, answers);
};
