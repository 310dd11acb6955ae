/**
 * Whether there is a time for an unsanded coat, and one voice of clock, card and plan on it. Oil-based polyurethane at
 * 23 °C is ready after 12 to 24 hours (common practice) and sanded beyond 24 hours (film-s140), by careful hands beyond
 * 48 (common practice). What slows by one law slows both ends alike, so twice as long stays twice as long in any air.
 */
import { describe, expect, it } from 'vitest';
import { hasNoWindow } from '#engine/clock/late.ts';
import { clockNow, isLateAtOnce, type LaidCoat, lateAt, sayNow } from '#engine/clock.ts';
import { sayMust } from '../../../site/client/schedule/words.ts';
import { HOUR, products, START } from '../jobs/cards.ts';
import { job, planned } from '../schedule/sheet.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const POLY = 'oil-based-polyurethane';
/** 58 °F, by °C = (°F − 32) × 5/9. */
const COOL = 14.44;

const readAt = (celsius: number, at: number, more: Partial<LaidCoat> = {}) => {
  const coat = {
    id: 'coat',
    piece: 'Table',
    product: POLY,
    laidAt: START,
    celsius,
    relativeHumidity: 0.5,
    coatNumber: 1,
    ...more,
  };
  const product = products[coat.product];
  if (!product) throw new Error('no such product');
  const reading = clockNow(product, coat, at, products);
  if (reading.kind !== 'running') throw new Error('it runs');
  return reading;
};

const spanAt = (hours: readonly [number, number]) => ({ from: hours[0] * HOUR, to: hours[1] * HOUR });

it.each([
  [[24, 48], [12, 24], true],
  [[24.5, 48], [12, 24], true],
  [[25, 48], [12, 24], false],
  [[24, 72], [2, 4], false],
] as const)('too hard from %j hours, ready at %j: no time for an unsanded coat %s', (hard, ready, none) => {
  expect(hasNoWindow(spanAt(hard), spanAt(ready))).toBe(none);
});

it('tells over for sure, perhaps over, and never there', () => {
  const water = [spanAt([24, 72]), spanAt([2, 4])] as const;
  expect([5, 23, 24, 71, 72].map((hours) => lateAt(hours * HOUR, ...water))).toEqual([
    undefined,
    undefined,
    'perhaps',
    'perhaps',
    'surely',
  ]);
  const oil = [spanAt([24, 48]), spanAt([12, 24])] as const;
  expect([24, 47, 48].map((hours) => lateAt(hours * HOUR, ...oil))).toEqual(['always', 'always', 'surely']);
  expect(lateAt(99 * HOUR, undefined, oil[1])).toBeUndefined();
});

it.each([COOL, 18, 23, 29])('slows the late end as the early one, at %d °C', (celsius) => {
  const { recoat, 'sand-if-beyond': hard } = readAt(celsius, START).moments;
  expect(((hard?.to ?? 0) - START) / (recoat.to - START)).toBeCloseTo(2, 2);
});

describe('oil-based polyurethane at 58 °F', () => {
  const air = { celsius: COOL, relativeHumidity: 0.5 };
  const plan = planned(
    job({ base: 'stain', baseHours: 500, tone: 'wood', product: POLY, day: air, night: air }),
  );
  const rubs = plan.steps.filter(({ kind, coat = 0 }) => kind === 'sand' && coat > 1);

  it('is rubbed in any case, and no plan says of a coat just ready that it has dried too long', () => {
    expect(rubs.length).toBeGreaterThan(0);
    for (const { coat = 0, must } of rubs) {
      const below = plan.coats[coat - 2];
      const laid = plan.coats[coat - 1];
      if (!below?.deadline || !laid || !must) throw new Error('each coat has its times');
      expect(must).toBe(laid.from >= below.deadline.to ? 'surely' : 'always');
    }
    // The second coat is laid within a working day of being ready: twice the time is far off.
    expect(rubs[0]?.must).toBe('always');
  });

  it('is told in the same words by the plan, the clock and the card, thin or not', () => {
    const ready = readAt(COOL, START).moments.recoat.to;
    for (const coatNumber of [1, 3]) {
      const reading = readAt(COOL, ready + HOUR, { coatNumber });
      expect(isLateAtOnce(reading.moments)).toBe(true);
      const { verdict, why } = sayNow(WORDS, reading, ready + HOUR, STYLE);
      expect(verdict).toBe(coatNumber === 1 ? 'Dull it before the next coat' : 'Sand before the next coat');
      expect(why).toContain(WORDS.late.always);
      expect(why).not.toContain(WORDS.late.surely);
    }
    expect(sayMust('always', true)).toBe(`Dull it in any case. ${WORDS.late.always}`);
    expect(sayMust('surely')).toBe(`Sand it in any case. ${WORDS.late.surely}`);
    const { moments } = readAt(COOL, START);
    const end = moments['sand-if-beyond']?.to ?? 0;
    expect(sayNow(WORDS, readAt(COOL, end), end, STYLE).why).toContain(WORDS.late.surely);
  });
});

it('leaves a time for an unsanded coat where the can prints a quick recoat', () => {
  // Invented: ready after 10 hours, sanded from 24 on.
  const hours = (from: number) => ({ from: from * 60, to: from * 60 });
  const label = { minutes: { recoat: hours(10), 'sand-if-beyond': hours(24) } };
  const reading = readAt(23, START + 11 * HOUR, { label, coatNumber: 3 });
  expect(isLateAtOnce(reading.moments)).toBe(false);
  expect(sayNow(WORDS, reading, START + 11 * HOUR, STYLE).verdict).toMatch(/^Ready to sand and recoat until/);
});
