/** When each moment of a coat comes and goes, to the minute, by a can that prints them; and when two airs are one. */
import { describe, expect, it } from 'vitest';
import { nearly, sameClimate } from '#engine/calc/drying/climate.ts';
import { type History, type Spell, steady } from '#engine/calc/drying/history.ts';
import { drying } from '#engine/calc/drying.ts';
import { good } from './good.ts';
import { dryingProduct } from './products.ts';

describe('the moments of a coat, by a can that prints them', () => {
  const span = (minutes: number) => ({ from: minutes, to: minutes });
  const label = {
    minutes: {
      open: span(10),
      touch: { from: 30, to: 60 },
      recoat: span(120),
      'light-use': span(4320),
      cure: span(43200),
    },
  };
  const AIR = { celsius: 23, relativeHumidity: 0.5 };
  const at = (elapsedMinutes: number, history: History = steady(AIR), relativeThickness = 1) =>
    good(
      drying({
        product: dryingProduct('water-based-polyurethane'),
        label,
        history,
        relativeThickness,
        elapsedMinutes,
      }),
    );

  it.each([
    [0, 'wet'],
    [9.99, 'wet'],
    [10, 'setting'],
    [29.99, 'setting'],
    [30, 'setting'],
    [59.99, 'setting'],
    [60, 'dry-to-touch'],
    [119.99, 'dry-to-touch'],
    [120, 'recoatable'],
    [43199, 'recoatable'],
    [43200, 'cured'],
  ] as const)('%s min: %s', (minutes, stage) => {
    expect(at(minutes).stage).toBe(stage);
  });

  it('is only probable between the early and the late end of the next moment', () => {
    expect(at(5).sureness).toBe('surely');
    expect(at(10).sureness).toBe('surely');
    expect(at(30).sureness).toBe('probably');
  });

  it('tells what is still to come, soonest first, and a moment no more once it is over', () => {
    expect(at(0).next.map(({ milestone }) => milestone)).toEqual([
      'open',
      'touch',
      'recoat',
      ...at(0)
        .next.map(({ milestone }) => milestone)
        .filter((one) => one === 'sand-if-beyond'),
      'light-use',
      'cure',
    ]);
    expect(at(60).next.map(({ milestone }) => milestone)).not.toContain('touch');
    expect(at(59.9).next[0]?.milestone).toBe('touch');
    const late = at(0).next.map(({ range }) => range.to);
    expect(late).toEqual([...late].sort((a, b) => a - b));
  });

  it('gives the can’s times unchanged in its own air, and unchanged where one air is told in many pieces', () => {
    const spells = [1, 9, 20, 0.5, 300].map((minutes): Spell => ({ ...AIR, minutes }));
    const pieces = [...spells, { ...AIR, minutes: 1 }] as unknown as History;
    for (const history of [steady(AIR), pieces])
      for (const [milestone, time] of Object.entries(label.minutes)) {
        const got = at(0, history).times.get(milestone as 'touch');
        expect(got?.from).toBeCloseTo(time.from, 6);
        expect(got?.to).toBeCloseTo(time.to, 6);
      }
  });

  it('says what made a time wide, and nothing else', () => {
    const reasons = (milestone: 'touch' | 'recoat' | 'open', history?: History, thick?: number) =>
      at(0, history, thick).times.get(milestone)?.reasons;
    expect(reasons('recoat')).toEqual([]);
    expect(reasons('touch')).toEqual(['label-range']);
    expect(reasons('recoat', steady(AIR), 1.5)).toEqual(['thick-film']);
    expect(reasons('recoat', steady({ ...AIR, celsius: 15 }))).toEqual(['weather']);
    expect(reasons('recoat', steady({ ...AIR, celsius: 30 }))).toEqual(['label-in-warmth']);
    const bare = good(
      drying({
        product: dryingProduct('water-based-polyurethane'),
        history: steady(AIR),
        relativeThickness: 0.7,
        elapsedMinutes: 0,
      }),
    );
    expect(bare.times.get('recoat')?.reasons).toEqual(['product-varies', 'thin-film']);
  });

  it('is refused for a time before the coat, a film past all measure, and weather that cannot be', () => {
    const refused = (more: object) =>
      drying({
        product: dryingProduct('water-based-polyurethane'),
        history: steady(AIR),
        relativeThickness: 1,
        elapsedMinutes: 0,
        ...more,
      }).ok;
    expect(refused({})).toBe(true);
    expect(refused({ elapsedMinutes: -1 })).toBe(false);
    expect(refused({ relativeThickness: 0.1 })).toBe(true);
    expect(refused({ relativeThickness: 0.09 })).toBe(false);
    expect(refused({ relativeThickness: 10 })).toBe(true);
    expect(refused({ relativeThickness: 10.1 })).toBe(false);
    expect(refused({ history: [{ ...AIR, minutes: -1 }] })).toBe(false);
    expect(
      refused({
        history: [
          { ...AIR, minutes: 5 },
          { ...AIR, celsius: 51, minutes: 5 },
        ],
      }),
    ).toBe(false);
    expect(refused({ label: { minutes: {}, climate: { celsius: 51, relativeHumidity: 0.5 } } })).toBe(false);
  });
});

describe('a climate as good as that of the can', () => {
  const base = { celsius: 23, relativeHumidity: 0.5 };
  // 73 °F is 22.8 °C: told in whole degrees it is the 23 °C of the sheet.
  it('takes its warmth, of the air and of the surface, within a quarter of a degree', () => {
    expect(nearly({ celsius: 22.8, relativeHumidity: 0.4 }, base)).toEqual({
      celsius: 23,
      relativeHumidity: 0.4,
    });
    expect(nearly({ celsius: 22.75, relativeHumidity: 0.4 }, base).celsius).toBe(23);
    expect(nearly({ celsius: 22.7, relativeHumidity: 0.4 }, base).celsius).toBe(22.7);
    expect(nearly({ celsius: 23.3, relativeHumidity: 0.4 }, base).celsius).toBe(23.3);
    const cold = { celsius: 10, relativeHumidity: 0.5, surfaceCelsius: 22.9 };
    expect(nearly(cold, base)).toEqual({ celsius: 10, relativeHumidity: 0.5, surfaceCelsius: 23 });
    expect(nearly({ ...cold, surfaceCelsius: 12.1 }, { ...base, surfaceCelsius: 12 }).surfaceCelsius).toBe(
      12,
    );
    expect(nearly({ ...cold, surfaceCelsius: 0 }, base).surfaceCelsius).toBe(0);
    expect(nearly({ celsius: 10, relativeHumidity: 0.5 }, base)).not.toHaveProperty('surfaceCelsius');
  });

  it('is the same where air, humidity and surface are', () => {
    expect(sameClimate(base, { ...base, surfaceCelsius: 23 })).toBe(true);
    expect(sameClimate(base, { ...base, surfaceCelsius: 22 })).toBe(false);
    expect(sameClimate(base, { ...base, celsius: 22, surfaceCelsius: 23 })).toBe(false);
    expect(sameClimate(base, { ...base, relativeHumidity: 0.51 })).toBe(false);
  });
});
