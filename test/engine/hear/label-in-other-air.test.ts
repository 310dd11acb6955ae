/**
 * The hours of a can in other air than it names. Letters are invented. What is said must agree with the coat clock, which
 * has its own checks against printed drying times (test/engine/calc/drying.sheets.test.ts).
 */
import { describe, expect, it } from 'vitest';
import { type ClockProduct, clockNow, type LaidCoat } from '#engine/clock.ts';
import { carriedTo, understand } from '#engine/hear.ts';
import { fact, heard, hearing, known, understanding } from './hearing.ts';
import { links } from './links.ts';

const told = (text: string) => heard(text).asksFor?.answer ?? '';
const HOUR_MS = 3_600_000;

/** From when to when the clock takes the next coat, in hours from laying it. */
const byClock = (id: string, hours: number, air: readonly [celsius: number, humidity: number], can = 23) => {
  const minutes = { recoat: { from: hours * 60, to: hours * 60 } };
  const coat = {
    id: 'one',
    piece: 'a piece',
    product: id,
    laidAt: 0,
    celsius: air[0],
    relativeHumidity: air[1],
    coatNumber: 1,
    label: { minutes, climate: { celsius: can, relativeHumidity: 0.5 } },
  } satisfies LaidCoat;
  const reading = clockNow(known.get('product', id) as unknown as ClockProduct, coat, HOUR_MS);
  if (reading.kind !== 'running') throw new Error(reading.kind);
  const { from, to } = reading.moments.recoat;
  return [from / HOUR_MS, to / HOUR_MS] as const;
};

describe('hours of a can in other air', () => {
  it.each([
    [
      'Label says 24 hours between coats at 77 °F. The shop is at 58 °F and 60 percent humidity. I brushed on oil-based polyurethane, when can I put on another?',
      byClock('oil-based-polyurethane', 24, [14.44, 0.6], 25),
    ],
    [
      'The water-based clear recommends recoat after 3 hours at 23 °C. Here it is 15 °C with 60 % humidity. When may I lay the next coat?',
      byClock('water-based-polyurethane', 3, [15, 0.6]),
    ],
    [
      'tin states recoat after 6 hours at 20 °C; oil based varnish at 14 °C in here, how long before I can recoat',
      byClock('oil-based-polyurethane', 6, [14, 0.5], 20),
    ],
  ])('are those of the clock: %s', (text, [from, to]) => {
    const [, least, most] = /reckons (\d+) to (\d+) hours from the coat/.exec(told(text)) ?? [];
    // Rounded to the hour; the clock takes the steps one by one.
    expect(Math.abs(Number(least) - from)).toBeLessThanOrEqual(Math.max(1, 0.2 * from));
    expect(Math.abs(Number(most) - to)).toBeLessThanOrEqual(Math.max(1.5, 0.2 * to));
  });
  it('count what is over, and keep hands off a film that sticks', () => {
    const text =
      'I laid oil-based polyurethane yesterday at 3 p.m., it is 8 a.m. now and tacky. The shop has 58 °F. The can says 24 hours between coats at 77 °F. How long do I wait?';
    expect(told(text)).toMatch(
      /It has been 17 hours, so \d+ to \d+ hours more.*Nothing touches it before\.$/,
    );
    expect(understand(understanding, { text }, links).answer.short).not.toMatch(/Most likely|may be/);
  });
  it('count nothing where the age is told too loosely', () =>
    expect(
      told(
        'The varnish says recoat after 4 hours at 23 °C. Oil based, laid this morning, 14 °C. When can the second coat go on?',
      ),
    ).toContain('Count them by the clock'));
  it('are carried to the clock', () => {
    const text =
      'The can says 4 hours between coats at 70 °F. My basement is 60 °F. I brushed water based polyurethane 3 hours ago. When can I put on the second coat?';
    expect(carriedTo(hearing.waits, 'page/clock', heard(text))).toMatchObject({
      'label-recoat': '4',
      'label-air': '70',
      units: 'us',
      air: '60',
      ago: '180',
    });
  });
  it('are no air of the room', () => {
    expect(
      fact('The can says 4 hours between coats at 70 °F. Oil based poly.', 'air-celsius'),
    ).toBeUndefined();
    expect(fact('The can says 4 hours between coats. It is 70 °F here.', 'air-celsius')?.value).toBeCloseTo(
      21.1,
      1,
    );
  });
  it.each([
    'The can says 24 hours between coats at 77 °F. The shop is 77 °F. Oil-based varnish, when can I recoat?',
    'The can says 4 hours between coats, when can I recoat the oil based varnish?',
    'The can says 4 hours between coats at 70 °F, it is 40 °F here. Oil based varnish, when can I recoat?',
  ])('are left as they are in the air of the can, in air that is not told, and in air too cold: %s', (text) =>
    expect(told(text)).not.toContain('the clock reckons'),
  );
});
