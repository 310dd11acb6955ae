/** What lies below, told in other turns: pairs of sentences of our own, the time in brackets. */
import { describe, expect, it } from 'vitest';
import { isElseIn } from '../else-times.ts';

describe('the time of a layer below', () => {
  it.each([
    'primed it [two days] ago and now brush poly',
    'poly went on [two days] after the primer',
    'the paint, [two days] ago, was fine. Poly since',
    'primer [two days] ago, it chips now',
    'the glaze was [two days] old, which is why poly wrinkles',
    'poly on top of stain that was only [three hours] old',
    'over a [two hour] old stain',
    'onto [two hour] old primer',
    'stain, dried [two days]',
    'the sealer took [two days] to dry',
  ])('is none of the coat: %s', (text) => {
    expect(isElseIn(text)).toBe(true);
  });
  it.each([
    'primed it, poly [two days] ago and now it is dull',
    'the paint peeled off [two days] later, poly and all',
    'the paint smeared [two days] later under poly',
    'the poly, [two days] ago, over stain',
    'stain that was only dark, poly [three hours] old',
    'a [two hour] old poly over stain',
    'stained it on and on, poly for [two days]',
    'the stain below. The poly has [two days]',
    'paint that is sticky [two days] later',
    'painted it [two days] ago, paint and all',
  ])('may be that of the coat: %s', (text) => {
    expect(isElseIn(text)).toBe(false);
  });
});
