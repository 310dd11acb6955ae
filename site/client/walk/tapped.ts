import { ANSWERS } from '#engine/case/case.ts';
import { type Answer, withAnswer } from '#engine/index.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { keepCase, readCase } from '../case/store.ts';

const isQuestion = (id: string | undefined): id is QuestionId => /^[a-z][a-z0-9-]*$/.test(id ?? '');

/** The question that an element of the page asks. */
export const questionOf = ({ dataset: { question } }: HTMLElement): QuestionId | undefined =>
  isQuestion(question) ? question : undefined;

/** Keeps the answer that was tapped in an element that asks a question. */
export const keepTapped = ({ target, currentTarget }: Event): void => {
  if (!(target instanceof Element) || !(currentTarget instanceof HTMLElement)) return;
  const tapped = target.closest<HTMLElement>('[data-answer]')?.dataset['answer'];
  const answer = ANSWERS.find((one) => one === tapped);
  const question = questionOf(currentTarget);
  if (answer && question) keepCase(withAnswer(readCase(), question, answer));
};

/** The case with the answers that an address holds. */
export const withAnswers = (
  on: Parameters<typeof withAnswer>[0],
  answers: readonly (readonly [QuestionId, Answer])[],
) => answers.reduce((so, [question, answer]) => withAnswer(so, question, answer), on);
