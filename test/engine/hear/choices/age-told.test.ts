/**
 * How old a piece is by years, decades and its own age, and figures that are no age. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { ageOf } from '#engine/hear/choices/age-told.ts';

describe('how old it is', () => {
  const ages = (text: string) => [...new Set(ageOf(text).map(({ value }) => value))];
  it('by a year: 1993 and later, or before', () => {
    for (const year of [1801, 1899, 1936, 1978, 1992])
      expect(ages(`a chest from ${year}`)).toEqual(['before-1993']);
    for (const year of [1993, 1999, 2010, 2026, 2049])
      expect(ages(`a chest from ${year}`)).toEqual(['since-1993']);
    expect(ages("from the 1920's")).toEqual(['before-1993']);
    expect(ages('of the 1920s')).toEqual(['before-1993']);
    for (const text of ['grit 1500', 'no. 2050', 'part 31936', '1750'])
      expect(ages(text)).toEqual(text === '1750' ? [] : []);
  });
  it('by its years, from forty on', () => {
    for (const text of [
      '80 years old',
      'a 40 year old chest',
      '100-year-old chest',
      'a hundred years old',
      'ninety year old',
      'sixty years old',
    ])
      expect(ages(text), text).toEqual(['before-1993']);
    for (const text of [
      '39 years old',
      '20 year old chest',
      'I am at 80 years old',
      'dads 80 years old'.replace('dads', "dad's"),
      '80 years on',
      '8 years old',
    ])
      expect(ages(text), text).toEqual([]);
  });
  it('by a decade that is no weather, no grit and no money', () => {
    for (const text of [
      'from the fifties',
      'a chair of the 60s',
      'sideboard, 60s',
      "built in the 50's",
      'painted it back in the 70s',
      'made in the 1930s',
    ])
      expect(ages(text), text).toEqual(['before-1993']);
    for (const text of [
      'in the low sixties',
      'around fifties',
      'fifties inside',
      'in the 60s',
      'the high 60s',
      'about 60s',
      '80s grit',
      '60s degrees',
      '$60s',
      '220-60s',
      'of the 60s degrees',
      'eighties in the shop',
      '20s',
      '90s',
    ])
      expect(ages(text), text).toEqual([]);
  });
  it('by no year of something else', () => {
    for (const text of [
      'a 1936 book',
      'magazine of 1936',
      'my truck, a 1936 truck',
      'law of 1978',
      'sold 1936',
      'a 1936 style chest',
      'paint of 1970 may have lead',
      '1950 sander car',
    ])
      expect(ages(text), text).toEqual([]);
    for (const text of ['a book. Chest of 1936', 'a 1936 chest, and a book', '1936 it was that I got a book'])
      expect(ages(text), text).toEqual(['before-1993']);
  });
});
