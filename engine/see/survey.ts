import { after } from './belief.ts';
import { type SignMatrix, YES_CHANCE } from './matrix.ts';
import { MOST_ASKED, nextQuestion, telling } from './plan.ts';

/** What the search for the defect costs, exactly: expectations over the prior, 'either' answered both ways alike. */
export type Survey = {
  /** Bits: no set of yes/no questions can do with fewer on average. */
  readonly entropy: number;
  readonly questions: number;
  readonly worst: number;
  /** Share of searches, weighted by how common each defect is, that end with the right one alone or first. */
  readonly rightFirst: number;
  /** Defects that no true path ends with alone or first. */
  readonly neverFirst: readonly string[];
  /** The same questions in one fixed order, useless ones skipped. */
  readonly fixedOrder: number;
  /** Going down an alphabetical list: is it this one? */
  readonly alphabetical: number;
};

type Choose = (weights: Float64Array, open: readonly number[]) => number | undefined;
type Tally = { questions: number; worst: number; first: Float64Array };

const tally = (matrix: SignMatrix, choose: Choose, limit = matrix.questions.length): Tally => {
  const total: Tally = { questions: 0, worst: 0, first: new Float64Array(matrix.defects.length) };
  const go = (weights: Float64Array, open: readonly number[], depth: number): void => {
    const question = depth < limit ? choose(weights, open) : undefined;
    if (question === undefined) {
      total.worst = Math.max(total.worst, depth);
      const most = Math.max(...weights);
      for (const [defect, weight] of weights.entries()) {
        total.questions += weight * depth;
        if (weight > 0 && weight >= most - 1e-12) total.first[defect] = (total.first[defect] ?? 0) + weight;
      }
      return;
    }
    const rest = open.filter((other) => other !== question);
    for (const answer of ['yes', 'no'] as const) {
      const next = after(matrix, weights, question, answer);
      if (next.some((weight) => weight > 0)) go(next, rest, depth + 1);
    }
  };
  go(Float64Array.from(matrix.prior), [...matrix.questions.keys()], 0);
  return total;
};

/**
 * The flaw that comes first, beside `defect` itself, for someone who answers each question as `defect` shows it: yes where
 * that is at least as likely as no.
 */
export const firstInsteadOf = (matrix: SignMatrix, defect: string): string | undefined => {
  const own = matrix.defects.indexOf(defect);
  let weights: Float64Array = Float64Array.from(matrix.prior);
  let open: readonly number[] = [...matrix.questions.keys()];
  for (let asked = 0; asked < MOST_ASKED; asked++) {
    const question = nextQuestion(matrix, weights, open);
    if (question === undefined) break;
    const sign = Number(matrix.signs[question]?.[own]);
    weights = after(matrix, weights, question, (YES_CHANCE[sign] ?? 0) >= 0.5 ? 'yes' : 'no');
    open = open.filter((other) => other !== question);
  }
  weights[own] = 0;
  const most = Math.max(...weights);
  return most > 0 ? matrix.defects[weights.indexOf(most)] : undefined;
};

/** The figures of the whole table of signs. */
export const survey = (matrix: SignMatrix): Survey => {
  const planned = tally(matrix, (weights, open) => nextQuestion(matrix, weights, open), MOST_ASKED);
  const order = telling(matrix, Float64Array.from(matrix.prior), [...matrix.questions.keys()]);
  const fixed = tally(matrix, (weights, open) => {
    const useful = new Set(telling(matrix, weights, open));
    return order.find((question) => useful.has(question));
  });
  const last = matrix.prior.length - 1;
  return {
    entropy: -matrix.prior.reduce((sum, share) => sum + share * Math.log2(share), 0),
    questions: planned.questions,
    worst: planned.worst,
    rightFirst: planned.first.reduce((sum, share) => sum + share, 0),
    neverFirst: matrix.defects.filter((_, index) => (planned.first[index] ?? 0) === 0),
    fixedOrder: fixed.questions,
    alphabetical: matrix.prior.reduce((sum, share, index) => sum + share * Math.min(index + 1, last), 0),
  };
};
