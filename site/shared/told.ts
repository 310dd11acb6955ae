import { isKeyOf } from '#engine/plain/entry-of.ts';
import { choices } from './choices.ts';

const { age, piece, family, base, applicator, hardener, part } = choices;
const { none: _, ...ages } = age.values;

/** What she can tell of a piece once, so that cautions fit it and questions fall away: facts with their words. */
export const TOLD = {
  age: { ask: age.ask, values: { ...ages, ...age['as-told'] } },
  piece,
  family,
  base,
  applicator,
  hardener,
  part,
};

export type ToldFact = keyof typeof TOLD;
export const isToldFact = (fact: string): fact is ToldFact => isKeyOf(TOLD, fact);
export const TOLD_FACTS: readonly ToldFact[] = Object.keys(TOLD).filter(isToldFact);
