/** Whom to call rests on claims: each number of the table is told with its country in one of the rule for what has happened. */
import { expect, it } from 'vitest';
import { readCalls } from '../../../content/tools/calls.ts';
import { known } from './knowledge.ts';

const { places } = readCalls('.');
const claims = known.get('rule', 'emergency').claims.map(({ says }) => says);
const NAMES: Readonly<Record<string, readonly string[]>> = {
  'the rest of Europe': ['European Union'],
  // One number for all of the union, whose member it is; the other is the neighbor's own.
  Switzerland: ['Switzerland', 'other countries of Europe'],
};

it.each(places.map((place) => [place.place, place] as const))('has grounds in %s', (name, place) => {
  const names = NAMES[name] ?? [name];
  const told = claims.filter((says) => names.some((one) => says.includes(one)));
  for (const number of [place.emergency, place.poison?.number ?? place.emergency])
    expect(told.filter((says) => says.includes(number))).not.toEqual([]);
});

it('names no country twice', () => {
  const regions = places.flatMap((place) => place.regions);
  expect(new Set(regions).size).toBe(regions.length);
});
