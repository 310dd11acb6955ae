import type { Case } from '#engine/index.ts';
import { TOLD, type ToldFact } from '../../shared/told.ts';
import { button, element } from '../shared/element.ts';
import { tellFact, toldValue } from './tell-fact.ts';

/** A fact with what is told of it, and the way to take that back. */
export const toldLine = (on: Case, fact: ToldFact): readonly (string | Node)[] => {
  const values: Readonly<Record<string, string>> = TOLD[fact].values;
  return [
    `${TOLD[fact].ask} `,
    element('b', {}, values[toldValue(on, fact)] ?? ''),
    ' ',
    button('Change', () => tellFact(fact, '')),
  ];
};
