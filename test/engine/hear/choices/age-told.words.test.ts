/** Decades and years, form by form, and words that make them no age of a piece. Phrases of our own. */
import { describe, expect, it } from 'vitest';
import { ageOf } from '#engine/hear/choices/age-told.ts';

const ages = (text: string) => [...new Set(ageOf(text).map(({ value }) => value))].join(' ');
const OLD = 'before-1993';

describe('a decade', () => {
  const SPELLED = 'twenties thirties forties fifties sixties seventies eighties'.split(' ');
  it.each(SPELLED)('%s', (decade) => {
    expect(ages(`a desk, ${decade}`)).toBe(OLD);
    expect(ages(`a desk of the ${decade}`)).toBe(OLD);
    for (const before of ['in the', 'low', 'mid', 'high', 'upper', 'lower', 'around'])
      expect(ages(`air ${before} ${decade}`), before).toBe('');
    for (const behind of ['inside', 'outside', 'in the shop', 'degrees'])
      expect(ages(`air, ${decade} ${behind}`), behind).toBe('');
    expect(ages(`a desk, qu${decade}`)).toBe('');
    expect(ages(`a desk, ${decade}qu`)).toBe('');
  });
  it.each(['30s', '40s', '50s', '60s', '70s', '80s', "60's", '60’s'])('%s', (decade) => {
    expect(ages(`a desk, ${decade}`)).toBe(OLD);
    for (const before of ['in the', 'the', 'low', 'mid', 'high', 'upper', 'lower', 'around', 'about'])
      expect(ages(`air ${before} ${decade}`), before).toBe('');
    for (const behind of ['grit', 'degrees', '°', 'f', '%', 'percent', 'humid'])
      expect(ages(`air, ${decade} ${behind}`), behind).toBe('');
    for (const glued of [`$${decade}`, `1-${decade}`, `1${decade}`, `${decade}qu`])
      expect(ages(`a desk, ${glued}`), glued).toBe('');
  });
  it.each(['20s', '90s', '65s', '60'])('%s is none', (decade) => {
    expect(ages(`a desk, ${decade}`)).toBe('');
  });
  it.each([
    'of',
    'from',
    ...'made built bought painted finished varnished'
      .split(' ')
      .flatMap((verb) => [
        `${verb} in`,
        `${verb} it in`,
        `${verb} this in`,
        `${verb} that in`,
        `${verb} them in`,
        `${verb} back in`,
        `${verb} it back in`,
      ]),
  ])('%s the 60s', (words) => {
    expect(ages(`a desk ${words} the 60s`)).toBe(OLD);
    expect(ages(`a desk ${words} the 1960s`)).toBe(OLD);
    expect(ages(`a desk ${words} the 60s to 70`)).toBe('');
    expect(ages(`a desk ${words} the 60s degrees`)).toBe('');
    expect(ages(`a desk qu${words} the 60s`)).toBe('');
  });
});

describe('a year', () => {
  it.each([
    'book',
    'books',
    'magazine',
    'magazines',
    'catalog',
    'plane',
    'planes',
    'truck',
    'car',
    'law',
    'ban',
    'standard',
    'style',
    'reprint',
    'edition',
    'build',
    'they say',
    'sell',
    'sold',
  ])('of a %s is none of the piece', (words) => {
    expect(ages(`${words} of 1950`)).toBe('');
    expect(ages(`${words}. It is of 1950`)).toBe(OLD);
    expect(ages(`qu${words} of 1950`)).toBe(OLD);
    expect(ages(`${words}qu of 1950`)).toBe(OLD);
  });
  it.each(['book', 'books', 'magazine', 'style', 'truck', 'car', 'may have'])(
    'before a %s is none',
    (words) => {
      expect(ages(`1950 ${words}`)).toBe('');
      expect(ages(`1950 good ${words}`)).toBe('');
      expect(ages(`1950 good old ${words}`)).toBe('');
      expect(ages(`1950s ${words}`)).toBe('');
      expect(ages(`1950's ${words}`)).toBe('');
      expect(ages(`1950 good old brown ${words}`)).toBe(OLD);
      expect(ages(`1950, ${words}`)).toBe(OLD);
      expect(ages(`1950 ${words}qu`)).toBe(OLD);
    },
  );
  it.each(['11950', '19500', '1750', '2050', 'x1950', '1950x'])('%s is none', (figure) => {
    expect(ages(`a desk, ${figure}`)).toBe('');
  });
  it.each(['at', "I'm", 'im', 'i’m', "he's", "she's", "dad's", "mom's", "who's", "uncle's"])(
    '%s 80 years old is somebody',
    (who) => {
      expect(ages(`${who} 80 years old`)).toBe('');
      expect(ages(`qu${who}, it is 80 years old`)).toBe(OLD);
    },
  );
  it.each([
    '80 years old',
    '80-years-old',
    '80 year old',
    '80-year-old',
    'hundred years old',
    '110 years old',
    'fifty year old',
    'sixty-year-old',
    'seventy years old',
    'eighty years old',
    'ninety years old',
  ])('%s', (age) => {
    expect(ages(`a desk ${age}`)).toBe(OLD);
    expect(ages(`a desk qu${age}`)).toBe('');
    expect(ages(`a desk ${age}qu`)).toBe('');
  });
});
