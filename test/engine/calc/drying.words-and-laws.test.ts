/**
 * Laws of the drying model that hold whatever its figures: figures carried to the climate that they are for stay as they
 * are, steps come one after another, a colder or thicker film is never sooner at its late end, and every sentence about a
 * problem or the weather is whole. The cans are invented.
 */
import { describe, expect, it } from 'vitest';
import { bisect } from '#engine/calc/bisect.ts';
import { arrheniusFactor } from '#engine/calc/drying/arrhenius.ts';
import { carried } from '#engine/calc/drying/carried.ts';
import { evaporationDriver } from '#engine/calc/drying/evaporation-driver.ts';
import { dryingOf } from '#engine/calc/drying/figures.ts';
import { outsideHistory, steady } from '#engine/calc/drying/history.ts';
import { outsideLabel, underLabel, withLabel } from '#engine/calc/drying/label.ts';
import { MECHANISMS } from '#engine/calc/drying/mechanism.ts';
import { CHAIN, MILESTONE_WORDS, MILESTONES, PRINTED } from '#engine/calc/drying/milestone.ts';
import { slowing } from '#engine/calc/drying/slowing.ts';
import { narrowed, ordered, times, together } from '#engine/calc/drying/slowing-range.ts';
import { beyondUsual, inUsual } from '#engine/calc/drying/warmth.ts';
import { drying } from '#engine/calc/drying.ts';
import { wetBulb } from '#engine/calc/wet-bulb.ts';
import { good } from './good.ts';
import { dryingProduct, PRODUCTS, product } from './products.ts';

const HERE = { celsius: 23, relativeHumidity: 0.5 };
const ids = [...PRODUCTS.keys()];

describe('the figures of a product', () => {
  it('are its file in minutes', () => {
    for (const id of ids) {
      const file = product(id);
      const { figures, limits, filmFormationCelsius } = dryingOf(file);
      const span = (pair: readonly [number, number] | undefined, by: number) =>
        pair && { from: pair[0] * by, to: pair[1] * by };
      expect(figures).toEqual({
        open: span(file['open-minutes'], 1),
        touch: span(file['touch-minutes'], 1),
        recoat: span(file['recoat-hours'], 60),
        'light-use': span(file['light-use-days'], 1440),
        cure: span(file['cure-days'], 1440),
        ...(file['no-coat-hours'] && { 'no-coat': span(file['no-coat-hours'], 60) }),
        ...(file['sand-if-beyond-hours'] && { 'sand-if-beyond': span(file['sand-if-beyond-hours'], 60) }),
      });
      expect(limits).toEqual({
        celsius: span(file.limits.celsius, 1),
        relativeHumidity: span(file.limits.humidity, 1),
      });
      expect(filmFormationCelsius).toEqual(span(file['film-formation-celsius'], 1));
    }
  });

  it('stay as they are where they are carried nowhere, and keep their order anywhere', () => {
    for (const id of ids) {
      const one = dryingProduct(id);
      const there = carried(one.figures, one, HERE, HERE);
      for (const milestone of MILESTONES) {
        const [was, is] = [one.figures[milestone], there[milestone]];
        expect(is === undefined).toBe(was === undefined);
        if (!was || !is) continue;
        expect(is.from).toBeCloseTo(was.from, 6);
        expect(is.to).toBeCloseTo(was.to, 6);
      }
      for (const air of [
        { celsius: 15, relativeHumidity: 0.6 },
        { celsius: 30, relativeHumidity: 0.3 },
      ]) {
        const moved = carried(one.figures, one, HERE, air);
        for (const end of ['from', 'to'] as const) {
          const chain = CHAIN.map((milestone) => moved[milestone][end]);
          expect(chain).toEqual(chain.toSorted((a, b) => a - b));
          const deadline = moved['sand-if-beyond'];
          if (deadline) expect(deadline[end]).toBeGreaterThanOrEqual(moved.recoat[end]);
        }
        // Each step of its own is slowed by what slows that step.
        let [before, start] = [0, 0];
        for (const milestone of CHAIN) {
          const slow = slowing(one.mechanism, milestone, HERE, air, 1).to;
          start += (one.figures[milestone].to - before) * slow;
          before = one.figures[milestone].to;
          expect(moved[milestone].to).toBeCloseTo(start, 6);
        }
      }
    }
  });
});

