/**
 * No moment is promised before what is printed: over every product, tool, label and climate of a grid. The printed times
 * are those of the product files, whose claims name their sources.
 */
import { expect, it } from 'vitest';
import type { Applicator } from '#engine/calc/drying/figures.ts';
import { dryingOf } from '#engine/calc/drying/figures.ts';
import { steady } from '#engine/calc/drying/history.ts';
import type { Label } from '#engine/calc/drying/label.ts';
import type { Milestone } from '#engine/calc/drying/milestone.ts';
import { drying } from '#engine/calc/drying.ts';
import { clockNow, type LaidCoat, type Running } from '#engine/clock.ts';
import type { Product } from '#engine/model/product.ts';
import { THOROUGH } from '../../thorough.ts';
import { PRODUCTS } from './products.ts';

const MINUTE = 60_000;
const PROMISES = ['touch', 'recoat', 'light-use', 'cure'] as const;
/** Thorough runs take the fine grid; of the coarse one every value is in it. */
const CELSIUS = THOROUGH
  ? [-5, 5, 8, 10, 13, 16, 18, 20, 22.2, 22.78, 23, 23.3, 25, 27, 30, 32, 35, 40]
  : [8, 18, 22.78, 23, 35];
const HUMIDITY = THOROUGH
  ? [0.05, 0.1, 0.2, 0.3, 0.4, 0.45, 0.5, 0.55, 0.65, 0.7, 0.8, 0.85, 0.95]
  : [0.1, 0.5, 0.85];
const ALMOST = 1e-9;

const printedOf = (product: Product, milestone: (typeof PROMISES)[number]) =>
  dryingOf(product).figures[milestone];

/** Labels with times as printed, half of them, twice them; one of all, and one at the can's own cool air. */
const labelsOf = (product: Product): readonly (Label | undefined)[] => {
  const times = (by: number, only: readonly Milestone[] = PROMISES): Label['minutes'] =>
    Object.fromEntries(
      PROMISES.filter((one) => only.includes(one)).map((one) => {
        const { from, to } = printedOf(product, one);
        return [one, { from: from * by, to: to * by }];
      }),
    );
  const cool = { celsius: 18, relativeHumidity: 0.5 };
  return [
    undefined,
    { minutes: times(1) },
    { minutes: times(0.5) },
    { minutes: times(2) },
    { minutes: times(1, ['recoat']) },
    { minutes: times(0.4, ['recoat', 'cure']) },
    { minutes: times(1, ['touch', 'recoat']), climate: cool },
  ];
};

const toolsOf = (product: Product): readonly (Applicator | undefined)[] => [
  undefined,
  ...(Object.keys(product['wet-film-micrometers']) as Applicator[]),
];

const coatOf = (id: string, more: Partial<LaidCoat>): LaidCoat => ({
  id: 'a',
  piece: 'test',
  product: id,
  laidAt: 0,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});

const running = (product: Product, coat: LaidCoat): Running | undefined => {
  const reading = clockNow(product, coat, 0);
  return reading.kind === 'running' ? reading : undefined;
};

/** Every coat of the grid, and how many were promised a time at all. */
const everyCoat = (visit: (product: Product, coat: LaidCoat, reading: Running) => void): number => {
  let promised = 0;
  for (const [id, product] of PRODUCTS)
    for (const applicator of toolsOf(product))
      for (const label of labelsOf(product))
        for (const celsius of CELSIUS)
          for (const relativeHumidity of HUMIDITY) {
            const coat = coatOf(id, { applicator, label, celsius, relativeHumidity });
            const reading = running(product, coat);
            if (!reading) continue;
            promised += 1;
            visit(product, coat, reading);
          }
  return promised;
};

it('no promise comes before the product’s own low end, or the can’s, whatever tool, label and climate', () => {
  const early: string[] = [];
  const promised = everyCoat((product, coat, { moments }) => {
    const label = coat.label?.minutes;
    // The can's times in its own air; what it does not tell gives way to what it tells.
    const own =
      coat.label &&
      running(product, { ...coat, ...(coat.label.climate ?? { celsius: 23, relativeHumidity: 0.5 }) });
    for (const milestone of PROMISES) {
      const low = (label?.[milestone] ?? printedOf(product, milestone)).from;
      const roof = label?.[milestone]
        ? low
        : Math.min(low, (own?.moments[milestone].from ?? low * MINUTE) / MINUTE);
      const got = moments[milestone].from / MINUTE;
      // Of a can, only warmer air than its own moves the time to the touch and to the next coat.
      const air = coat.label?.climate ?? { celsius: 23, relativeHumidity: 0.5 };
      const better = coat.celsius > air.celsius;
      const moved = better && (milestone === 'touch' || milestone === 'recoat') && label !== undefined;
      if (!moved && got < roof * (1 - ALMOST))
        early.push(`${coat.product}, ${coat.applicator}, ${milestone}: ${got} < ${roof}`);
      if (moved && label?.[milestone] && got < low * (1 - ALMOST))
        expect(moments[milestone].reasons).toContain('label-in-warmth');
    }
  });
  expect(early).toEqual([]);
  expect(promised).toBeGreaterThan(THOROUGH ? 50_000 : 1500);
  console.log(`${promised} coats were promised times`);
});

