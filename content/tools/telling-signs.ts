import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import type { Sign } from '#engine/model/defect.ts';
import { after } from '#engine/see/belief.ts';
import { matrixOf, NO, type SignMatrix, YES } from '#engine/see/matrix.ts';
import { telling } from '#engine/see/plan.ts';

/** Nobody is asked more than this of one flaw. */
export const MOST_SIGNS = 12;
/** A flaw that an answer speaks against keeps this share: the author may be wrong about either. */
const KEPT = 0.05;
/** How the weight is laid out at first: on those that she takes for look-alikes, and on all flaws. */
const ON_ALIKE = 0.7;

export type Signs = ReadonlyMap<string, Sign>;

const signAt = (matrix: SignMatrix, question: number, defect: number): number =>
  (matrix.signs[question] ?? '').charCodeAt(defect) - 48;

const startOf = (matrix: SignMatrix, alike: readonly string[]): Float64Array =>
  Float64Array.from(matrix.prior, (prior, row) =>
    alike.includes(matrix.defects[row] ?? '')
      ? (1 - ON_ALIKE) * prior + ON_ALIKE / Math.max(1, alike.length)
      : (1 - ON_ALIKE) * prior,
  );

const HALVES: Readonly<Record<Sign, 'yes' | 'no' | undefined>> = {
  yes: 'yes',
  'mostly-yes': 'yes',
  no: 'no',
  'mostly-no': 'no',
  either: undefined,
};

const weighed = (matrix: SignMatrix, alike: readonly string[], signs: Signs): Float64Array => {
  let weights = startOf(matrix, alike);
  for (const [id, sign] of signs) {
    const question = matrix.questions.indexOf(id);
    const answer = HALVES[sign];
    if (question < 0 || !answer) continue;
    const next = after(matrix, weights, question, answer);
    weights = next.map((weight, row) => Math.max(weight, (weights[row] ?? 0) * KEPT));
  }
  return weights;
};

/** No flaw with more weight than all others together: a new flaw is none of them, however like it looks. */
const halved = (weights: Float64Array): Float64Array => {
  const most = Math.max(...weights);
  const rest = weights.reduce((sum, weight) => sum + weight, -most);
  return weights.map((weight) => Math.min(weight, rest));
};

/** Look-alikes that no answer so far tells from the new flaw: one must show yes where the other shows no. */
const notYetApart = (matrix: SignMatrix, alike: readonly string[], signs: Signs): readonly number[] =>
  alike
    .map((id) => matrix.defects.indexOf(id))
    .filter(
      (row) =>
        row >= 0 &&
        ![...signs].some(([id, sign]) => {
          const question = matrix.questions.indexOf(id);
          const theirs = question < 0 ? undefined : signAt(matrix, question, row);
          return (sign === 'yes' && theirs === NO) || (sign === 'no' && theirs === YES);
        }),
    );

/**
 * The question whose answer tells a new flaw best from those that look like it, or undefined where enough is told. `signs`
 * are those answered so far. The last ones asked go to look-alikes that nothing tells apart yet.
 */
export const tellingSign = (
  matrix: SignMatrix,
  alike: readonly string[],
  signs: Signs,
  /** Questions that the new flaw's kinds of top coat settle. */
  settled: ReadonlySet<string> = new Set(),
): string | undefined => {
  if (signs.size >= MOST_SIGNS) return undefined;
  const open = matrix.questions.flatMap((id, index) => (signs.has(id) || settled.has(id) ? [] : [index]));
  const ranked = telling(matrix, halved(weighed(matrix, alike, signs)), open);
  const stuck = notYetApart(matrix, alike, signs);
  const decides = (question: number): number =>
    stuck.filter((row) => [YES, NO].includes(signAt(matrix, question, row))).length;
  const late = MOST_SIGNS - signs.size <= stuck.length + 2;
  // A stable sort: among those that decide as much the more telling one stays first.
  const [best] = late && stuck.length ? [...ranked].sort((a, b) => decides(b) - decides(a)) : ranked;
  return best === undefined ? undefined : matrix.questions[best];
};

/** The table that `tellingSign` reads, and the questions that kinds of top coat settle by themselves. */
export const signTable = (
  known: Knowledge,
  families: readonly string[],
): { matrix: SignMatrix; settled: ReadonlySet<string> } => ({
  matrix: matrixOf(known),
  settled: new Set(
    known.questions
      .filter(({ known: rules }) => rules.some(({ when }) => 'family' in when && families.length > 0))
      .map(({ id }) => id),
  ),
});
