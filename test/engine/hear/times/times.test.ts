/**
 * Hours since the coat, by the small lexicon: which of several times is that of the last coat. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import { hoursOf } from '#engine/hear/times/times.ts';
import { ear, mannerIn } from '../small-ear.ts';

const hours = (text: string) => {
  const { words, matches, manner } = mannerIn(text);
  const [found] = hoursOf(ear, words, matches, manner);
  return found && found.sure >= 0.7 ? Number(found.value) : undefined;
};

describe('hours since the coat', () => {
  it.each<[string, number | undefined]>([
    ['brushed it two days ago', 48],
    ['I laid it two days ago', 48],
    ['two days, sticky', 48],
    ['it has been two days', 48],
    ['after two days it is sticky', 48],
    ['two days later bubbles', 48],
    ['two days later we left', undefined],
    ['the coat has had two days', 48],
    ['two days so far, sticky', 48],
    ['two weeks of drying', 336],
    ['now, at 22 hours, sticky', 22],
    ['not even two days and sticky', 48],
    ['I bought two days of it', undefined],
    ['want to wait two days', undefined],
    ['the can says two days', undefined],
    ['the poly is two days old', 48],
    ['the dog is two days old', undefined],
    ['brushed it overnight', 12],
    ['laid it yesterday', 24],
    ['overnight it is sticky', 12],
    ['slept overnight', undefined],
    ['it has been overnight, sticky', 12],
    ['want it overnight', undefined],
    ['brushed it two days ago, saw it yesterday', 48],
    ['brushed it two days ago. Yesterday we saw bubbles', 48],
    ['brushed it two days ago. Yesterday I brushed it', 24],
    ['waited two days, brushed on a coat', 48],
    ['waited two days after the last coat, soft', 48],
    ['two days since the last coat, a week since the first', 48],
    ['laid it five days ago, three days later soft', 120],
    ['three days later soft, laid it five days ago', 120],
    ['day three and it is soft', 66],
    ['soft on the third day', 66],
    ['no time', undefined],
    ['the can of poly gelled two days ago', undefined],
  ])('%s: %s', (text, wanted) => {
    const value = hours(text);
    if (wanted === undefined) expect(value).toBeUndefined();
    else expect(value).toBeCloseTo(wanted, 1);
  });
  it('are told about as wide as they are said', () => {
    const of = (text: string) => {
      const { words, matches, manner } = mannerIn(text);
      return hoursOf(ear, words, matches, manner)[0];
    };
    const lone = of('brushed it two days ago');
    expect(lone?.against).toEqual([]);
    expect(lone?.range?.[0]).toBeLessThan(48);
    expect(lone?.range?.[1]).toBeGreaterThan(48);
    // What is said to be about a time is told so wide.
    expect((lone?.range?.[0] ?? 0) / 48).toBeGreaterThan(0.5);
    expect((lone?.range?.[1] ?? 0) / 48).toBeLessThan(2);
  });
  it('what was laid again after it makes it less sure', () => {
    const sure = (text: string) => {
      const { words, matches, manner } = mannerIn(text);
      return hoursOf(ear, words, matches, manner)[0]?.sure ?? 0;
    };
    expect(sure('two days. Then sprayed it')).toBeLessThan(sure('two days. Then saw it'));
    expect(sure('two days and still soft. Then sprayed it')).toBeGreaterThan(
      sure('two days. Then sprayed it'),
    );
  });
});
