/**
 * Where a kind of finish lies, and whether it was laid, word by word. Sentences of our own.
 */
import { describe, expect, it } from 'vitest';
import type { Match } from '#engine/hear/words/match.ts';
import { isLaid, isOfBelow, placeOf } from '#engine/hear/words/place.ts';
import { marked } from '../marked.ts';

const matchOf = ({ from, to }: { from: number; to: number }, more: Partial<Match> = {}): Match => ({
  sense: '',
  kind: '',
  of: [],
  from,
  to,
  size: to - from,
  ...more,
});

describe('where a kind of finish lies', () => {
  const ear = { below: new Set(['over', 'old', 'under']), onTop: new Set(['with', 'top']) } as never;
  const place = (text: string) => {
    const { words, from, to } = marked(text);
    return placeOf(ear, words, matchOf({ from, to }));
  };
  it.each([
    ['over [shellac]', 'below'],
    ['over the old [shellac]', 'below'],
    ['over all that [shellac]', 'below'],
    ['over it all that [shellac]', undefined],
    ['over it, [shellac]', undefined],
    ['over primer and [lacquer]', undefined],
    ['over the table with [shellac]', undefined],
    ['covered with [shellac]', 'top'],
    ['primed with [shellac]', 'top'],
    ['sealed with [shellac]', 'top'],
    ['done with [shellac]', undefined],
    ['a 20 year old [oil] chest', undefined],
    ['an old [oil] chest', 'below'],
    ['[shellac] underneath', 'below'],
    ['[shellac] first', 'below'],
    ['[shellac] primer', 'below'],
    ['[oil] under the seat', undefined],
    ['[shellac], first', undefined],
    ['[shellac] over it', 'top'],
    ['[shellac] topcoat', 'top'],
    ['[shellac] on it', 'top'],
    ['[shellac] it is', undefined],
  ] as const)('%s: %s', (text, wanted) => {
    expect(place(text)).toBe(wanted);
  });
  it.each(['[oil] stain', '[shellac] primer', '[oil] paint', '[lacquer] thinner', '[oil] enamel'])(
    '%s is no finish',
    (text) => {
      const { words, from, to } = marked(text);
      expect(isOfBelow(words, matchOf({ from, to }))).toBe(true);
    },
  );
  it.each(['[oil], stain', '[oil] finish', '[oil]'])('%s is one', (text) => {
    const { words, from, to } = marked(text);
    expect(isOfBelow(words, matchOf({ from, to }))).toBe(false);
  });
  it('is told as laid by words before it and right behind it', () => {
    const laid = (text: string) => {
      const { words, from, to } = marked(text);
      return isLaid(words, matchOf({ from, to }));
    };
    for (const text of [
      'two coats of [oil]',
      '3 of [oil]',
      'brushed some [oil]',
      'I put more of the good [oil]',
      'then [oil]',
      '[oil] went on',
      '[oil] on it',
      '[oil] last night',
      '[oil] it yesterday',
    ])
      expect(laid(text)).toBe(true);
    for (const text of [
      'the [oil]',
      'brushed, [oil]',
      'brushed it all day long with more of [oil]',
      '[oil], on it',
      '[oil] it is on',
      'a can of [oil]',
    ])
      expect(laid(text)).toBe(false);
  });
});
