/**
 * Coats, film, wet edge, nights and dates beside a plain reckoning from the tables and the product files, for every product
 * with every tool; and worked by hand where a few figures tell more. A rule of thumb where no source is named.
 */
import { describe, expect, it } from 'vitest';
import { historyFrom, nightOf, nightsIn } from '#engine/clock/nights.ts';
import { WEARS } from '#engine/model/plan.ts';
import {
  areaOf,
  type Build,
  buildOf,
  type Calendar,
  datesOf,
  type Job,
  largestFace,
  nightOf as nightOfDoor,
  wetEdgeOf,
} from '#engine/schedule.ts';
import { DAY, HOUR, job, known, MINUTE, outcome, plan, productOf } from './sheet.ts';

type Label = NonNullable<Job['label']>;
const LABELS: readonly (Label | undefined)[] = [
  undefined,
  { minutes: {} },
  { minutes: {}, volumeSolids: 0.5 },
  { minutes: {}, squareMetersPerLiter: 8 },
  { minutes: {}, squareMetersPerLiter: 20, volumeSolids: 0.2 },
  { minutes: {}, coats: 1 },
  { minutes: {}, coats: 9 },
  { minutes: {}, coats: 6, squareMetersPerLiter: 6, volumeSolids: 0.6 },
];
const of = (id: string, more: Partial<Job>): { one: Job; build: Build | undefined } => {
  const one = job({ product: id, ...more });
  return { one, build: buildOf(plan, one, productOf(id)) };
};
const builds = known.products.flatMap(({ id }) =>
  (Object.keys(productOf(id)['wet-film-micrometers']) as Job['applicator'][]).flatMap((applicator) =>
    WEARS.flatMap((wear) =>
      LABELS.map((label) => {
        const { one, build } = of(id, { applicator, wear, label });
        if (!build) throw new Error(`${id} by ${applicator} has no build`);
        const name = `${id} by ${applicator}, ${wear}, ${JSON.stringify(label ?? {})}`;
        return { name, one, build, product: productOf(id) };
      }),
    ),
  ),
);
const rowOf = (id: string) => {
  const { family } = productOf(id);
  const fits = ({
    families,
    products,
  }: {
    families: readonly string[];
    products?: readonly string[] | undefined;
  }) => families.includes(family) && (products?.includes(id) ?? true);
  return { coats: plan.coats.find(fits), film: plan.film.find(fits) };
};
/** The names of those that are not so. */
const unless = (holds: (one: (typeof builds)[number]) => boolean) =>
  builds.filter((one) => !holds(one)).map(({ name }) => name);
const near = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));

