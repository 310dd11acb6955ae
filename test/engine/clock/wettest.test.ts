/** Which of several coats answers. The coats are invented; that hands stay off while any film is wet is common practice. */
import { describe, expect, it } from 'vitest';
import { emptyStore, type LaidCoat, unreadyOf, wettestFirst } from '#engine/clock.ts';
import { product } from '../calc/products.ts';
import { coat, HOUR, LAID, MINUTE } from './running-coat.ts';

const POLY = 'water-based-polyurethane';
const products = { [POLY]: product(POLY), shellac: product('shellac') };
const on = (...coats: readonly LaidCoat[]) => ({ ...emptyStore(), coats, products });
const ids = (coats: readonly LaidCoat[]) => coats.map(({ id }) => id);

const fresh = { ...coat, id: 'fresh' };
const dry = { ...coat, id: 'dry', product: 'shellac', laidAt: LAID - 90 * MINUTE };
const ready = { ...coat, id: 'ready', laidAt: LAID - 30 * HOUR };
const cold = { ...coat, id: 'cold', celsius: 2, laidAt: LAID - HOUR };
const unknown = { ...coat, id: 'unknown', product: 'no-such-product' };

describe('of several coats', () => {
  it('the wettest is the first, in whatever order they were laid on the clock', () => {
    expect(ids(wettestFirst(on(dry, ready, fresh), LAID))).toEqual(['fresh', 'dry', 'ready']);
    expect(ids(wettestFirst(on(fresh, ready, dry), LAID))).toEqual(['fresh', 'dry', 'ready']);
  });
  it('of two wet ones that one comes first which is wet for longer', () => {
    const older = { ...fresh, id: 'older', laidAt: LAID - 5 * MINUTE };
    expect(ids(wettestFirst(on(older, fresh), LAID + MINUTE))).toEqual(['fresh', 'older']);
  });
  it('of two that are ready the one laid last comes first', () => {
    const before = { ...ready, id: 'before', laidAt: ready.laidAt - HOUR };
    expect(ids(wettestFirst(on(before, ready), LAID))).toEqual(['ready', 'before']);
  });
  it('hands stay off one for which no time can be told, and one of an unknown product comes last', () => {
    expect(ids(wettestFirst(on(unknown, ready, dry, cold), LAID))).toEqual([
      'cold',
      'dry',
      'ready',
      'unknown',
    ]);
  });
  it('those that bear no other coat yet are told apart from those that do', () => {
    expect(ids(unreadyOf(on(ready, dry, unknown, fresh, cold), LAID))).toEqual(['fresh', 'cold', 'dry']);
    expect(unreadyOf(on(ready), LAID)).toEqual([]);
  });
});
