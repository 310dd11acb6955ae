/** Cards that hold little, and things of one instant: what is told then. Invented cards. */
import { describe, expect, it } from 'vitest';
import {
  type CardRepair,
  cardsRemoved,
  coatOwed,
  factsOfCard,
  filmBelow,
  layersOf,
  mergeCards,
  openFlaw,
  productOfRepair,
  withCoat,
  withoutCoat,
  withoutItsCoat,
} from '#engine/jobs.ts';
import { LATEST_INSTANT, MOST_CARDS_REMOVED } from '#engine/model/card-limits.ts';
import { FACTS } from '#engine/model/facts.ts';
import { card, coat, DAY, HOUR, PRODUCTS, products, START } from './cards.ts';

const flaw = { id: 'f', foundAt: START, defect: 'bubbles', answers: [] };
const repair: CardRepair = { id: 'r', doneAt: START + HOUR, remedy: 'recoat', flaw: 'f' };

describe('a card without coats', () => {
  it('owes the coat of a repair, and takes its product from the plan', () => {
    const bare = card({ coats: [], flaws: [flaw], repairs: [repair] });
    expect(coatOwed(bare, { recoat: 'same' })?.id).toBe('r');
    expect(coatOwed(bare, {})).toBeUndefined();
    expect(productOfRepair(bare, products, 'same')).toBe('water-based-polyurethane');
    for (const lays of ['same', 'same-in-gloss', 'tinted-same', 'mist-of-same'] as const)
      expect(productOfRepair(card({ coats: [coat({ product: 'shellac' })] }), products, lays)).toBe(
        'shellac',
      );
    const { product: _none, ...unplanned } = bare;
    expect(productOfRepair(unplanned, products, 'same')).toBeUndefined();
    expect(productOfRepair(unplanned, products, 'dewaxed-shellac')).toBe('shellac');
  });

  it('of a repair without a flaw is owed it, too', () => {
    const { flaw: _flaw, ...alone } = repair;
    expect(coatOwed(card({ coats: [], repairs: [alone] }), { recoat: 'same' })?.id).toBe('r');
    expect(openFlaw(card({ flaws: [] }))).toBeUndefined();
  });

  it('tells no sheen, no stage and no coat that it does not hold', () => {
    const { sheen: _sheen, ...plain } = card({ coats: [] });
    const on = factsOfCard(plain, products, START);
    expect(Object.keys(on).sort()).toEqual(['age', 'base', 'base-tone', 'family', 'piece']);
    const gone = { ...plain, coats: [coat({ product: 'gone-from-the-shelf' })] };
    expect(Object.keys(factsOfCard(gone, products, START)).sort()).toEqual(
      ['age', 'applicator', 'base', 'base-tone', 'coat-number', 'piece'].sort(),
    );
    const { applicator: _brush, ...untooled } = coat({ product: 'gone-from-the-shelf' });
    expect(factsOfCard({ ...plain, coats: [untooled] }, products, START)).not.toHaveProperty('applicator');
    // A number that no condition speaks of is left out.
    const many = Array.from({ length: FACTS['coat-number'].max + 1 }, (_, index) =>
      coat({ id: `c${index}`, product: 'gone-from-the-shelf' }),
    );
    expect(factsOfCard({ ...plain, coats: many }, products, START)).not.toHaveProperty('coat-number');
    expect(factsOfCard({ ...plain, coats: many.slice(1) }, products, START)['coat-number']?.value).toBe(
      FACTS['coat-number'].max,
    );
  });

  it('has own paint as paint since 1993', () => {
    const age = (of: 'none' | 'unknown') => factsOfCard(card({ age: of }), products, START)['age']?.value;
    expect([age('none'), age('unknown')]).toEqual(['since-1993', 'unknown']);
  });
});

describe('the coat of a repair', () => {
  const lays = { recoat: 'same' } as const;
  const on = (more: Parameters<typeof card>[0]) =>
    coatOwed(card({ flaws: [{ ...flaw, coat: 'coat-1' }], ...more }), lays)?.id;
  it('is its own where it was laid up to two hours before the repair was noted', () => {
    const at = (doneAt: number) => on({ repairs: [{ ...repair, doneAt }] });
    expect(at(START + 2 * HOUR)).toBeUndefined();
    expect(at(START + 2 * HOUR + 1)).toBe('r');
  });
  it('without a flaw on the card goes by a day', () => {
    const { flaw: _flaw, ...alone } = repair;
    const at = (doneAt: number) => on({ repairs: [{ ...alone, doneAt }] });
    expect(at(START + DAY)).toBeUndefined();
    expect(at(START + DAY + 1)).toBe('r');
    // A flaw that is no longer there is none.
    expect(on({ flaws: [], repairs: [{ ...repair, doneAt: START + DAY }] })).toBeUndefined();
    expect(on({ flaws: [], repairs: [{ ...repair, doneAt: START + DAY + 1 }] })).toBe('r');
  });
  it('goes by its own flaw, whatever was repaired before', () => {
    const other = { ...repair, id: 'x', flaw: 'g', remedy: 'rub', doneAt: START + 1 };
    const soon = { ...repair, doneAt: START + 5 * HOUR };
    expect(on({ repairs: [other, soon] })).toBe('r');
    expect(on({ repairs: [{ ...other, flaw: 'f' }, soon] })).toBeUndefined();
    expect(on({ flaws: [{ ...flaw, coat: 'coat-0' }], repairs: [other, soon] })).toBeUndefined();
  });
  it('that was not laid this time is told by a field, and the note stays hers', () => {
    for (const note of [undefined, '', 'Rubbed it out.', 'No coat was laid.']) {
      const one = { ...repair, ...(note !== undefined && { note }) };
      const [after] = withoutItsCoat(card({ repairs: [one] }), one, START + DAY).repairs;
      expect(after).toEqual({ ...one, laidNoCoat: true, changedAt: START + DAY });
    }
  });
  it('of several is that of the last that owes one', () => {
    const second = { ...repair, id: 's', doneAt: START + 5 * DAY };
    expect(on({ repairs: [{ ...repair, doneAt: START + 4 * DAY }, second] })).toBe('s');
    expect(
      on({
        repairs: [
          { ...repair, doneAt: START + 4 * DAY },
          { ...second, remedy: 'rub' },
        ],
      }),
    ).toBe('r');
    expect(on({ repairs: [{ ...repair, doneAt: START + 4 * DAY, laidNoCoat: true }] })).toBeUndefined();
    // A note is hers, whatever it says.
    for (const note of ['No coat was laid.', 'No coat was laid. Really?'])
      expect(on({ repairs: [{ ...repair, doneAt: START + 4 * DAY, note }] })).toBe('r');
  });
});