describe('slowing', () => {
  const airs = [5, 12, 18, 23, 30, 40].map((celsius) => ({ celsius, relativeHumidity: 0.5 }));
  it('is none in the same air, and turns round with the way', () => {
    for (const mechanism of MECHANISMS)
      for (const milestone of MILESTONES)
        for (const air of airs) {
          const none = slowing(mechanism, milestone, air, air, 1);
          expect(none.from).toBeCloseTo(1, 9);
          expect(none.to).toBeCloseTo(1, 9);
          const colder = slowing(mechanism, milestone, HERE, air, 1);
          expect(colder.from).toBeLessThanOrEqual(colder.to);
        }
  });
  it('is more in the cold and in a thick film, at the late end', () => {
    for (const mechanism of MECHANISMS)
      for (const milestone of MILESTONES) {
        const late = airs.map((air) => slowing(mechanism, milestone, HERE, air, 1).to);
        expect(late).toEqual(late.toSorted((a, b) => b - a));
        const thick = [0.5, 0.8, 1, 1.5, 3].map((by) => slowing(mechanism, milestone, HERE, HERE, by).to);
        expect(thick).toEqual(thick.toSorted((a, b) => a - b));
        expect(slowing(mechanism, milestone, HERE, HERE, 2).from).toBeGreaterThan(1);
        expect(slowing(mechanism, milestone, HERE, HERE, 0.5).to).toBeLessThan(1);
      }
  });
  it('is more in damp air where water leaves, and hardly where solvent does', () => {
    const damp = (mechanism: 'coalescence' | 'evaporation' | 'oxidation') =>
      slowing(mechanism, 'touch', HERE, { celsius: 23, relativeHumidity: 0.8 }, 1).to;
    expect(damp('coalescence')).toBeGreaterThan(1.5);
    expect(damp('evaporation')).toBeCloseTo(1, 9);
    // Eight parts in a hundred between bone-dry and saturated air: (1 + 0.08 × 0.8) / (1 + 0.08 × 0.5).
    expect(damp('oxidation')).toBeCloseTo(1.064 / 1.04, 2);
  });
});

describe('ranges of slowing', () => {
  it('are put in order, and one after another', () => {
    expect(ordered(3, 2)).toEqual({ from: 2, to: 3 });
    expect(ordered(2, 3)).toEqual({ from: 2, to: 3 });
    expect(times({ from: 2, to: 3 }, { from: 5, to: 7 })).toEqual({ from: 10, to: 21 });
  });
  it('of doubts that know nothing of each other join as the sides of a right triangle', () => {
    // Half widths of ln 3 and ln 4 over a middle of 1: the root of their squares.
    const { from, to } = together({ from: 1 / 3, to: 3 }, { from: 1 / 4, to: 4 });
    const half = Math.hypot(Math.log(3), Math.log(4));
    expect([from, to].map(Math.log)).toEqual([expect.closeTo(-half, 9), expect.closeTo(half, 9)]);
    expect(together({ from: 2, to: 2 }, { from: 3, to: 3 })).toEqual({
      from: expect.closeTo(6, 9),
      to: expect.closeTo(6, 9),
    });
  });
  it('are drawn in to so many parts about their middle, and left where they are narrower', () => {
    const { from, to } = narrowed({ from: 0.25, to: 4 }, 0.4);
    expect((to - from) / (to + from)).toBeCloseTo(0.4, 9);
    expect(from * to).toBeCloseTo(1, 9);
    expect(narrowed({ from: 0.9, to: 1.1 }, 0.4)).toEqual({ from: 0.9, to: 1.1 });
  });
});

