import { partsOf } from '../case/condition.ts';
import type { ConditionInput, Wanted } from '../model/condition.ts';

/** One comparison of a fact, or its opposite. */
export type Literal = { readonly fact: string; readonly wanted: Wanted; readonly negated: boolean };
/** Holds where one of its comparisons holds. */
export type Clause = readonly Literal[];

/** Every choice of one from each. */
const choices = (lists: readonly (readonly Clause[])[]): readonly Clause[] =>
  lists.reduce<readonly Clause[]>(
    (sofar, list) => sofar.flatMap((one) => list.map((other) => [...one, ...other])),
    [[]],
  );

/**
 * A condition as clauses that must all hold. With three values, too, this is the same condition: `and`, `or` and `not`
 * of yes, no and unknown (Kleene's strong logic) distribute and obey De Morgan's laws.
 */
export const clausesOf = (condition: ConditionInput, negated = false): readonly Clause[] => {
  const parts = partsOf(condition).map((part): readonly Clause[] => {
    if (part.kind === 'not') return clausesOf(part.of, !negated);
    if (part.kind === 'fact') return [[{ fact: part.fact, wanted: part.wanted, negated }]];
    const options = part.options.map((option) => clausesOf(option, negated));
    return negated ? options.flat() : choices(options);
  });
  return negated ? choices(parts) : parts.flat();
};
