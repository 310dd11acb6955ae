import { expect, it } from 'vitest';
import { known } from './knowledge.ts';

it('tells of every flaw what the repair leaves open: the rest of the piece, and a repair what to do next time', () => {
  expect(known.defects.filter(({ after }) => !after).map(({ id }) => id)).toEqual([]);
  expect(known.remedies.filter(({ prevent }) => !prevent[0]).map(({ id }) => id)).toEqual([]);
});

// A film that a buyer's hand, glass or pan will harm, or that may let go, must not be handed over in silence.
it.each([
  'tacky-film',
  'soft-film',
  'old-shellac',
  'peeling',
  'wax-under-finish',
  'print-marks',
  'yellowing',
  'lingering-smell',
  'heat-marks',
  'white-rings',
])('tells the buyer of %s', (id) => {
  expect(known.get('defect', id).after?.buyer).toBeDefined();
});
