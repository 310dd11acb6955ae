/** What the clock holds of a card that another device has changed. The cards are invented. */
import { expect, it } from 'vitest';
import { emptyStore } from '#engine/clock/store.ts';
import { laidCoatOf } from '#engine/jobs.ts';
import { inItsPlace } from '../../site/client/jobs/parts/clock.ts';
import { card, coat, HOUR, products, START } from '../engine/jobs/cards.ts';

const first = coat({ id: 'a', laidAt: START });
const second = coat({ id: 'b', laidAt: START + HOUR });
const merged = card({ coats: [first, second] });

it('counts a coat as its card does, once another came below it', () => {
  const alone = laidCoatOf(card({ coats: [second] }), second);
  expect(alone.coatNumber).toBe(1);
  const other = { ...alone, id: 'x', card: 'card-2', piece: 'Chair' };
  const before = { ...emptyStore(), coats: [other, alone], current: 'b' };
  const after = inItsPlace(before, laidCoatOf(merged, second), products);
  expect(after.coats.map(({ id, coatNumber }) => [id, coatNumber])).toEqual([
    ['x', 1],
    ['b', 2],
  ]);
  expect(after.coats[1]?.below?.map(({ id }) => id)).toEqual(['a']);
});

it('has the uppermost coat take the place of one that another device has covered', () => {
  const below = laidCoatOf(card({ coats: [first] }), first);
  const after = inItsPlace(
    { ...emptyStore(), coats: [below], current: 'a' },
    laidCoatOf(merged, second),
    products,
  );
  expect(after.coats.map(({ id }) => id)).toEqual(['b']);
  expect(after.current).toBe('b');
});
