/**
 * How the sentences of a reply are cut and joined, by laws.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitted } from '#engine/hear/reply/fitted.ts';
import { ended, firstSentence, lower } from '#engine/plain/text.ts';

const part = fc.string({ unit: fc.constantFrom(...'ab .'), maxLength: 12 });

describe('what fits', () => {
  it('is never longer than it may be, keeps the order, drops whole parts alone, and always ends in the last', () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 6 }), part, fc.nat({ max: 40 }), (parts, last, most) => {
        const text = fitted(parts, last, most);
        expect(text.endsWith(last)).toBe(true);
        expect(text.length).toBeLessThanOrEqual(Math.max(most, last.length));
        // Kept one by one: each that still fits, as someone would try them with scissors.
        let kept = last;
        let head = '';
        for (const one of parts.filter(Boolean)) {
          const tried = [head, one].filter(Boolean).join(' ');
          if (`${tried} ${last}`.length > most) continue;
          head = tried;
          kept = last ? `${tried} ${last}` : tried;
        }
        expect(text).toBe(kept);
      }),
      { numRuns: 150 },
    );
    expect(fitted(['', 'a', ''], 'b', 9)).toBe('a b');
    expect(fitted(['aaaa', 'b'], 'c', 4)).toBe('b c');
    expect(fitted(['a'], 'b', 3)).toBe('a b');
    expect(fitted(['a'], 'b', 2)).toBe('b');
    expect(fitted([], '', 9)).toBe('');
  });
});

describe('a sentence', () => {
  it.each([
    ['One. Two.', 'One.'],
    ['One! Two', 'One!'],
    ['One? Two', 'One?'],
    ['0.5 mm is thin. More is thick.', '0.5 mm is thin.'],
    ['No stop', 'No stop'],
    ['Ends.', 'Ends.'],
    ['', ''],
  ])('of "%s" the first is "%s"', (text, first) => {
    expect(firstSentence(text)).toBe(first);
  });
  it('ends with a stop of its own, or gets one', () => {
    for (const text of ['Stop.', 'Stop!', 'Stop?']) expect(ended(text)).toBe(text);
    expect(ended('Stop')).toBe('Stop.');
    expect(ended('Stop. Now')).toBe('Stop. Now.');
  });
  it('goes on in a small letter, the rest as it was', () => {
    expect(lower('Runs and Sags')).toBe('runs and Sags');
    expect(lower('')).toBe('');
  });
});
