/** What a browser hands back may be anything: the good coats are kept, the others are counted. Invented data. */
import { describe, expect, it } from 'vitest';
import { emptyStore, readStore } from '#engine/clock/store.ts';
import { product } from '../calc/products.ts';

const POLY = 'water-based-polyurethane';
const coat = {
  id: 'a',
  piece: 'Chair',
  product: POLY,
  laidAt: Date.UTC(2026, 10, 24, 17),
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
};
const span = (from: unknown, to: unknown) => ({ minutes: { touch: { from, to } } });
const amount = (milliliters: unknown, squareMeters: unknown) => ({ milliliters, squareMeters });

const read = (more: object) => readStore({ version: 1, coats: [{ ...coat, ...more }], products: {} });
const isKept = (more: object) => {
  const { store, lost } = read(more);
  expect(store.coats.length + lost).toBe(1);
  return lost === 0;
};

describe('a coat is kept', () => {
  it.each<[string, object]>([
    ['as it is laid', {}],
    ['in the coldest and the hottest air that a thermometer of a house shows', { celsius: -30 }],
    ['at 60 °C', { celsius: 60 }],
    ['in bone-dry air', { relativeHumidity: 0 }],
    ['in fog', { relativeHumidity: 1 }],
    ['from the first instant that a device counts', { laidAt: 0 }],
    ['till the year 2200', { laidAt: Date.UTC(2200, 0, 1) }],
    ['as the hundredth', { coatNumber: 100 }],
    ['with a piece of 200 letters', { piece: 'x'.repeat(200) }],
    ['on a cold face', { surfaceCelsius: -30 }],
    ['on a hot face', { surfaceCelsius: 60 }],
    [
      'with its card, tool, base and sheen',
      { card: 'c', applicator: 'brush', baseTone: 'dark', sheen: 'satin' },
    ],
    ['of old paint that nobody dated', { age: 'unknown' }],
    ['of no paint but her own', { age: 'none' }],
    ['with isocyanate in it', { hardener: 'isocyanate' }],
    ['as the last', { last: true }],
    ['as one that is not the last', { last: false }],
    ['with a flaw that is open', { flaw: 'open' }],
    ['with a flaw that was repaired', { flaw: 'repaired' }],
    ['with a can of no times', { label: { minutes: {} } }],
    ['with a can that dries at once', { label: span(0, 0) }],
    ['with a can of a thousand days', { label: span(60, 1000 * 1440) }],
    ['with the can’s own air', { label: { minutes: {}, climate: { celsius: 23, relativeHumidity: 0.5 } } }],
    [
      'with the can’s limits',
      {
        label: {
          minutes: {},
          limits: { celsius: { from: 10, to: 30 }, relativeHumidity: { from: 0, to: 0.8 } },
        },
      },
    ],
    ['with a can that limits nothing', { label: { minutes: {}, limits: {} } }],
    [
      'with the cold face of the can’s own air',
      { label: { minutes: {}, climate: { celsius: 23, relativeHumidity: 0.5, surfaceCelsius: 20 } } },
    ],
    ['with what was laid', { amount: amount(250, 2.5) }],
    ['with the least of a drop', { amount: amount(0.01, 1e-4) }],
    ['with a barrel', { amount: amount(1e6, 1e4) }],
    ['over another', { below: [coat] }],
    ['over none', { below: [] }],
  ])('%s', (_, more) => {
    expect(isKept(more)).toBe(true);
  });
});

