import { expect, it } from 'vitest';
import { callsIn } from '../../site/shared/dialed.ts';
import { leadOf, waysOf } from '../../site/shared/sentences.ts';

it('gives each number of a text with the name that stands before it', () => {
  expect(callsIn('In the US call 911, or Poison Help, 1-800-222-1222, for what was swallowed.')).toEqual([
    { says: 'Call 911', tel: 'tel:911' },
    { says: 'Poison Help 1-800-222-1222', tel: 'tel:18002221222' },
  ]);
  expect(callsIn('Lay each cloth flat.')).toEqual([]);
});

it('parts what an order is about from what it says', () => {
  expect(leadOf('Eye: rinse with running water.')).toEqual({
    lead: 'Eye:',
    rest: 'rinse with running water.',
  });
  expect(leadOf('Empty the vacuum outdoors at once.')).toEqual({
    lead: '',
    rest: 'Empty the vacuum outdoors at once.',
  });
});

it('sets off the ways that an order leaves open, and only where it does so itself', () => {
  expect(waysOf('lay each cloth flat, or on a line; or put it in a tin.')).toEqual([
    'Lay each cloth flat, or on a line',
    'Or put it in a tin.',
  ]);
  expect(waysOf('Rinse, or call.')).toEqual(['Rinse, or call.']);
});
