/** Times of layers below and of other pieces, and such as may be that of the coat: pairs of sentences of our own, the time in brackets. */
import { describe, expect, it } from 'vitest';
import { isElseIn } from '../else-times.ts';

describe.each<[what: string, other: readonly string[], coat: readonly string[]]>([
  [
    'the old film',
    [
      'a fresh coat over it. I laid that old finish [15 years] ago',
      'another coat. My old varnish [15 years] ago',
    ],
    [
      'a fresh coat over it. I laid that finish [15 years] ago',
      'I laid that old finish [15 years] ago',
      'a fresh start. I laid that old finish [15 years] ago',
    ],
  ],
  [
    'another house',
    ['at our old house was one [two years] ago', 'in the last apartment had it [a year]'],
    [
      'at our house was one [two years] ago',
      'the old house [two years] ago',
      'at our old house was one. It is [two years] old',
    ],
  ],
  [
    'the layer below',
    [
      'the stain dried for [three days], then poly',
      'poly [three days] after the stain',
      'over the glaze, which had dried [a day]',
      'the primer sat [a week], poly on top',
      'lacquer over stain after [three hours]',
      'shellac over stain [three hours] old',
      'shellac over [two hour] old stain',
    ],
    [
      'the poly dried for [three days]',
      'poly over stain, [three days] ago',
      'stain, then poly [three days] ago',
      'poly went milky [an hour] ago over the paint',
      'shellac [three hours] old over stain',
      'shellac and poly beside stain [three hours] old, lacquer',
      'the paint is sticky [two days] later',
      'the poly itself [two days] later',
    ],
  ],
])('a time of %s', (_, other, coat) => {
  it.each(other)('is none of the coat: %s', (text) => {
    expect(isElseIn(text)).toBe(true);
  });
  it.each(coat)('and here it may be: %s', (text) => {
    expect(isElseIn(text)).toBe(false);
  });
});
