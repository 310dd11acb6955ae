/** What of a plan goes along to the coats of its card. Invented data. */
import { expect, it } from 'vitest';
import { newCard } from '#engine/jobs.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import {
  canOf,
  hardenerOf,
  notesOf,
  onBothFaces,
  toolOf,
  withCan,
} from '../../site/client/jobs/parts/from-plan.ts';
import { sayCan } from '../../site/client/jobs/parts/say-can.ts';

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

it('tells a piece whose fronts are coated on both faces from one that has none, or no such plan', () => {
  const parts = { front: { count: 4, long: 600, wide: 200 } };
  const turned = 'product=shellac&base=latex-paint&both=front&turned=each-coat';
  expect(onBothFaces(cardOf({ parts, plan: turned }))).toBe(true);
  expect(onBothFaces(cardOf({ parts }))).toBe(false);
  expect(onBothFaces(cardOf({ plan: turned }))).toBe(false);
  expect(onBothFaces(cardOf({ parts, plan: 'both=leg' }))).toBe(false);
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

const HOUR = 60;
const label = {
  minutes: { touch: { from: 30, to: 30 }, recoat: { from: 100, to: 100 } },
  limits: { celsius: { from: 10, to: 35 } },
  volumeSolids: 0.3,
};
const laid = {
  id: '1',
  piece: 'Chest',
  product: 'shellac',
  laidAt: NOW,
  celsius: 20,
  relativeHumidity: 0.5,
  coatNumber: 1,
};

it('has the can of the plan for the planned product, and the can of the coat below before it', () => {
  expect(canOf(cardOf({ label }), 'shellac')).toEqual(label);
  expect(canOf(cardOf({ label }), 'paste-wax')).toBeUndefined();
  const own = { minutes: { touch: { from: 20, to: 20 } } };
  const coat = { id: 'a', laidAt: NOW, product: 'shellac', celsius: 20, relativeHumidity: 0.5, label: own };
  expect(canOf(cardOf({ label, coats: [coat] }), 'shellac')).toEqual(own);
});

it('leaves the can of the plan with the card while nobody changes it, whatever the form rounds', () => {
  // 100 minutes stand in the form as 1.67 h, and come back as 100.2.
  const read = { minutes: { touch: { from: 30, to: 30 }, recoat: { from: 100.2, to: 100.2 } } };
  expect(withCan(cardOf({ label }), { ...laid, label: read }).label).toBeUndefined();
  expect(withCan(cardOf({ label }), laid).label).toBeUndefined();
});

it('takes along what the form does not ask of a can once a time of it is changed', () => {
  const read = { minutes: { touch: { from: 30, to: 30 }, recoat: { from: 3 * HOUR, to: 3 * HOUR } } };
  expect(withCan(cardOf({ label }), { ...laid, label: read }).label).toEqual({
    ...label,
    minutes: { touch: { from: 30, to: 30 }, recoat: { from: 180, to: 180 } },
  });
  expect(withCan(cardOf(), { ...laid, label: read }).label).toEqual(read);
});

it('says what the can says, for the screen and for paper', () => {
  expect(sayCan({ label }, true)).toBe(
    'dry to the touch after 30 min; recoat after 100 min; from 50 °F to 95 °F; 30 % solids',
  );
  expect(sayCan({ label: { minutes: {}, squareMetersPerLiter: 10 } }, false)).toBe('10 m²/L');
  expect(sayCan({}, false)).toBe('');
});
