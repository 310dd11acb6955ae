import {
  type Answer,
  addressOf,
  answerOf,
  type Case,
  canCheck,
  emptyCase,
  type Knows,
  nextQuestion,
  readAddress,
  type Standing,
  type WayReads,
  withAnswer,
  withStanding,
} from '#engine/index.ts';

/**
 * The address of the page that goes on to the cause from what is told, how dry the film is included; none where what is
 * asked there would harm the film as it is now, or where nothing is left to ask.
 */
export const wayToCause = (
  known: Knows<WayReads>,
  defect: string,
  on: Case,
): readonly string[] | undefined => {
  const address = addressFor(known, defect, undefined, on);
  const { answers } = readAddress(known, address);
  const here = answers.reduce<Case>(
    (so, [question, answer]) => withAnswer(so, question, answer),
    emptyCase(),
  );
  const next = nextQuestion(known, here, defect, { forCause: true });
  return next && canCheck(known, on, next.question) ? address : undefined;
};

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