describe('warmth', () => {
  it('hastens by the law of Arrhenius', () => {
    // exp(30,000 / 8.314 × (1/296.15 − 1/306.15)) = 1.489: 1.5 times for 10 °C.
    expect(arrheniusFactor(30, 23, 33)).toBeCloseTo(1.489, 2);
    expect(arrheniusFactor(30, 33, 23) * arrheniusFactor(30, 23, 33)).toBeCloseTo(1, 12);
    expect(arrheniusFactor(30, 23, 23)).toBe(1);
  });
  it('counts beyond what is usual only for what is beyond', () => {
    const at = (celsius: number, surfaceCelsius?: number) => ({
      celsius,
      relativeHumidity: 0.5,
      surfaceCelsius,
    });
    for (const [from, to] of [
      [10, 35],
      [15, 25],
      [35, 10],
    ] as const)
      expect(beyondUsual(at(from), at(to))).toEqual({ from: 1, to: 1 });
    const colder = beyondUsual(at(23), at(5));
    // From 10 down to 5 °C at 100 kJ/mol: exp(100,000 / 8.314 × (1/278.15 − 1/283.15)) = 2.146.
    expect(colder).toEqual({ from: 1, to: expect.closeTo(2.146, 2) });
    expect(beyondUsual(at(23), at(40)).to).toBe(1);
    expect(beyondUsual(at(23), at(40)).from).toBeLessThan(1);
    expect(inUsual(at(2))).toEqual({ celsius: 10, relativeHumidity: 0.5, surfaceCelsius: 10 });
    expect(inUsual(at(40, 12))).toEqual({ celsius: 35, relativeHumidity: 0.5, surfaceCelsius: 12 });
  });
  it('drives water out by how far the film is from the air’s own vapor', () => {
    const air = { celsius: 20, relativeHumidity: 0.5 };
    // Saturation at 20 °C is 2.3392 kPa (ASHRAE Handbook, Fundamentals, 2017, ch. 1, table 3).
    expect(evaporationDriver(air, 1)).toBeCloseTo(0.5 * 2339.2, -1);
    const bulb = good(wetBulb(air));
    const cooled = evaporationDriver({ ...air, surfaceCelsius: bulb }, 1);
    expect(evaporationDriver(air, 0)).toBeCloseTo(cooled, 3);
    expect(evaporationDriver({ ...air, surfaceCelsius: 30 }, 1)).toBeGreaterThan(evaporationDriver(air, 1));
    // A face colder than the wet bulb stays as it is.
    const cold = { ...air, surfaceCelsius: bulb - 2 };
    expect(evaporationDriver(cold, 0)).toBe(evaporationDriver(cold, 1));
  });
});

