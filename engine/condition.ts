import type { ConditionInput } from './model/condition.ts';

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
export const compare = (wanted: unknown, value: string | number | undefined): Truth => {
  if (value === undefined || value === 'unsure') return 'unknown';
  if (Array.isArray(wanted)) return truth(wanted.includes(value));
  if (typeof wanted === 'object' && wanted !== null) {
    const { above, below } = wanted as { above?: number; below?: number };
    if (typeof value !== 'number') return 'unknown';
    return truth((above === undefined || value > above) && (below === undefined || value < below));
  }
  return truth(wanted === value);
};

/** Whether `condition` holds for the facts that `lookup` knows. An empty condition always holds. */
export const holds = (condition: ConditionInput, lookup: Lookup): Truth => {
  let result: Truth = 'yes';
  for (const [name, wanted] of Object.entries(condition)) {
    if (wanted === undefined) continue;
    if (name === 'any') {
      const options = wanted as ConditionInput[];
      result = both(result, options.map((option) => holds(option, lookup)).reduce(either, 'no'));
    } else if (name === 'not') {
      result = both(result, opposite(holds(wanted as ConditionInput, lookup)));
    } else {
      result = both(result, compare(wanted, lookup(name)));
    }
  }
  return result;
};

/** Every fact that a condition speaks of, with the values that it names. */
export function* factsIn(
  condition: ConditionInput,
): Generator<{ fact: string; values: readonly string[]; path: (string | number)[] }> {
  for (const [name, wanted] of Object.entries(condition)) {
    if (name === 'any') {
      for (const [index, option] of (wanted as ConditionInput[]).entries())
        for (const inner of factsIn(option)) yield { ...inner, path: ['any', index, ...inner.path] };
    } else if (name === 'not') {
      for (const inner of factsIn(wanted as ConditionInput)) yield { ...inner, path: ['not', ...inner.path] };
    } else if (wanted !== undefined) {
      const values =
        typeof wanted === 'string' ? [wanted] : Array.isArray(wanted) ? (wanted as string[]) : [];
      yield { fact: name, values, path: [name] };
    }
  }
}
