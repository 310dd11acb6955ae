/** Her own cans, kept by a name: what one form holds of a can comes back in the other. Invented cans. */
import { expect, it } from 'vitest';
import { canOf, coatIn } from '../../site/client/clock/draft.ts';
import { COAT_FIELDS } from '../../site/client/clock/fields.ts';
import { PLAN_FIELDS } from '../../site/client/schedule/fields.ts';
import { asDraft, canIn, MOST_CANS, nameOfCan, withCan } from '../../site/client/shared/cans/kept.ts';
import type { Draft } from '../../site/client/shared/form/form.ts';

const CLOCK: Draft = {
  units: 'us',
  product: 'oil-based-polyurethane',
  air: '65',
  'label-touch': '240',
  'label-recoat': '8',
  'label-recoat-to': '10',
  'label-air': '77',
  'label-cure': ' ',
};
const kept = (draft: Draft, name = 'Blue can, satin') => {
  const can = canIn(draft, name, 'a');
  if (!can) throw new Error('nothing kept');
  return can;
};

it('keeps what the form says of the can and nothing else', () => {
  const can = kept(CLOCK);
  expect(can).toMatchObject({ name: 'Blue can, satin', product: 'oil-based-polyurethane', units: 'us' });
  expect(can.says).not.toHaveProperty('air');
  expect(can.says).not.toHaveProperty('label-cure');
  expect(canIn({ ...CLOCK, ...asDraft(COAT_FIELDS, { ...can, says: {} }, CLOCK) }, 'x', 'b')).toBeUndefined();
});

it('fills the clock as it was typed, and empties what the can does not say', () => {
  const filled = asDraft(COAT_FIELDS, kept(CLOCK), { ...CLOCK, 'label-cure': '30' });
  expect(filled).toMatchObject({
    product: 'oil-based-polyurethane',
    'label-touch': '240',
    'label-recoat-to': '10',
    'label-cure': '',
  });
  expect(filled).not.toHaveProperty('air');
});

it('keeps the hours in which it lets no coat on for both forms, and has the clock ask for both ends', () => {
  const closed = { ...CLOCK, 'label-no-coat': '12', 'label-no-coat-to': '48' };
  expect(asDraft(PLAN_FIELDS, kept(closed), CLOCK)).toMatchObject({
    'can-no-coat': '12',
    'can-no-coat-to': '48',
  });
  const minutes = (draft: Draft) => coatIn(draft, 0).coat.label?.minutes['no-coat'];
  expect(minutes(closed)).toEqual({ from: 720, to: 2880 });
  expect(minutes({ ...CLOCK, 'label-no-coat': '0' })).toEqual({ from: 0, to: 0 });
  const faults = (draft: Draft) => coatIn(draft, 0).faults.map(({ field }) => field);
  expect(faults({ ...closed, when: 'now', humidity: '50' })).toEqual([]);
  expect(faults({ ...closed, when: 'now', humidity: '50', 'label-no-coat-to': '' })).toEqual([
    'label-no-coat',
  ]);
  expect(faults({ ...closed, when: 'now', humidity: '50', 'label-no-coat': '' })).toEqual(['label-no-coat']);
});

it('keeps what is mixed in with the can, and asks anew of one that does not say', () => {
  const two = kept({ ...CLOCK, hardener: 'isocyanate' });
  expect(asDraft(COAT_FIELDS, two, CLOCK)['hardener']).toBe('isocyanate');
  expect(asDraft(PLAN_FIELDS, two, CLOCK)['hardener']).toBe('isocyanate');
  expect(asDraft(COAT_FIELDS, kept(CLOCK), { ...CLOCK, hardener: 'none' })['hardener']).toBe('');
});

