/** What a night does to a wet coat, when hard use may begin, what is bought, and a day that was promised. Jobs of our own. */
import { describe, expect, it } from 'vitest';
import { cansFor, type Job } from '#engine/schedule.ts';
import { DAY, HOUR, job, outcome, plan, planned } from './sheet.ts';

const oil = (more: Partial<Job>): Job =>
  job({ base: 'bare-wood', baseHours: undefined, product: 'oil-based-polyurethane', ...more });
const refusal = (one: Job): string => {
  const got = outcome(one);
  return got.kind === 'no' ? got.why.map(({ code, says }) => `${code}: ${says}`).join(' ') : 'planned';
};

describe('a coat that lies wet into the night', () => {
  it('is a no where the night is colder than the coat may be laid in', () => {
    // The product's own figures: laid at 13 °C and warmer. 60 °F by day and 40 °F by night.
    const cold = oil({ day: { celsius: 15.6, relativeHumidity: 0.5 }, night: { celsius: 4.4 } });
    expect(refusal(cold)).toMatch(/^drying: .*night spoils it.* is 4 °C/);
    expect(refusal({ ...cold, night: { celsius: 14 } })).toBe('planned');
  });

  it('is a no where the night is so damp that a water-based coat can not set in it', () => {
    const late = job({ start: 17 * HOUR, hours: { from: 17 * 60, to: 20 * 60, days: Array(7).fill(true) } });
    const damp = { ...late, night: { celsius: 16, relativeHumidity: 0.97 } };
    expect(refusal(late)).toBe('planned');
    expect(refusal(damp)).toMatch(/^drying: .*night spoils it.* 97 %/);
  });

  it('rests where it is dry to the touch before a cold night, and that is said', () => {
    const dry = planned(oil({ day: { celsius: 21.1, relativeHumidity: 0.5 }, night: { celsius: 10 } }));
    expect(dry.nights.some(({ rests }) => rests)).toBe(true);
    expect(dry.coats.every(({ touch }) => touch.to % DAY < 21 * HOUR)).toBe(true);
  });

  it('says the numbers in the units that were chosen', () => {
    const got = outcome(
      oil({ day: { celsius: 15.6, relativeHumidity: 0.5 }, night: { celsius: 4.4 } }),
      'us',
    );
    expect(got.kind === 'no' && got.why[0].says).toContain('40 °F (4 °C)');
  });
});

describe('dates', () => {
  it('hands a top over at full use where water and heat come to it daily', () => {
    const hard = planned(job({ wear: 'high', trials: ['water', 'heat'] }, 'dining-table'));
    expect(hard.dates.handOver).toBeGreaterThanOrEqual(hard.dates.fullUse.to);
    const normal = planned(job({ wear: 'normal', trials: ['water', 'heat'] }, 'dining-table'));
    expect(normal.dates.handOver).toBeLessThan(normal.dates.fullUse.to);
  });

  it('never promises light use below the days of the product’s own table', () => {
    const end = planned(
      job({ base: 'bare-wood', baseHours: undefined, product: 'wipe-on-varnish', applicator: 'cloth' }),
    );
    const last = end.coats.at(-1)?.to ?? 0;
    expect(end.dates.lightUse.from - last).toBeGreaterThanOrEqual(3 * DAY);
  });

  it('counts the days by which a promise is missed', () => {
    const free = planned(job());
    expect(free.lateDays).toBe(0);
    const promised = free.dates.handOver - 2 * DAY - HOUR;
    expect(planned(job({ promised })).lateDays).toBe(3);
    expect(planned(job({ promised: free.dates.handOver })).lateDays).toBe(0);
  });
});

it('tells before hard use that a wiped film is thin', () => {
  const got = outcome(
    job({
      base: 'bare-wood',
      baseHours: undefined,
      product: 'wipe-on-varnish',
      applicator: 'cloth',
      wear: 'high',
    }),
  );
  expect(got.care.map(({ why }) => why).join()).toContain('1 mil (25 µm)');
});

describe('cans, with a tenth to spare', () => {
  const QUART = 0.9464;
  const bought = (liters: number) =>
    cansFor(plan, liters, 'us', false)
      .map(({ count, can }) => `${count} ${can.name}`)
      .join(' and ');
  it.each([
    [1.06 * QUART, '1 quart and 1 half pint'],
    [1.35 * QUART, '1 quart and 1 pint'],
    [1.4 * QUART, '1 quart and 1 pint and 1 half pint'],
    [0.2354, '1 pint'],
    [3 * QUART, '1 gallon'],
    [4.5 * QUART, '1 gallon and 1 quart'],
  ])('%d L', (liters, wanted) => {
    expect(bought(liters)).toBe(wanted);
  });
});
