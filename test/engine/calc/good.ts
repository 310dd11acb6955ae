import type { Result } from '#engine/calc/quantity.ts';
import { sayProblem } from '#engine/calc/say-problem.ts';

/** The value of a result that must be good. */
export const good = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(sayProblem(result.problem));
  return result.value;
};

/** The sentence of a result that must be a refusal. */
export const refusal = (result: Result<unknown>): string => {
  if (result.ok) throw new Error(`expected a refusal, got ${JSON.stringify(result.value)}`);
  return sayProblem(result.problem);
};

/** |got − want| ÷ |want|. */
export const relativeError = (got: number, want: number): number => Math.abs(got - want) / Math.abs(want);
