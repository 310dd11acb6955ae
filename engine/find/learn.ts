/** What was typed, and the rows of the documents that would be right, the likeliest first; none: other matters. */
export type Example = {
  readonly features: readonly string[];
  readonly right: readonly number[];
  readonly weight: number;
};

/** A linear model: for each feature its documents and weights, in parts of `WEIGHT_UNIT`. Plain data. */
export type LinearModel = {
  /** Features joined by commas. A pair of stems is joined by a space. */
  readonly features: string;
  /** For each feature: document, weight, document, weight, … */
  readonly weights: readonly (readonly number[])[];
  readonly bias: readonly number[];
};

export const WEIGHT_UNIT = 4;

/** Chosen on open phrases, split by thread. */
const EPOCHS = 12;
const RATE = 0.4;
const SHRINK = 1e-4;
/** Where several pages are right, the likeliest counts this much more than each other. */
const OTHERS = 0.5;
/** Pairs met less often are left out. */
const PAIR_TIMES = 2;
/** Weights below this, in nature, are left out of the table. */
const LEAST = 0.8;
/** Slopes below this are not followed: they cost time and change nothing. */
const FLAT = 5e-3;

/** Stems of a text and pairs of neighbors. */
export const featuresOf = (stems: readonly string[]): string[] => [
  ...new Set([...stems, ...stems.slice(1).map((stem, at) => `${stems[at]} ${stem}`)]),
];

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
  for (const { features } of examples)
    for (const feature of features) times.set(feature, (times.get(feature) ?? 0) + 1);
  const kept = [...times].filter(([feature, count]) => !feature.includes(' ') || count >= PAIR_TIMES);
  return new Map(
    kept
      .map(([feature]) => feature)
      .sort()
      .map((feature, at) => [feature, at]),
  );
};

/**
 * A multinomial logistic model over `classes` documents, learned by stochastic descent with a rate of its own for each
 * weight (Duchi, Hazan and Singer 2011). Deterministic.
 */
export const learn = (examples: readonly Example[], classes: number): LinearModel => {
  const vocabularyOf = vocabulary(examples);
  const size = vocabularyOf.size;
  const weights = new Float64Array(size * classes);
  const slopes = new Float64Array(size * classes).fill(1e-3);
  const bias = new Float64Array(classes);
  const biasSlopes = new Float64Array(classes).fill(1e-3);
  const rows = examples.map(({ features }) => features.flatMap((feature) => vocabularyOf.get(feature) ?? []));
  const targets = examples.map(({ right }) => {
    const total = 1 + OTHERS * (right.length - 1);
    return right.map((document, at) => [document, (at ? OTHERS : 1) / total] as const);
  });
  const order = [...examples.keys()];
  const shuffle = shuffled(order.length);
  const chances = new Float64Array(classes);
  for (let epoch = 0; epoch < EPOCHS; epoch++) {
    shuffle(order);
    for (const at of order) {
      const row = rows[at] ?? [];
      const target = targets[at] ?? [];
      if (!row.length || !target.length) continue;
      const scale = 1 / Math.sqrt(row.length);
      let most = Number.NEGATIVE_INFINITY;
      for (let c = 0; c < classes; c++) {
        let score = bias[c] ?? 0;
        for (const feature of row) score += (weights[feature * classes + c] ?? 0) * scale;
        chances[c] = score;
        if (score > most) most = score;
      }
      let total = 0;
      for (let c = 0; c < classes; c++) {
        const value = Math.exp((chances[c] ?? 0) - most);
        chances[c] = value;
        total += value;
      }
      for (let c = 0; c < classes; c++) chances[c] = (chances[c] ?? 0) / total;
      for (const [document, share] of target) chances[document] = (chances[document] ?? 0) - share;
      const trust = examples[at]?.weight ?? 1;
      for (let c = 0; c < classes; c++) {
        const slope = (chances[c] ?? 0) * trust;
        if (Math.abs(slope) < FLAT) continue;
        biasSlopes[c] = (biasSlopes[c] ?? 0) + slope * slope;
        bias[c] = (bias[c] ?? 0) - (RATE * slope) / Math.sqrt(biasSlopes[c] ?? 1);
        for (const feature of row) {
          const cell = feature * classes + c;
          const pull = slope * scale + SHRINK * (weights[cell] ?? 0);
          slopes[cell] = (slopes[cell] ?? 0) + pull * pull;
          weights[cell] = (weights[cell] ?? 0) - (RATE * pull) / Math.sqrt(slopes[cell] ?? 1);
        }
      }
    }
  }
  return packed(vocabularyOf, weights, bias, classes);
};

const packed = (
  features: ReadonlyMap<string, number>,
  weights: Float64Array,
  bias: Float64Array,
  classes: number,
): LinearModel => {
  const kept: string[] = [];
  const table: number[][] = [];
  for (const [feature, row] of features) {
    const cells: number[] = [];
    for (let c = 0; c < classes; c++) {
      const weight = weights[row * classes + c] ?? 0;
      if (Math.abs(weight) >= LEAST) cells.push(c, Math.round(weight * WEIGHT_UNIT));
    }
    if (cells.length) {
      kept.push(feature);
      table.push(cells);
    }
  }
  return {
    features: kept.join(','),
    weights: table,
    bias: [...bias].map((value) => Math.round(value * WEIGHT_UNIT)),
  };
};
