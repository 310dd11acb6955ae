/** What is told of a link, wherever it stands, on ids that are invented. */
import { describe, expect, it } from 'vitest';
import { faultOfGround, faultOfReference, thereIn } from '#engine/faults/references.ts';

const there = thereIn(
  [
    { kind: 'source', id: 'safety-s69', data: { title: 'A leaflet' } },
    { kind: 'source', id: 'wax-h4', data: { title: 'Another book' } },
    // Its shape is a fault of its own; links to it are sound.
    { kind: 'remedy', id: 'rub-it-out', data: undefined },
  ],
  { 'source/wax-w4': 'safety-s69', 'source/wax-h4': 'safety-s69', 'remedy/wax-w4': 'rub-it-out' },
);

describe('a link', () => {
  it('to what is there is sound, though something of that name was retired', () => {
    expect(faultOfReference(there, 'source', 'safety-s69')).toBeUndefined();
    expect(faultOfReference(there, 'source', 'wax-h4')).toBeUndefined();
    expect(faultOfReference(there, 'remedy', 'rub-it-out')).toBeUndefined();
  });
  it('to what was retired names what stands for it, and no neighbor by its letters', () => {
    expect(faultOfReference(there, 'source', 'wax-w4')).toEqual({
      code: 'retired-link',
      kind: 'source',
      id: 'wax-w4',
      now: 'safety-s69',
    });
    expect(faultOfReference(there, 'remedy', 'wax-w4')).toMatchObject({ now: 'rub-it-out' });
  });
  it('to what never was names the nearest of its kind, a source with its title', () => {
    expect(faultOfReference(there, 'source', 'wax-h5')).toEqual({
      code: 'dead-link',
      kind: 'source',
      id: 'wax-h5',
      nearest: 'wax-h4',
      title: 'Another book',
    });
    expect(faultOfReference(there, 'remedy', 'rub-it-outt')).toMatchObject({
      nearest: 'rub-it-out',
      title: undefined,
    });
    expect(faultOfReference(there, 'defect', 'wax-w4')).toMatchObject({
      code: 'dead-link',
      nearest: undefined,
    });
  });
});

it.each([
  ['published', undefined, true],
  ['from-memory', undefined, true],
  ['published', 'safety-s69', false],
  ['common-practice', undefined, false],
  ['invented', undefined, false],
] as const)('a %s statement with the source %s', (grade, source, isFault) =>
  expect(faultOfGround('It holds.', { grade, source })).toEqual(
    isFault ? { code: 'no-source', says: 'It holds.', grade } : undefined,
  ),
);