describe('every product with every tool', () => {
  it('lays the film of its tool, or of the can, never less than the tool can', () => {
    expect(builds.length).toBeGreaterThan(500);
    expect(
      unless(({ one, build, product }) => {
        const coverage = one.label?.squareMetersPerLiter;
        if (coverage) return near(build.wet, 1000 / coverage) && !build.thinned;
        const [least, most] = product['wet-film-micrometers'][one.applicator] ?? [0, 0];
        const usual = Math.sqrt(least * most);
        return (
          build.wet >= least - 1e-9 && build.wet <= usual + 1e-9 && build.thinned === build.wet < usual - 1e-6
        );
      }),
    ).toEqual([]);
  });

  it('dries to its solids, in so many coats', () => {
    expect(
      unless(({ one, build, product }) => {
        const told = one.label?.volumeSolids;
        const [low, high] = told ? [told, told] : product['volume-solids'];
        return (
          near(build.dry.from, build.wet * low) &&
          near(build.dry.to, build.wet * high) &&
          near(build.total.from, build.coats * build.dry.from) &&
          near(build.total.to, build.coats * build.dry.to)
        );
      }),
    ).toEqual([]);
  });

  it('has the coats of its wear, more up to the target, fewer under the most; those of the can as they stand', () => {
    expect(
      unless(({ one, build, product }) => {
        if (one.label?.coats) return build.coats === one.label.coats;
        const { coats: row, film } = rowOf(product.id);
        if (!row) return false;
        const told = one.label?.volumeSolids;
        const [low, high] = told ? [told, told] : product['volume-solids'];
        const wetOne = one.label?.squareMetersPerLiter
          ? 1000 / one.label.squareMetersPerLiter
          : (product['wet-film-micrometers'][one.applicator] ?? [0])[0];
        const enough = film ? Math.max(1, Math.floor(film.most / (wetOne * high) + 1e-9)) : row.most;
        if (build.coats > row.most || build.coats > enough) return false;
        const least = Math.min(row.wear[one.wear], row.most, enough);
        if (build.coats < least) return false;
        // More than wear asks for only while one fewer would not reach the target.
        const usual = one.label?.squareMetersPerLiter
          ? wetOne
          : Math.sqrt(wetOne * (product['wet-film-micrometers'][one.applicator] ?? [0, 0])[1]);
        const target = film?.target[one.wear] ?? 0;
        return build.coats === least || (build.coats - 1) * usual * ((low + high) / 2) < target;
      }),
    ).toEqual([]);
  });

  it('says that the film is too much, or too little, exactly where it is', () => {
    expect(
      unless(({ one, build, product }) => {
        const { film } = rowOf(product.id);
        const target = film?.target[one.wear];
        const middle = (build.total.from + build.total.to) / 2;
        return (
          build.most === film?.most &&
          build.target === target &&
          build.over === (film !== undefined && build.total.to > film.most * (1 + 1e-9)) &&
          build.short === (target !== undefined && middle < target * (1 - 1e-9))
        );
      }),
    ).toEqual([]);
    for (const key of ['over', 'short', 'thinned'] as const)
      expect(new Set(builds.map(({ build }) => build[key])), key).toEqual(new Set([true, false]));
  });

  it('takes out of the can what lies wet, and of what sinks in what the can says that it goes', () => {
    expect(
      unless(({ one, build, product }) => {
        if (one.label?.squareMetersPerLiter || rowOf(product.id).film) return build.taken === build.wet;
        const [least, most] = product['square-meters-per-liter'];
        return near(build.taken, Math.max(build.wet, 1000 / Math.sqrt(least * most)));
      }),
    ).toEqual([]);
  });

  it('is nothing with a tool that does not suit it, unless the can says how far it goes', () => {
    for (const { id } of known.products) {
      const films = productOf(id)['wet-film-micrometers'];
      for (const { applicator } of plan.tools) {
        expect(of(id, { applicator }).build === undefined, `${id} ${applicator}`).toBe(!films[applicator]);
        expect(of(id, { applicator, label: { minutes: {}, squareMetersPerLiter: 10 } }).build?.wet).toBe(100);
      }
    }
  });
});

describe('faces', () => {
  const part = (count: number, long: number, wide: number) => ({ count, long, wide });
  const parts = {
    top: part(1, 1200, 480),
    side: part(2, 850, 460),
    front: part(6, 560, 230),
    leg: part(4, 120, 50),
  };
  it('add up, a leg by four of them, and a share for edges', () => {
    // 0.576 + 2 × 0.391 + 6 × 0.1288 + 4 × 4 × 0.006 m².
    expect(areaOf(parts, { share: 0 } as never)).toBeCloseTo(2.2268, 9);
    expect(areaOf(parts, { share: 0.25 } as never)).toBeCloseTo(2.7835, 9);
  });
  it('have a largest one, as long as its longer side; what is not there is none', () => {
    expect(largestFace(parts)).toEqual({ part: 'top', squareMeters: 0.576, longMillimeters: 1200 });
    expect(largestFace({ ...parts, top: part(0, 1200, 480) })).toEqual({
      part: 'side',
      squareMeters: 0.391,
      longMillimeters: 850,
    });
    expect(largestFace({ ...parts, side: part(1, 460, 1900) })).toMatchObject({
      part: 'side',
      longMillimeters: 1900,
    });
    const none = part(0, 1, 1);
    expect(largestFace({ top: none, side: none, front: none, leg: none })).toBeUndefined();
  });
});

