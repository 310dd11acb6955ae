/** What is about to be kept is read as it will be read back: faults that once left cards which no reader took. */
import { describe, expect, it } from 'vitest';
import { changed, fitting, newCard, roomOf, withCoat } from '#engine/jobs.ts';
import { MOST } from '#engine/model/card-limits.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { refusalsOf } from '#engine/model/read-card.ts';
import { card, coat } from './cards.ts';

const fieldsOf = (one: JobCard) => refusalsOf(one).map(({ field }) => field);

describe('a change that no reader would take', () => {
  it.each([-62_077_761_000_000, -1, 7_258_118_400_001, Number.NaN, 0.5])(
    'is refused with its field: a base laid at %d',
    (baseLaidAt) => {
      const [refusal] = refusalsOf(changed(card(), { baseLaidAt }, 1_800_000_000_000));
      expect(refusal?.field).toBe('baseLaidAt');
      expect(refusal?.says).toMatch(/\.$/);
    },
  );

  it('says that the year is not whole', () => {
    expect(refusalsOf(changed(card(), { baseLaidAt: -62_077_761_000_000 }, 1))[0]?.says).toBe(
      'This day lies before 1970 or after 2199, so it was not kept. Give the whole year.',
    );
  });

  it('is the coat beyond the most', () => {
    const full = card({
      coats: Array.from({ length: MOST.coats }, (_, index) => coat({ id: `c${index}`, laidAt: index })),
    });
    expect(refusalsOf(full)).toEqual([]);
    const over = withCoat(full, coat({ id: 'more' }), 1_800_000_000_000);
    expect(refusalsOf(over)).toEqual([
      {
        field: 'coats',
        says: 'A card holds 100 coats at most, so nothing was added. Begin a second card for this piece.',
      },
    ]);
    expect(roomOf(full).coats).toEqual({ held: 100, most: 100, left: 0 });
  });

  it.each([
    { amount: { milliliters: 5e-324, squareMeters: 1 } },
    { amount: { milliliters: 1e308, squareMeters: 5e-324 } },
    { amount: { milliliters: Number.NaN, squareMeters: 1 } },
    { label: { minutes: { cure: { from: 1.44e12, to: 1.44e12 } } } },
    { label: { minutes: { cure: { from: 1e308, to: 1e308 } } } },
    { label: { minutes: { recoat: { from: 5e-324, to: 60 } } } },
    { product: 'constructor' },
    { laidAt: -5 },
  ])('is %j on a coat', (over) => {
    expect(fieldsOf(card({ coats: [coat(over as never)] }))).not.toEqual([]);
  });

  it('is a card made under a clock that is not set', () => {
    const now = Date.UTC(2300, 0, 1);
    const { name, kind, base, tone, age } = card();
    expect(refusalsOf(newCard({ name, kind, base, tone, age }, 'new', now))[0]?.says).toContain(
      'clock of this device',
    );
  });

  it('is none of what lies within the limits', () => {
    expect(refusalsOf(card({ coats: [coat()] }))).toEqual([]);
    expect(refusalsOf(card())).toEqual([]);
  });
});

it('the last instant that a card may hold survives an edit', () => {
  const last = card({ changedAt: 7_258_118_400_000 });
  expect(refusalsOf(last)).toEqual([]);
  expect(refusalsOf(changed(last, { notes: 'More.' }, 1_800_000_000_000))).toEqual([]);
});

const photo = (id: string) => ({ id, takenAt: 1, width: 10, height: 10 });

it('names the photos that a card does not take, from the end and never from the front', () => {
  const seventy = card({ photos: Array.from({ length: 70 }, (_, index) => photo(`p${index}`)) });
  expect(fitting(seventy, 'photos', ['a', 'b'], 60)).toEqual({ taken: [], beyond: ['a', 'b'] });
  const some = card({ photos: Array.from({ length: 58 }, (_, index) => photo(`p${index}`)) });
  expect(fitting(some, 'photos', [1, 2, 3, 4, 5, 6], 60)).toEqual({ taken: [1, 2], beyond: [3, 4, 5, 6] });
});
