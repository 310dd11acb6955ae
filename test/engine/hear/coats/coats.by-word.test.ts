/**
 * Which coat it is, by the small lexicon, in pairs of sentences of our own. How people count is common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { coatNumberOf } from '#engine/hear/coats/coats.ts';
import type { Manner } from '#engine/hear/words/manner.ts';
import { counting as ear, read } from '../small-ear.ts';

const plain: Manner = {
  denied: () => undefined,
  notYet: () => false,
  feared: () => false,
  over: () => false,
};

describe('which coat it is', () => {
  const coat = (text: string, isTopNamed = true, family?: string, manner = plain) => {
    const [found] = coatNumberOf(ear, read(text).words, manner, isTopNamed, family);
    return found && found.sure >= 0.7 ? Number(found.value) : undefined;
  };
  it.each<[string, number | undefined]>([
    ['three coats', 3],
    ['three coats of clear and two of satin', 5],
    ['three coats of paint and two of clear', 2],
    ['two coats of stain', undefined],
    ['two coats of oil stain', undefined],
    ['two coats of primer and one of clear', 1],
    ['two coats of clear over stain', 2],
    ['from one coat to the next', undefined],
    ['cover in one coat at most', undefined],
    ['three coats a day', undefined],
    ['three coats each day', undefined],
    ['three coats a door', 3],
    ['one coat a day', 1],
    ['the third coat a day later', 3],
    ['coat number four', 4],
    ['coat 4 is dull', 4],
    ['coat 4 hours ago', undefined],
    ['layer 4', undefined],
    ['a coat of clear', 1],
    ['a thin coat of clear', 1],
    ['a final coat of clear', undefined],
    ['a new coat of clear', undefined],
    ['a coat of clear and a coat of poly', undefined],
    ['a coat of it', undefined],
    ['three coats before it', 3],
    ['before the third coat', undefined],
    ['I need three coats', undefined],
    ['he says three coats', undefined],
    ['usually three coats', undefined],
    ['three coats enough', undefined],
    ['three coats needed', undefined],
    ['three coats are needed', undefined],
    ['25 coats', undefined],
    ['20 coats', 20],
    ['half coat', undefined],
    ['I am on my fourth and it is dull', 4],
    ['on my fourth hour', undefined],
    ['my fourth it is', undefined],
    ['one coat. The second is dull', 2],
    ['one coat, the second day', 1],
    ['one coat. After the second one there are dots', 1],
    ['one coat. After the second one I saw dots', 2],
    ['one coat. After the second one', 2],
    ['one coat. Second hand', 1],
    ['one coat. Then second', 2],
    ['one coat. Put a second on', 2],
    ['one coat. Saw a second on', 1],
    ['one coat. Thinned the second a little', 2],
    ['one coat. Saw the second a little', 1],
    ['one coat the next day, buffed on the third', 1],
    ['one coat on it, then the third', 3],
    ['two coats of clear, two more on', 4],
    ['two coats of clear, two more', 4],
    ['two coats of clear, two more coats', 4],
    ['two coats of clear, two more doors', 2],
    ['two coats of clear, two more days', 2],
    ['two coats of clear, seven more', 2],
    ['two more on, two coats', 2],
    ['two coats, put on another', 3],
    ['two coats, another coat', 3],
    ['two coats, need another coat', 2],
    ['two coats, another day', 2],
    ['two coats, brushed a coat', 3],
    ['two coats, a coat', 2],
    ['I laid it, then another coat', 2],
    ['then another coat', undefined],
    ['five coats, stripped, two coats', 2],
    ['five coats, stripped', 5],
    ['three coats, oiled it four times', 4],
    ['eighteen', undefined],
  ])('%s: %s', (text, wanted) => {
    expect(coat(text)).toBe(wanted);
  });
  it('of another kind is none of this', () => {
    expect(coat('three coats of shellac', true, 'lacquer')).toBeUndefined();
    expect(coat('three coats of shellac', true, 'shellac')).toBe(3);
    expect(coat('three coats of shellac', true)).toBe(3);
    expect(coat('three coats of oil', true, 'hardwax-oil')).toBe(3);
    expect(coat('three coats of oil', true, 'oil-based')).toBe(3);
    expect(coat('three coats of oil', true, 'lacquer')).toBeUndefined();
    expect(coat('three coats of lacquer', true, 'water-lacquer')).toBe(3);
    expect(coat('three coats of wax', true, 'oil')).toBeUndefined();
  });
  it('of paint counts where no top coat is named', () => {
    expect(coat('two coats of paint', false)).toBe(2);
    expect(coat('two coats of paint', true)).toBeUndefined();
    expect(coat('then another coat', false)).toBeUndefined();
  });
  it('that is planned, or somebody else’s, is none', () => {
    expect(coat('three coats', true, undefined, { ...plain, notYet: () => true })).toBeUndefined();
    expect(coat('my buddy put three coats on his')).toBeUndefined();
    expect(coat('two coats, another coat', true, undefined, { ...plain, denied: () => 0 })).toBe(2);
  });
});
