import { afterAnswer, type Left, leftOf } from './left.ts';
import { type SignMatrix, YES_CHANCE } from './matrix.ts';
import { MOST_ASKED, nextOf, tellingOf } from './plan.ts';

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

/** Answers on the way so far, a letter each. */
type Way = string;
type Choose = (left: Left, open: readonly number[], way: Way) => number | undefined;
type Tally = { questions: number; worst: number; first: Float64Array };

const MARK = { yes: 'y', no: 'n' } as const;

const tally = (matrix: SignMatrix, choose: Choose, limit = matrix.questions.length): Tally => {
  const total: Tally = { questions: 0, worst: 0, first: new Float64Array(matrix.defects.length) };
  const go = (left: Left, open: readonly number[], way: Way): void => {
    const depth = way.length;
    const question = depth < limit ? choose(left, open, way) : undefined;
    if (question === undefined) {
      total.worst = Math.max(total.worst, depth);
      const most = Math.max(...left.weights);
      for (const [at, defect] of left.flaws.entries()) {
        const weight = left.weights[at] ?? 0;
        total.questions += weight * depth;
        if (weight >= most - 1e-12) total.first[defect] = (total.first[defect] ?? 0) + weight;
      }
      return;
    }
    const rest = open.filter((other) => other !== question);
    for (const answer of ['yes', 'no'] as const) {
      const next = afterAnswer(matrix.signs[question] ?? '', left, answer);
      if (next.flaws.length) go(next, rest, way + MARK[answer]);
    }
  };
  go(leftOf(Float64Array.from(matrix.prior)), [...matrix.questions.keys()], '');
  return total;
};

const plans = new WeakMap<SignMatrix, Map<Way, number | undefined>>();

/** The next question on a way through the whole table; each way of a table is planned once. */
const plannedIn = (matrix: SignMatrix): Choose => {
  const kept = plans.get(matrix) ?? new Map<Way, number | undefined>();
  plans.set(matrix, kept);
  return (left, open, way) => {
    if (!kept.has(way)) kept.set(way, nextOf(matrix, left, open));
    return kept.get(way);
  };
};

/**
 * The flaw that comes first, beside `defect` itself, for someone who answers each question as `defect` shows it: yes where
 * that is at least as likely as no.
 */
export const firstInsteadOf = (matrix: SignMatrix, defect: string): string | undefined => {
  const own = matrix.defects.indexOf(defect);
  const choose = plannedIn(matrix);
  let left = leftOf(Float64Array.from(matrix.prior));
  let open: readonly number[] = [...matrix.questions.keys()];
  let way = '';
  while (way.length < MOST_ASKED) {
    const question = choose(left, open, way);
    if (question === undefined) break;
    const signs = matrix.signs[question] ?? '';
    const answer = (YES_CHANCE[Number(signs[own])] ?? 0) >= 0.5 ? 'yes' : 'no';
    left = afterAnswer(signs, left, answer);
    open = open.filter((other) => other !== question);
    way += MARK[answer];
  }
  let first: number | undefined;
  let most = 0;
  for (const [at, flaw] of left.flaws.entries())
    if (flaw !== own && (left.weights[at] ?? 0) > most) {
      first = flaw;
      most = left.weights[at] ?? 0;
    }
  return first === undefined ? undefined : matrix.defects[first];
};

/** The figures of the whole table of signs. */
export const survey = (matrix: SignMatrix): Survey => {
  const planned = tally(matrix, plannedIn(matrix), MOST_ASKED);
  const order = tellingOf(matrix, leftOf(Float64Array.from(matrix.prior)), [...matrix.questions.keys()]);
  const fixed = tally(matrix, (left, open) => {
    const useful = new Set(tellingOf(matrix, left, open));
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
