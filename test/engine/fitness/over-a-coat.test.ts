/** What a coat below tells of the one that is about to be laid over it, from a clock, a card and a walk. Invented coats. */
import { describe, expect, it } from 'vitest';
import { airAfter } from '#engine/clock/nights.ts';
import { clockNow, type LaidCoat } from '#engine/clock.ts';
import { airOf } from '#engine/fitness/entries.ts';
import { type Laying, layingOfCase, overCoat } from '#engine/fitness.ts';
import { emptyCase, withFact } from '#engine/index.ts';
import { careOf, datesOfCard, type JobCard } from '#engine/jobs.ts';
import type { Calendar } from '#engine/schedule.ts';
import { card, care, coat, DAY, HOUR, MINUTE, plan, products, START } from '../jobs/cards.ts';

const day = { celsius: 21, relativeHumidity: 0.5 };
const laying: Laying = { base: 'latex-paint', day };
const laid = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Chair',
  product: 'water-based-polyurethane',
  laidAt: START,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  amount: { milliliters: 100, squareMeters: 1 },
  ...more,
});
const over = (below: LaidCoat | undefined, of: Laying = laying, at = START + 5 * HOUR) =>
  overCoat(of, below, at, products);

describe('a coat over one of her own', () => {
  it('is told nothing where there is none below', () => {
    expect(over(undefined)).toEqual(laying);
  });

  it('is told its finish, its age, its film, and when it is surely ready', () => {
    const product = products['water-based-polyurethane'];
    if (!product) throw new Error('no such product');
    const reading = clockNow(product, laid(), START);
    if (reading.kind !== 'running') throw new Error('it runs');
    expect(over(laid())).toEqual({
      ...laying,
      // 28 parts in 100 of 100 µm.
      film: { micrometers: expect.closeTo(28, 9), families: ['water-based'] },
      ownBelow: { family: 'water-based', hours: 5, bears: reading.moments },
    });
    expect(over(laid(), laying, START).ownBelow?.hours).toBe(0);
    // Where the air spoils it no time is told.
    expect(over(laid({ celsius: 2 })).ownBelow).toEqual({
      family: 'water-based',
      hours: 5,
      bears: undefined,
    });
  });

  it('keeps what its card knows of the film and of old paint', () => {
    const film = { micrometers: 77, families: ['oil-based' as const] };
    expect(over(laid(), { ...laying, film }).film).toBe(film);
    expect(over(laid({ age: 'unknown' })).age).toBe('unknown');
    expect(over(laid({ age: 'unknown' }), { ...laying, age: 'since-1993' }).age).toBe('since-1993');
    expect(over(laid())).not.toHaveProperty('age');
  });

  it('hears of a flaw that is not settled', () => {
    expect(over(laid({ flaw: 'open' })).openFlaw).toBe('open');
    expect(over(laid({ flaw: 'repaired' })).openFlaw).toBe('repaired');
    expect(over(laid())).not.toHaveProperty('openFlaw');
  });

  it('of a finish in the wood lies on no film, and of a product that is not known on what else is told', () => {
    expect(over(laid({ product: 'drying-oil' }))).not.toHaveProperty('film');
    expect(over(laid({ product: 'drying-oil' })).ownBelow?.family).toBe('oil');
    const strange = over(laid({ product: 'gone', flaw: 'open', age: 'none', below: [laid({ id: 'b' })] }));
    expect(strange).toEqual({
      ...laying,
      age: 'none',
      openFlaw: 'open',
      film: { micrometers: expect.closeTo(28, 9), families: ['water-based'] },
    });
  });
});

describe('the air of a coat', () => {
  it('is told with its surface where that was measured', () => {
    expect(airOf({ celsius: 20, relativeHumidity: 0.4 })).toEqual({ celsius: 20, relativeHumidity: 0.4 });
    expect(airOf({ celsius: 20, relativeHumidity: 0.4, surfaceCelsius: 0 })).toEqual({
      celsius: 20,
      relativeHumidity: 0.4,
      surfaceCelsius: 0,
    });
  });
});

describe('a coat that a walk calls for', () => {
  const on = [
    ['air-celsius', 20],
    ['relative-humidity', 0.4],
    ['film-micrometers', 90],
    ['family', 'oil-based'],
  ].reduce((of, [fact, value]) => withFact(of, fact as 'family', value as 'oil-based'), emptyCase());
  it('lies on two thirds of the film that is told, where it comes on her own', () => {
    expect(layingOfCase(on, { onOwnCoat: true })?.film).toEqual({ micrometers: 60, families: ['oil-based'] });
    expect(layingOfCase(on)).not.toHaveProperty('film');
    const { 'film-micrometers': _film, ...untold } = on;
    expect(layingOfCase(untold, { onOwnCoat: true })).not.toHaveProperty('film');
    expect(
      layingOfCase({ ...on, 'film-micrometers': { value: 'thick', how: 'told' } }, { onOwnCoat: true }),
    ).not.toHaveProperty('film');
  });
});

