/**
 * The rows of the tables, read plainly here again: what fits, how long a base waits, what makes it ready, what a rub risks.
 * The tables name their grounds (content/plan.yaml).
 */
import { describe, expect, it } from 'vitest';
import { riskOfFilm } from '#engine/fitness/film-risk.ts';
import { madeReadyBy, rubOf, washOf } from '#engine/fitness/judge.ts';
import { baseHoursOf, baseWait, fitnessOf } from '#engine/fitness/rows.ts';
import { judgeLaying, type Laying, underCan } from '#engine/fitness.ts';
import { FACTS } from '#engine/model/facts.ts';
import { FAMILIES } from '#engine/model/family.ts';
import { TRIALS, WEARS } from '#engine/model/plan.ts';
import { known, plan, productOf } from '../schedule/sheet.ts';
import { day, orNot, products } from './layings.ts';

/** Every piece that the rows can tell apart. */
const layings: readonly Laying[] = orNot(WEARS).flatMap((wear) =>
  orNot(FACTS.base.values).flatMap((base) =>
    orNot(FACTS['base-tone'].values).flatMap((tone) =>
      orNot(FACTS.sheen.values).map((sheen) => ({ wear, base, tone, sheen, day })),
    ),
  ),
);

describe('the rows of fitness', () => {
  it('speak where all that they name is told, and nowhere else; a no first', () => {
    const wrong: string[] = [];
    for (const [index, laying] of layings.entries()) {
      const trials = index % 2 ? [] : [TRIALS[(index / 2) % TRIALS.length] ?? 'water'];
      const family = index % 3 ? undefined : FAMILIES[(index / 3) % FAMILIES.length];
      const one: Laying = {
        ...laying,
        trials,
        ...(family && { ownBelow: { family, hours: 48, bears: undefined } }),
      };
      for (const product of products.filter((_, at) => (at + index) % 4 === 0)) {
        const told: Readonly<Record<string, string | undefined>> = {
          families: product.family,
          products: product.id,
          wear: one.wear,
          bases: one.base,
          below: one.ownBelow?.family,
          tones: one.tone,
          sheens: one.sheen,
        };
        const wanted = plan.fitness.filter(
          (row) =>
            Object.entries(told).every(([name, value]) => {
              const list = row[name as 'wear'] as readonly (string | undefined)[] | undefined;
              return list === undefined || list.includes(value);
            }) &&
            (row.trials === undefined || row.trials.some((trial) => trials.includes(trial))),
        );
        const found = fitnessOf(plan, one, product);
        const noes = found.map(({ verdict }) => verdict).lastIndexOf('no');
        const cares = found.findIndex(({ verdict }) => verdict === 'care');
        const inOrder = cares < 0 || noes < cares;
        if (
          !inOrder ||
          new Set([...found, ...wanted]).size !== wanted.length ||
          found.length !== wanted.length
        )
          wrong.push(`${product.id} ${JSON.stringify(one)}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('speak of no trial where none is told', () => {
    for (const product of products)
      expect(fitnessOf(plan, { day }, product).filter(({ trials }) => trials)).toEqual([]);
  });
});

describe('the wait for a base', () => {
  it('is that of the first row that names base and finish', () => {
    for (const product of products)
      for (const base of FACTS.base.values) {
        const wanted = plan.waits.find(
          ({ bases, families }) => bases.includes(base) && (!families || families.includes(product.family)),
        );
        expect([base, product.id, baseWait(plan, { base, day }, product)]).toEqual([
          base,
          product.id,
          wanted,
        ]);
      }
    expect(products.map((product) => baseWait(plan, { day }, product))).toEqual(
      products.map(() => undefined),
    );
  });

  it('is twice as long for each 10 °C below 20 under an oil, and never shorter; half of the air is the night’s', () => {
    const hours = (base: Laying['base'], celsius: number, night?: number) =>
      baseHoursOf(
        {
          base,
          day: { celsius, relativeHumidity: 0.5 },
          ...(night !== undefined && { night: { celsius: night } }),
        },
        { hours: 24 } as never,
      );
    for (const base of ['stain', 'oil-paint'] as const) {
      expect([20, 10, 0, 30].map((celsius) => hours(base, celsius))).toEqual([24, 48, 96, 24]);
      expect(hours(base, 20, 0)).toBeCloseTo(48, 9);
      expect(hours(base, 15, 5)).toBeCloseTo(48, 9);
    }
    for (const base of ['latex-paint', 'chalk-paint', undefined] as const) expect(hours(base, 0)).toBe(24);
  });
});

describe('the steps that make a base ready', () => {
  it('are those of the tables: what washes it, what rubs it, and what rubs the film between', () => {
    for (const product of products)
      for (const base of orNot(FACTS.base.values))
        for (const onOwnCoat of [false, true]) {
          const wash = onOwnCoat ? [] : plan.wash.filter(({ bases }) => base && bases.includes(base));
          const rubs = [
            ...(onOwnCoat
              ? []
              : plan.prepare.filter(({ bases }) => base && bases.includes(base)).slice(0, 1)),
            ...(onOwnCoat || base
              ? plan.between.filter(({ families }) => families.includes(product.family)).slice(0, 1)
              : []),
          ];
          expect(madeReadyBy(plan, { base, onOwnCoat, day }, product)).toEqual([
            ...wash.map(({ say, does }) => ({
              kind: 'wipe',
              with: 'damp-cloth',
              say,
              ...(does && { does }),
            })),
            ...rubs.flatMap(({ say, does, grit }) =>
              grit ? [{ kind: 'sand', grit, say, ...(does && { does }) }] : [],
            ),
          ]);
        }
    expect(washOf({ say: 'Wash it.', does: undefined })).toEqual({
      kind: 'wipe',
      with: 'damp-cloth',
      say: 'Wash it.',
    });
    expect(rubOf({ say: 'Rub it.', does: ['mist'] }, 320)).toEqual({
      kind: 'sand',
      grit: 320,
      say: 'Rub it.',
      does: ['mist'],
    });
  });

  it('warn of the vapor that an old finish is washed with', () => {
    const { cautions } = judgeLaying(
      plan,
      known,
      { base: 'old-finish', age: 'none', day },
      productOf('water-based-polyurethane'),
    );
    expect(cautions.flatMap(({ hazards }) => hazards)).toContain('vapor');
  });
});

describe('the can', () => {
  const water = productOf('water-based-polyurethane');
  it('has its own limits go before those of its kind, each for itself', () => {
    expect(underCan(water, { label: undefined })).toBe(water);
    expect(underCan(water, { label: { minutes: {} } })).toBe(water);
    const warm = underCan(water, { label: { minutes: {}, limits: { celsius: { from: 8, to: 30 } } } });
    expect(warm.limits).toEqual({ celsius: [8, 30], humidity: water.limits.humidity });
    // A can that names its least temperature knows its film.
    expect(warm).not.toHaveProperty('film-formation-celsius');
    const damp = underCan(water, {
      label: { minutes: {}, limits: { relativeHumidity: { from: 0.1, to: 0.7 } } },
    });
    expect(damp.limits).toEqual({ celsius: water.limits.celsius, humidity: [0.1, 0.7] });
    expect(damp['film-formation-celsius']).toEqual(water['film-formation-celsius']);
    expect(water['film-formation-celsius']).toBeDefined();
  });
});

describe('the risk of a rub', () => {
  it('is high below two coats or 25 µm, some below 50 µm, else low', () => {
    const risk = (coats: number, film: number) => riskOfFilm(plan.sanding, coats, film);
    expect([risk(1, 500), risk(2, 24.9), risk(2, 25), risk(2, 49.9), risk(2, 50), risk(9, 24)]).toEqual([
      'high',
      'high',
      'some',
      'some',
      'low',
      'high',
    ]);
  });
});
