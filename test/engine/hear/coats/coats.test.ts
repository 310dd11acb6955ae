/**
 * Which coat it is, counted on the fingers. Sentences of our own; how people count coats is common practice, no source.
 * A count that is wanted, planned, asked or of another layer is no coat laid.
 */
import { describe, expect, it } from 'vitest';
import { fact } from '../hearing.ts';

const COAT = 'coat-number';
const value = (text: string) => fact(text, COAT)?.value;
const range = (text: string) => fact(text, COAT)?.range?.map(Number);

describe('a number before coats', () => {
  it.each<[string, number]>([
    ['I put on one coat of poly', 1],
    ['I brushed on two coats of poly', 2],
    ['brushed three thin coats of varnish', 3],
    ['sprayed 4 coats of lacquer', 4],
    ['it has five layers of shellac', 5],
    ['wiped on six very thin coats of oil', 6],
    ['the second coat of poly is rough', 2],
    ['after the 3rd coat of varnish I saw bubbles', 3],
    ['my 7th coat of oil', 7],
    ['the tenth coat of shellac', 10],
    ['four applications of oil on it', 4],
    ['the third round of poly is cloudy', 3],
    ['two passes of lacquer', 2],
    ['poly coat number four is hazy', 4],
    ['coat 3 of poly is hazy', 3],
    ['poly x2 on the top', 2],
    ['coats 2 and 3 of poly went on yesterday', 3],
    ['coats two and three of clear went on', 3],
    ['two coats of satin poly and two of gloss', 4],
    ['20 coats of oil', 20],
  ])('%s: %i', (text, count) => {
    expect(value(text)).toBe(count);
    expect(range(text)).toEqual([count, count]);
  });

  it('"9 or 10", "two to three": both ends', () => {
    expect(range('I laid 9 or 10 coats of oil')).toEqual([9, 10]);
    expect(range('two to three coats of poly')).toEqual([2, 3]);
  });

  it('words that name no number are wide', () => {
    expect(range('several coats of poly')).toEqual([3, 7]);
    expect(range('a few coats of poly')).toEqual([2, 5]);
    expect(range('multiple coats of poly')).toEqual([2, 6]);
    expect(range('many coats of poly')).toEqual([4, 10]);
    expect(fact('several coats of poly', COAT)?.sure).toBeLessThan(
      fact('three coats of poly', COAT)?.sure ?? 0,
    );
  });

  it('rests on what names it', () => {
    const text = 'Last week I brushed three thin coats of varnish on it.';
    expect(fact(text, COAT)?.rests.map(({ from, to }) => text.slice(from, to))).toEqual(['three thin coats']);
  });
});

describe('no count of coats laid', () => {
  it.each([
    'how many coats of poly do I need',
    'too many coats of poly',
    'I need three coats of poly',
    'I want to put two coats of poly on',
    'the can recommends three coats of poly',
    'he says four coats of varnish',
    'varnish, three coats planned',
    'I usually lay three coats of poly',
    'two coats of poly is enough',
    'is it two hours between coats of poly',
    'two coats of oil stain under the poly',
    '3 coats of primer, then poly',
    'the poly went from one coat to the next',
    'before the third coat of poly I will sand',
    '21 coats of oil',
    'I am going to lay three coats of poly',
    'the second hand of the clock, poly on its case',
    'the second time I used poly',
    'sand for 2 minutes between coats of poly',
  ])('%s', (text) => {
    expect(value(text)).toBeUndefined();
  });
});

describe('of several the highest that is laid, with what came later', () => {
  it.each<[string, number]>([
    ['the first coat of poly was fine, the second coat is hazy', 2],
    ['I sanded after the first coat of poly and after the second coat and now the third coat is on', 3],
    ['two coats of poly, then two more on', 4],
    ['two coats of poly yesterday, one more today', 3],
    ['first coat of poly fine. The second is sticky', 2],
    ['put on two coats of poly, then another coat', 3],
    ['I put the gloss poly on, then another coat', 2],
    ['three coats of paint and two of clear', 2],
    ['two coats of paint, one of poly', 1],
    ['I brushed on three so far of the poly', 3],
    ['poly, three coats wanted, two on', 2],
    ['two coats of poly on the legs and four on the top', 4],
    ['rubbed in oil four times', 4],
    ['oiled it twice', 2],
    ['two coats of paint on it', 2],
    ['three coats of poly. Stripped it all and laid one coat of poly', 1],
  ])('%s: %i', (text, count) => {
    expect(value(text)).toBe(count);
  });

  it('what was counted otherwise speaks against it', () => {
    const text = 'the first coat of poly was fine, the second coat is hazy';
    expect(fact(text, COAT)?.against.map(({ from, to }) => text.slice(from, to))).toEqual(['first coat']);
    expect(fact('two coats of poly', COAT)?.against).toEqual([]);
  });

  it('with another on it is less sure, and one more is possible', () => {
    const two = fact('put on two coats of poly', COAT)?.sure ?? 0;
    expect(fact('put on two coats of poly, then another coat', COAT)?.sure).toBeLessThan(two);
    expect(fact('two coats of poly, then two more on', COAT)?.sure).toBeLessThan(two);
    expect(range('put on two coats of poly, then another coat')).toEqual([2, 4]);
    expect(range('two coats of poly, then two more on')).toEqual([4, 4]);
  });

  it('another that is asked, planned or denied is none', () => {
    for (const text of [
      'put on two coats of poly. Should I put another coat on?',
      'put on two coats of poly, I will lay another coat',
      'put on two coats of poly and need another coat',
      'put on two coats of poly before another coat',
    ])
      expect(value(text), text).toBe(2);
  });
});
