/** What of a plan goes along to the coats of its card. Invented data. */
import { expect, it } from 'vitest';
import { newCard } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { hardenerOf, notesOf, toolOf } from '../../site/client/jobs/parts/from-plan.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const cardOf = (more: Partial<JobCard> = {}): JobCard =>
  newCard(
    {
      name: 'Chest',
      kind: 'furniture',
      base: 'latex-paint',
      tone: 'dark',
      age: 'none',
      product: 'shellac',
      plan: 'product=shellac&base=latex-paint&tool=pad',
      ...more,
    },
    'one',
    NOW,
  );

it('lays the planned product with the tool of the plan', () => {
  expect(toolOf(cardOf(), 'shellac')).toBe('pad');
  expect(toolOf(cardOf({ plan: 'product=shellac&tool=spoon' }), 'shellac')).toBeUndefined();
  expect(toolOf(cardOf({ plan: undefined }), 'shellac')).toBeUndefined();
});

it('does not lay another product with it', () => {
  expect(toolOf(cardOf(), 'paste-wax')).toBeUndefined();
  expect(toolOf(cardOf(), undefined)).toBeUndefined();
});

it('goes on with the tool of the coat below, whatever was planned', () => {
  const coat = { laidAt: NOW, product: 'shellac', celsius: 20, relativeHumidity: 0.5 };
  const coats = [
    { ...coat, id: 'a', applicator: 'brush' as const },
    { ...coat, id: 'b', product: 'paste-wax', applicator: 'cloth' as const },
  ];
  expect(toolOf(cardOf({ coats }), 'shellac')).toBe('brush');
});

it('takes along what the plan mixed in, to the planned product alone, and then what was', () => {
  const two = { product: 'water-based-lacquer', plan: 'product=water-based-lacquer&hardener=isocyanate' };
  expect(hardenerOf(cardOf(two), two.product)).toBe('isocyanate');
  expect(hardenerOf(cardOf(two), 'shellac')).toBeUndefined();
  expect(hardenerOf(cardOf({ ...two, plan: 'hardener=glue' }), two.product)).toBeUndefined();
  const coat = { id: 'a', laidAt: NOW, product: two.product, celsius: 20, relativeHumidity: 0.5 };
  expect(hardenerOf(cardOf({ ...two, coats: [{ ...coat, hardener: 'none' }] }), two.product)).toBe('none');
  // Not said of the coat below: the plan does not say it in its place.
  expect(hardenerOf(cardOf({ ...two, coats: [coat] }), two.product)).toBeUndefined();
});

it('notes on the card which face its coats are of, and nothing where one face is coated', () => {
  expect(notesOf({})).toBe('');
  expect(notesOf({ both: { parts: ['front'], turned: 'each-coat' } })).toMatch(
    /^Planned with both faces of doors and fronts, turned after each coat\. Note the coats of the front here/,
  );
  expect(notesOf({ both: { parts: ['front', 'top'], turned: 'each-face' } })).toContain(
    'both faces of doors and fronts, loose tops, the back whole first',
  );
});
