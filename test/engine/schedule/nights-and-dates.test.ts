/** What a night does to a wet coat, when hard use may begin, what is bought, and a day that was promised. Jobs of our own. */
import { describe, expect, it } from 'vitest';
import { driedAt } from '#engine/schedule/dry.ts';
import { cansFor, type Job } from '#engine/schedule.ts';
import { calendar, DAY, HOUR, job, outcome, plan, planned, productOf } from './sheet.ts';

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

  it('is a no where the night is so damp that a water-based coat cannot set in it', () => {
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

describe('cans of other sizes, invented', () => {
  const can = (name: string, liters: number) => ({ name, liters, units: 'us' as const, aerosol: false });
  const bought = (liters: number, sizes: readonly ReturnType<typeof can>[], share = 0) =>
    cansFor({ cans: sizes as never, spare: { share } as never }, liters, 'us', false).map(
      ({ count, can: { name } }) => `${count} ${name}`,
    );
  const halves = [can('half', 0.5), can('one', 1)];

  it('what just fills cans takes no more of them', () => {
    expect(bought(0.5, halves)).toEqual(['1 half']);
    expect(bought(1, halves)).toEqual(['1 one']);
    expect(bought(1.5, halves)).toEqual(['1 one', '1 half']);
    expect(bought(3, halves)).toEqual(['3 one']);
  });

  it('a tenth to spare is bought, too', () => {
    expect(bought(0.45, halves, 0.1)).toEqual(['1 half']);
    expect(bought(0.5, halves, 0.1)).toEqual(['1 one']);
    expect(bought(10, halves, 0.1)).toEqual(['11 one']);
  });

  it('no more than four are taken of small sizes, though five would cost less by their liters', () => {
    // Ten to the power of 3/4 is 5.6, so five of one liter would cost less.
    const sizes = [can('ten', 10), can('one', 1)];
    expect(bought(4, sizes)).toEqual(['4 one']);
    expect(bought(5, sizes)).toEqual(['1 ten']);
    expect(bought(13, sizes)).toEqual(['1 ten', '3 one']);
  });

  it('another of the largest where that costs less than small ones', () => {
    // Two halves cost 1.19 times as much as one whole.
    expect(bought(2.6, halves)).toEqual(['3 one']);
    expect(bought(2.4, halves)).toEqual(['2 one', '1 half']);
    expect(bought(0.6, halves)).toEqual(['1 one']);
  });

  it('nothing where nothing is needed or no such can is sold', () => {
    expect(bought(0, halves)).toEqual([]);
    expect(bought(Number.NaN, halves)).toEqual([]);
    expect(cansFor({ cans: halves as never, spare: { share: 0 } as never }, 1, 'metric', false)).toEqual([]);
    expect(cansFor({ cans: halves as never, spare: { share: 0 } as never }, 1, 'us', true)).toEqual([]);
  });
});

describe('a can’s times in other weather', () => {
  const span = (minutes: number) => ({ from: minutes, to: minutes });
  const minutes = {
    open: span(20),
    touch: span(30),
    recoat: span(120),
    'sand-if-beyond': span(12 * 60),
    'light-use': span(3 * 1440),
    cure: span(30 * 1440),
  };
  const at = (celsius: number, relativeHumidity = 0.5) => {
    const air = { celsius, relativeHumidity };
    return planned(job({ day: air, night: air, label: { minutes, coats: 2 } }));
  };

  it('hold as the least where it is warmer, but what ends early ends earlier: wet edge and deadline', () => {
    const [usual, warm] = [at(23), at(31)];
    const [first, second] = [usual.coats[0], warm.coats[0]];
    if (!first || !second) throw new Error('no coat');
    expect((second.recoat.from - second.to) / HOUR).toBeCloseTo(2, 6);
    expect((second.touch.from - second.to) / HOUR).toBeCloseTo(0.5, 6);
    expect(second.deadline?.from).toBeLessThan((first.deadline?.from ?? 0) - HOUR / 2);
    expect(warm.wetEdge?.openMinutes).toBeLessThan((usual.wetEdge?.openMinutes ?? 0) - 1);
    expect(usual.wetEdge?.openMinutes).toBeCloseTo(20, 6);
    // A promise to a buyer does not come in either.
    const end = (warm.coats.at(-1)?.to ?? 0) + 30 * DAY;
    expect(warm.dates.fullUse.to).toBeGreaterThanOrEqual(end - 1);
  });

  it('that are not printed: full cure is promised for the late end of the table, warm or thin as the coat may be', () => {
    const air = { celsius: 30, relativeHumidity: 0.4 };
    for (const product of ['water-based-polyurethane', 'oil-based-polyurethane']) {
      const one = planned(job({ product, day: air, night: air, applicator: 'brush' }));
      const [, late] = productOf(product)['cure-days'];
      expect(one.dates.fullUse.to - (one.coats.at(-1)?.to ?? 0)).toBeGreaterThanOrEqual(late * DAY - 1);
    }
  });
});

describe('cautions before a step', () => {
  it('are those of what that step does: vapor before the coat that gives it off, dust before the sanding', () => {
    const one = planned(
      job({ base: 'bare-wood', baseHours: undefined, product: 'oil-based-polyurethane', tone: 'wood' }),
    );
    const before = (kind: string) =>
      one.steps.filter((step) => step.kind === kind).flatMap((step) => step.before.map(({ id }) => id));
    expect(before('sand')).toContain('sanding-dust');
    expect(before('coat')).not.toContain('sanding-dust');
    expect([...one.cautions.map(({ id }) => id), ...before('coat')].join(' ')).toMatch(/solvent|vapor/);
    expect(before('look')).toEqual([]);
    expect(before('wait')).toEqual([]);
  });
});

it('the last coat is followed through its nights until it is cured, and none before it', () => {
  const one = oil({ day: { celsius: 21.1, relativeHumidity: 0.5 }, night: { celsius: 16 }, wear: 'normal' });
  const got = planned(one);
  const last = got.coats.at(-1);
  if (!got.build || !last) throw new Error('no coat');
  const planning = { plan, job: one, product: productOf(one.product), calendar, build: got.build };
  const dried = (which: 'last' | 'between') => {
    const found = driedAt(planning, last.to, which);
    if (!found.ok) throw new Error(found.problem.code);
    return found.value;
  };
  const { cure } = dried('last');
  expect(got.dates.fullUse.to).toBe(cure.to);
  // Nights that are left out dry as by day.
  expect(dried('between').cure.to).toBeLessThan(cure.to);
});
