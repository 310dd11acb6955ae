import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Coat } from '#engine/calc/drying/coat.ts';
import type { Spell } from '#engine/calc/drying/history.ts';
import { steady } from '#engine/calc/drying/history.ts';
import { CHAIN, MILESTONES, type Milestone } from '#engine/calc/drying/milestone.ts';
import { type Drying, drying } from '#engine/calc/drying.ts';
import type { Result } from '#engine/calc/quantity.ts';
import { STAGES } from '#engine/model/stage.ts';
import { dryingProduct, PRODUCTS } from './products.ts';

const id = fc.constantFrom(...PRODUCTS.keys());
const celsius = fc.double({ min: 5, max: 40, noNaN: true });
const relativeHumidity = fc.double({ min: 0.05, max: 0.95, noNaN: true });
const climate = fc.record({ celsius, relativeHumidity });
const thickness = fc.double({ min: 0.3, max: 3, noNaN: true });

const coat = (over: Partial<Coat> & Pick<Coat, 'product'>): Coat => ({
  history: steady({ celsius: 23, relativeHumidity: 0.5 }),
  relativeThickness: 1,
  elapsedMinutes: 0,
  ...over,
});

const end = (result: Drying, milestone: Milestone) => {
  const range = result.times.get(milestone);
  if (!range) throw new Error(`no ${milestone}`);
  return range;
};

/** Runs where neither is refused: outside the limits there is no time to compare. */
const both = (one: Result<Drying>, two: Result<Drying>, compare: (one: Drying, two: Drying) => void) => {
  fc.pre(one.ok && two.ok);
  if (one.ok && two.ok) compare(one.value, two.value);
};

/** Floating point: a thousandth of a minute in a month. */
const ALMOST = 1e-9;
const notBefore = (later: number, sooner: number) =>
  expect(later).toBeGreaterThanOrEqual(sooner * (1 - ALMOST));

const inOrder = (result: Drying) => {
  for (const [index, milestone] of CHAIN.entries()) {
    const range = end(result, milestone);
    notBefore(range.to, range.from);
    const before = CHAIN[index - 1];
    if (!before) continue;
    notBefore(range.from, end(result, before).from);
    notBefore(range.to, end(result, before).to);
  }
  const deadline = result.times.get('sand-if-beyond');
  if (deadline) notBefore(deadline.from, end(result, 'recoat').from);
};

test('stages come in order and ranges never cross, for every product, weather and film', () => {
  fc.assert(
    fc.property(id, climate, thickness, (name, weather, relativeThickness) => {
      const result = drying(
        coat({ product: dryingProduct(name), history: steady(weather), relativeThickness }),
      );
      fc.pre(result.ok);
      if (result.ok) inOrder(result.value);
    }),
    { numRuns: 400 },
  );
});

test('the same holds for weather that changes', () => {
  const spell = fc.record({
    minutes: fc.double({ min: 1, max: 2000, noNaN: true }),
    celsius: fc.double({ min: 16, max: 28, noNaN: true }),
    relativeHumidity: fc.double({ min: 0.3, max: 0.6, noNaN: true }),
  });
  fc.assert(
    fc.property(id, fc.array(spell, { minLength: 1, maxLength: 6 }), (name, spells) => {
      const [first, ...rest] = spells as [Spell, ...Spell[]];
      const result = drying(coat({ product: dryingProduct(name), history: [first, ...rest] }));
      expect(result.ok).toBe(true);
      if (result.ok) inOrder(result.value);
    }),
  );
});

test('a history cut into pieces of the same weather changes nothing', () => {
  fc.assert(
    fc.property(
      id,
      fc.double({ min: 18, max: 28, noNaN: true }),
      fc.double({ min: 1, max: 900, noNaN: true }),
      (name, warm, cut) => {
        const weather = { celsius: warm, relativeHumidity: 0.45 };
        const product = dryingProduct(name);
        const whole = drying(coat({ product, history: steady(weather) }));
        const pieces = drying(
          coat({
            product,
            history: [
              { ...weather, minutes: cut },
              { ...weather, minutes: cut },
              { ...weather, minutes: 0 },
            ],
          }),
        );
        both(whole, pieces, (one, two) => {
          for (const milestone of CHAIN) {
            expect(end(two, milestone).from).toBeCloseTo(end(one, milestone).from, 6);
            expect(end(two, milestone).to).toBeCloseTo(end(one, milestone).to, 6);
          }
        });
      },
    ),
  );
});

