import { compare, factsIn } from '../case/condition.ts';
import type { Knowledge } from '../knowledge/knowledge.ts';
import { ASKED } from '../knowledge/known-questions.ts';
import type { ConditionInput, Wanted } from '../model/condition.ts';
import { FACTS, isFact } from '../model/facts.ts';

/** The engine asks these by name, whatever part of the content it is given. */
const isAsked = (fact: string): boolean => Object.values<string>(ASKED).includes(fact);

/** A value of a fact in a case; `undefined` is not told. */
export type CaseValue = string | number | undefined;

/** Facts with all that any condition compares each with. */
type Compared = ReadonlyMap<string, readonly Wanted[]>;

/** The facts that some conditions hang on, with those that answers among them follow from. */
export const comparedIn = (known: Knowledge, conditions: readonly ConditionInput[]): Compared => {
  const found = new Map<string, Wanted[]>();
  const left = [...conditions];
  for (const condition of left)
    for (const { fact, wanted } of factsIn(condition)) {
      const all = found.get(fact);
      if (all) all.push(wanted);
      else {
        found.set(fact, [wanted]);
        // What answers this question by itself is looked at in its turn: the list grows while it is gone through.
        if (known.has('question', fact))
          left.push(...known.get('question', fact).known.map(({ when }) => when));
      }
    }
  return found;
};

/** One number of each stretch that bounds cut a range into, and the bounds themselves. */
const numbersOf = (
  { min, max, unit }: { readonly min: number; readonly max: number; readonly unit: string },
  wanted: readonly Wanted[],
): readonly number[] => {
  const bounds = wanted.flatMap((one) =>
    typeof one === 'object' && !Array.isArray(one)
      ? Object.values(one).filter((bound) => bound !== undefined)
      : [],
  );
  const ends = [...new Set([min, ...bounds, max])].sort((a, b) => a - b);
  return ends
    .flatMap((end, at) => [end, (end + (ends[at + 1] ?? end)) / 2])
    .filter((value) => value >= min && value <= max && (unit !== 'coats' || Number.isInteger(value)));
};

/** All values that a fact can have, numbers by the stretches that conditions tell apart; the first is not told. */
const allValues = (known: Knowledge, fact: string, wanted: readonly Wanted[]): readonly CaseValue[] => {
  if (isFact(fact)) {
    const shape = FACTS[fact];
    return [undefined, ...(shape.kind === 'choice' ? shape.values : numbersOf(shape, wanted))];
  }
  if (isAsked(fact) || known.has('question', fact)) return [undefined, 'yes', 'no'];
  throw new Error(`"${fact}" is neither a fact nor a question, so no case of it can be looked at`);
};

/** Of values that no condition tells apart the first alone: their cases are the same. */
export const valuesTold = (known: Knowledge, compared: Compared): ReadonlyMap<string, readonly CaseValue[]> =>
  new Map(
    [...compared].map(([fact, wanted]) => {
      const alike = new Map<string, CaseValue>();
      for (const value of allValues(known, fact, wanted)) {
        const key = wanted.map((one) => compare(one, value)).join();
        if (!alike.has(key)) alike.set(key, value);
      }
      return [fact, [...alike.values()]];
    }),
  );

/** How many cases there are of these facts, all values told and not told. */
export const countOfCases = (known: Knowledge, compared: Compared): number =>
  [...compared].reduce((all, [fact, wanted]) => all * allValues(known, fact, wanted).length, 1);
