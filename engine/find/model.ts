import { type KinOf, kinMark } from './kin.ts';
import type { LinearModel } from './learn.ts';
import { type PackedRows, pack, packRows, unpack, unpackRows } from './pack.ts';

/** Features, each a stem or two, as numbers of stems in rising order. */
type PackedFeatures = {
  /** First stem of each feature: how far it is from that of the feature before. */
  readonly firsts: string;
  /** Second stem and one, or 0 where there is none; beside the same first stem: how far it is from the one before. */
  readonly seconds: string;
};

/** A linear model as it is sent. Plain data. */
export type PackedModel = PackedFeatures & {
  /** Stems that only the model knows, joined by commas; their numbers go on behind those of the terms. */
  readonly stems: string;
  readonly weights: PackedRows;
  readonly bias: readonly number[];
  /** Words and pairs that are of kin, with the groups of each. */
  readonly kin: PackedFeatures & { readonly groups: PackedRows };
};

type Numbered<T> = { readonly first: number; readonly second: number; readonly row: T };

const numbered = <T>(
  features: Iterable<readonly [string, T]>,
  numbers: ReadonlyMap<string, number>,
): Numbered<T>[] =>
  [...features]
    .map(([feature, row]) => {
      const [first = '', second] = feature.split(' ');
      return {
        first: numbers.get(first) ?? 0,
        second: second === undefined ? 0 : (numbers.get(second) ?? 0) + 1,
        row,
      };
    })
    .sort((a, b) => a.first - b.first || a.second - b.second);

const packFeatures = (rows: readonly Numbered<unknown>[]): PackedFeatures => ({
  firsts: pack(rows.map(({ first }, at) => first - (rows[at - 1]?.first ?? 0))),
  seconds: pack(
    rows.map(({ first, second }, at) => {
      const before = rows[at - 1];
      return before?.first === first ? second - before.second : second;
    }),
  ),
});

const unpackFeatures = ({ firsts, seconds }: PackedFeatures, names: readonly string[]): string[] => {
  const steps = unpack(seconds);
  let first = 0;
  let second = 0;
  return unpack(firsts).map((step, row) => {
    second = (step || !row ? 0 : second) + (steps[row] ?? 0);
    first += step;
    const name = names[first] ?? '';
    return second ? `${name} ${names[second - 1]}` : name;
  });
};

/** A model beside the stems of the terms, which it need not name again. */
export const packModel = (
  { features, weights, bias }: LinearModel,
  kin: KinOf,
  terms: readonly string[],
): PackedModel => {
  const known = new Set(terms);
  const parts = [...features, ...kin.keys()].flatMap((feature) => feature.split(' '));
  const own = [...new Set(parts)].filter((stem) => !known.has(stem) && !stem.startsWith('~')).sort();
  // The groups of kin are numbered behind all stems.
  const marks = [...Array(1 + Math.max(-1, ...[...kin.values()].flat())).keys()].map(kinMark);
  const numbers = new Map([...terms, ...own, ...marks].map((name, at) => [name, at]));
  const rows = numbered(
    features.map((feature, at) => [feature, weights[at] ?? []] as const),
    numbers,
  );
  const groups = numbered(kin, numbers);
  return {
    stems: own.join(','),
    ...packFeatures(rows),
    weights: packRows(rows.map(({ row }) => row)),
    bias,
    kin: {
      ...packFeatures(groups),
      groups: packRows(groups.map(({ row }) => row.flatMap((group) => [group, 0]))),
    },
  };
};

export type Model = {
  /** Row of each feature. */
  readonly features: ReadonlyMap<string, number>;
  /** For each feature: document, weight, document, weight, … */
  readonly weights: readonly (readonly number[])[];
  readonly kin: KinOf;
  /** Stems that only the model knows. */
  readonly own: readonly string[];
};

/** What `packModel` has packed. */
export const unpackModel = (packed: PackedModel, terms: readonly string[]): Model => {
  const own = packed.stems ? packed.stems.split(',') : [];
  const groups = unpackRows(packed.kin.groups).map((row) => row.filter((_, at) => at % 2 === 0));
  const marks = [...Array(1 + Math.max(-1, ...groups.flat())).keys()].map(kinMark);
  const names = [...terms, ...own, ...marks];
  return {
    features: new Map(unpackFeatures(packed, names).map((name, row) => [name, row])),
    weights: unpackRows(packed.weights),
    kin: new Map(unpackFeatures(packed.kin, names).map((name, row) => [name, groups[row] ?? []])),
    own,
  };
};
