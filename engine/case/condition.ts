import type { ConditionInput, Wanted } from '../model/condition.ts';
import { isOneOf } from '../plain/entry-of.ts';

/** Three-valued: a condition over facts that are not known is neither true nor false. */
export type Truth = 'yes' | 'no' | 'unknown';
export type Lookup = (fact: string) => string | number | undefined;

const both = (a: Truth, b: Truth): Truth =>
  a === 'no' || b === 'no' ? 'no' : a === 'yes' && b === 'yes' ? 'yes' : 'unknown';
const either = (a: Truth, b: Truth): Truth =>
  a === 'yes' || b === 'yes' ? 'yes' : a === 'no' && b === 'no' ? 'no' : 'unknown';
const opposite = (a: Truth): Truth => (a === 'yes' ? 'no' : a === 'no' ? 'yes' : 'unknown');
const truth = (is: boolean): Truth => (is ? 'yes' : 'no');

/** Whether a fact with this value is as a condition wants it; unknown where the fact is. */
export const compare = (wanted: Wanted, value: string | number | undefined): Truth => {
  if (value === undefined || value === 'unsure') return 'unknown';
  if (Array.isArray(wanted)) return truth(isOneOf(wanted, value));
  if (typeof wanted === 'object') {
    const { above, below } = wanted;
    if (typeof value !== 'number') return 'unknown';
    return truth((above === undefined || value > above) && (below === undefined || value < below));
  }
  return truth(wanted === value);
};

/** One line of a condition. All of its lines must hold. */
type Part =
  | { readonly kind: 'any'; readonly options: readonly ConditionInput[] }
  | { readonly kind: 'not'; readonly of: ConditionInput }
  | { readonly kind: 'fact'; readonly fact: string; readonly wanted: Wanted };

const partOf = (name: string, wanted: ConditionInput[string]): Part => {
  // An author writes `any`, `not` and facts side by side, so only the name tells which it is; the schema holds it to that.
  if (name === 'any') return { kind: 'any', options: wanted as ConditionInput[] };
  if (name === 'not') return { kind: 'not', of: wanted as ConditionInput };
  return { kind: 'fact', fact: name, wanted: wanted as Wanted };
};

/** Conditions are never changed, so each is taken apart once. */
const taken = new WeakMap<ConditionInput, readonly Part[]>();

/** The lines of a condition, in the order in which they are written. */
export const partsOf = (condition: ConditionInput): readonly Part[] => {
  const known = taken.get(condition);
  if (known) return known;
  const parts = Object.entries(condition).flatMap(([name, wanted]) =>
    wanted === undefined ? [] : [partOf(name, wanted)],
  );
  taken.set(condition, parts);
  return parts;
};

const holdsPart = (part: Part, lookup: Lookup): Truth => {
  switch (part.kind) {
    case 'any':
      return part.options.map((option) => holds(option, lookup)).reduce(either, 'no');
    case 'not':
      return opposite(holds(part.of, lookup));
    case 'fact':
      return compare(part.wanted, lookup(part.fact));
  }
};

/** Whether `condition` holds for the facts that `lookup` knows. An empty condition always holds. */
export const holds = (condition: ConditionInput, lookup: Lookup): Truth => {
  let result: Truth = 'yes';
  for (const part of partsOf(condition)) result = both(result, holdsPart(part, lookup));
  return result;
};

/** Every fact that a condition speaks of, with what it is compared with and the values that this names. */
export function* factsIn(
  condition: ConditionInput,
): Generator<{ fact: string; wanted: Wanted; values: readonly string[]; path: (string | number)[] }> {
  for (const part of partsOf(condition)) {
    if (part.kind === 'any') {
      for (const [index, option] of part.options.entries())
        for (const inner of factsIn(option)) yield { ...inner, path: ['any', index, ...inner.path] };
    } else if (part.kind === 'not') {
      for (const inner of factsIn(part.of)) yield { ...inner, path: ['not', ...inner.path] };
    } else {
      const { fact, wanted } = part;
      const values = typeof wanted === 'string' ? [wanted] : Array.isArray(wanted) ? wanted : [];
      yield { fact, wanted, values, path: [fact] };
    }
  }
}
