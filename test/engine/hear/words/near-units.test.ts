/**
 * Words of the air that are nearly written, put right where they stand.
 */
import { describe, expect, it } from 'vitest';
import { nearUnits } from '#engine/hear/words/near-units.ts';
import { hearing } from '../hearing.ts';

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