describe('a coat is counted as lost', () => {
  it.each<[string, object]>([
    ['without an id', { id: undefined }],
    ['with a number for a piece', { piece: 7 }],
    ['with a product that is no text', { product: null }],
    ['with a piece of 201 letters', { piece: 'x'.repeat(201) }],
    ['laid before devices counted', { laidAt: -1 }],
    ['laid after the year 2200', { laidAt: Date.UTC(2200, 0, 1) + 1 }],
    ['laid at a text', { laidAt: '2026' }],
    ['in air of −31 °C', { celsius: -31 }],
    ['in air of 61 °C', { celsius: 61 }],
    ['in air that is no number', { celsius: Number.NaN }],
    ['in less than no humidity', { relativeHumidity: -0.01 }],
    ['in 101 %', { relativeHumidity: 1.01 }],
    ['as coat 0', { coatNumber: 0 }],
    ['as coat 101', { coatNumber: 101 }],
    ['on a face of −31 °C', { surfaceCelsius: -31 }],
    ['on a face of 61 °C', { surfaceCelsius: 61 }],
    ['with a card that is no text', { card: 1 }],
    ['with a tool that is no text', { applicator: 1 }],
    ['with a base that is no text', { baseTone: 1 }],
    ['with a sheen that is no text', { sheen: 1 }],
    ['with a tool that nobody knows', { applicator: 'x' }],
    ['with a base that nobody knows', { baseTone: 'x' }],
    ['with a sheen that nobody knows', { sheen: 'semi' }],
    ['with paint of an age that nobody knows', { age: 'old' }],
    ['with a hardener that nobody knows', { hardener: 'glue' }],
    ['as the last by a text', { last: 'yes' }],
    ['with a flaw that is neither open nor repaired', { flaw: 'settled' }],
    ['with a flaw that is only there', { flaw: true }],
    ['over one with a tool that nobody knows', { below: [{ ...coat, applicator: 'x' }] }],
    [
      'with a time that no can has',
      { label: { minutes: { touch: { from: 1, to: 2 }, polish: { from: 1, to: 2 } } } },
    ],
    ['with limits that are a text', { label: { minutes: {}, limits: 'warm' } }],
    ['with a limit that is a number', { label: { minutes: {}, limits: { celsius: 10 } } }],
    [
      'with a limit that ends before it begins',
      { label: { minutes: {}, limits: { relativeHumidity: { from: 0.8, to: 0.1 } } } },
    ],
    [
      'with a limit that is no number',
      { label: { minutes: {}, limits: { celsius: { from: Number.NaN, to: 30 } } } },
    ],
    [
      'with the face of the can’s air too hot',
      { label: { minutes: {}, climate: { celsius: 20, relativeHumidity: 0.5, surfaceCelsius: 61 } } },
    ],
    ['with a can that is a text', { label: 'can' }],
    ['with a can without minutes', { label: {} }],
    ['with minutes that are no object', { label: { minutes: 5 } }],
    ['with a time that is no span', { label: { minutes: { touch: 5 } } }],
    ['with a time below zero', { label: span(-1, 5) }],
    ['with a time that ends before it begins', { label: span(10, 9) }],
    ['with a time over a thousand days', { label: span(1, 1000 * 1440 + 1) }],
    ['with a time from after a thousand days', { label: span(1000 * 1440 + 1, 1000 * 1440 + 2) }],
    [
      'with one good time and one bad',
      { label: { minutes: { touch: { from: 1, to: 2 }, recoat: { from: 3, to: 2 } } } },
    ],
    [
      'with the air of a can too cold',
      { label: { minutes: {}, climate: { celsius: -31, relativeHumidity: 0.5 } } },
    ],
    [
      'with the air of a can too hot',
      { label: { minutes: {}, climate: { celsius: 61, relativeHumidity: 0.5 } } },
    ],
    [
      'with the air of a can too dry',
      { label: { minutes: {}, climate: { celsius: 20, relativeHumidity: -0.1 } } },
    ],
    [
      'with the air of a can too damp',
      { label: { minutes: {}, climate: { celsius: 20, relativeHumidity: 1.1 } } },
    ],
    ['with the air of a can as a text', { label: { minutes: {}, climate: 'warm' } }],
    ['with no amount to speak of', { amount: amount(0.009, 1) }],
    ['with more than a barrel', { amount: amount(1_000_001, 1) }],
    ['on less than a stamp', { amount: amount(1, 0.00009) }],
    ['on more than a hectare', { amount: amount(1, 10_001) }],
    ['with an amount that is a number', { amount: 5 }],
    ['over what is no list', { below: coat }],
    ['over one good and one bad', { below: [coat, { ...coat, celsius: 99 }] }],
  ])('%s', (_, more) => {
    expect(isKept(more)).toBe(false);
  });

  it.each([null, 5, 'coat', undefined])('where it is %s', (one) => {
    expect(readStore({ version: 1, coats: [one, coat] })).toMatchObject({
      lost: 1,
      store: { coats: [coat] },
    });
  });
});