describe('cards that were taken away', () => {
  const gone = (id: string, at: number) => ({ id, at, name: 'Gone' });
  it('stand the newest first, and at one instant by their ids; each at its latest', () => {
    const found = cardsRemoved(
      [gone('b', 5), gone('a', 5), gone('c', 9)],
      [gone('d', 1), gone('a', 3), gone('d', 7)],
    );
    expect(found.map(({ id, at }) => `${id}${at}`)).toEqual(['c9', 'd7', 'a5', 'b5']);
    expect(cardsRemoved()).toEqual([]);
  });
  it('are remembered up to so many, the newest', () => {
    const many = Array.from({ length: MOST_CARDS_REMOVED + 7 }, (_, at) => gone(`c${at}`, at));
    const kept = cardsRemoved(many);
    expect(kept).toHaveLength(MOST_CARDS_REMOVED);
    expect(kept.at(-1)?.at).toBe(7);
  });
});

describe('what was taken off a card', () => {
  it('stands the newest first, and at one instant by what it names', () => {
    const removed = (id: string, at: number, list: 'coats' | 'flaws' = 'coats') => ({ list, id, at });
    const one = card({ coats: [], removed: [removed('b', START + 1), removed('a', START + 1, 'flaws')] });
    const two = card({
      coats: [],
      removed: [removed('a', START + 1), removed('z', START + 3), removed('b', START + 2)],
    });
    for (const [mine, theirs] of [
      [one, two],
      [two, one],
    ] as const)
      expect(
        mergeCards([mine], [theirs])[0]?.removed?.map(({ list, id, at }) => `${list} ${id} ${at - START}`),
      ).toEqual(['coats z 3', 'coats b 2', 'coats a 1', 'flaws a 1']);
  });
  it('is of its list alone: a coat that is off takes no flaw of the same id', () => {
    const both = card({ coats: [coat({ id: 'x' })], flaws: [{ ...flaw, id: 'x', coat: 'x' }] });
    const off = withoutCoat(both, 'x', START + 9);
    expect(off.flaws.map(({ id }) => id)).toEqual(['x']);
    expect(off.removed).toEqual([{ list: 'coats', id: 'x', at: START + 9 }]);
    expect(withoutCoat(both, 'nobody', START + 9).removed).toBeUndefined();
  });
  it('tells when it is back, as what is corrected does; what is new has no such time', () => {
    const off = withoutCoat(card(), 'coat-1', START + 9);
    expect(withCoat(off, coat(), START + 20).coats[0]).toMatchObject({ changedAt: START + 20 });
    expect(withCoat(card(), coat({ celsius: 9 }), START + 20).coats[0]).toMatchObject({
      changedAt: START + 20,
    });
    expect(
      withCoat(card(), coat({ id: 'new' }), START + 20).coats.find(({ id }) => id === 'new'),
    ).not.toHaveProperty('changedAt');
  });
  it('never passes the last instant that a card can hold', () => {
    const late = card({ changedAt: LATEST_INSTANT });
    expect(withCoat(late, coat({ id: 'new' }), LATEST_INSTANT + 5).changedAt).toBe(LATEST_INSTANT);
  });
});

describe('a film of every product', () => {
  it('is told by its amount and its solids, from the leanest can to the fattest', () => {
    for (const product of PRODUCTS) {
      const one = coat({ product, amount: { milliliters: 80, squareMeters: 2 } });
      const [low = 0, high = 0] = products[product]?.['volume-solids'] ?? [];
      const [layer] = layersOf(card({ coats: [one] }), products).layers;
      expect(layer).toMatchObject({ ground: 'amount', wet: 40, dry: { from: 40 * low, to: 40 * high } });
      expect(layer?.family).toBe(products[product]?.family);
    }
  });
  it('lies on nothing where it is the first', () => {
    expect(filmBelow(card(), coat(), products)).toEqual({ micrometers: 0, families: [] });
  });
});