describe('a wet edge', () => {
  // By brush 0.13 m² a minute, 60 mm a stroke, 6 mL a load. A top of 1.2 × 0.48 m is 0.576 m²: 4.43 minutes; one stroke
  // of its length 0.072 m²: 0.554 minutes.
  const build = { wet: 80 } as Build;
  const edge = (open: number, more: Partial<Job> = {}) => wetEdgeOf(plan, job(more), build, open);
  it('holds for all of the face, for one stroke, or for neither', () => {
    expect(edge(4.5)).toMatchObject({
      verdict: 'fits',
      part: 'top',
      faceSquareMeters: 0.576,
      openMinutes: 4.5,
    });
    expect(edge(4.4)?.verdict).toBe('split');
    expect(edge(0.56)?.verdict).toBe('split');
    expect(edge(0.55)?.verdict).toBe('slower');
    expect(edge(0.576 / 0.13)?.verdict).toBe('fits');
    expect(edge(0.072 / 0.13)?.verdict).toBe('split');
  });
  it('is reckoned from the pace of the tool and what a load covers', () => {
    const found = edge(3);
    expect(found?.faceMinutes).toBeCloseTo(4.4308, 4);
    expect(found?.strokeMinutes).toBeCloseTo(0.5538, 4);
    // 6 mL at 80 µm.
    expect(found?.loadSquareMeters).toBeCloseTo(0.075, 9);
    // A face that is narrower than the stroke is one stroke.
    const small = { count: 1, long: 100, wide: 30 };
    const none = { count: 0, long: 0, wide: 0 };
    const tiny = edge(3, { parts: { top: small, side: none, front: none, leg: none } });
    expect(tiny?.strokeMinutes).toBeCloseTo(0.003 / 0.13, 9);
    expect(edge(3, { parts: { top: none, side: none, front: none, leg: none } })).toBeUndefined();
  });
});

describe('the nights', () => {
  const calendar: Calendar = { at: (day, minute) => day * DAY + minute * MINUTE, weekday: 1 };
  const hours = { from: 540, to: 1080, days: [] };
  const air = { day: { celsius: 21, relativeHumidity: 0.5 }, night: { celsius: 12 }, hours };

  it('are as damp as the water of the day makes them, up to the most, or as she measured', () => {
    // Saturation 2.488 kPa at 21 °C and 1.403 at 12 (ASHRAE Handbook, Fundamentals, 2017, ch. 1, table 3).
    expect(nightOf(plan, air).relativeHumidity).toBeCloseTo((0.5 * 2.488) / 1.403, 2);
    expect(nightOf(plan, { ...air, night: { celsius: 5 } }).relativeHumidity).toBe(
      plan.night['most-humidity'],
    );
    expect(nightOf(plan, { ...air, night: { celsius: 12, relativeHumidity: 0.3 } })).toEqual({
      celsius: 12,
      relativeHumidity: 0.3,
    });
    expect(nightOfDoor(plan, { ...air, night: { celsius: 21 } }).relativeHumidity).toBeCloseTo(0.5, 9);
  });

  it('last from nine to seven; her hours count as day', () => {
    const nights = (from: number, to: number, her = hours) =>
      nightsIn(plan, { ...air, hours: her }, calendar, { from: from * HOUR, to: to * HOUR }).map(
        (night) => `${night.from / HOUR}-${night.to / HOUR}`,
      );
    expect(nights(10, 20)).toEqual([]);
    expect(nights(10, 21)).toEqual([]);
    expect(nights(10, 21.5)).toEqual(['21-31']);
    expect(nights(6, 22)).toEqual(['-3-7', '21-31']);
    expect(nights(7, 21)).toEqual([]);
    expect(nights(22, 80)).toEqual(['21-31', '45-55', '69-79']);
    expect(nights(10, 24, { from: 300, to: 1380, days: [] })).toEqual(['23-29']);
    expect(nights(3, 4)).toEqual(['-3-7']);
  });

  it('and days come by turns after a coat, then the day holds', () => {
    const spells = (at: number, days: number) =>
      historyFrom(plan, air, calendar, at * HOUR, days).map(({ celsius, minutes }) => [
        celsius,
        minutes / 60,
      ]);
    expect(spells(15, 1)).toEqual([
      [21, 6],
      [12, 10],
      [21, Number.POSITIVE_INFINITY],
    ]);
    // Begun in the night, the rest of it counts.
    expect(spells(23, 1)).toEqual([
      [12, 8],
      [21, 14],
      [12, 10],
      [21, Number.POSITIVE_INFINITY],
    ]);
    expect(spells(15, 0)).toEqual([[21, Number.POSITIVE_INFINITY]]);
    for (const { celsius, relativeHumidity } of historyFrom(plan, air, calendar, 15 * HOUR, 3))
      expect(relativeHumidity).toBeCloseTo(celsius === 21 ? 0.5 : nightOf(plan, air).relativeHumidity, 9);
  });
});