describe('the rest of the store', () => {
  it('is empty where nothing was ever kept, and nothing is lost', () => {
    expect(emptyStore()).toEqual({ version: 1, coats: [], products: {}, current: undefined, seenAt: 0 });
    for (const none of [null, undefined]) expect(readStore(none)).toEqual({ store: emptyStore(), lost: 0 });
  });

  it('counts one as lost where the whole of it does not read', () => {
    for (const bad of ['text', 5, [], {}, { version: 2, coats: [] }, { version: 1, coats: 'none' }])
      expect(readStore(bad)).toEqual({ store: emptyStore(), lost: 1 });
  });

  it('keeps the piece in view and the last reading of the clock, if they are what they should be', () => {
    const keptWith = (more: object) => readStore({ version: 1, coats: [], ...more }).store;
    expect(keptWith({ current: 'Chair', seenAt: 12 })).toMatchObject({ current: 'Chair', seenAt: 12 });
    expect(keptWith({ current: 3, seenAt: 'x' })).toMatchObject({ current: undefined, seenAt: 0 });
    expect(keptWith({ seenAt: Number.POSITIVE_INFINITY }).seenAt).toBe(0);
    expect(keptWith({ seenAt: Number.NaN }).seenAt).toBe(0);
  });

  const good = product(POLY) as unknown as Record<string, unknown>;
  const products = (more: object) =>
    Object.keys(readStore({ version: 1, coats: [], products: { p: { ...good, ...more } } }).store.products);

  it('keeps a product with its figures', () => {
    expect(products({})).toEqual(['p']);
    expect(readStore({ version: 1, coats: [], products: 'none' }).store.products).toEqual({});
    expect(readStore({ version: 1, coats: [], products: { p: null } }).store.products).toEqual({});
  });

  it.each(['open-minutes', 'touch-minutes', 'recoat-hours', 'light-use-days', 'cure-days', 'volume-solids'])(
    'but none whose %s are no two numbers',
    (figure) => {
      for (const bad of [undefined, 5, [1], [1, 2, 3], [1, Number.POSITIVE_INFINITY], ['1', '2']])
        expect(products({ [figure]: bad })).toEqual([]);
    },
  );

  it('nor one of a kind that nobody knows', () => {
    expect(products({ family: 'x' })).toEqual([]);
    expect(products({ mechanism: 'x' })).toEqual([]);
    expect(products({ name: undefined })).toEqual([]);
  });

  it.each(['sand-if-beyond-hours', 'film-formation-celsius'])(
    'nor one whose %s are no two numbers',
    (figure) => {
      expect(products({ [figure]: undefined })).toEqual(['p']);
      expect(products({ [figure]: [1, 2] })).toEqual(['p']);
      for (const bad of [5, [1], ['1', '2']]) expect(products({ [figure]: bad })).toEqual([]);
    },
  );

  it('nor one without limits, best air or film', () => {
    expect(products({ limits: undefined })).toEqual([]);
    expect(products({ limits: { celsius: [10, 30] } })).toEqual([]);
    expect(products({ limits: { humidity: [0, 1] } })).toEqual([]);
    expect(products({ best: { celsius: [15, 25] } })).toEqual([]);
    expect(products({ 'wet-film-micrometers': { brush: 80 } })).toEqual([]);
    expect(products({ 'wet-film-micrometers': { mop: [60, 90] } })).toEqual([]);
    expect(products({ 'reference-wet-film-micrometers': '80' })).toEqual([]);
    expect(products({ best: undefined })).toEqual([]);
    expect(products({ 'wet-film-micrometers': 5 })).toEqual([]);
  });
});
