/** Odd jobs beside the scenarios: a tool that does not suit, hours too short, a cold night. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '#engine/model/family.ts';
import { schedule } from '#engine/schedule.ts';
import { calendar, codes, DAY, HOUR, job, known, outcome, plan, planned, productOf } from './sheet.ts';

describe('odd jobs', () => {
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

  it('water-based over a three-day-old oil enamel: a test patch first, and three days for it', () => {
    const { steps, coats } = planned(job({ base: 'oil-paint', baseHours: 80 }));
    expect(steps[0]?.kind).toBe('test-patch');
    expect((coats[0]?.from ?? 0) - (steps[0]?.to ?? 0)).toBeGreaterThanOrEqual(72 * HOUR);
  });

  it('a flaw to look for is one that this kind of top coat can have', () => {
    const strange = plan.looks.flatMap(({ when, families, defects }) =>
      (families ?? FAMILIES).flatMap((family) =>
        defects
          .filter((defect) => !known.get('defect', defect).families.includes(family))
          .map((defect) => `${when}: ${defect} in ${family}`),
      ),
    );
    expect(strange).toEqual([]);
  });

  it('a colder room never readies an oil base sooner', () => {
    const earliest = (celsius: number) => {
      const air = { celsius, relativeHumidity: 0.5 };
      const got = outcome(job({ base: 'stain', baseHours: 6, tone: 'wood', day: air, night: air }));
      return got.kind === 'no' ? got.why.find(({ code }) => code === 'base')?.earliest : undefined;
    };
    const found = [26, 23, 20, 18, 15, 12].map((celsius) => earliest(celsius) ?? 0);
    expect(found).toEqual([...found].sort((one, two) => one - two));
    // A maker's 72 hours, twice as long 10 °C colder: 144 h, less the 6 that have passed.
    expect(earliest(10)).toBeCloseTo(9 * HOUR + 138 * HOUR, 0);
  });

  it('a product of which the tables say no coats is named', () => {
    const none = { ...plan, coats: plan.coats.filter(({ families }) => !families.includes('water-based')) };
    const one = job();
    expect(() => schedule(none, known, one, productOf(one.product), calendar)).toThrow(
      'no row of coats is for water-based-polyurethane',
    );
  });
});