describe('a can', () => {
  const at = (from: number, to = from) => ({ from, to });
  const figures = {
    open: at(5, 10),
    touch: at(20, 40),
    recoat: at(100, 200),
    'light-use': at(1000, 2000),
    cure: at(9000, 9999),
  };
  it('has its figures go before those of the kind, which give way where they would come out of order', () => {
    expect(withLabel(figures, { minutes: {} })).toEqual(figures);
    expect(withLabel(figures, { minutes: { touch: at(30) } })).toEqual({ ...figures, touch: at(30) });
    // A touch before the usual open time draws that in; a recoat after the usual light use pushes that out.
    expect(withLabel(figures, { minutes: { touch: at(4, 6) } })).toEqual({
      ...figures,
      open: at(4, 6),
      touch: at(4, 6),
    });
    expect(withLabel(figures, { minutes: { recoat: at(3000) } })).toEqual({
      ...figures,
      recoat: at(3000),
      'light-use': at(3000),
    });
    // A deadline is never before the next coat may come, and what comes before it gives way to one that the can prints.
    expect(
      withLabel({ ...figures, 'sand-if-beyond': at(150, 300) }, { minutes: { recoat: at(250) } })[
        'sand-if-beyond'
      ],
    ).toEqual(at(250, 300));
    expect(withLabel(figures, { minutes: { 'sand-if-beyond': at(80, 90) } })).toEqual({
      ...figures,
      recoat: at(80, 90),
      'sand-if-beyond': at(80, 90),
    });
    expect(withLabel(figures, { minutes: { 'sand-if-beyond': at(500) } })).toEqual({
      ...figures,
      'sand-if-beyond': at(500),
    });
  });

  it('is refused for what no can prints, by the name of that time', () => {
    const problem = (minutes: object) => outsideLabel({ minutes })?.problem;
    const most = { open: 2, touch: 30, recoat: 90, 'light-use': 365, cure: 1000, 'sand-if-beyond': 365 };
    for (const milestone of MILESTONES) {
      const quantity = MILESTONE_WORDS[milestone];
      const longest = most[milestone] * 1440;
      expect(problem({ [milestone]: at(0.1, longest) })).toBeUndefined();
      const range = { code: 'out-of-range', quantity, unit: 'min', min: 0.1, max: longest };
      expect(problem({ [milestone]: at(0.09) })).toEqual({ ...range, value: 0.09 });
      expect(problem({ [milestone]: at(1, longest + 1) })).toEqual({ ...range, value: longest + 1 });
      const above = { quantity, unit: 'min', max: Number.POSITIVE_INFINITY };
      expect(problem({ [milestone]: at(0, 5) })).toEqual({
        ...above,
        code: 'label-not-positive',
        value: 0,
        min: 0,
      });
      expect(problem({ [milestone]: at(9, 5) })).toEqual({
        ...above,
        code: 'label-out-of-order',
        value: 5,
        min: 9,
      });
    }
  });

  it('is refused where a time comes before an earlier moment; a deadline is held to the next coat alone', () => {
    const problem = (minutes: object) => outsideLabel({ minutes })?.problem;
    expect(problem({ touch: at(30, 40), recoat: at(20, 50) })).toMatchObject({
      code: 'label-out-of-order',
      quantity: MILESTONE_WORDS.recoat,
      value: 20,
      min: 30,
    });
    expect(problem({ touch: at(30, 40), recoat: at(30, 39) })).toMatchObject({ value: 39, min: 40 });
    expect(problem({ touch: at(30, 40), recoat: at(30, 40) })).toBeUndefined();
    expect(problem({ touch: at(30), cure: at(29) })).toMatchObject({ quantity: MILESTONE_WORDS.cure });
    expect(problem({ recoat: at(30), cure: at(900), 'sand-if-beyond': at(40) })).toBeUndefined();
    expect(problem({ recoat: at(50), 'sand-if-beyond': at(40, 60) })).toMatchObject({
      quantity: MILESTONE_WORDS['sand-if-beyond'],
      value: 40,
      min: 50,
    });
    expect(problem({ cure: at(900), 'sand-if-beyond': at(40) })).toBeUndefined();
  });

  it('that is out of order has no time promised, whatever the air', () => {
    const coat = {
      product: dryingProduct('shellac'),
      history: steady(HERE),
      relativeThickness: 1,
      elapsedMinutes: 0,
      label: { minutes: { touch: at(30), recoat: at(20) } },
    };
    expect(drying(coat)).toMatchObject({ ok: false, problem: { code: 'label-out-of-order' } });
    // What is wrong with the air is told first.
    const odd = { ...coat, history: steady({ celsius: 99, relativeHumidity: 0.5 }) };
    expect(drying(odd)).toMatchObject({ ok: false, problem: { quantity: 'air temperature' } });
  });

  it('that gives a least temperature knows its own film', () => {
    const poly = dryingProduct('water-based-polyurethane');
    const own = { celsius: { from: 5, to: 30 } };
    expect(underLabel(poly, undefined)).toEqual(poly);
    expect(underLabel(poly, { minutes: {} })).toEqual(poly);
    const warm = underLabel(poly, { minutes: {}, limits: own });
    expect(warm.limits).toEqual({ ...poly.limits, ...own });
    expect(warm).not.toHaveProperty('filmFormationCelsius');
    const dry = underLabel(poly, { minutes: {}, limits: { relativeHumidity: { from: 0, to: 0.6 } } });
    expect(dry.limits).toEqual({ ...poly.limits, relativeHumidity: { from: 0, to: 0.6 } });
    expect(dry.filmFormationCelsius).toEqual(poly.filmFormationCelsius);
  });
});

describe('the weather since a coat was laid', () => {
  it('is refused for a spell that cannot be', () => {
    const spell = { ...HERE, minutes: 10 };
    expect(outsideHistory([spell, ...steady(HERE)])).toBeUndefined();
    expect(outsideHistory([{ ...spell, minutes: 0 }, ...steady(HERE)])).toBeUndefined();
    expect(outsideHistory([spell, { ...spell, minutes: -1 }])?.problem).toEqual({
      code: 'out-of-range',
      quantity: 'length of a spell of weather',
      unit: 'min',
      value: -1,
      min: 0,
      max: Number.POSITIVE_INFINITY,
    });
    expect(outsideHistory([spell, { ...spell, celsius: 51 }])?.problem.quantity).toBe('air temperature');
  });
});

it('a crossing is found between its ends, and at an end where it lies beyond', () => {
  expect(bisect((x) => x ** 3 - 8, 0, 10)).toBeCloseTo(2, 9);
  expect(bisect((x) => x - 100, 0, 10)).toBeCloseTo(10, 9);
  expect(bisect((x) => x + 100, 0, 10)).toBeCloseTo(0, 9);
});

it('each moment has a name of its own', () => {
  const words = Object.values(MILESTONE_WORDS);
  expect(new Set(words).size).toBe(PRINTED.length);
  for (const says of words) expect(says).toMatch(/^[a-z][a-z ]{5,}[a-z]$/);
});
