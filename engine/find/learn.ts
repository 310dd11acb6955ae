import { type KinOf, kinFeatures } from './kin.ts';

/** What was typed, and the rows of the documents that would be right, the likeliest first; none: other matters. */
export type Example = {
  readonly features: readonly string[];
  readonly right: readonly number[];
  readonly weight: number;
  /** A page's own text: each of its words is learned from, also one that is met once. */
  readonly own: boolean;
};

/** A linear model: for each feature its documents and weights, in parts of `WEIGHT_UNIT`. */
export type LinearModel = {
  /** A pair of stems is joined by a space. */
  readonly features: readonly string[];
  /** For each feature: document, weight, document, weight, … */
  readonly weights: readonly (readonly number[])[];
  /** Of each document, in parts of `BIAS_UNIT`. */
  readonly bias: readonly number[];
};

/** A weight of one is so many steps of the table; a bias is finer, there are few. */
export const WEIGHT_UNIT = 2;
export const BIAS_UNIT = 16;

// Figures chosen on open phrases, split by thread.
/** Rounds over all examples: so many with every weight, then so many with those alone that are kept. */
type Rounds = { readonly all: number; readonly kept: number };
const ROUNDS: Rounds = { all: 4, kept: 3 };
/** Few examples are gone over more often. */
const FEW = 5000;
const ROUNDS_OF_FEW: Rounds = { all: 6, kept: 4 };
const RATE = 0.5;
const SHRINK = 1e-4;
/** Where several pages are right, each other counts so much of what the likeliest does. */
const OTHERS = 0.7;
/** What was met less often is left out: of a word met once, counting tells as much. */
const LEAST_TIMES = 2;
/** A pair tells less for its place in the table than the words that it is made of. */
const LEAST_TIMES_OF_PAIR = 3;
/**
 * Weights nearer to nothing than these are left out, what speaks against a page sooner: it keeps the table small. Those
 * that are kept then learn to do without the others.
 */
const LEAST_FOR = 1.51;
const LEAST_AGAINST = 4;
/** Slopes below this are not followed: they cost time and change nothing. */
const FLAT = 5e-3;
/** Logarithm of a share, of the likeliest, that is not worth reckoning. */
const HOPELESS = -18;
/** What each sum of squared slopes begins with. */
const FIRST_SLOPE = 1e-3;

/** Stems of a text, pairs of neighbors, and the groups of kin that they name. */
export const featuresOf = (stems: readonly string[], kin: KinOf): string[] => [
  ...new Set([
    ...stems,
    ...stems.slice(1).map((stem, at) => `${stems[at]} ${stem}`),
    ...kinFeatures(stems, kin),
  ]),
];

/** A pair tells less for sure than a word: it was met more seldom. Chosen on open phrases. */
const PAIR = 0.7;
const worthOf = (feature: string): number => (feature.includes(' ') ? PAIR : 1);

/** What each feature of a text counts: together they are of length one, whatever the text's. */
export const valuesOf = (features: readonly string[]): Float64Array => {
  const values = Float64Array.from(features, worthOf);
  const length = Math.sqrt(values.reduce((sum, value) => sum + value * value, 0));
  return values.map((value) => value / length);
};

/** A fixed shuffle: same examples, same table. */
const shuffled = (length: number): ((order: number[]) => void) => {
  let seed = 7;
  const chance = (): number => {
    seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
    return seed / 0x7fffffff;
  };
  return (order) => {
    for (let at = length - 1; at > 0; at--) {
      const other = Math.floor(chance() * (at + 1));
      [order[at], order[other]] = [order[other] ?? 0, order[at] ?? 0];
    }
  };
};

const vocabulary = (examples: readonly Example[]): Map<string, number> => {
  const times = new Map<string, number>();
  for (const { features, own } of examples)
    for (const feature of features)
      times.set(feature, (times.get(feature) ?? 0) + (own && !feature.includes(' ') ? LEAST_TIMES : 1));
  const kept = [...times].filter(
    ([feature, count]) => count >= (feature.includes(' ') ? LEAST_TIMES_OF_PAIR : LEAST_TIMES),
  );
  return new Map(
    kept
      .map(([feature]) => feature)
      .sort()
      .map((feature, at) => [feature, at]),
  );
};

