/** Times of people, and such as may be that of the coat: pairs of sentences of our own, the time in brackets. */
import { describe, expect, it } from 'vitest';
import { isElseIn } from '../else-times.ts';

describe.each<[what: string, other: readonly string[], coat: readonly string[]]>([
  [
    'a body',
    ['[an hour] later my chest felt tight', '[an hour] later I had a headache', 'my eyes hurt [an hour]'],
    ['[an hour] later my poly had no eyes', '[an hour] later the chest was dull', '[an hour] later the eyes'],
  ],
  [
    'myself',
    [
      '[three months] ive been at it',
      '[a week] I have been sanding',
      'I was gone [six weeks]',
      'we were away [a week]',
    ],
    [
      '[three months] it has been on',
      'it sat [six weeks]',
      'gone, it is [a week]',
      '[a week] I have seen it',
    ],
  ],
  [
    'a person',
    [
      'my son is [two years] old',
      'a [three year] old',
      'for my nephew, [18 months] old',
      'a dog [two years] old',
      'my [two week] old',
    ],
    [
      'a [one year] old table',
      'a [three year] old table',
      'a [three year] old poly',
      'the poly is [two years] old',
      'my table, [18 months] old',
      'my nephew. The poly is [18 months] old',
    ],
  ],
  [
    'what somebody knows and does',
    [
      '[20 years] of poly',
      'ive used it for [years]',
      'we have sprayed for [years]',
      'in business [20 years]',
      'married [ten years]',
      'never had this in [20 years]',
      'never saw it in [a year]',
      'usually [a day]',
      'a painter [ten years]',
    ],
    [
      '[20 years] of use',
      '[two weeks] of drying',
      'I used it [two years] ago',
      'it held for [years]',
      'never dried in [a year]',
      'had this [a year]',
    ],
  ],
  [
    'somebody else',
    [
      'my buddy did his bar and [two days] later it was gummy',
      'one of them did it [two days] ago',
      'someone did it [two days] ago',
    ],
    [
      'my buddy did my bar and [two days] later it was gummy',
      'he did it, and I saw it [two days] ago',
      'one of them did mine [two days] ago',
      'my bar was done [two days] ago',
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
