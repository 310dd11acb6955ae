import type { LinearModel } from './learn.ts';
import { type PackedRows, pack, packRows, unpack, unpackRows } from './pack.ts';

/** A linear model as it is sent: features as numbers of stems, in rising order. Plain data. */
export type PackedModel = {
  /** Stems that only the model knows, joined by commas; their numbers go on behind those of the terms. */
  readonly stems: string;
  /** First stem of each feature: how far it is from that of the feature before. */
  readonly firsts: string;
  /** Second stem and one, or 0 where there is none; beside the same first stem: how far it is from the one before. */
  readonly seconds: string;
  readonly weights: PackedRows;
  readonly bias: readonly number[];
};

/** A model beside the stems of the terms, which it need not name again. */
export const packModel = (
  { features, weights, bias }: LinearModel,
  terms: readonly string[],
): PackedModel => {
  const known = new Set(terms);
  const own = [...new Set(features.flatMap((feature) => feature.split(' ')))].filter(
    (stem) => !known.has(stem),
  );
  const numbers = new Map([...terms, ...own].map((stem, at) => [stem, at]));
  const rows = features
    .map((feature, at) => {
      const [first = '', second] = feature.split(' ');
      return {
        first: numbers.get(first) ?? 0,
        second: second === undefined ? 0 : (numbers.get(second) ?? 0) + 1,
        weights: weights[at] ?? [],
      };
    })
    .sort((a, b) => a.first - b.first || a.second - b.second);
  return {
    stems: own.join(','),
    firsts: pack(rows.map(({ first }, at) => first - (rows[at - 1]?.first ?? 0))),
    seconds: pack(
      rows.map(({ first, second }, at) => {
        const before = rows[at - 1];
        return before?.first === first ? second - before.second : second;
      }),
    ),
    weights: packRows(rows.map((row) => row.weights)),
    bias,
  };
};

/** What `packModel` has packed: each feature's row, and the rows. */
export const unpackModel = (
  { stems, firsts, seconds, weights }: PackedModel,
  terms: readonly string[],
): { readonly features: ReadonlyMap<string, number>; readonly weights: readonly (readonly number[])[] } => {
  const names = [...terms, ...stems.split(',')];
  const steps = unpack(seconds);
  const features = new Map<string, number>();
  let first = 0;
  let second = 0;
  unpack(firsts).forEach((step, row) => {
    second = (step || !row ? 0 : second) + (steps[row] ?? 0);
    first += step;
    const name = names[first] ?? '';
    features.set(second ? `${name} ${names[second - 1]}` : name, row);
  });
  return { features, weights: unpackRows(weights) };
};
