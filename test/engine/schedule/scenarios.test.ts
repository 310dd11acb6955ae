/**
 * Jobs that a finisher meets, planned or refused as the evidence says. The first twelve follow situations described
 * for the trade; their handling is common practice, no source, unless a figure is named.
 */
import { describe, expect, it } from 'vitest';
import { codes, DAY, HOUR, job, outcome, planned } from './sheet.ts';

const says = (one: Parameters<typeof outcome>[0]): string => {
  const got = outcome(one);
  return got.kind === 'no' ? got.why.map((no) => no.says).join(' ') : '';
};

describe('twelve jobs from the trade', () => {
  it('1: aerosol lacquer at 12 °C and 85 %: dew gap 2.4 K, no', () => {
    const one = job({
      product: 'aerosol-lacquer',
      applicator: 'aerosol',
      day: { celsius: 12, relativeHumidity: 0.85 },
    });
    expect(codes(one)).toBe('weather');
    expect(says(one)).toMatch(/2\.4 °C/);
  });

  it('2: dark wax on chalk-type paint 6 h old: not before 24 h', () => {
    const one = job({
      base: 'chalk-paint',
      baseHours: 6,
      product: 'soft-wax',
      applicator: 'cloth',
      tone: 'light',
    });
    const { coats } = planned(one);
    expect(coats[0]?.from).toBeGreaterThanOrEqual(one.start + 18 * HOUR);
  });

  it('3: oil-varnish blend in a sunroom: no; out of the sun: planned, a day or two between coats, rags first', () => {
    const oak = {
      base: 'bare-wood',
      baseHours: undefined,
      tone: 'wood',
      product: 'oil-varnish-blend',
      applicator: 'cloth',
    } as const;
    expect(codes(job({ ...oak, inSun: true, day: { celsius: 27, relativeHumidity: 0.5 } }))).toBe('weather');
    const { coats, steps } = planned(job(oak));
    const [one, two] = coats;
    expect((two?.from ?? 0) - (one?.to ?? 0)).toBeGreaterThanOrEqual(24 * HOUR);
    expect(steps.flatMap(({ before }) => before.map(({ id }) => id))).toContain('oily-rags');
  });

  it('4: linseed oil at 14 °C: each coat waits more than the 72 h of a warm room', () => {
    const { coats } = planned(
      job({
        base: 'bare-wood',
        baseHours: undefined,
        tone: 'wood',
        product: 'drying-oil',
        applicator: 'cloth',
        wear: 'low',
        day: { celsius: 14, relativeHumidity: 0.5 },
        night: { celsius: 12, relativeHumidity: 0.6 },
      }),
    );
    expect((coats[0]?.recoat.to ?? 0) - (coats[0]?.to ?? 0)).toBeGreaterThan(72 * HOUR);
  });

  it('5: old French polish, perhaps valuable: a conservator first', () => {
    const one = job({ kind: 'valuable', base: 'old-finish', age: 'since-1993', product: 'shellac' });
    expect(codes(one)).toBe('rule');
    expect(says(one)).toMatch(/conservator/);
  });

  it('6: a crib: no repair path', () => {
    expect(codes(job({ kind: 'crib' }))).toBe('rule');
  });

  it('7: shellac on an oak chair at 18 °C: planned, with a care for the use and a look for old shellac', () => {
    const got = planned(
      job(
        {
          base: 'bare-wood',
          baseHours: undefined,
          tone: 'wood',
          product: 'shellac',
          day: { celsius: 18, relativeHumidity: 0.45 },
        },
        'chair',
      ),
    );
    expect(got.care.length).toBeGreaterThan(0);
    expect(got.steps.flatMap(({ looks }) => looks.flatMap(({ defects }) => defects as string[]))).toContain(
      'old-shellac',
    );
  });

  it('8: a water-based film over waxed paint: peels, no', () => {
    const one = job({ base: 'wax', product: 'water-based-polyurethane' });
    expect(codes(one)).toBe('use');
    expect(says(one)).toMatch(/peel/);
  });

  it('9: lacquer over oil enamel one day old at 15 °C: no, and when it would be yes', () => {
    const one = job({
      base: 'oil-paint',
      baseHours: 24,
      product: 'sprayed-lacquer',
      applicator: 'spray-gun',
      day: { celsius: 15, relativeHumidity: 0.4 },
    });
    const got = outcome(one);
    expect(codes(one)).toBe('base');
    expect(got.kind === 'no' && got.why[0].earliest).toBe(one.start + (168 - 24) * HOUR);
  });

  it('10: hardwax oil at 16 °C: sticky past the label figure, so more than 24 h between coats', () => {
    const { coats } = planned(
      job(
        {
          base: 'bare-wood',
          baseHours: undefined,
          tone: 'wood',
          product: 'hardwax-oil',
          applicator: 'cloth',
          trials: [],
          day: { celsius: 16, relativeHumidity: 0.5 },
          night: { celsius: 14, relativeHumidity: 0.6 },
        },
        'coffee-table',
      ),
    );
    expect((coats[0]?.recoat.to ?? 0) - (coats[0]?.to ?? 0)).toBeGreaterThan(24 * HOUR);
  });

  it('11: oil inside a wardrobe, wanted in three days: two weeks of airing before hand-over', () => {
    const one = job(
      {
        base: 'bare-wood',
        baseHours: undefined,
        tone: 'wood',
        product: 'drying-oil',
        applicator: 'cloth',
        wear: 'low',
      },
      'cabinet',
    );
    const { dates, coats } = planned(one);
    expect(dates.handOver - (coats.at(-1)?.to ?? 0)).toBeGreaterThanOrEqual(14 * DAY);
    expect(dates.fullUse.to - one.start).toBeGreaterThan(14 * DAY);
  });

  it('12: green over cream over brown of unknown age: no sanding, so no plan', () => {
    const one = job({
      base: 'old-finish',
      age: 'unknown',
      product: 'sprayed-lacquer',
      applicator: 'spray-gun',
    });
    expect(codes(one)).toBe('rule');
    expect(says(one)).toMatch(/lead/);
  });
});

