import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coatsInOrder, passedBy, withCoat } from '#engine/jobs.ts';
import { anyCard, card, coat, HOUR, START } from './cards.ts';

const three = card({
  coats: ['a', 'b', 'c'].map((id, index) => coat({ id, laidAt: START + index * HOUR })),
});
const at = (id: string, laidAt: number) => passedBy(three, coat({ id, laidAt }));

describe('a coat that is corrected', () => {
  it('keeps its place while its time lies between its neighbors', () => {
    expect(at('b', START + 1)).toBeUndefined();
    expect(at('b', START + 2 * HOUR - 1)).toBeUndefined();
    expect(at('c', START + 900 * HOUR)).toBeUndefined();
  });

  it('names the coat that it would pass', () => {
    expect(at('b', START - 1)).toMatchObject({ coat: { id: 'a' }, number: 1, lies: 'below' });
    expect(at('b', START + 3 * HOUR)).toMatchObject({ coat: { id: 'c' }, number: 3, lies: 'above' });
  });

  it('stands in the same place among the others whenever it passes none', () => {
    fc.assert(
      fc.property(anyCard, fc.nat(), fc.integer({ min: -2e9, max: 2e9 }), (one, which, by) => {
        const order = coatsInOrder(one).map(({ id }) => id);
        const old = one.coats[which % (one.coats.length || 1)];
        if (!old) return;
        const next = { ...old, laidAt: old.laidAt + by };
        const after = coatsInOrder(withCoat(one, next, START)).map(({ id }) => id);
        expect(passedBy(one, next) === undefined).toBe(after.join() === order.join());
      }),
    );
  });
});
