/** The borders of what the clock doubts, keeps and counts, to the minute; each border is stated where it is set. Invented. */
import { describe, expect, it } from 'vitest';
import { relativeFilm, wetFilmOf } from '#engine/clock/coat.ts';
import { filmUpTo, sayThick, thickerThan } from '#engine/clock/thick.ts';
import { THIN } from '#engine/clock/thin.ts';
import {
  adopted,
  caseFromClock,
  clockDoubt,
  clockNow,
  factsOf,
  jumpedBack,
  type LaidCoat,
  laidBeforeClocks,
  onOnePiece,
  sayDoubt,
  withLaid,
} from '#engine/clock.ts';
import { filmTold, tooThick } from '#engine/fitness/film-risk.ts';
import { emptyCase, withFact } from '#engine/index.ts';
import type { FAMILIES } from '#engine/model/family.ts';
import { DAY_MS as DAY, HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '#engine/plain/time.ts';
import { PRODUCTS, product } from '../calc/products.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const LAID = Date.UTC(2026, 10, 24, 9);
const products = Object.fromEntries(PRODUCTS);
const coat = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Chest',
  product: 'water-based-polyurethane',
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const amount = (micrometers: number) => ({ milliliters: micrometers, squareMeters: 1 });

const doubted = (seenAt: number, now: number): string | undefined => {
  const doubt = clockDoubt(seenAt, now);
  return doubt && sayDoubt(WORDS, doubt, now, STYLE);
};

describe('the clock of a device', () => {
  it('may be two minutes behind what it was, and not more', () => {
    expect(jumpedBack(LAID, LAID)).toBe(0);
    expect(jumpedBack(LAID + 2 * MINUTE, LAID)).toBe(0);
    expect(jumpedBack(LAID + 2 * MINUTE + 1, LAID)).toBe(2);
    expect(jumpedBack(LAID + 150 * MINUTE, LAID)).toBe(150);
    expect(clockDoubt(LAID + 2 * MINUTE, LAID)).toBeUndefined();
    expect(clockDoubt(LAID + 3 * MINUTE, LAID)).toEqual({
      kind: 'back',
      minutes: 3,
      seenAt: LAID + 3 * MINUTE,
    });
    expect(doubted(LAID + 3 * MINUTE, LAID)).toBe(
      'The clock of this device has gone back: it was 9:03 AM already. Set it right, or say that it is right now; until then no time is told.',
    );
  });
  it('is doubted after sixty days in which nobody looked', () => {
    expect(clockDoubt(LAID - 60 * DAY + 1, LAID)).toBeUndefined();
    expect(clockDoubt(LAID - 60 * DAY, LAID)).toEqual({
      kind: 'ahead',
      minutes: 60 * 1440,
      seenAt: LAID - 60 * DAY,
    });
    expect(doubted(LAID - 60 * DAY, LAID)).toBe(
      'The clock of this device was last read on Fri, Sep 25, 9:00 AM, and now it says Tue, Nov 24, 2026, 9:00 AM. Is that right? If it is not, set it; until then no time is told.',
    );
    // Never read before: nothing to compare it with.
    expect(clockDoubt(0, LAID)).toBeUndefined();
  });
  it('that shows a time before 2020 was never set', () => {
    const first = Date.UTC(2020, 0, 1);
    expect(clockDoubt(0, first)).toBeUndefined();
    expect(clockDoubt(0, first - 1)).toEqual({
      kind: 'unset',
    });
    expect(doubted(0, first - 1)).toBe(
      'This device says it is Tue, Dec 31, 2019, 11:59 PM. Set its clock first; until then no time is told.',
    );
    expect([laidBeforeClocks(first), laidBeforeClocks(first - 1)]).toEqual([false, true]);
  });
  it('may be a minute behind the one that laid the coat', () => {
    const poly = product('water-based-polyurethane');
    expect(clockNow(poly, coat(), LAID - MINUTE).kind).toBe('running');
    expect(clockNow(poly, coat(), LAID - MINUTE - 1)).toEqual({ kind: 'future', laidAt: LAID });
    expect(clockNow(poly, coat({ laidAt: Number.NaN }), LAID).kind).toBe('future');
  });
});

describe('a film on the clock', () => {
  it('is wet by what was laid, or by the middle of what its tool leaves', () => {
    const poly = product('water-based-polyurethane');
    expect(wetFilmOf(poly, coat({ amount: { milliliters: 90, squareMeters: 1.5 } }))).toBe(60);
    const [least = 0, most = 0] = poly['wet-film-micrometers'].brush ?? [];
    expect(wetFilmOf(poly, coat({ applicator: 'brush' }))).toBeCloseTo(Math.sqrt(least * most), 9);
    expect(wetFilmOf(poly, coat())).toBeUndefined();
    expect(wetFilmOf(product('sprayed-lacquer'), coat({ applicator: 'cloth' }))).toBeUndefined();
  });
  it('is the usual one between the thinnest and the thickest of its tool, and a share of these beyond', () => {
    for (const one of PRODUCTS.values()) {
      const reference = one['reference-wet-film-micrometers'];
      const films = Object.entries(one['wet-film-micrometers']);
      for (const [tool, film] of [...films, [undefined, undefined]] as const) {
        const all = film ? [film] : films.map(([, each]) => each);
        const thin = Math.min(reference, ...all.map(([low]) => low));
        const thick = Math.max(reference, ...all.map(([, high]) => high));
        const of = (micrometers: number) => relativeFilm(one, tool as 'brush', micrometers);
        expect([thin, (thin + thick) / 2, thick].map(of)).toEqual([1, 1, 1]);
        expect(of(thin / 2)).toBeCloseTo(0.5, 9);
        expect(of(thick * 3)).toBeCloseTo(3, 9);
      }
    }
  });
  it('is told as a fact with all coats below it laid alike, to the micrometer', () => {
    const poly = product('water-based-polyurethane');
    const [low, high] = poly['volume-solids'];
    const film = (more: Partial<LaidCoat>) => factsOf(poly, coat(more), LAID)['film-micrometers'];
    expect(film({ amount: amount(100) })).toEqual({ value: Math.round(50 * (low + high)), how: 'computed' });
    expect(film({ amount: amount(100), coatNumber: 3 })?.value).toBe(Math.round(150 * (low + high)));
    expect(film({})?.value).toBe(Math.round((poly['reference-wet-film-micrometers'] * (low + high)) / 2));
  });
  it('is too thick past 125 µm, with lacquer in it past 100', () => {
    const film = (micrometers: number, ...families: (typeof FAMILIES)[number][]) => ({
      micrometers,
      families,
    });
    expect(thickerThan(film(125, 'oil-based'))).toBeUndefined();
    expect(thickerThan(film(125.1, 'oil-based'))).toBe(125);
    expect(thickerThan(film(100, 'lacquer'))).toBeUndefined();
    expect(thickerThan(film(100.1, 'oil-based', 'lacquer'))).toBe(100);
    // 100 µm are 3.9 mil, 125 µm 4.9 (25.4 µm a mil).
    expect(sayThick(WORDS, 100)).toBe(
      'The film is thicker than 100 µm (3.9 mil): it may turn brittle and crack.',
    );
    expect(sayThick(WORDS, 125)).toBe(
      'The film is thicker than 125 µm (4.9 mil): it may turn brittle and crack.',
    );
  });
  it('adds up over the coats below that are known and make a film', () => {
    const below = [
      coat({ id: 'b', product: 'oil-based-polyurethane', amount: amount(50) }),
      coat({ id: 'c', product: 'drying-oil', amount: amount(50) }),
      coat({ id: 'd', product: 'gone', amount: amount(50) }),
    ];
    const { micrometers, families } = filmUpTo(coat({ amount: amount(100), below }), products);
    expect(families).toEqual(['water-based', 'oil-based']);
    expect(micrometers).toBeCloseTo(
      100 * product('water-based-polyurethane')['volume-solids'][0] +
        50 * product('oil-based-polyurethane')['volume-solids'][0],
      9,
    );
    expect(filmUpTo(coat({ product: 'gone' }), products)).toEqual({ micrometers: 0, families: [] });
  });
  it('of a case is two thirds of its middle, of the family that is told', () => {
    const on = withFact(emptyCase(), 'family', 'lacquer');
    expect(filmTold(150, on)).toEqual({ micrometers: 100, families: ['lacquer'] });
    expect(filmTold(150, emptyCase())).toEqual({ micrometers: 100, families: [] });
    expect(filmTold(150, { family: { value: 'tar', how: 'told' } }).families).toEqual([]);
    const rows = [{ families: ['lacquer'], micrometers: 100 }, { micrometers: 125 }];
    const sanding = { 'too-thick': rows } as never;
    const past = (micrometers: number, ...families: (typeof FAMILIES)[number][]) =>
      tooThick(sanding, { micrometers, families });
    expect(past(101, 'lacquer')).toBe(rows[0]);
    expect(past(100, 'lacquer')).toBeUndefined();
    expect(past(101, 'oil-based')).toBeUndefined();
    expect(past(126)).toBe(rows[1]);
    expect(past(101, 'oil-based', 'lacquer')).toBe(rows[0]);
  });
  it('is thin by its count below two coats, and below 25 µm where all of it is told', () => {
    expect(THIN).toEqual({ coats: 2, micrometers: 25 });
    const poly = product('water-based-polyurethane');
    const [low] = poly['volume-solids'];
    const thin = (more: Partial<LaidCoat>) => {
      const reading = clockNow(poly, coat(more), LAID, products);
      return reading.kind === 'running' && reading.thin;
    };
    const two = (micrometers: number) =>
      thin({
        coatNumber: 2,
        amount: amount(micrometers / low),
        below: [coat({ id: 'b', amount: amount(5 / low) })],
      });
    expect(thin({ coatNumber: 1, amount: amount(500) })).toBe(true);
    expect([two(19.9), two(20.1)]).toEqual([true, false]);
    // Of three of which one is not told, and of two of which the lower is of no known product: by the count.
    expect(
      thin({ coatNumber: 3, amount: amount(5 / low), below: [coat({ id: 'b', amount: amount(5 / low) })] }),
    ).toBe(false);
    expect(
      thin({ coatNumber: 2, amount: amount(5 / low), below: [coat({ id: 'b', product: 'gone' })] }),
    ).toBe(false);
  });
});

it('a coat that is cured over one that may not be is only probably so, and recoatable till then', () => {
  const hour = (from: number, to = from) => ({ from: from * 60, to: to * 60 });
  const label = (cure: ReturnType<typeof hour>) => ({
    minutes: { open: hour(0.1), touch: hour(1), recoat: hour(2), 'light-use': hour(10), cure },
  });
  const below = coat({ id: 'b', laidAt: LAID - DAY, label: label(hour(100, 200)) });
  const top = coat({ label: label(hour(20)), below: [below] });
  const at = (hours: number) => {
    const reading = clockNow(product('water-based-polyurethane'), top, LAID + hours * HOUR, products);
    return reading.kind === 'running' ? [reading.stage, reading.sureness] : reading.kind;
  };
  // The lower coat is cured between 100 and 200 hours from a day before.
  expect([19, 21, 75, 77, 175, 177].map(at)).toEqual([
    ['recoatable', 'surely'],
    ['recoatable', 'surely'],
    ['recoatable', 'surely'],
    ['recoatable', 'probably'],
    ['recoatable', 'probably'],
    ['cured', 'surely'],
  ]);
});

describe('coats on the clock', () => {
  const ids = (coats: readonly LaidCoat[]) => coats.map(({ id }) => id).join('');
  it('are of one piece by their card, or where one has none by the name, whatever its letters', () => {
    const on = (card: string | undefined, piece: string) => coat({ card, piece });
    expect(onOnePiece(on('x', 'A'), on('x', 'B'))).toBe(true);
    expect(onOnePiece(on('x', 'A'), on('y', 'A'))).toBe(false);
    expect(onOnePiece(on('x', 'Oak Desk'), on(undefined, 'oak desk'))).toBe(true);
    expect(onOnePiece(on(undefined, 'A'), on(undefined, 'B'))).toBe(false);
  });
  it('lie up to twenty deep, without their flaws, and keep what a card has told of them', () => {
    const deep = Array.from({ length: 25 }, (_, at) => coat({ id: `${at}`, flaw: 'open' })).reduce<
      readonly LaidCoat[]
    >(withLaid, []);
    expect(deep).toHaveLength(1);
    expect(deep[0]?.below).toHaveLength(20);
    expect(deep[0]?.below?.[0]).toMatchObject({ id: '23' });
    for (const one of deep[0]?.below ?? []) expect([one.flaw, one.below]).toEqual([undefined, undefined]);
    expect(deep[0]?.flaw).toBe('open');
    const own = coat({ id: 'z', below: [coat({ id: 'y' })] });
    expect(ids(withLaid([coat({ id: 'x' })], own)[0]?.below ?? [])).toBe('y');
    expect(withLaid([], coat({ id: 'x' }))[0]).not.toHaveProperty('below');
  });
  it('are no coat below themselves where they are corrected', () => {
    const [top, ...more] = withLaid([coat({ id: 'x', card: 'c' })], coat({ id: 'x', card: 'c', celsius: 9 }));
    expect(more).toEqual([]);
    expect(top).toEqual(coat({ id: 'x', card: 'c', celsius: 9 }));
  });
  it('learn of their card once, and keep one that they have', () => {
    const kept = adopted([coat({ id: 'a' }), coat({ id: 'b', card: 'own' }), coat({ id: 'c' })], 'new', [
      { id: 'a' },
      { id: 'b' },
    ]);
    expect(kept.map(({ card }) => card)).toEqual(['new', 'own', undefined]);
  });
  it('tell what was told of them, and how it is known', () => {
    const poly = product('water-based-polyurethane');
    const bare = factsOf(poly, coat(), LAID + HOUR);
    expect(Object.keys(bare).sort()).toEqual(
      [
        'air-celsius',
        'coat-number',
        'family',
        'film-micrometers',
        'hours-since-coat',
        'relative-humidity',
        'stage',
      ].sort(),
    );
    const full = factsOf(
      poly,
      coat({ surfaceCelsius: 20, applicator: 'brush', sheen: 'satin', baseTone: 'dark' }),
      LAID + HOUR,
    );
    expect(Object.fromEntries(Object.entries(full).map(([name, { how }]) => [name, how]))).toEqual({
      family: 'told',
      'coat-number': 'told',
      'relative-humidity': 'measured',
      'air-celsius': 'measured',
      'surface-celsius': 'measured',
      applicator: 'told',
      sheen: 'told',
      'base-tone': 'told',
      'film-micrometers': 'computed',
      'hours-since-coat': 'computed',
      stage: 'computed',
    });
    expect(full['hours-since-coat']?.value).toBe(1);
    // Before it was laid there is no age.
    expect(factsOf(poly, coat(), LAID - HOUR)).not.toHaveProperty('hours-since-coat');
    expect(
      caseFromClock(poly, { minutes: 30, celsius: 23, relativeHumidity: 0.5, coatNumber: 3 }),
    ).toMatchObject({
      'coat-number': { value: 3 },
      'hours-since-coat': { value: 0.5 },
    });
    expect(
      caseFromClock(poly, { minutes: 30, celsius: 23, relativeHumidity: 0.5 })['coat-number']?.value,
    ).toBe(1);
  });
});