describe('twelve of our own', () => {
  it('wax on a wet table top: no', () => {
    expect(codes(job({ product: 'paste-wax', applicator: 'cloth' }, 'dining-table'))).toBe('use');
  });

  it('shellac for a bar top: no', () => {
    expect(codes(job({ product: 'shellac', trials: ['water'] }))).toBe('use');
  });

  it('water-based over oil stain a day old: no until 72 h (a maker’s advice page); after three days: yes', () => {
    const fresh = job({ base: 'stain', baseHours: 24, tone: 'wood' });
    expect(codes(fresh)).toBe('base');
    expect(codes({ ...fresh, baseHours: 72 })).toBe('plan');
    expect(codes({ ...fresh, baseHours: 71.9 })).toBe('base');
  });

  it('a shed at 6 °C: no, for every product', () => {
    for (const [product, applicator] of [
      ['water-based-polyurethane', 'brush'],
      ['oil-based-polyurethane', 'brush'],
      ['shellac', 'brush'],
      ['hardwax-oil', 'cloth'],
      ['soft-wax', 'cloth'],
    ] as const)
      expect(
        codes(
          job({
            product,
            applicator,
            base: 'bare-wood',
            tone: 'wood',
            day: { celsius: 6, relativeHumidity: 0.6 },
          }),
        ),
        product,
      ).toContain('weather');
  });

  it('oil over latex paint: no', () => {
    expect(codes(job({ product: 'drying-oil', applicator: 'cloth' }))).toBe('use');
  });

  it('a roller for shellac: no, and which tools do', () => {
    const got = outcome(job({ product: 'shellac', applicator: 'roller', wear: 'low' }));
    expect(got.kind === 'no' && got.why[0].instead).toMatch(/pad/);
  });

  it('evenings only, three hours: one coat of water-based an evening', () => {
    const { coats } = planned(
      job({ hours: { from: 18 * 60, to: 21 * 60, days: [true, true, true, true, true, true, true] } }),
    );
    expect(coats.map(({ to }) => Math.floor(to / DAY))).toEqual([0, 1, 2]);
  });

  it('half an hour a day is not enough for a session', () => {
    expect(
      codes(job({ hours: { from: 540, to: 570, days: [true, true, true, true, true, true, true] } })),
    ).toBe('hours');
  });

  it('weekends only: no coat on a weekday', () => {
    const { coats } = planned(
      job({
        product: 'oil-based-polyurethane',
        hours: { from: 540, to: 1080, days: [true, false, false, false, false, false, true] },
      }),
    );
    for (const { from } of coats) expect([5, 6]).toContain(Math.floor(from / DAY) % 7);
  });

  it('a frosty night after a warm day: water-based only early enough to be ready by evening', () => {
    const cold = { night: { celsius: 2, relativeHumidity: 0.8 } };
    const { coats } = planned(job(cold));
    for (const { recoat } of coats) expect((recoat.to / HOUR) % 24).toBeLessThanOrEqual(21);
    const shortEvening = job({
      ...cold,
      hours: { from: 19 * 60, to: 21 * 60, days: [true, true, true, true, true, true, true] },
    });
    expect(codes(shortEvening)).toBe('drying');
  });

  it('a toy box: hand over only fully cured, 30 days at the least', () => {
    const one = job({}, 'toy-box');
    const { dates, coats } = planned(one);
    expect(dates.handOver - (coats.at(-1)?.to ?? 0)).toBeGreaterThanOrEqual(30 * DAY);
    expect(outcome(one).cautions.map(({ id }) => id)).toContain('childs-item');
  });

  it('water-based over a three-day-old oil enamel: a test patch first, and three days for it', () => {
    const { steps, coats } = planned(job({ base: 'oil-paint', baseHours: 80 }));
    expect(steps[0]?.kind).toBe('test-patch');
    expect((coats[0]?.from ?? 0) - (steps[0]?.to ?? 0)).toBeGreaterThanOrEqual(72 * HOUR);
  });
});
