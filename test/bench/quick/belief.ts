/**
 * The next question by belief, with facts told, beside the most telling one taken greedily and, where few flaws are
 * left, beside the best of all plans.
 */
import { type Bears, believe, nextAsked } from '#engine/hear/belief/belief.ts';
import { mindOf } from '#engine/hear.ts';
import type { Knowledge } from '#engine/index.ts';
import { nextQuestion, telling } from '#engine/see/plan.ts';
import { beliefCases } from '../belief-cases.ts';
import { race } from '../measure.ts';
import { type Row, rowsOf } from '../row.ts';
import { type Choose, expectedQuestions, leastQuestions } from './expected.ts';

/** So many flaws and questions the search through all plans can be run on. */
const FLAWS = 6;
const QUESTIONS = 8;
const CASES = 40;
const DRY: Bears = { stage: 'cured', waits: new Set() };

const greedy: Choose = (matrix, weights, open) => telling(matrix, weights, open)[0];

export const beliefRows = (known: Knowledge): readonly Row[] => {
  const mind = mindOf(known);
  const { matrix } = mind;
  const cases = beliefCases(mind, CASES);
  const all = [...matrix.questions.keys()];
  let kept = 0;
  const openIn = (told: ReadonlyMap<string, unknown>) =>
    all.filter((at) => !told.has(matrix.questions[at] ?? ''));
  const timed = race(
    [
      {
        name: 'most telling, greedily',
        run: () => {
          for (const told of cases) {
            const { chances, known: answered } = believe(mind, { told });
            kept += greedy(matrix, chances, openIn(answered)) ?? 0;
          }
        },
      },
      {
        name: 'planned',
        run: () => {
          for (const told of cases) kept += nextAsked(mind, believe(mind, { told }), DRY)?.length ?? 0;
        },
      },
    ],
    cases.length,
  );
  if (!Number.isFinite(kept)) throw new Error('nothing was timed');

  const sums = { best: 0, greedy: 0, planned: 0 };
  const worst = { greedy: 1, planned: 1 };
  for (const told of cases) {
    const { chances, known: answered } = believe(mind, { told });
    const least = [...chances].sort((a, b) => b - a)[FLAWS - 1] ?? 0;
    const weights = chances.map((chance) => (chance >= least ? chance : 0));
    const open = telling(matrix, weights, openIn(answered)).slice(0, QUESTIONS);
    const best = leastQuestions(matrix, weights, open);
    const one = {
      greedy: expectedQuestions(matrix, weights, open, greedy),
      planned: expectedQuestions(matrix, weights, open, nextQuestion),
    };
    sums.best += best;
    for (const name of ['greedy', 'planned'] as const) {
      sums[name] += one[name];
      if (best) worst[name] = Math.max(worst[name], one[name] / best);
    }
  }
  const expected = (name: 'greedy' | 'planned', says: string): Row => ({
    what: '',
    name: says,
    value: sums[name] / cases.length,
    unit: 'questions',
    ratio: [sums[name] / sums.best, 1, worst[name]],
    ...(name === 'planned' && { goal: { most: 1.02, of: 'ratio' } }),
  });
  const prior = Float64Array.from(matrix.prior);
  const whole = {
    greedy: expectedQuestions(matrix, prior, all, greedy),
    planned: expectedQuestions(matrix, prior, all, nextQuestion),
  };
  return [
    ...rowsOf(`next question, facts told, ${matrix.defects.length} flaws`, timed),
    {
      what: `expected questions, the ${FLAWS} likeliest flaws, ${QUESTIONS} questions`,
      name: 'the best of all plans',
      value: sums.best / cases.length,
      unit: 'questions',
    },
    expected('greedy', 'most telling, greedily'),
    expected('planned', 'planned'),
    {
      what: `expected questions, all ${matrix.defects.length} flaws, nothing told`,
      name: 'most telling, greedily',
      value: whole.greedy,
      unit: 'questions',
    },
    {
      what: '',
      name: 'planned',
      value: whole.planned,
      unit: 'questions',
      ratio: [whole.planned / whole.greedy, whole.planned / whole.greedy, whole.planned / whole.greedy],
    },
  ];
};
