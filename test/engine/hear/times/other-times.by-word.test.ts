/** Times of the work and of labels, and such as may be that of the coat: pairs of sentences of our own, the time in brackets. */
import { describe, expect, it } from 'vitest';
import { isElseIn } from '../else-times.ts';

describe.each<[what: string, other: readonly string[], coat: readonly string[]]>([
  [
    'the label',
    ['the can says [four hours]', 'label time [four hours]'],
    ['it has been [four hours]. The can says so', '[two weeks] of waiting as the maker said'],
  ],
  [
    'what comes between coats',
    [
      'every [four hours] a coat',
      'a coat each [day]',
      'coats [four hours] apart',
      '[four hours] between',
      'between [four hours]',
      'per [day]',
      '[four hours] till the next',
      '[four hours] until then',
      '[a week] before I leave',
    ],
    [
      '[four hours] of drying',
      '[a week] before we used it',
      '[a week] before it was moved',
      'the lot, each, [four hours] now',
    ],
  ],
  [
    'all the coats',
    [
      'three coats over [two days]',
      'three coats within [two days]',
      'two coats in [a day]',
      'coats across [two days], coats and all',
    ],
    ['three days over [two days]', 'three coats, [two days] ago'],
  ],
  [
    'the first coat',
    [
      '[four hours] after the first',
      '[a day] after the stain',
      '[a day] after priming',
      '[a day] after my previous one',
    ],
    ['[four hours] after the last', '[a day] after it', '[a day] later the first'],
  ],
  [
    'so many a day',
    ['one [a day]', 'two coats [a day]', 'twice [a day]', '3 [a day]'],
    ['then [a day]', 'one, [a day] later', 'it sat [a day] then'],
  ],
  [
    'the next coat',
    [
      'after [12 hours] I put on a coat',
      'after [12 hours] we brushed it',
      'after [12 hours] then he sprayed it',
    ],
    ['after [12 hours] I saw it', 'after [12 hours] it was dull', '[12 hours] later I brushed it'],
  ],
  [
    'the wiping',
    ['wiped off after [fifteen minutes]', 'buffed after [an hour]', 'rubbed it after [ten min]'],
    [
      'wiped off after [two days]',
      'dry after [fifteen minutes]',
      'wiped, dull after [an hour]',
      'wiped off for [fifteen minutes]',
    ],
  ],
  [
    'how fast it dried',
    ['it dried in [four hours]', 'hard in [a day]', 'it sets in [an hour]', 'dry in [a day]'],
    [
      'never dried in [a week]',
      'it has not dried in [a week]',
      'it wont dry in [a week]',
      'dried for [a day]',
      'nothing in [a week]',
    ],
  ],
  [
    'what is asked or wanted',
    [
      'is [24 hours] enough',
      'it needs [a week]',
      'takes [a day]',
      'another [two days]',
      'give it, give [a day]',
      'wait [a day]',
      'requires [a day]',
      'next [week]',
    ],
    [
      '[24 hours], enough',
      'let it cure [a month]',
      'left it to cure [a month]',
      'gave it another [day]',
      'cured [a month]',
    ],
  ],
  [
    'how it was then',
    [
      'it was dry [last week]',
      'it was fine [a month]',
      'looked great [last week]',
      'has been smooth [a year]',
    ],
    [
      'it was dry [a week] ago',
      'it was fine for [a month]',
      'was fine [a day] later',
      'it is dry [last week]',
      'fine, it was, [last week]',
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