test('thicker is never faster, and colder is never faster', () => {
  fc.assert(
    fc.property(
      id,
      climate,
      thickness,
      fc.double({ min: 0, max: 15, noNaN: true }),
      (name, weather, thin, step) => {
        const product = dryingProduct(name);
        const at = (history: typeof weather, relativeThickness: number) =>
          drying(coat({ product, history: steady(history), relativeThickness }));
        const later = (slow: Drying, quick: Drying) => {
          for (const milestone of slow.times.keys()) {
            notBefore(end(slow, milestone).from, end(quick, milestone).from);
            notBefore(end(slow, milestone).to, end(quick, milestone).to);
          }
        };
        both(at(weather, thin + step / 5), at(weather, thin), later);
        both(at({ ...weather, celsius: weather.celsius - step }, thin), at(weather, thin), later);
      },
    ),
    { numRuns: 400 },
  );
});

test('damper air is never faster for a water-based film and moves an oil-based one by less than 10 %', () => {
  fc.assert(
    fc.property(id, celsius, relativeHumidity, relativeHumidity, (name, warm, one, two) => {
      const product = dryingProduct(name);
      const at = (humidity: number) =>
        drying(coat({ product, history: steady({ celsius: warm, relativeHumidity: humidity }) }));
      both(at(Math.max(one, two)), at(Math.min(one, two)), (damp, dry) => {
        for (const milestone of CHAIN) {
          notBefore(end(damp, milestone).to, end(dry, milestone).to);
          if (product.mechanism === 'oxidation')
            expect(end(damp, milestone).to).toBeLessThan(end(dry, milestone).to * 1.1);
        }
      });
    }),
    { numRuns: 300 },
  );
});

test("label figures come back unchanged in the label's own climate", () => {
  const span = fc
    .tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 500 }))
    .map(([from, more]) => ({ from, to: from + more }));
  const label = fc
    .tuple(fc.subarray([...MILESTONES], { minLength: 1 }), fc.array(span, { minLength: 6, maxLength: 6 }))
    .map(([chosen, spans]) => {
      // Each labeled moment comes some time after the one before it.
      let [from, to] = [0, 0];
      return Object.fromEntries(
        chosen.map((milestone, index) => {
          from += spans[index]?.from ?? 1;
          to = Math.max(to, from) + (spans[index]?.to ?? 1);
          return [milestone, { from, to }];
        }),
      );
    });
  fc.assert(
    fc.property(id, climate, label, (name, weather, minutes) => {
      const product = dryingProduct(name);
      const result = drying(
        coat({ product, label: { minutes, climate: weather }, history: steady(weather) }),
      );
      fc.pre(result.ok);
      if (!result.ok) return;
      inOrder(result.value);
      for (const [milestone, want] of Object.entries(minutes)) {
        expect(end(result.value, milestone as Milestone).from).toBeCloseTo(want.from, 6);
        expect(end(result.value, milestone as Milestone).to).toBeCloseTo(want.to, 6);
      }
    }),
    { numRuns: 400 },
  );
});

test('time only ever moves the stage on, and what is next is still to come', () => {
  fc.assert(
    fc.property(id, fc.nat(50_000), fc.nat(50_000), (name, one, two) => {
      const product = dryingProduct(name);
      const at = (elapsedMinutes: number) => drying(coat({ product, elapsedMinutes }));
      both(at(Math.min(one, two)), at(Math.max(one, two)), (early, late) => {
        expect(STAGES.indexOf(late.stage)).toBeGreaterThanOrEqual(STAGES.indexOf(early.stage));
        for (const { range } of late.next) expect(range.to).toBeGreaterThan(Math.max(one, two));
      });
    }),
  );
});
