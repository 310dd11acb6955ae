/**
 * How thick a dry film is told to be; a mil is 25.4 micrometers.
 */
import { describe, expect, it } from 'vitest';
import { filmOf } from '#engine/hear/measures/film.ts';

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
