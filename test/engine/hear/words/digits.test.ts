/**
 * Numbers spelled out by the rules of English, and their digits.
 */
import { describe, expect, it } from 'vitest';
import { inDigits } from '#engine/hear/words/digits.ts';

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
