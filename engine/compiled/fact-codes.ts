import type { Lookup } from '../case/condition.ts';
import type { Wanted } from '../model/condition.ts';

/** A fact as conditions see it: its values fall into few classes that no condition tells apart further. */
export type CodedFact = {
  readonly name: string;
  /** The code of each value that a condition names. */
  readonly named: ReadonlyMap<string, number>;
  /** Where conditions compare it as a number, in rising order. */
  readonly bounds: readonly number[];
  /** A value of each class, by code; the first is a fact that is not known. */
  readonly examples: readonly (string | number | undefined)[];
};

/** No author can write it: values in content have no blanks. */
const NAMED_BY_NONE = ' ';

/** The classes of a fact: not known, each named value, each number that is a bound and each gap between, any other. */
export const codedFact = (name: string, wanted: readonly Wanted[]): CodedFact => {
  const values = new Set<string>();
  const bounds = new Set<number>();
  for (const one of wanted.flat())
    if (typeof one === 'string') values.add(one);
    else for (const bound of Object.values(one)) if (bound !== undefined) bounds.add(bound);
  values.delete('unsure'); // can't tell is not known
  const sorted = [...bounds].sort((a, b) => a - b);
  const numbers = sorted.flatMap((bound, at) => {
    const next = sorted[at + 1];
    return [bound, next === undefined ? bound + 1 : (bound + next) / 2];
  });
  const least = sorted[0] === undefined ? [] : [sorted[0] - 1];
  return {
    name,
    named: new Map([...values].map((value, at) => [value, at + 1])),
    bounds: sorted,
    examples: [undefined, ...values, NAMED_BY_NONE, ...least, ...numbers],
  };
};

/** The class of a value. */
export const codeOf = ({ named, bounds }: CodedFact, value: string | number | undefined): number => {
  if (value === undefined || value === 'unsure') return 0;
  const other = named.size + 1;
  if (typeof value === 'string') return named.get(value) ?? other;
  if (!bounds.length) return other;
  let code = other + 1;
  for (const bound of bounds) code += value > bound ? 2 : value === bound ? 1 : 0;
  return code;
};

/** The codes of all facts of a case, in the order of `facts`. */
export const codesOf = (facts: readonly CodedFact[], lookup: Lookup): Uint8Array =>
  Uint8Array.from(facts, (fact) => codeOf(fact, lookup(fact.name)));