/**
 * What is learned of one feature: the documents that it was ever pulled to or from, each with its weight and the sum of its
 * squared slopes. Of all documents these are few.
 */
type Cells = { readonly of: number[]; readonly weights: number[]; readonly slopes: number[] };

/** The cells that stand far enough from nothing to be kept. */
const strongOf = ({ of, weights, slopes }: Cells): Cells => {
  const isStrong = (_: unknown, at: number): boolean => {
    const weight = weights[at]!;
    return weight >= LEAST_FOR || weight <= -LEAST_AGAINST;
  };
  return { of: of.filter(isStrong), weights: weights.filter(isStrong), slopes: slopes.filter(isStrong) };
};

/** What is learned so far, and the room that each step reckons in. */
type State = {
  table: readonly Cells[];
  /** Only what was kept learns on; no feature is pulled to a document that is new to it. */
  isClosed: boolean;
  readonly bias: Float64Array;
  readonly biasSlopes: Float64Array;
  /** Of each document: its score, then its chance, then what is wrong with that chance. */
  readonly chances: Float64Array;
  /** The documents that are followed in this step. */
  readonly steepest: Int32Array;
  /** The step in which each document was followed last, and the turn in which a feature knew it. */
  readonly followed: Int32Array;
  readonly met: Int32Array;
  step: number;
  turn: number;
};

const stateOf = (features: number, classes: number): State => ({
  table: Array.from({ length: features }, (): Cells => ({ of: [], weights: [], slopes: [] })),
  isClosed: false,
  bias: new Float64Array(classes),
  biasSlopes: new Float64Array(classes).fill(FIRST_SLOPE),
  chances: new Float64Array(classes),
  steepest: new Int32Array(classes),
  followed: new Int32Array(classes),
  met: new Int32Array(classes),
  step: 0,
  turn: 0,
});

/** Scores of all documents for an example's features, into `chances`. */
const score = ({ table, bias, chances }: State, row: readonly number[], worth: Float64Array): void => {
  chances.set(bias);
  row.forEach((feature, i) => {
    const value = worth[i]!;
    const { of, weights } = table[feature]!;
    for (let k = 0; k < of.length; k++) {
      const c = of[k]!;
      chances[c] = chances[c]! + weights[k]! * value;
    }
  });
};

/** Turns scores into shares, and gives what they add up to. */
const toShares = (chances: Float64Array): number => {
  let most = Number.NEGATIVE_INFINITY;
  for (let c = 0; c < chances.length; c++) if (chances[c]! > most) most = chances[c]!;
  let total = 0;
  for (let c = 0; c < chances.length; c++) {
    const below = chances[c]! - most;
    const value = below < HOPELESS ? 0 : Math.exp(below);
    chances[c] = value;
    total += value;
  }
  return total;
};

/** Any right page is an answer: each is pulled up by its share in the chance that all of them have together. */
const minusRight = (chances: Float64Array, right: readonly number[], total: number): void => {
  const shares = right.map((document, i) => (i ? OTHERS : 1) * chances[document]!);
  const all = shares.reduce((sum, share) => sum + share, 0);
  right.forEach((document, i) => {
    const share = all > 0 ? shares[i]! / all : 1 / right.length;
    chances[document] = chances[document]! - share * total;
  });
};

/** Moves the bias of each document that is steep enough to be followed; gives how many are. */
const pullBias = (state: State, part: number, flat: number): number => {
  const { bias, biasSlopes, chances, steepest, followed } = state;
  let steep = 0;
  state.step += 1;
  for (let c = 0; c < chances.length; c++) {
    if (Math.abs(chances[c]!) < flat) continue;
    steepest[steep++] = c;
    followed[c] = state.step;
    const slope = chances[c]! * part;
    biasSlopes[c] = biasSlopes[c]! + slope * slope;
    bias[c] = bias[c]! - (RATE * slope) / Math.sqrt(biasSlopes[c]!);
  }
  return steep;
};

