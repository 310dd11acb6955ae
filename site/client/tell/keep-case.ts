import type { Understood } from '#engine/hear.ts';
import { type Mind, SURE } from '#engine/hear.ts';
import { type Answer, type Case, withAnswer } from '#engine/index.ts';
import { CHOICES_OF_THE_PIECE } from '#engine/model/facts.ts';
import type { QuestionId } from '#engine/model/ids.ts';
import { YES_CHANCE } from '#engine/see/matrix.ts';
import { keepCase, readCase } from '../case/store.ts';
import type { TellState } from './state.ts';

/** How dry it is stands in the address; times and weather are the clock's. */
const OF_THE_PIECE: readonly string[] = ['family', ...CHOICES_OF_THE_PIECE, 'coat-number'];
/** An answer that her words give but that says nothing of the flaw she goes to must be as sure as that: a cause hangs on it. */
const PLAINLY = 0.8;

/** Whether an answer is what is expected of a flaw, speaks against it, or neither. */
const fits = ({ matrix }: Mind, defect: string, question: string, answer: Answer): boolean | undefined => {
  const shows = matrix.signs[matrix.questions.indexOf(question)]?.charCodeAt(matrix.defects.indexOf(defect));
  const yes = YES_CHANCE[(shows ?? 50) - 48] ?? 0.5;
  return yes === 0.5 ? undefined : yes > 0.5 === (answer === 'yes');
};

/** The case with what was told on the page that listens, so that the page of the flaw does not ask it again. */
export const withTold = (
  on: Case,
  mind: Mind,
  { told }: TellState,
  { facts, signs }: Understood['heard'],
  defect: string,
): Case => {
  let now = on;
  for (const { fact, value, sure } of facts) {
    // That no old paint lies below takes a stop away: her words alone do not.
    const frees = fact === 'age' && value === 'since-1993';
    if (sure >= SURE && !frees && OF_THE_PIECE.includes(fact))
      now = { ...now, [fact]: { value, how: 'told' } };
  }
  for (const { question, answer, sure } of signs) {
    const fit = fits(mind, defect, question, answer);
    if (fit === false || sure < (fit ? SURE : PLAINLY)) continue;
    now = withAnswer(now, question as QuestionId, answer);
  }
  for (const [name, value] of Object.entries(told)) {
    if (value === 'yes' || value === 'no') now = withAnswer(now, name as QuestionId, value);
    else if (OF_THE_PIECE.includes(name)) now = { ...now, [name]: { value, how: 'told' } };
  }
  return now;
};

/** Keeps what was told where a tap leads to the page of a flaw. */
export const keepTold = (
  { target }: Event,
  mind: Mind,
  state: TellState,
  found: Understood | undefined,
): void => {
  const link = target instanceof Element ? target.closest<HTMLAnchorElement>('a[href]') : null;
  const defect = mind.matrix.defects.find((id) => link?.pathname.includes(`/defects/${id}/`));
  if (found && defect) keepCase(withTold(readCase(), mind, state, found.heard, defect));
};
