/**
 * Which of several figures is meant: of the coat or of now, where it ended, else the surest. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { settledReading } from '#engine/hear/words/reading.ts';

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
