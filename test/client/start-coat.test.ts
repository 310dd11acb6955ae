/** A coat that goes on the clock while another tab changes the clock. The coats are invented. */
import { expect, it } from 'vitest';
import {
  type ClockStore,
  emptyStore,
  type LaidCoat,
  layOnClock,
  MOST_ON_CLOCK,
  takeOffClock,
} from '#engine/clock.ts';
import { startCoat } from '../../site/client/clock/start-coat.ts';
import { product } from '../engine/calc/products.ts';

const NOW = Date.UTC(2026, 10, 24, 17);
const DAY = 86_400_000;
const POLY = 'water-based-polyurethane';
const products = { [POLY]: product(POLY) };
const coat = (id: string, more: Partial<LaidCoat> = {}): LaidCoat => ({
  id,
  piece: 'Chair',
  product: POLY,
  laidAt: NOW,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const clockOf = (...coats: LaidCoat[]): ClockStore => ({ ...emptyStore(), coats });

/** Starts a coat, answering as told; between a question and its answer the other tab may do something. */
const started = async (
  on: ClockStore,
  read: LaidCoat,
  answers: readonly { readonly gives: string; readonly meanwhile?: (there: ClockStore) => ClockStore }[],
  begunAs: { readonly next?: LaidCoat; readonly anew?: LaidCoat } = {},
) => {
  let store = on;
  const asked: string[] = [];
  const laid = await startCoat(
    { coat: read, begunAs, against: [] },
    {
      load: async () => store,
      change: async (by) => {
        store = by(store);
      },
      products,
      questions: {
        ask: async ({ title, answers: offered }) => {
          const answer = answers[asked.length];
          asked.push(title);
          store = answer?.meanwhile?.(store) ?? store;
          return offered.find(([value]) => value === answer?.gives)?.[0];
        },
      },
      style: { timeZone: 'UTC', hour12: true, units: 'us' },
      now: () => NOW + DAY,
    },
  );
  return { laid, store, asked };
};
const shown = ({ coats }: ClockStore) =>
  coats.map(({ id, piece, coatNumber }) => `${id}: ${piece} ${coatNumber}`);

it.each([
  ['correct', 'a: Chair 1'],
  ['next', 'b: Chair 2'],
  ['other', 'b: Chair 1'],
] as const)('lays the coat also where the one it was asked about is off by then: %s', async (gives, is) => {
  const { store, laid } = await started(clockOf(coat('a')), coat('b'), [
    { gives, meanwhile: (there) => takeOffClock(there, 'a') },
  ]);
  expect(shown(store)).toEqual([is]);
  // Which coat answers is open again: the wettest does.
  expect(store.current).toBeUndefined();
  expect(store.coats.map(({ id }) => id)).toContain(laid?.id);
});

it('asks anew where the other tab has laid a coat on that piece meanwhile, and never buries it unasked', async () => {
  const second = coat('x', { coatNumber: 2, laidAt: NOW + DAY });
  const other = {
    gives: 'correct',
    meanwhile: (there: ClockStore) => layOnClock(there, { coat: second, products, now: NOW }),
  };
  const back = await started(clockOf(coat('a')), coat('b'), [other, { gives: 'back' }]);
  expect(back.asked).toEqual(Array(2).fill('“Chair” is on the clock already'));
  expect(back.laid).toBeUndefined();
  expect(shown(back.store)).toEqual(['x: Chair 2']);
  const next = await started(clockOf(coat('a')), coat('b'), [other, { gives: 'next' }]);
  expect(shown(next.store)).toEqual(['b: Chair 3']);
  expect(next.laid?.id).toBe('b');
  // A coat that was the first on its piece as it was started, and is so no more.
  const first = await started(clockOf(), coat('b'), []);
  expect(shown(first.store)).toEqual(['b: Chair 1']);
  expect(first.asked).toEqual([]);
});

it('counts the coat of its button anew without a question, and asks where that is another by now', async () => {
  const on = coat('a');
  const anew = await started(clockOf(on), coat('b', { celsius: 15 }), [], { anew: on });
  expect(anew.store.coats).toMatchObject([{ id: 'a', celsius: 15, coatNumber: 1 }]);
  expect(anew.asked).toEqual([]);
  const gone = await started(clockOf(coat('x')), coat('b'), [{ gives: 'back' }], { anew: on });
  expect(gone.laid).toBeUndefined();
});

it('gives no more coats than a clock keeps, also as another piece of one name', async () => {
  const many = Array.from({ length: MOST_ON_CLOCK }, (_, index) =>
    coat(`c${index}`, { piece: index ? `Piece ${index}` : 'Chair' }),
  );
  const full = clockOf(...many);
  for (const [read, answers] of [
    [coat('b', { piece: 'Table' }), [{ gives: 'back' }]],
    [coat('b'), [{ gives: 'other' }, { gives: 'back' }]],
  ] as const) {
    const { laid, store, asked } = await started(full, read, answers);
    expect(laid).toBeUndefined();
    expect(store).toBe(full);
    expect(asked.at(-1)).toBe(`${MOST_ON_CLOCK} coats are on the clock`);
  }
  // Over one that is there it takes no place of its own.
  expect((await started(full, coat('b'), [{ gives: 'next' }])).store.coats).toHaveLength(MOST_ON_CLOCK);
});