describe('the air that a coat of a card dries in', () => {
  const calendar = (at: number): Calendar => ({
    at: (days, minute) => (Math.floor(at / DAY) + days) * DAY + minute * MINUTE,
    weekday: 1,
  });
  const spells = (night: NonNullable<JobCard['night']>, more: Partial<LaidCoat> = {}) =>
    airAfter(plan, laid(more), night, calendar).length;
  it('is one all along where the nights are like the day', () => {
    expect(spells({ celsius: 23 })).toBe(1);
    expect(spells({ celsius: 23, relativeHumidity: 0.5 })).toBe(1);
    // Ninety days and nights by turns, else.
    expect(spells({ celsius: 22 })).toBeGreaterThan(178);
    expect(spells({ celsius: 23, relativeHumidity: 0.6 })).toBeGreaterThan(178);
  });
  it('is by night as the tables say, from nine to seven', () => {
    const midnight = Math.floor(START / DAY) * DAY;
    const air = airAfter(
      plan,
      laid({ laidAt: midnight + 12 * HOUR }),
      { celsius: 15, relativeHumidity: 0.7 },
      calendar,
    );
    expect(
      air.slice(0, 3).map(({ celsius, relativeHumidity, minutes }) => [celsius, relativeHumidity, minutes]),
    ).toEqual([
      [23, 0.5, 540],
      [15, 0.7, 600],
      [23, 0.5, 840],
    ]);
    expect(air.at(-1)).toMatchObject({ celsius: 23, minutes: Number.POSITIVE_INFINITY });
  });
});

describe('what the buyer is told', () => {
  const calendar = (): Calendar => ({
    at: (days, minute) => START + days * DAY + minute * MINUTE,
    weekday: 1,
  });
  const told = (more: Partial<JobCard>) => {
    const one = card(more);
    return careOf(one, products, care, datesOfCard(one, products, plan, calendar));
  };
  it('is each sentence of the table with its ground, and a source where that is published', () => {
    const rows = [
      ...care['made-of'],
      ...care['not-yet'],
      ...care.cleaning,
      ...care.upkeep,
      ...care.cautions,
      ...care.promise,
    ];
    for (const kind of ['furniture', 'tabletop', 'food-surface', 'childs-item'] as const)
      for (const product of ['water-based-polyurethane', 'drying-oil', 'paste-wax', 'shellac']) {
        const found = told({ kind, coats: [coat({ product })] });
        if (found.kind !== 'care') throw new Error('a care card');
        const lines = [
          ...found.madeOf,
          ...found.notYet,
          ...found.cleaning,
          ...found.upkeep,
          ...found.cautions,
          ...found.promise,
        ];
        expect(lines.length).toBeGreaterThan(5);
        for (const { say, grade, source, ...more } of lines) {
          const row = rows.find((one) => one.say === say);
          expect([grade, source]).toEqual([row?.grade, row?.source]);
          expect(Object.keys(more).filter((key) => key !== 'until' && key !== 'date')).toEqual([]);
          expect(grade === 'published').toBe(source !== undefined);
        }
        expect(found.name).toBe('Navy dresser');
        expect(found.noDates).toBeUndefined();
      }
  });
  it('of a crib is why there is no such card', () => {
    const no = told({ kind: 'crib' });
    expect(no.kind).toBe('no');
    if (no.kind === 'no') for (const { say } of no.why) expect(say).toMatch(/^[A-Z].+\.$/);
  });
  it('without a date is told why in a whole sentence', () => {
    const why = (more: Partial<JobCard>) => {
      const found = told(more);
      return found.kind === 'care' ? found.noDates : '';
    };
    expect(why({ coats: [] })).toBe(
      'No coat is laid yet, so there is no date. Note the coats on the card first.',
    );
    expect(why({ coats: [coat({ product: 'gone-from-the-shelf' })] })).toBe(
      'This product is not known here, so there is no date. Go by the cure time on its can.',
    );
    // Laid at eleven at night in a heated room: it dries, but by day it is too cold for ever to be sure.
    const night = { celsius: 20, relativeHumidity: 0.5 };
    const late = card({
      night,
      coats: [coat({ celsius: 3, laidAt: Math.floor(START / DAY) * DAY + 23 * HOUR })],
    });
    const dates = datesOfCard(late, products, plan, (at) => ({
      at: (days, minute) => (Math.floor(at / DAY) + days) * DAY + minute * MINUTE,
      weekday: 1,
    }));
    expect(dates).toEqual({
      kind: 'none',
      why: 'no-time',
      problem: expect.stringMatching(/^The .+ is 3 °C .+\.$/),
    });
    expect(why({ coats: [coat({ celsius: 2 })] })).toMatch(/^No date can be promised\. The .+ is 2 °C .+\.$/);
  });
});
