import {
  type Answer,
  addressOf,
  answerOf,
  type Case,
  emptyCase,
  type Knows,
  nextQuestion,
  type Standing,
  type WayReads,
  withAnswer,
  withStanding,
} from '#engine/index.ts';

/**
 * The address of the page of `defect`'s tree that goes on from what is known: the answers that the case has are
 * followed as far as they reach. With no stage, the way to the cause. The page always exists: it mirrors `nodesOf`.
 */
export const addressFor = (
  known: Knows<WayReads>,
  defect: string,
  stage: Standing | undefined,
  on: Case,
): readonly string[] => {
  let here: Case = stage ? withStanding(emptyCase(), stage) : emptyCase();
  const answers: [string, Answer][] = [];
  for (;;) {
    const next = nextQuestion(known, here, defect, { forCause: !stage });
    if (next?.of !== defect) break;
    const answer = answerOf(known, on, next.question);
    if (!answer) break;
    here = withAnswer(here, next.question, answer);
    answers.push([next.question, answer]);
  }
  return addressOf(stage, answers);
};
