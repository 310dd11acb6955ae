/** Expected further questions of a way of asking, and the least that any way can do. */
import { after } from '#engine/see/belief.ts';
import type { SignMatrix } from '#engine/see/matrix.ts';
import { MOST_ASKED, telling } from '#engine/see/plan.ts';

export type Choose = (
  matrix: SignMatrix,
  weights: Float64Array,
  open: readonly number[],
) => number | undefined;

const sum = (weights: Float64Array): number => weights.reduce((all, weight) => all + weight, 0);

/** One question and then on, by either answer. */
const askThen = (
  matrix: SignMatrix,
  weights: Float64Array,
  question: number,
  on: (next: Float64Array, answer: 'yes' | 'no') => number,
): number => {
  const total = sum(weights);
  let expected = 1;
  for (const answer of ['yes', 'no'] as const) {
    const next = after(matrix, weights, question, answer);
    const share = sum(next) / total;
    if (share > 0) expected += share * on(next, answer);
  }
  return expected;
};

export const expectedQuestions = (
  matrix: SignMatrix,
  weights: Float64Array,
  open: readonly number[],
  choose: Choose,
  left = MOST_ASKED,
): number => {
  const question = left ? choose(matrix, weights, open) : undefined;
  if (question === undefined) return 0;
  const rest = open.filter((other) => other !== question);
  return askThen(matrix, weights, question, (next) =>
    expectedQuestions(matrix, next, rest, choose, left - 1),
  );
};

/** By trying every question at every place; what was answered alike, in whatever order, is tried once. */
export const leastQuestions = (
  matrix: SignMatrix,
  start: Float64Array,
  questions: readonly number[],
): number => {
  const known = new Map<string, number>();
  const least = (weights: Float64Array, answers: string): number => {
    const found = known.get(answers);
    if (found !== undefined) return found;
    const open = questions.filter((_, at) => answers[at] === '-');
    // The same end as for any plan: one flaw is as good as sure, or nothing is left that tells flaws apart.
    const costs = telling(matrix, weights, open).map((question) => {
      const at = questions.indexOf(question);
      return askThen(matrix, weights, question, (next, answer) =>
        least(next, `${answers.slice(0, at)}${answer === 'yes' ? 'y' : 'n'}${answers.slice(at + 1)}`),
      );
    });
    const cost = costs.length ? Math.min(...costs) : 0;
    known.set(answers, cost);
    return cost;
  };
  return least(start, '-'.repeat(questions.length));
};