it('goes from the clock into the plan and back, in the units of the form', () => {
  const filled = asDraft(PLAN_FIELDS, kept(CLOCK), { units: 'metric' });
  expect(filled).toMatchObject({ 'can-touch': '240', 'can-recoat': '8', 'can-cold': '' });
  expect(filled).not.toHaveProperty('label-touch');
  const plan = kept({ units: 'us', product: 'shellac', 'can-cold': '50', 'can-recoat': '2' });
  expect(asDraft(PLAN_FIELDS, plan, { units: 'metric' })).toMatchObject({
    'can-cold': '10',
    'can-recoat': '2',
  });
  expect(asDraft(COAT_FIELDS, plan, { units: 'metric' })).toMatchObject({ 'label-recoat': '2' });
  // 77 °F is 25 °C.
  expect(asDraft(COAT_FIELDS, kept(CLOCK), { units: 'metric' })['label-air']).toBe('25');
});

it('carries the time to handle between clock and plan; one kept before there was such a field leaves it empty', () => {
  const can = kept({ ...CLOCK, 'label-handle': '5', 'label-handle-to': '9' });
  expect(asDraft(PLAN_FIELDS, can, { units: 'us' })['can-handle']).toBe('5');
  expect(asDraft(COAT_FIELDS, can, { units: 'us' })).toMatchObject({
    'label-handle': '5',
    'label-handle-to': '9',
  });
  const plan = kept({ units: 'us', product: 'shellac', 'can-handle': '1' });
  expect(asDraft(COAT_FIELDS, plan, { units: 'us' })['label-handle']).toBe('1');
  const older = { ...can, says: { 'label-touch': '240' } };
  expect(asDraft(PLAN_FIELDS, older, { units: 'us' })).toMatchObject({ 'can-handle': '' });
});

it('names the can that a form holds to the last figure, in either units, and none once a figure differs', () => {
  const can = kept({ units: 'us', product: 'shellac', 'can-cold': '50', 'can-recoat': '2' });
  const filled = asDraft(PLAN_FIELDS, can, { units: 'metric' });
  const draft = { units: 'metric', air: '20', ...filled };
  expect(nameOfCan(PLAN_FIELDS, [can], draft)).toBe('Blue can, satin');
  expect(nameOfCan(PLAN_FIELDS, [can], { ...draft, 'can-recoat': '3' })).toBeUndefined();
  expect(nameOfCan(PLAN_FIELDS, [can], { ...draft, product: 'alkyd-varnish' })).toBeUndefined();
  // A can of which this form asks nothing is no can of it.
  const empty = { ...can, says: {} };
  expect(nameOfCan(PLAN_FIELDS, [empty], { units: 'us', product: 'shellac' })).toBeUndefined();
});

it('names the can by whose times a coat was laid, and none of another kind, or once a time differs', () => {
  const can = kept(CLOCK);
  const laid = (draft: Draft) => coatIn({ ...draft, humidity: '50' }, Date.UTC(2026, 10, 30)).coat;
  expect(canOf(laid(CLOCK), [kept({ ...CLOCK, 'label-recoat': '9' }, 'Other'), can])).toBe('Blue can, satin');
  expect(canOf(laid({ ...CLOCK, 'label-recoat': '9' }), [can])).toBeUndefined();
  expect(canOf(laid({ ...CLOCK, product: 'alkyd-varnish' }), [can])).toBeUndefined();
  expect(canOf(laid({ units: 'us', product: CLOCK['product'] ?? '' }), [can])).toBeUndefined();
});

it('takes one of the same name for the same can, the newest on top', () => {
  const [one, two] = [kept(CLOCK, 'Blue'), { ...kept(CLOCK, 'Red'), id: 'b' }];
  const again = { ...kept({ ...CLOCK, 'label-touch': '60' }, 'blue'), id: 'c' };
  expect(withCan(withCan([one], two), again).map(({ id }) => id)).toEqual(['c', 'b']);
  const many = Array.from({ length: 99 }, (_, at) => kept(CLOCK, `Can ${at}`)).reduce(withCan, [] as never);
  expect(many).toHaveLength(MOST_CANS);
});