/** Moves the weights of a feature for what is followed, and begins those that it did not know. */
const pullFeature = (state: State, { of, weights, slopes }: Cells, counts: number, steep: number): void => {
  const { chances, followed, met, step, steepest } = state;
  state.turn += 1;
  const { turn } = state;
  let found = 0;
  for (let k = 0; k < of.length; k++) {
    const c = of[k]!;
    if (followed[c] !== step) continue;
    met[c] = turn;
    found += 1;
    const weight = weights[k]!;
    const pull = chances[c]! * counts + SHRINK * weight;
    const slopeSum = slopes[k]! + pull * pull;
    slopes[k] = slopeSum;
    weights[k] = weight - (RATE * pull) / Math.sqrt(slopeSum);
  }
  if (state.isClosed || found === steep) return;
  for (let i = 0; i < steep; i++) {
    const c = steepest[i]!;
    if (met[c] === turn) continue;
    const pull = chances[c]! * counts;
    const slopeSum = FIRST_SLOPE + pull * pull;
    of.push(c);
    slopes.push(slopeSum);
    weights.push(-(RATE * pull) / Math.sqrt(slopeSum));
  }
};

/** An example as the table has it: its features by row, what each counts, and what is right of it. */
type Lesson = {
  readonly row: readonly number[];
  readonly worth: Float64Array;
  readonly right: readonly number[];
  readonly trust: number;
};

const lessonsOf = (examples: readonly Example[], rowOf: ReadonlyMap<string, number>): readonly Lesson[] =>
  examples.map(({ features, right, weight }) => {
    const known = features.filter((feature) => rowOf.has(feature));
    return { row: known.map((feature) => rowOf.get(feature)!), worth: valuesOf(known), right, trust: weight };
  });

const learnFrom = (state: State, { row, worth, right, trust }: Lesson): void => {
  if (!row.length || !right.length) return;
  score(state, row, worth);
  const total = toShares(state.chances);
  minusRight(state.chances, right, total);
  const part = trust / total;
  const steep = pullBias(state, part, (FLAT * total) / trust);
  for (const [i, feature] of row.entries())
    pullFeature(state, state.table[feature]!, part * worth[i]!, steep);
};

/**
 * A multinomial logistic model over `classes` documents, learned by stochastic descent with a rate of its own for each
 * weight (Duchi, Hazan and Singer 2011). `prior` is added to what is learned of each document whatever the words.
 * Deterministic.
 */
export const learn = (
  examples: readonly Example[],
  classes: number,
  prior: readonly number[],
): LinearModel => {
  const rowOf = vocabulary(examples);
  const lessons = lessonsOf(examples, rowOf);
  const state = stateOf(rowOf.size, classes);
  const order = [...lessons.keys()];
  const shuffle = shuffled(order.length);
  const rounds = lessons.length < FEW ? ROUNDS_OF_FEW : ROUNDS;
  for (let round = 0; round < rounds.all + rounds.kept; round++) {
    if (round === rounds.all) {
      state.isClosed = true;
      state.table = state.table.map(strongOf);
    }
    shuffle(order);
    for (const at of order) learnFrom(state, lessons[at]!);
  }
  return packed(rowOf, state.table, state.bias, prior);
};

const packed = (
  features: ReadonlyMap<string, number>,
  learned: readonly Cells[],
  bias: Float64Array,
  prior: readonly number[],
): LinearModel => {
  const kept: string[] = [];
  const table: number[][] = [];
  for (const [feature, row] of features) {
    const { of, weights } = learned[row]!;
    const cells = of
      .map((c, k) => [c, Math.round(weights[k]! * WEIGHT_UNIT)] as const)
      .filter(([, sent]) => Math.abs(sent) > 1)
      .sort(([a], [b]) => a - b);
    if (!cells.length) continue;
    kept.push(feature);
    table.push(cells.flat());
  }
  return {
    features: kept,
    weights: table,
    // JSON knows no -0.
    bias: [...bias].map((value, at) => Math.round((value + (prior[at] ?? 0)) * BIAS_UNIT) + 0),
  };
};