it('a usual tool at 23 °C or 73 °F and 50 % gives the product’s own range, unchanged', () => {
  for (const [id, product] of PRODUCTS)
    for (const applicator of toolsOf(product))
      for (const celsius of [23, ((73 - 32) * 5) / 9])
        for (const milestone of PROMISES) {
          const moment = running(product, coatOf(id, { applicator, celsius }))?.moments[milestone];
          const { from, to } = printedOf(product, milestone);
          expect(moment?.from, `${id}, ${applicator}, ${milestone}`).toBeCloseTo(from * MINUTE, 3);
          expect(moment?.to, `${id}, ${applicator}, ${milestone}`).toBeCloseTo(to * MINUTE, 3);
          expect(moment?.reasons).not.toContain('weather');
        }
});

it('a can’s time comes back unchanged in its own air, whatever tool laid it and however thin', () => {
  for (const [id, product] of PRODUCTS)
    for (const applicator of toolsOf(product))
      for (const amount of [
        undefined,
        { milliliters: product['reference-wet-film-micrometers'] / 3, squareMeters: 1 },
      ]) {
        const { from, to } = printedOf(product, 'recoat');
        const label = { minutes: { recoat: { from, to } } };
        const got = running(product, coatOf(id, { applicator, label, amount }))?.moments.recoat;
        expect(got?.from).toBeCloseTo(from * MINUTE, 3);
        expect(got?.to).toBeCloseTo(to * MINUTE, 3);
      }
});

it('an amount that most cans would call usual changes nothing: 4 fl oz of a water-based clear on 12 ft²', () => {
  const amount = { milliliters: 4 * 29.5735, squareMeters: 12 * 0.092903 };
  for (const id of ['water-based-polyurethane', 'waterborne-acrylic']) {
    const product = PRODUCTS.get(id) as Product;
    const got = running(product, coatOf(id, { amount }));
    expect(got?.moments.cure.to).toBeCloseTo(product['cure-days'][1] * 1440 * MINUTE, 3);
  }
});

it('thicker, colder and, for water-based ones, damper is never sooner; warmer is never later', () => {
  let compared = 0;
  const notSooner = (later: Running | undefined, sooner: Running | undefined, what: string) => {
    if (!later || !sooner) return;
    compared += 1;
    for (const milestone of PROMISES)
      for (const end of ['from', 'to'] as const)
        expect(later.moments[milestone][end], `${what}, ${milestone}, ${end}`).toBeGreaterThanOrEqual(
          sooner.moments[milestone][end] * (1 - ALMOST),
        );
  };
  for (const [id, product] of PRODUCTS)
    for (const label of labelsOf(product)) {
      const at = (more: Partial<LaidCoat>) => running(product, coatOf(id, { label, ...more }));
      for (const relativeHumidity of HUMIDITY)
        for (const [index, celsius] of CELSIUS.entries())
          notSooner(
            at({ celsius, relativeHumidity }),
            at({ celsius: CELSIUS[index + 1] ?? celsius, relativeHumidity }),
            `${id} colder`,
          );
      for (const celsius of CELSIUS)
        for (const [index, relativeHumidity] of HUMIDITY.entries())
          notSooner(
            at({ celsius, relativeHumidity: HUMIDITY[index + 1] ?? relativeHumidity }),
            at({ celsius, relativeHumidity }),
            `${id} damper`,
          );
      const films = [0.3, 0.5, 0.8, 1, 1.2, 1.6, 2.5].map((by) => ({
        milliliters: product['reference-wet-film-micrometers'] * by,
        squareMeters: 1,
      }));
      for (const celsius of CELSIUS)
        for (const [index, amount] of films.entries())
          notSooner(
            at({ celsius, amount: films[index + 1] ?? amount }),
            at({ celsius, amount }),
            `${id} thicker`,
          );
    }
  expect(compared).toBeGreaterThan(THOROUGH ? 10_000 : 3000);
});

it('a thin film ends its open time and its deadline no later than a usual one', () => {
  for (const [id, product] of PRODUCTS) {
    const at = (relativeThickness: number) =>
      drying({
        product: dryingOf(product),
        history: steady({ celsius: 23, relativeHumidity: 0.5 }),
        relativeThickness,
        elapsedMinutes: 0,
      });
    const [thin, usual] = [at(0.4), at(1)];
    if (!thin.ok || !usual.ok) throw new Error(id);
    for (const milestone of ['open', 'sand-if-beyond'] as const) {
      const [one, two] = [thin.value.times.get(milestone), usual.value.times.get(milestone)];
      if (one && two) expect(one.from).toBeLessThanOrEqual(two.from);
    }
  }
});
