/** What a page lists of what was found, by the index of the content. Phrases of our own, invented. */
import { describe, expect, it } from 'vitest';
import { readIndex } from '../../content/tools/said.ts';
import { hitsFor } from '../../site/client/find/hits.ts';
import { hitUrl } from '../../site/shared/urls.ts';
import { known } from '../engine/hear/hearing.ts';

const index = readIndex(known, process.cwd());
const first = (words: string) => hitsFor(index, words)[0];

describe('the pages that are listed', () => {
  it.each([
    'bubbles the next morning',
    'bubbles this morning',
    'woke up to bubbles',
    'streaks in the evening',
  ])('are no guess where a word names the flaw: "%s"', (words) => expect(first(words)?.perhaps).toBe(false));

  it('stay a guess where none does', () => expect(first('quantum bath salts')?.perhaps ?? true).toBe(true));

  it('are a guess, and few, where they only speak of a word that is no name of theirs', () => {
    const hits = hitsFor(index, 'ikea');
    expect(hits.every(({ perhaps }) => perhaps)).toBe(true);
    expect(hits.length).toBeLessThanOrEqual(3);
    for (const named of ['lacquer', 'sealer', 'bubbles', 'spray can', 'tung oil'])
      expect(first(named)?.perhaps, named).toBe(false);
  });

  it('begin with the kind of finish where it is asked what one is', () => {
    expect(first('what is shellac')).toMatchObject({ kind: 'product', id: 'shellac', perhaps: false });
    expect(first('What’s shellac?')?.kind).toBe('product');
    expect(hitUrl('product', 'shellac')).toBe('/first-coat/#can');
    expect(
      hitsFor(index, 'my shellac stays soft')
        .slice(1)
        .every(({ kind }) => kind !== 'product'),
    ).toBe(true);
  });

  it.each([
    ['handout for a class', 'learn/practice/sheet'],
    ['worksheet for students', 'learn/practice/sheet'],
    ['poster for the shop', 'learn/wall-card'],
    ['picture for instagram', 'learn/pictures'],
    ['slides for students', 'learn/show'],
    ['kitchen table', 'which-coat'],
  ])('answer "%s" with the tool', (words, tool) =>
    expect(first(words)).toMatchObject({ kind: 'page', id: tool }),
  );
});
