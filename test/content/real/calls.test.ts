/** Whom to call rests on claims: each number of the table is told with its country in one of the rule for what has happened. */
import { expect, it } from 'vitest';
import { pressing } from '#engine/hear/reply/reply-safety.ts';
import { consider, type Heard, isCall, mindOf } from '#engine/hear.ts';
import { NUMBERS, numbersIn } from '#engine/model/whom.ts';
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

it('has the numbers that the words of rules name in the row of the US, and each of them in a claim', () => {
  const us = places.find(({ regions }) => regions.includes('US'));
  expect(us?.emergency).toBe(NUMBERS.emergency);
  expect(us?.poison?.number).toBe(NUMBERS.poison);
  for (const number of Object.values(NUMBERS))
    expect(claims.filter((says) => says.includes(number))).not.toEqual([]);
});

it('is typed on each rule and case whose words name a number, and on no other', () => {
  const words = known.rules.flatMap((rule) => [rule, ...rule['at-once']]);
  const told = words.filter(({ calls }) => calls.length > 0);
  expect(told.length).toBeGreaterThan(20);
  for (const { say, calls } of words) expect([...calls].sort(), say).toEqual([...numbersIn(say)].sort());
  // What stands in place of the words of a rule calls nobody.
  for (const { id, lead = '', done = '' } of known.rules)
    expect([id, ...numbersIn(`${lead} ${done}`)]).toEqual([id]);
});

const mind = mindOf(known);
const calledBy = (rule: string, at?: number): readonly string[] | undefined => {
  const urgent = at === undefined ? [] : [{ rule, at }];
  const heard = {
    text: '',
    facts: [],
    among: [],
    signs: [],
    names: [],
    dangers: [{ rule, rests: [], past: false }],
    urgent,
  };
  const { warnings } = consider(mind, { told: {}, heard: heard as unknown as Heard });
  return warnings.find(({ id }) => id === rule)?.calls;
};

it('calls by the rule itself or by the case that is told, and by no other case of it', () => {
  for (const { id, calls, 'at-once': cases } of known.rules.filter((one) =>
    mind.dangers.some((told) => told.id === one.id),
  )) {
    expect(calledBy(id) ?? [], id).toEqual(calls);
    for (const [at, one] of cases.entries())
      expect([...(calledBy(id, at) ?? [])].sort(), `${id} ${at}`).toEqual(
        [...new Set([...calls, ...one.calls])].sort(),
      );
  }
});

it('is told before harm that calls nobody, in a reply and on a page alike', () => {
  const spill = known
    .get('rule', 'vapor-and-flame')
    ['at-once'].findIndex(({ say }) => say.startsWith('A spill'));
  const heap = known
    .get('rule', 'oily-rags')
    ['at-once'].findIndex(({ say }) => say.startsWith('See to that heap'));
  const rules = ['oily-rags', 'vapor-and-flame'];
  const { warnings, stage } = consider(mind, {
    told: {},
    heard: {
      text: '',
      facts: [],
      among: [],
      signs: [],
      names: [],
      dangers: rules.map((rule) => ({ rule, rests: [], past: false })),
      urgent: [
        { rule: 'oily-rags', at: heap },
        { rule: 'vapor-and-flame', at: spill },
      ],
    } as unknown as Heard,
  });
  expect(warnings.map(({ id }) => id)).toEqual(['vapor-and-flame', 'oily-rags']);
  expect(warnings.map(isCall)).toEqual([true, false]);
  expect(pressing({ warnings, stage })).toMatchObject({ calls: true, rule: { id: 'vapor-and-flame' } });
});
