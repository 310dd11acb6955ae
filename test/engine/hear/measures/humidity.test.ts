/**
 * Humidity in shares of a hundred, in tens and by name. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { humidities } from '#engine/hear/measures/humidity.ts';

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
  it.each([
    ['humidity went from 80 to 48 %', 48],
    ['humidity went from 80 to 48', 48],
    ['the humidity fell from about 80 to 48%', 48],
    ['humidity went up from 40 to 70 percent', 70],
    ['RH rose from 40 to 70', 70],
  ])('%s: %i, where it ended', (text, share) => {
    const [first, ...others] = humidities(text);
    expect(others.filter(({ low }) => Math.abs(low + 0.02 - share / 100) > 0.001)).toEqual([]);
    expect([first?.low, first?.high].map((value) => Math.round(100 * (value ?? 0)))).toEqual([
      share - 2,
      share + 2,
    ]);
  });
  it('that ranged is all of the range', () =>
    expect(
      holdsShare('humidity between 60 and 75 %', 0.6) && holdsShare('humidity between 60 and 75 %', 0.75),
    ).toBe(true));
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