describe('dates', () => {
  const tables = {
    careful: { days: 30 },
    handle: { hours: 24 },
    airing: [{ families: ['oil'], days: 14 }],
  } as never;
  const end = { to: 0, recoat: { from: HOUR, to: 4 * HOUR } };
  const days = (from: number, to: number) => ({ from: from * DAY, to: to * DAY });
  const dates = (
    use: Partial<Parameters<typeof datesOf>[1]>,
    family: 'oil' | 'wax' = 'wax',
    light = days(3, 5),
    cure = days(10, 20),
  ) => {
    const found = datesOf(
      tables,
      { kind: 'furniture', trials: [], label: undefined, ...use },
      family,
      end,
      light,
      cure,
    );
    return [
      found.handle,
      found.lightUse.from,
      found.lightUse.to,
      found.fullUse.from,
      found.fullUse.to,
      found.handOver,
    ].map((at) => at / DAY);
  };
  it('are the later of what the film and the table say', () => {
    expect(dates({})).toEqual([1, 3, 5, 10, 20, 5]);
    expect(dates({ trials: ['water'] })).toEqual([1, 3, 5, 30, 30, 5]);
    expect(dates({ trials: ['water'], wear: 'high' })).toEqual([1, 3, 5, 30, 30, 30]);
    expect(dates({ trials: ['heat'], wear: 'normal' })).toEqual([1, 3, 5, 30, 30, 5]);
    for (const trial of ['child', 'food'] as const)
      expect(dates({ trials: [trial] })).toEqual([1, 3, 5, 30, 30, 30]);
    for (const kind of ['childs-item', 'food-surface'] as const)
      expect(dates({ kind })).toEqual([1, 3, 5, 30, 30, 30]);
    expect(dates({ kind: 'tabletop' })).toEqual([1, 3, 5, 10, 20, 5]);
    // A longer cure than the careful one stands.
    expect(dates({ trials: ['child'] }, 'wax', days(3, 5), days(10, 60))).toEqual([1, 3, 5, 30, 60, 60]);
  });
  it('take a can that prints its cure at its word', () => {
    const label = { minutes: { cure: { from: 14_400, to: 14_400 } } };
    expect(dates({ trials: ['child'], label })).toEqual([1, 3, 5, 10, 20, 20]);
    expect(dates({ trials: ['child'], label: { minutes: { recoat: { from: 1, to: 1 } } } })).toEqual([
      1, 3, 5, 30, 30, 30,
    ]);
  });
  it('never come before it may be lifted, and an oil is aired', () => {
    expect(dates({}, 'wax', days(0.2, 0.5), days(0.6, 0.8))).toEqual([1, 1, 1, 1, 1, 1]);
    expect(dates({}, 'oil')).toEqual([1, 3, 5, 10, 20, 14]);
    expect(dates({ trials: ['child'] }, 'oil')).toEqual([1, 3, 5, 30, 30, 30]);
    const slow = { to: 0, recoat: { from: DAY, to: 2 * DAY } };
    expect(
      datesOf(
        tables,
        { kind: 'furniture', trials: [], label: undefined },
        'wax',
        slow,
        days(0, 0),
        days(0, 0),
      ).handle,
    ).toBe(2 * DAY);
  });
});

describe('what a refused plan says', () => {
  const why = (more: Partial<Job>) => {
    const got = outcome(job(more));
    return got.kind === 'no' ? got.why : [];
  };
  it('names its reason, and what to do in its place', () => {
    const days = Array<boolean>(7).fill(true);
    expect(why({ hours: { from: 540, to: 560, days } })).toEqual([
      {
        code: 'hours',
        says: expect.stringMatching(
          /^One session takes about \d+ minutes without a stop, and your hours leave 20\.$/,
        ),
        instead: 'Give longer hours, or plan the piece in parts: top one day, sides the next.',
      },
    ]);
    const [night, ...others] = why({
      base: 'bare-wood',
      baseHours: undefined,
      product: 'oil-based-polyurethane',
      day: { celsius: 15.6, relativeHumidity: 0.5 },
      night: { celsius: 4.4 },
    });
    expect(others).toEqual([]);
    expect(night?.says).toMatch(
      /^After the coat is laid the night spoils it before it is dry enough\. The [a-z ]+ is 4 °C/,
    );
    expect(night?.instead).toMatch(/^Start earlier in the day,.+never with a flame\.$/);
    for (const { says, instead } of [
      ...why({ product: 'drying-oil', applicator: 'cloth' }),
      ...why({ base: 'stain', baseHours: 1, tone: 'wood' }),
      ...why({ product: 'shellac', applicator: 'roller' }),
    ]) {
      expect(says).toMatch(/^[A-Z].+[.?!]$/);
      expect(instead).toMatch(/^[A-Z].+\.$/);
    }
  });
});
