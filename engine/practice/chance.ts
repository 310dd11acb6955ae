import { random, start } from '../board/noise.ts';

/** Choices that follow from a seed alone, in whole numbers, so that every machine makes the same. */
export type Chance = {
  /** A whole number from 0 up to but not `below`. */
  readonly under: (below: number) => number;
  /** One of a list that is not empty. */
  readonly one: <T>(of: readonly T[]) => T;
  /** One of a list, each by its weight, a whole number of 1 or more. */
  readonly weighted: <T>(of: readonly (readonly [T, number])[]) => T;
  /** The list in another order. */
  readonly mixed: <T>(of: readonly T[]) => T[];
};

/** @param stream a number for each purpose, so that one choice more does not move all later ones */
export const chanceOf = (seed: number, stream: number): Chance => {
  const next = random(start(seed, stream));
  const under = (below: number): number => Math.floor(next() * below);
  const one = <T>(of: readonly T[]): T => {
    if (!of.length) throw new Error('nothing to choose from');
    return of[under(of.length)] as T;
  };
  return {
    under,
    one,
    weighted: (of) => {
      let left = under(of.reduce((sum, [, weight]) => sum + weight, 0));
      for (const [value, weight] of of) {
        if (left < weight) return value;
        left -= weight;
      }
      throw new Error('nothing to choose from');
    },
    mixed: (of) => {
      const list = [...of];
      for (let last = list.length - 1; last > 0; last--) {
        const other = under(last + 1);
        [list[last], list[other]] = [list[other] as (typeof list)[0], list[last] as (typeof list)[0]];
      }
      return list;
    },
  };
};
