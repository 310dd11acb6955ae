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
  const vocabularyOf = vocabulary(examples);
  let table = Array.from({ length: vocabularyOf.size }, (): Cells => ({ of: [], weights: [], slopes: [] }));
  const bias = new Float64Array(classes);
  const biasSlopes = new Float64Array(classes).fill(FIRST_SLOPE);
  const known = examples.map(({ features }) => features.filter((feature) => vocabularyOf.has(feature)));
  const rows = known.map((features) => features.map((feature) => vocabularyOf.get(feature) as number));
  const values = known.map(valuesOf);
  const order = [...examples.keys()];
  const shuffle = shuffled(order.length);
  const chances = new Float64Array(classes);
  const steepest = new Int32Array(classes);
  // Which documents are followed in this step, and which of them a feature knows: each by the number of its turn.
  const followed = new Int32Array(classes);
  const met = new Int32Array(classes);
  let step = 0;
  let turn = 0;
  let isClosed = false;
  const rounds = examples.length < FEW ? ROUNDS_OF_FEW : ROUNDS;
  for (let round = 0; round < rounds.all + rounds.kept; round++) {
    if (round === rounds.all) {
      isClosed = true;
      table = table.map(strongOf);
    }
    shuffle(order);
    for (const at of order) {
      const row = rows[at] ?? [];
      const right = examples[at]?.right ?? [];
      if (!row.length || !right.length) continue;
      const worth = values[at]!;
      chances.set(bias);
      row.forEach((feature, i) => {
        const value = worth[i]!;
        const { of, weights } = table[feature]!;
        for (let k = 0; k < of.length; k++) {
          const c = of[k]!;
          chances[c] = chances[c]! + weights[k]! * value;
        }
      });
      let most = Number.NEGATIVE_INFINITY;
      for (let c = 0; c < classes; c++) if (chances[c]! > most) most = chances[c]!;
      let total = 0;
      for (let c = 0; c < classes; c++) {
        const below = chances[c]! - most;
        const value = below < HOPELESS ? 0 : Math.exp(below);
        chances[c] = value;
        total += value;
      }
      // Any right page is an answer: each is pulled up by its share in the chance that all of them have together.
      const shares = right.map((document, i) => (i ? OTHERS : 1) * chances[document]!);
      const all = shares.reduce((sum, share) => sum + share, 0);
      right.forEach((document, i) => {
        const share = all > 0 ? shares[i]! / all : 1 / right.length;
        chances[document] = chances[document]! - share * total;
      });
      const trust = examples[at]?.weight ?? 1;
      const flat = (FLAT * total) / trust;
      const part = trust / total;
      let steep = 0;
      step += 1;
      for (let c = 0; c < classes; c++) {
        if (Math.abs(chances[c]!) < flat) continue;
        steepest[steep++] = c;
        followed[c] = step;
        const slope = chances[c]! * part;
        biasSlopes[c] = biasSlopes[c]! + slope * slope;
        bias[c] = bias[c]! - (RATE * slope) / Math.sqrt(biasSlopes[c]!);
      }
      row.forEach((feature, which) => {
        const { of, weights, slopes } = table[feature]!;
        const counts = part * worth[which]!;
        turn += 1;
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
        if (isClosed || found === steep) return;
        for (let i = 0; i < steep; i++) {
          const c = steepest[i]!;
          if (met[c] === turn) continue;
          const pull = chances[c]! * counts;
          const slopeSum = FIRST_SLOPE + pull * pull;
          of.push(c);
          slopes.push(slopeSum);
          weights.push(-(RATE * pull) / Math.sqrt(slopeSum));
        }
      });
    }
  }
  return packed(vocabularyOf, table, bias, prior);
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
