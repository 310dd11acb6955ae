/** A new coat on bare wood has no old paint below, so the stop that asks for it does not stand. Common practice, no source. */
import { expect, it } from 'vitest';
import { type Case, nodesOf, walk } from '#engine/index.ts';
import { known } from './knowledge.ts';
import { told } from './told.ts';

const STOP = 'is-there-old-paint-below';
const stopsOf = (on: Case, defect: string, answers: Case = {}) => {
  const walked = walk(known, { ...on, ...answers }, defect);
  return walked.fired.stops.map(({ id }) => id);
};
const yes = (question: string): Case => ({ [question]: { value: 'yes', how: 'answered' } });

it('asks for old paint before the fuzz is sanded, and not once it is the first coat on bare wood', () => {
  const dry = told({ stage: 'recoatable', family: 'water-based' });
  const rough = { ...yes('felt-with-eyes-shut'), ...yes('follows-grain-or-pores') };
  const later: Case = { ...rough, 'first-coat-on-bare-wood': { value: 'no', how: 'answered' } };
  expect(stopsOf(dry, 'raised-grain', later)).toContain(STOP);
  expect(stopsOf(dry, 'raised-grain', { ...rough, ...yes('first-coat-on-bare-wood') })).not.toContain(STOP);
  const own = told({ stage: 'recoatable', family: 'water-based', base: 'bare-wood', 'coat-number': 2 });
  expect(stopsOf(own, 'raised-grain', rough)).not.toContain(STOP);
});

it('still stops where the age of old paint is told, or not known', () => {
  for (const age of ['before-1993', 'unknown'])
    expect(
      stopsOf(told({ stage: 'recoatable', family: 'water-based', age }), 'raised-grain', {
        ...yes('felt-with-eyes-shut'),
        ...yes('first-coat-on-bare-wood'),
      }),
    ).toContain('lead-before-sanding');
});

it('no page that knows of a first coat on bare wood asks for old paint', () => {
  const asking = known.defects.flatMap(({ id }) =>
    [...nodesOf(known, id)].filter(
      ({ on, walked }) =>
        on['first-coat-on-bare-wood']?.value === 'yes' && walked.fired.stops.some((rule) => rule.id === STOP),
    ),
  );
  expect(asking.map(({ address }) => address.join('/'))).toEqual([]);
});
