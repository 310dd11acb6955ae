import { type HeardFact, SURE } from '#engine/hear.ts';
import { WHICH_COAT } from '../../shared/urls.ts';

/** What is told of the piece, by the names of the form that asks which top coat to take. */
const ASKED = { piece: 'piece', base: 'base', 'base-tone': 'tone', age: 'age' } as const;

/** The page that names a top coat, with what a text tells of the piece. */
export const whichUrl = (facts: readonly HeardFact[]): string => {
  const told = Object.entries(ASKED).flatMap(([name, field]) =>
    facts
      .filter(({ fact, sure }) => fact === name && sure >= SURE)
      .map(({ value }): [string, string] => [field, String(value)]),
  );
  return told.length ? `${WHICH_COAT}#${new URLSearchParams(told)}` : WHICH_COAT;
};
