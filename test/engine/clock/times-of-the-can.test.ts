/** What the can prints, in words; what becomes of it here; and the line of a film's life. All worked by hand; cans are invented. */
import { describe, expect, it } from 'vitest';
import { MILESTONE_WORDS, MILESTONES, type Milestone } from '#engine/calc/drying/milestone.ts';
import {
  askAboutLabel,
  checkCoat,
  clockNow,
  type LaidCoat,
  labelHere,
  lifeLine,
  type Running,
  sayInstant,
} from '#engine/clock.ts';
import { STAGES } from '#engine/model/stage.ts';
import { sayShort } from '#engine/plain/say-span.ts';
import { DAY_MS as DAY, HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '#engine/plain/time.ts';
import { PRODUCTS, product } from '../calc/products.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const LAID = Date.UTC(2026, 10, 24, 9);
const poly = product('water-based-polyurethane');
const coat = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Chair',
  product: 'water-based-polyurethane',
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const running = (one: LaidCoat, of = poly): Running => {
  const reading = clockNow(of, one, one.laidAt);
  if (reading.kind !== 'running') throw new Error('it runs');
  return reading;
};

describe('minutes as people say them', () => {
  it.each([
    [40, 40, '40 min'],
    [7.25, 7.25, '7.3 min'],
    [9.96, 12, '10–12 min'],
    [10.4, 12, '10–12 min'],
    [60, 119, '60–119 min'],
    [60, 120, '1–2 h'],
    [90, 150, '1.5–2.5 h'],
    [240, 600, '4–10 h'],
    [1440, 2879, '24–48 h'],
    [1440, 2880, '1–2 days'],
    [2880, 2880, '2 days'],
    [30240, 43200, '21–30 days'],
  ])('%d to %d: %s', (from, to, words) => {
    expect(sayShort({ from, to })).toBe(words);
  });
});

describe('from when it may be handled', () => {
  const handled = (label: LaidCoat['label'], more: Partial<LaidCoat> = {}) =>
    running(coat({ label, ...more })).moments.handle;
  const minutes = { recoat: { from: 120, to: 120 }, handle: { from: 60, to: 90 } };

  it('is told by the can alone, before the next coat or behind it', () => {
    expect(handled(undefined)).toBeUndefined();
    expect(handled({ minutes })).toMatchObject({ from: LAID + HOUR, to: LAID + 1.5 * HOUR });
    const late = { ...minutes, handle: { from: 60, to: 600 } };
    // Never before the next coat, where it may come behind it.
    expect(handled({ minutes: late })).toMatchObject({ from: LAID + 2 * HOUR, to: LAID + 10 * HOUR });
    const [says] = labelHere(
      WORDS,
      coat({ label: { minutes } }),
      running(coat({ label: { minutes } })),
    ).filter(({ milestone }) => milestone === 'handle');
    expect(says?.says).toBe('By your can: 60–90 min.');
  });

  it('is put off by cold, and moves no other time', () => {
    expect(handled({ minutes }, { celsius: 15 })?.to).toBeGreaterThan(LAID + 1.5 * HOUR);
    const { handle: _, ...rest } = minutes;
    const { handle: __, ...moments } = running(coat({ label: { minutes } })).moments;
    expect(moments).toEqual(running(coat({ label: { minutes: rest } })).moments);
  });

  it('is refused before the touch and behind full cure', () => {
    const faults = (more: object) =>
      checkCoat(WORDS, poly, coat({ label: { minutes: { ...minutes, ...more } } }), LAID, STYLE).map(
        ({ field }) => field,
      );
    expect(faults({})).toEqual([]);
    expect(faults({ touch: { from: 70, to: 100 } })).toEqual(['label-handle']);
    expect(faults({ cure: { from: 120, to: 120 }, handle: { from: 200, to: 200 } })).toEqual(['label-cure']);
  });
});

describe('a time typed from the can', () => {
  it('is asked about for each product and moment exactly where it is twice as far as all cans, by its own name', () => {
    for (const one of PRODUCTS.values()) {
      const figures: Partial<Record<Milestone, readonly [number, number]>> = {
        open: one['open-minutes'],
        touch: one['touch-minutes'],
        recoat: one['recoat-hours'].map((hours) => 60 * hours) as [number, number],
        'light-use': one['light-use-days'].map((days) => 1440 * days) as [number, number],
        cure: one['cure-days'].map((days) => 1440 * days) as [number, number],
        ...(one['sand-if-beyond-hours'] && {
          'sand-if-beyond': one['sand-if-beyond-hours'].map((hours) => 60 * hours) as [number, number],
        }),
      };
      for (const milestone of MILESTONES) {
        const asked = (minutes: number) =>
          askAboutLabel(WORDS, one, { minutes: { [milestone]: { from: minutes, to: minutes } } });
        const usual = figures[milestone];
        if (!usual) {
          expect(asked(1)).toEqual([]);
          continue;
        }
        const [soonest, latest] = usual;
        expect([asked(soonest / 2), asked(soonest), asked(latest), asked(2 * latest)]).toEqual([
          [],
          [],
          [],
          [],
        ]);
        for (const far of [soonest * 0.49, latest * 2.01]) {
          const [ask, ...more] = asked(far);
          expect(more).toEqual([]);
          expect(ask).toMatchObject({
            milestone,
            told: { from: far, to: far },
            usual: { from: soonest, to: latest },
          });
          expect(ask?.says).toBe(
            `${one.name}: the ${MILESTONE_WORDS[milestone]} is ${sayShort({ from: soonest, to: latest })} on most cans, and you typed ${sayShort({ from: far, to: far })}. Is it this can, and this unit?`,
          );
        }
      }
    }
  });
});

describe('a time of the can, here', () => {
  const at = (from: number, to = from) => ({ from, to });
  it('is as it stands in the air that it holds for, which is 23 °C and 50 % where the can is silent', () => {
    const label = { minutes: { touch: at(40), recoat: at(120, 240) } };
    expect(
      labelHere(WORDS, coat({ label }), running(coat({ label }))).map(({ milestone, says }) => [
        milestone,
        says,
      ]),
    ).toEqual([
      ['touch', 'By your can: 40 min.'],
      ['recoat', 'By your can: 2–4 h.'],
    ]);
    expect(labelHere(WORDS, coat(), running(coat()))).toEqual([]);
  });

  it('is told with the air of the can, and what slows it', () => {
    const label = { minutes: { touch: at(40), recoat: at(120, 240) } };
    const cold = coat({ label, celsius: 15 });
    const [touch, recoat] = labelHere(WORDS, cold, running(cold));
    expect(touch?.says).toMatch(
      /^Your can’s 40 min \(at 23 °C \(73 °F\), 50 %, since the can’s own air is not told\) becomes .+ in this air\.$/,
    );
    expect(recoat?.says).toMatch(/^Your can’s 2–4 h \(.+\) become .+ in this air\.$/);
    expect([touch?.told, recoat?.told]).toEqual([at(40), at(120, 240)]);
    const { moments } = running(cold);
    expect(recoat?.here).toEqual({
      from: (moments.recoat.from - LAID) / MINUTE,
      to: (moments.recoat.to - LAID) / MINUTE,
    });
    // Colder, so no sooner.
    expect(recoat?.here.to).toBeGreaterThan(240);
    // The film alone slows it where the air is that of the can.
    const own = { ...label, climate: { celsius: 15, relativeHumidity: 0.6 } };
    const thick = coat({
      label: own,
      celsius: 15,
      relativeHumidity: 0.6,
      amount: { milliliters: 400, squareMeters: 1 },
    });
    for (const { says } of labelHere(WORDS, thick, running(thick), 'us'))
      expect(says).toMatch(
        /^Your can’s .+ \(at the can’s 59 °F \(15 °C\), 60 %\) becomes? .+ with this film\.$/,
      );
    expect(labelHere(WORDS, thick, running(thick))).toHaveLength(2);
  });
});

describe('a slip of the pen', () => {
  it('in a time of the can is told beside that time', () => {
    for (const milestone of MILESTONES) {
      const faults = checkCoat(
        WORDS,
        poly,
        coat({ label: { minutes: { [milestone]: { from: 0, to: 5 } } } }),
        LAID,
        STYLE,
      );
      expect(faults.map(({ field, stops }) => [field, stops])).toEqual([[`label-${milestone}`, true]]);
      expect(faults[0]?.says).toContain(MILESTONE_WORDS[milestone]);
    }
  });

  it('is told each in a sentence of its own, with what is allowed', () => {
    const said = (more: Partial<LaidCoat>) => {
      const [fault, ...others] = checkCoat(WORDS, poly, coat(more), LAID, STYLE);
      expect(others).toEqual([]);
      return fault?.says ?? '';
    };
    expect(said({ laidAt: Number.NaN })).toBe('Give the day and the time when the coat was laid.');
    expect(said({ laidAt: LAID + HOUR })).toBe(
      'The coat would be laid 10:00 AM, and it is only 9:00 AM. Check the day and the time, or the clock of this device.',
    );
    expect(said({ laidAt: LAID - 181 * DAY })).toBe(
      'The coat would be more than 180 days old. Check the day; a coat that old is cured.',
    );
    expect(said({ laidAt: LAID - 180 * DAY })).toBe('');
    expect(said({ coatNumber: 0 })).toBe('Give the coat a number from 1 to 20.');
    expect(said({ celsius: 60 })).toMatch(
      /^The air temperature was given as 60 °C \(140 °F\); it must be between -30 °C/,
    );
    expect(said({ relativeHumidity: 1.5 })).toMatch(
      /^The relative humidity was given as 150 %; .+ between 0 % and 100 %/,
    );
    expect(said({ surfaceCelsius: -40 })).toMatch(/^The surface temperature was given as -40 °C/);
    expect(said({ amount: { milliliters: 5000, squareMeters: 1 } })).toMatch(
      /^That amount on that area is not a coat/,
    );
  });

  it('of several fields is told of each; what only weather spoils stops nothing', () => {
    const faults = checkCoat(
      WORDS,
      poly,
      coat({ laidAt: Number.NaN, coatNumber: 0, relativeHumidity: 2 }),
      LAID,
      STYLE,
    );
    expect(faults.map(({ field }) => field).toSorted()).toEqual(['coatNumber', 'laidAt', 'relativeHumidity']);
    // A face that was not measured is as cold as the air, and the air is what can be changed.
    for (const [more, field] of [
      [{ celsius: 3 }, 'celsius'],
      [{ celsius: 30, surfaceCelsius: 3, relativeHumidity: 0.3 }, 'surfaceCelsius'],
      [{ relativeHumidity: 0.86 }, 'relativeHumidity'],
    ] as const)
      expect(checkCoat(WORDS, poly, coat(more), LAID, STYLE).map((one) => [one.field, one.stops])).toEqual([
        [field, false],
      ]);
  });
});

describe('the line of a film’s life', () => {
  const label = {
    minutes: {
      open: { from: 10, to: 20 },
      touch: { from: 40, to: 60 },
      recoat: { from: 100, to: 260 },
      'light-use': { from: 1440, to: 2880 },
      cure: { from: 4000, to: 10_260 },
    },
  };
  const line = (minutes: number) => {
    const now = LAID + minutes * MINUTE;
    const reading = clockNow(poly, coat({ label }), now);
    if (reading.kind !== 'running') throw new Error('it runs');
    return lifeLine(reading, LAID, now);
  };

  it('gives each stage a fifth, the next beginning where the last one ends', () => {
    const { bands } = line(0);
    expect(bands.map(({ stage }) => stage)).toEqual([...STAGES]);
    for (const [at, { from, to }] of bands.entries()) {
      expect(from).toBeCloseTo(at / 5, 9);
      expect(to).toBeCloseTo((at + 1) / 5, 9);
    }
  });

  it('tells up to where a stage is sure: half of an open time from 10 to 20 minutes', () => {
    // 10 of 20; 40 − 20 of 60 − 20; 100 − 60 of 260 − 60; 4000 − 260 of 10,260 − 260.
    const sure = line(0).bands.map((band) => (band.sure - band.from) * 5);
    for (const [at, share] of [0.5, 0.5, 0.2, 0.374, 1].entries()) expect(sure[at]).toBeCloseTo(share, 9);
  });

  it('sets the mark by the share of the stage that has passed, and in the middle once it is cured', () => {
    for (const [minutes, place] of [
      [0, 0],
      [10, 0.1],
      [20, 0.2],
      [30, 0.25],
      [60, 0.4],
      [160, 0.5],
      [260, 0.6],
      [5260, 0.7],
      [10_260, 0.9],
      [50_000, 0.9],
    ] as const)
      expect(line(minutes).now, `${minutes}`).toBeCloseTo(place, 6);
  });

  it('passes a stage that takes no time at once', () => {
    const none = { minutes: { ...label.minutes, open: { from: 20, to: 20 }, touch: { from: 20, to: 20 } } };
    const at = (minutes: number) => {
      const now = LAID + minutes * MINUTE;
      const reading = clockNow(poly, coat({ label: none }), now);
      if (reading.kind !== 'running') throw new Error('it runs');
      return lifeLine(reading, LAID, now);
    };
    // Wet up to 20 minutes, then at once dry to the touch: the second fifth is sure to its end.
    expect(
      at(10)
        .bands.slice(0, 2)
        .map(({ sure }) => sure),
    ).toEqual([expect.closeTo(0.2, 9), expect.closeTo(0.4, 9)]);
    expect([10, 19, 20].map((minutes) => at(minutes).now)).toEqual([
      expect.closeTo(0.1, 9),
      expect.closeTo(0.19, 9),
      expect.closeTo(0.4, 9),
    ]);
  });

  it('begins where the coat was laid, also on a clock that is a little behind', () => {
    expect(lifeLine(running(coat({ label })), LAID, LAID - MINUTE).now).toBe(0);
  });
});

it('a time of the day is said as it is elsewhere', () => {
  expect(sayInstant(LAID + HOUR, LAID, STYLE)).toBe('10:00 AM');
});
