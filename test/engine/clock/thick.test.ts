/**
 * No further coat over a film that is thick enough: on the card, the clock, in its form and in a walk. The most: 125 µm
 * (5 mil) by a finishing company's note on dry film thickness (film-s103); of lacquer 100 µm, common practice, no source.
 * Worked by hand: a brushed coat of oil-based polyurethane is √(80 × 115) = 96 µm wet, of which 40 % stay: 38 µm dry at
 * the least. Three such coats are 115 µm, four 153 µm. A sprayed lacquer at 400 mL to the square meter leaves 16 %: 64 µm,
 * two of them 128 µm. The cards are invented.
 */
import { describe, expect, it } from 'vitest';
import { MOST_FILM } from '#engine/clock/thick.ts';
import { clockNow, type LaidCoat, remindersOf, sayNow } from '#engine/clock.ts';
import { LEANEST } from '#engine/fitness/film-risk.ts';
import { judgeLaying, layingOfCase, overCoat } from '#engine/fitness.ts';
import { emptyCase, withFact } from '#engine/index.ts';
import { filmToSand } from '#engine/jobs/advice.ts';
import { adviceOf, filmBelow, laidCoatOf, layersOf, layingOfCard } from '#engine/jobs.ts';
import { WITH_FILM } from '#engine/model/family.ts';
import { card, coat, known as content, DAY, HOUR, plan, products, START } from '../jobs/cards.ts';
import { known, productOf } from '../schedule/sheet.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const POLY = 'oil-based-polyurethane';

/** So many coats, two days apart. */
const laid = (count: number, more: Partial<Parameters<typeof coat>[0]> = {}) =>
  card({
    base: 'stain',
    tone: 'wood',
    age: 'none',
    product: POLY,
    coats: Array.from({ length: count }, (_, index) =>
      coat({ id: `c${index}`, product: POLY, laidAt: START + index * 2 * DAY, ...more }),
    ),
  });

const clockOf = (on: ReturnType<typeof laid>, after: number) => {
  const top = on.coats.at(-1);
  const product = top && products[top.product];
  if (!top || !product) throw new Error('no coat');
  const last: LaidCoat = laidCoatOf(on, top);
  const reading = clockNow(product, last, top.laidAt + after, products);
  if (reading.kind !== 'running') throw new Error('it runs');
  return {
    said: sayNow(WORDS, reading, top.laidAt + after, STYLE),
    rings: remindersOf(WORDS, reading, last, top.laidAt),
    reading,
  };
};

/** What the form says of the next coat, two days after the last, on the card and on the clock. */
const formOf = (on: ReturnType<typeof laid>) => {
  const top = on.coats.at(-1);
  if (!top) throw new Error('no coat');
  const at = top.laidAt + 2 * DAY;
  const next = coat({ id: 'next', product: top.product, laidAt: at, applicator: top.applicator });
  const bare = layingOfCard(on, next);
  const judge = (laying: typeof bare) =>
    judgeLaying(plan, known, overCoat(laying, laidCoatOf(on, top), at, products), productOf(top.product), {
      at,
    });
  return [judge({ ...bare, film: filmBelow(on, next, products) }), judge(bare)];
};

it('goes by the most of the table', () => {
  expect(plan.sanding['too-thick'].map(({ families, micrometers }) => [families, micrometers])).toEqual([
    [['lacquer'], MOST_FILM.lacquer],
    [undefined, MOST_FILM.any],
  ]);
});

describe.each([
  ['three coats of oil-based polyurethane, 115 µm', laid(3), undefined],
  ['four, 153 µm', laid(4), 125],
  ['twelve, 460 µm', laid(12), 125],
  [
    'two of sprayed lacquer, 128 µm',
    laid(2, {
      product: 'sprayed-lacquer',
      applicator: 'spray-gun',
      amount: { milliliters: 400, squareMeters: 1 },
    }),
    100,
  ],
])('%s', (_, on, most) => {
  it('reads alike on card and clock', () => {
    expect(adviceOf(plan.sanding, WORDS, layersOf(on, products), on.age).pastMost).toBe(most);
    expect(clockOf(on, DAY).reading.pastMost).toBe(most);
  });

  it('is offered another coat only while it is not thick enough', () => {
    const { said, rings } = clockOf(on, 3 * DAY);
    const keys = rings.map(({ key }) => key);
    if (most === undefined) {
      expect(said.verdict).toMatch(/before the next coat/);
      expect(keys).toContain('recoat');
    } else {
      expect(said).toMatchObject({ doing: 'accept', verdict: WORDS.thick.enough });
      expect(said.why).toContain(`${most} µm`);
      expect(keys).toEqual(['touch', 'light-use', 'cure']);
    }
  });

  it('is judged a no in the form from then on, with no time from which it were a yes', () => {
    for (const { verdict, noes } of formOf(on)) {
      expect(noes.map(({ code }) => code)).toEqual(most === undefined ? [] : ['film']);
      if (most === undefined) expect(verdict).not.toBe('no');
      else {
        expect(noes[0]?.says).toMatch(/Lay no further coat/);
        expect(noes[0]?.earliest).toBeUndefined();
      }
    }
  });
});

it('has hands off a thick film while it is soft, and calls nobody to sand it', () => {
  expect(clockOf(laid(12), HOUR).said.doing).toBe('leave');
  const { said } = clockOf(laid(12), 14 * HOUR);
  expect(said.doing).toBe('wait');
  expect(said.why).toContain(WORDS.thick.enough);
  expect(said.why).not.toMatch(/before you sand or coat/);
});

it('counts no oil or wax, of which no film stays', () => {
  const oiled = laid(30, { product: 'drying-oil', applicator: 'cloth' });
  expect(adviceOf(plan.sanding, WORDS, layersOf(oiled, products), oiled.age).pastMost).toBeUndefined();
  expect(clockOf(oiled, DAY).reading.pastMost).toBeUndefined();
});

describe('a walk', () => {
  const told = (micrometers: number) =>
    Object.entries({
      family: 'oil-based',
      'film-micrometers': micrometers,
      'coat-number': 12,
      'air-celsius': 21,
      'relative-humidity': 0.5,
    }).reduce((on, [fact, value]) => withFact(on, fact as 'family', value as 'oil-based'), emptyCase());
  const refused = (micrometers: number, onOwnCoat: boolean) => {
    const laying = layingOfCase(told(micrometers), { onOwnCoat });
    if (!laying) throw new Error('the air is told');
    return judgeLaying(plan, known, laying, productOf(POLY)).noes.map(({ code }) => code);
  };

  it('says the same of a film that is surely too thick, unless it is taken off first', () => {
    expect(filmToSand(plan.sanding, WORDS, told(540))?.says).toMatch(/Lay no further coat/);
    expect(refused(540, true)).toEqual(['film']);
    expect(refused(540, false)).toEqual([]);
    // Three coats of it, 129 µm in the middle, are what a plan lays.
    expect(filmToSand(plan.sanding, WORDS, told(129))?.says).not.toMatch(/Lay no further coat/);
    expect(refused(129, true)).toEqual([]);
  });

  it('takes off what the leanest can of any kind leaves less than the middle', () => {
    for (const {
      id,
      family,
      'volume-solids': [low, high],
    } of content.products)
      if (WITH_FILM.includes(family)) expect(low / ((low + high) / 2), id).toBeGreaterThanOrEqual(LEANEST);
  });
});
