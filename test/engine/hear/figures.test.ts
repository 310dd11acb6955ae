/**
 * Figures of a text against figures reckoned here: degrees by the two scales (32 °F is 0 °C, 212 °F is 100 °C), hours
 * between two times of a 24-hour clock, numbers spelled out by the rules of English. Sentences of our own.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ageOf } from '#engine/hear/age-told.ts';
import { hoursByClock } from '#engine/hear/clock-times.ts';
import { inDigits } from '#engine/hear/digits.ts';
import { filmOf } from '#engine/hear/film.ts';
import { humidities } from '#engine/hear/humidity.ts';
import { nearUnits } from '#engine/hear/near-units.ts';
import { settledReading } from '#engine/hear/reading.ts';
import { temperatures } from '#engine/hear/temperatures.ts';
import { hearing } from './hearing.ts';

const ONES = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

describe('numbers in words', () => {
  it('from twenty to a hundred and ten are their digits, each text as long as it was', () => {
    for (let value = 20; value < 100; value++)
      for (const join of ['-', ' ']) {
        const spelled = [TENS[Math.floor(value / 10)], ONES[value % 10]].filter(Boolean).join(join);
        for (const said of [spelled, spelled.toUpperCase()]) {
          const text = `it is ${said} today`;
          const found = inDigits(text);
          expect(found).toHaveLength(text.length);
          expect(found.replace(/ +/g, ' ')).toBe(`it is ${value} today`);
        }
      }
    for (const [said, value] of [
      ['a hundred', 100],
      ['one hundred', 100],
      ['a hundred and five', 105],
      ['one hundred five', 105],
      ['a hundred and ten', 110],
      ['one hundred and a ten', 110],
    ] as const)
      expect(inDigits(`at ${said} now`).replace(/ +/g, ' ')).toBe(`at ${value} now`);
  });
  it('that count coats stay apart, and words that are no numbers stay', () => {
    expect(inDigits('at seventy two coats')).toMatch(/^at 70\s+two coats$/);
    expect(inDigits('at seventy two hundred')).toMatch(/^at 70\s+two hundred$/);
    for (const text of ['one two ten', 'ninetyish', 'hundreds of them', 'a twentyfold', 'nothing here'])
      expect(inDigits(text)).toBe(text);
  });
});

const air = (text: string) => temperatures(text).air;
const surface = (text: string) => temperatures(text).surface;
const holds = (readings: readonly { low: number; high: number }[], value: number) =>
  readings.some(({ low, high }) => low <= value && value <= high && high - low < 10);

describe('degrees', () => {
  it('of both scales are told in Celsius, by the freezing and the boiling of water', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 110 }), (fahrenheit) => {
        const value = (100 * (fahrenheit - 32)) / (212 - 32);
        for (const unit of [
          ' F',
          '°F',
          ' °F',
          ' degrees F',
          ' deg. F',
          ' fahrenheit',
          ' degrees fahrenheit',
          'f',
        ])
          expect(holds(air(`the shop, ${fahrenheit}${unit}, today`), value), unit).toBe(true);
      }),
      { numRuns: 25 },
    );
    fc.assert(
      fc.property(fc.integer({ min: -10, max: 45 }), (celsius) => {
        for (const unit of [' C', '°C', ' º C', ' degrees C', ' celsius', ' centigrade', 'c'])
          expect(holds(air(`the shop, ${celsius}${unit}, today`), celsius), unit).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
  it('from one to another hold both, whichever stands first', () => {
    for (const text of ['60-70 F', '60 to 70 F', '60 or 70 °F', '60 and 70 F', '60–70 F', '70 to 60 F']) {
      const [found] = air(`it is ${text} here`);
      expect(found?.low).toBeLessThan(15.6);
      expect(found?.low).toBeGreaterThan(14.5);
      expect(found?.high).toBeGreaterThan(21.1);
      expect(found?.high).toBeLessThan(22.2);
    }
  });
  it('without a scale are Fahrenheit from 38 on, and below that in doubt', () => {
    expect(holds(air('it is 50 degrees'), 10)).toBe(true);
    expect(holds(air('it is 38 degrees'), 3.3)).toBe(true);
    expect(air('it is 50 degrees')[0]?.sure).toBeGreaterThanOrEqual(0.7);
    for (const value of [8, 20, 37]) {
      const [found] = air(`it is ${value} degrees`);
      expect(holds([found ?? { low: 0, high: 99 }], value)).toBe(true);
      expect(found?.sure).toBeLessThan(0.7);
    }
    expect(air('it is 7 degrees')).toEqual([]);
  });
  it.each([
    'mitered at 45 degrees',
    'beveled to 45 degrees',
    'cut 45 degrees',
    'turned it 90 degrees',
    'at an angle of 45 degrees',
    'tilted 60 degrees',
    'a box that holds 100 degrees',
  ])('%s: an angle, or another place', (text) => {
    expect(air(text)).toEqual([]);
  });
  it.each(['180 F', '300 degrees F', '-30 C', '61 C'])('%s is no air and no film', (text) => {
    expect(temperatures(`it was ${text}`)).toEqual({ air: [], surface: [] });
  });
  it('alone are heard beside words of the air', () => {
    for (const text of [
      'temp 68',
      'the shop was 68',
      'it is 68 outside',
      'thermostat at 68',
      'about 68 in here',
      'kept it at 68',
      'got down to 68',
      'it was 68 at night',
      '68 and raining',
      'when I brushed it was 68',
    ])
      expect(holds(air(text), 20), text).toBe(true);
    for (const text of [
      '68 of them',
      'sanded with 68',
      'grit 68, temp',
      '68 grit in the shop',
      'temp: 68 hours',
      'temp 168',
      'temp 30',
      'psi 68 in the shop',
      'he is 68 years and cold',
      'humidity is 68 in here',
      'room, $68',
    ])
      expect(air(text), text).toEqual([]);
  });
  it('in tens hold their part of the ten', () => {
    for (const [part, from, to] of [
      ['low', 60, 63],
      ['mid', 64, 66],
      ['middle', 64, 66],
      ['high', 67, 69],
      ['upper', 67, 69],
    ] as const) {
      const [found] = air(`in the ${part} 60s`);
      for (const value of [from, to])
        expect(holds([found ?? { low: 0, high: 99 }], ((value - 32) * 5) / 9)).toBe(true);
      expect(holds([found ?? { low: 0, high: 99 }], ((from - 2 - 32) * 5) / 9)).toBe(false);
      expect(holds([found ?? { low: 0, high: 99 }], ((to + 2 - 32) * 5) / 9)).toBe(false);
    }
    for (const value of [60, 69]) expect(holds(air('it is in the 60s'), ((value - 32) * 5) / 9)).toBe(true);
    expect(air('he built it in the 60s')).toEqual([]);
    expect(air('they were painted back in the 60s')).toEqual([]);
  });
  it('of a surface are told apart from the air', () => {
    for (const text of [
      'the wood reads 52 F',
      'the panel itself read 52 F',
      'my laser says 52 F',
      'infrared shows 52 F',
      'ir gun 52 F',
      '52 F on the surface',
      'the top measured 52 F',
    ]) {
      expect(holds(surface(text), 11.1), text).toBe(true);
      expect(air(text), text).toEqual([]);
    }
    for (const text of [
      'the floor surface, 52 F',
      'the room air surface 52 F',
      'the concrete slab was 52 F',
      'it reads 52 F',
    ])
      expect(surface(text), text).toEqual([]);
    const both = temperatures('the wood reads 52 F, the air is 68 F');
    expect(holds(both.surface, 11.1) && holds(both.air, 20)).toBe(true);
  });
});

describe('humidity', () => {
  const holdsShare = (text: string, share: number) =>
    humidities(text).some(({ low, high }) => low <= share && share <= high && high - low <= 0.2);
  it('is a share of a hundred, in figures or named', () => {
    for (let value = 20; value <= 100; value += 5)
      for (const text of [
        `humidity ${value}%`,
        `${value} % humidity`,
        `RH of ${value}`,
        `${value} percent RH`,
        `hygrometer said ${value}`,
        `the humidity is about ${value}`,
        `hum ${value}`,
      ])
        expect(holdsShare(text, value / 100), text).toBe(true);
    for (const text of ['humidity is 60 to 70', 'humid, 60-70 %', 'rh 60 and 70'])
      expect(holdsShare(text, 0.6) && holdsShare(text, 0.7), text).toBe(true);
  });
  it('that fell is where it ended', () => {
    expect(holdsShare('humidity 80 to 48 %', 0.48)).toBe(true);
    expect(humidities('humid, 80 to 48 %')[0]?.high).toBeLessThan(0.6);
  });
  it('in tens is the ten', () => {
    for (const [said, ten] of [
      ['sixties', 0.6],
      ['seventies', 0.7],
      ['eighties', 0.8],
      ['nineties', 0.9],
      ['80s', 0.8],
      ["80's", 0.8],
    ] as const)
      for (const value of [ten, ten + 0.09])
        expect(holdsShare(`humidity in the ${said}`, value), said).toBe(true);
    expect(holdsShare('humidity in the high 80s', 0.85)).toBe(true);
    expect(humidities('he is in his eighties')).toEqual([]);
    expect(humidities('humidity in the 00s')).toEqual([]);
  });
  it.each([
    'thinned 20 %',
    '20% off, humid',
    'humid, 20 % retarder',
    'humid, 20% water',
    'humid, 20 % mix',
    '20 percent of them',
    'humidity 70 years ago',
    'humidity 14 %',
    'humidity 101 %',
    'RH 70 hours',
    'humidity, 70 F',
  ])('%s: none', (text) => {
    expect(humidities(text)).toEqual([]);
  });
});

describe('hours by the clock', () => {
  const hours = (text: string) => {
    const [found] = hoursByClock(text);
    return found && { value: Number(found.value), range: found.range };
  };
  const said = (minutes: number) => {
    const hour = Math.floor(minutes / 60) % 24;
    const rest = minutes % 60;
    return `${hour % 12 || 12}${rest ? `:${String(rest).padStart(2, '0')}` : ''} ${hour < 12 ? 'am' : 'pm'}`;
  };
  it('are those of a 24-hour clock, over midnight too', () => {
    fc.assert(
      fc.property(fc.nat({ max: 95 }), fc.integer({ min: 1, max: 95 }), (start, more) => {
        const text = `brushed it at ${said(start * 15)}, it is ${said((start + more) * 15)} now`;
        const found = hours(text);
        expect(found?.value, text).toBeCloseTo((more * 15) / 60, 9);
        expect(found?.range?.[0]).toBeLessThanOrEqual((more * 15) / 60);
        expect(found?.range?.[1]).toBeGreaterThanOrEqual((more * 15) / 60);
      }),
      { numRuns: 120 },
    );
  });
  it.each([
    ['half past eight', 'quarter to eleven', 2.25],
    ['ten to nine', 'ten past ten', 1.33],
    ['twenty after two', 'quarter till four', 1.42],
    ['five minutes before six', '7 o’clock', 1.08],
    ['noon', '3 pm', 3],
    ['midday', '3 pm', 3],
    ['midnight', '6 am', 6],
    ['nine', 'eleven', 2],
    ['11', '2', 3],
    ['seven thirty', 'nine fifteen', 1.75],
    ['seven forty-five', 'nine', 1.25],
    ['7 in the morning', 'noon', 5],
    ['9 p.m.', '7 a.m.', 10],
    ['10 last night', '7 this morning', 9],
    ['2 last night', '7 this morning', 5],
    ['8 this evening', '10 tonight', 2],
  ])('brushed it at %s, it is %s now: %d', (from, to, value) => {
    expect(hours(`brushed it at ${from}, it is ${to} now`)?.value).toBeCloseTo(value, 1);
  });
  it('of meals are told as loosely as they are', () => {
    const found = hours('brushed it after breakfast, it is noon now');
    expect(found?.value).toBeCloseTo(4, 0);
    expect((found?.range?.[1] ?? 0) - (found?.range?.[0] ?? 0)).toBeGreaterThan(2);
    expect(hours('brushed it after lunch, now it is 6 pm')?.value).toBeCloseTo(5.5, 0);
  });
  it('since yesterday are a day more', () => {
    expect(hours('brushed it yesterday at 6 pm, it is 8 am now')?.value).toBe(14);
    expect(hours('brushed it yesterday at 8 am, it is 8 am now')?.value).toBe(24);
    expect(hours('brushed it yesterday at 8 am, it is 6 pm now')?.value).toBe(34);
    expect(hours('brushed it yesterday at 8, it is 6 now')).toBeUndefined();
  });
  it('are those from the laying, and to now', () => {
    expect(hours('up at 6 am, brushed it at 8 am, it is 11 am now')?.value).toBe(3);
    expect(hours('it is 11 am now, I brushed it at 8 am')?.value).toBe(3);
    expect(hours('brushed it at 8 am and at 11 am it was dull')?.value).toBe(3);
    expect(hours('at 8 am the coat went on, then at 11 am it was dull')?.value).toBe(3);
  });
  it.each([
    'brushed it at 8 am',
    'got up at 8 am, it is 11 am now',
    'brushed it two days ago at 8 am, it is 11 am now',
    'brushed it on monday at 8 am, it is 11 am now',
    'brushed it at 13, it is 15 now',
    'brushed it with 8, it is 11 coats now',
    'brushed 8 of 11',
    '',
  ])('%s: none', (text) => {
    expect(hours(text)).toBeUndefined();
  });
});

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

describe('words of the air, nearly written', () => {
  it('are put right where they stand, with every other letter in its place', () => {
    for (const [typed, short] of [
      ['degres', 'deg'],
      ['degreees', 'deg'],
      ['humidty', 'hum'],
      ['humdity', 'hum'],
      ['celcius', 'c'],
      ['farenheit', 'f'],
      ['Humidiy', 'hum'],
    ] as const) {
      const text = `it is 68 ${typed} today`;
      const found = nearUnits(text, hearing.lexicon.airUnits);
      expect(found).toHaveLength(text.length);
      expect(found).toBe(`it is 68 ${short.padEnd(typed.length)} today`);
    }
  });
  it.each([
    'it is 68 degrees',
    'humidity',
    'one degree',
    'humid day',
    'degreaser',
    'identity',
    'humble',
    'celery',
  ])('%s stays', (text) => {
    expect(nearUnits(text, hearing.lexicon.airUnits)).toBe(text);
  });
});

describe('how thick the film is', () => {
  it('is told dry, in mils of 25.4 micrometers', () => {
    for (const text of ['4 mils dry', '4 mil dry film']) {
      const [found] = filmOf(text);
      expect(found?.fact).toBe('film-micrometers');
      expect(Number(found?.value)).toBeCloseTo(101.6, 0);
    }
    for (const text of ['4 mils wet', 'a 4 mil bag', '4 dry coats', '']) expect(filmOf(text)).toEqual([]);
  });
});

describe('of several figures', () => {
  const reading = (text: string, said: string, low: number, high: number, sure = 0.9) => ({
    from: text.indexOf(said),
    to: text.indexOf(said) + said.length,
    low,
    high,
    sure,
  });
  const settled = (text: string, ...figures: readonly [string, number, number?][]) => {
    const [found] = settledReading(
      text,
      'air-celsius',
      figures.map(([said, value, sure]) => reading(text, said, value - 1, value + 1, sure)),
      (value) => value,
      50,
    );
    return found;
  };
  it('the one of the coat or of now goes first, else where it ended, else the surest', () => {
    expect(settled('it was 10 in May, 20 now', ['10', 10], ['20', 20])?.value).toBe(20);
    expect(settled('it was 20 when I brushed, 10 later', ['20', 20], ['10', 10])?.value).toBe(20);
    expect(settled('it was 30, it fell to 10', ['30', 30], ['10', 10])?.value).toBe(10);
    expect(settled('at 30 or at 10', ['30', 30, 0.8], ['10', 10, 0.9])?.value).toBe(10);
    expect(settled('at 30 or at 10', ['30', 30, 0.9], ['10', 10, 0.8])?.value).toBe(30);
    expect(settled('at 30')).toBeUndefined();
  });
  it('those that part stand against it, and make it less sure', () => {
    const lone = settled('at 30 here', ['30', 30]);
    expect(lone).toMatchObject({ sure: 0.9, against: [], range: [29, 31] });
    const two = settled('at 30 or at 10', ['30', 30, 0.9], ['10', 10, 0.8]);
    expect(two?.sure).toBeLessThan(0.9);
    expect(two?.against).toEqual([{ from: 12, to: 14 }]);
    expect(settled('at 30 or at 31', ['30', 30, 0.9], ['31', 31, 0.8])).toMatchObject({
      sure: 0.9,
      against: [],
    });
    expect(settled('at 30 or at 10', ['30', 30, 0.9], ['10', 10, 0.5])?.against).toEqual([]);
    expect(settled('at 49 here', ['49', 49.5])?.range?.[1]).toBe(50);
  });
  it.each([
    'the oven at 30',
    'label says 30',
    'above 30',
    'last winter it was 30',
    'usually 30',
    'up to 30',
    '30 last year',
    '30 year round',
  ])('%s: doubted', (text) => {
    expect(settled(text, ['30', 30])?.sure).toBeLessThan(0.7);
  });
  it.each([
    'it is 30',
    'the oven. Air at 30',
    'usually, I am slow, 30',
    '30 now, not last year as it was then, oh no no no no',
  ])('%s: not', (text) => {
    expect(settled(text, ['30', 30])?.sure).toBe(0.9);
  });
});
