/**
 * What is learned beside the same descent with one whole table of features × documents, in which nothing is left out that
 * could be pulled (Duchi, Hazan and Singer 2011: a rate of its own for each weight). The figures are those of `learn.ts`.
 * Texts and answers drawn at random, invented.
 */
import { expect, it } from 'vitest';
import { BIAS_UNIT, type Example, featuresOf, learn, valuesOf, WEIGHT_UNIT } from '#engine/find/learn.ts';
import { chanceFrom } from '../../bench/chance.ts';

const [RATE, SHRINK, OTHERS, FLAT, FIRST] = [0.5, 1e-4, 0.7, 5e-3, 1e-3];
const [ALL, KEPT] = [6, 4];
const isKept = (weight: number) => weight >= 1.51 || weight <= -4;

/** The fixed shuffle, by the steps of its congruence. */
const shuffleFrom = (order: number[]) => {
  let seed = 7;
  return () => {
    for (let at = order.length - 1; at > 0; at--) {
      seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
      const other = Math.floor((seed / 0x7fffffff) * (at + 1));
      [order[at], order[other]] = [order[other] ?? 0, order[at] ?? 0];
    }
  };
};

const wholeTable = (examples: readonly Example[], features: readonly string[], classes: number) => {
  const weights = features.map(() => new Float64Array(classes));
  const slopes = features.map(() => new Float64Array(classes));
  const bias = new Float64Array(classes);
  const biasSlopes = new Float64Array(classes).fill(FIRST);
  const order = [...examples.keys()];
  const shuffle = shuffleFrom(order);
  for (let round = 0; round < ALL + KEPT; round++) {
    const isClosed = round >= ALL;
    if (round === ALL)
      weights.forEach((row, at) => {
        row.forEach((weight, c) => {
          if (!isKept(weight)) row[c] = slopes[at]![c] = 0;
        });
      });
    shuffle();
    for (const at of order) {
      const { features: said, right, weight: trust } = examples[at]!;
      const known = said.filter((feature) => features.includes(feature));
      const rows = known.map((feature) => features.indexOf(feature));
      const worth = valuesOf(known);
      if (!rows.length || !right.length) continue;
      const scores = bias.slice();
      rows.forEach((row, i) => {
        for (let c = 0; c < classes; c++) scores[c] = scores[c]! + weights[row]![c]! * worth[i]!;
      });
      const most = Math.max(...scores);
      const chances = scores.map((score) => Math.exp(score - most));
      const total = chances.reduce((sum, chance) => sum + chance, 0);
      const shares = right.map((c, i) => (i ? OTHERS : 1) * chances[c]!);
      const all = shares.reduce((sum, share) => sum + share, 0);
      right.forEach((c, i) => {
        chances[c] = chances[c]! - (shares[i]! / all) * total;
      });
      const steep = [...chances.keys()].filter((c) => Math.abs(chances[c]!) >= (FLAT * total) / trust);
      for (const c of steep) {
        const slope = (chances[c]! * trust) / total;
        biasSlopes[c] = biasSlopes[c]! + slope * slope;
        bias[c] = bias[c]! - (RATE * slope) / Math.sqrt(biasSlopes[c]!);
        rows.forEach((row, i) => {
          const before = slopes[row]![c]!;
          if (isClosed && !before) return;
          const weight = weights[row]![c]!;
          const pull = slope * worth[i]! + SHRINK * weight;
          slopes[row]![c] = (before || FIRST) + pull * pull;
          weights[row]![c] = weight - (RATE * pull) / Math.sqrt(slopes[row]![c]!);
        });
      }
    }
  }
  return { weights, bias };
};

it.each([1, 2, 3, 4, 5])('learns what a whole table learns, cell by cell (%d)', (seed) => {
  const { pick, chance } = chanceFrom(seed);
  const classes = 7;
  const words = Array.from({ length: 14 }, (_, at) => `w${at}`);
  const examples = Array.from({ length: 160 }, (): Example => {
    const right = pick([0, 1, 2, 3, 4, 5, 6]);
    const other = pick([0, 1, 2, 3, 4, 5, 6]);
    const said = [words[2 * right]!, words[2 * right + 1]!, pick(words), pick(words)].filter(
      () => chance() < 0.8,
    );
    return {
      features: featuresOf(said, new Map()),
      right: chance() < 0.2 && other !== right ? [right, other] : [right],
      weight: pick([0.4, 1, 2]),
      own: false,
    };
  });
  const times = new Map<string, number>();
  for (const { features } of examples)
    for (const feature of features) times.set(feature, (times.get(feature) ?? 0) + 1);
  const features = [...times]
    .flatMap(([feature, count]) => (count >= (feature.includes(' ') ? 3 : 2) ? [feature] : []))
    .sort();
  const whole = wholeTable(examples, features, classes);
  const model = learn(examples, classes, new Array<number>(classes).fill(0));
  const cells = features.flatMap((feature, row) =>
    [...(whole.weights[row] ?? [])].flatMap((weight, c) => {
      const sent = Math.round(weight * WEIGHT_UNIT);
      return Math.abs(sent) > 1 ? [[feature, c, sent]] : [];
    }),
  );
  const learned = model.features.flatMap((feature, row) => {
    const pairs = model.weights[row] ?? [];
    return pairs.flatMap((c, at) => (at % 2 ? [] : [[feature, c, pairs[at + 1]]]));
  });
  expect(cells.length).toBeGreaterThan(15);
  expect(learned).toEqual(cells);
  expect(model.bias).toEqual([...whole.bias].map((value) => Math.round(value * BIAS_UNIT) + 0));
});
