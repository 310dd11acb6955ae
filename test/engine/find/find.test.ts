import { describe, expect, it } from 'vitest';
import { buildIndex, type FindDocument, find, type SearchWords } from '#engine/find.ts';

const words: SearchWords = {
  stop: ['the', 'and', 'my', 'on', 'in', 'wont', 'can i', 'poly', 'everything'],
  silent: ['the', 'and', 'my'],
  spellings: { colour: 'color', grey: 'gray' },
};
const page = (id: string, title: string, also: string[], text = ''): FindDocument => ({
  id,
  kind: 'defect',
  title,
  also,
  signs: [],
  text,
});
const documents = [
  page('bubbles', 'Bubbles and foam', ['fizzy', 'air bubbles']),
  page('hair', 'Hair in the film', ['dog hair'], 'A brush that has bubbles in it sheds too.'),
  page('orange', 'Orange peel', ['bumpy spray']),
  page('crater', 'Fisheyes', ['craters']),
  page('drag', 'Base color dragged', ['gray smears']),
  page('dry', 'Will not dry', ['sticky', 'tacky']),
  page('glue', 'Cloudy film', ['hazy', 'foggy']),
];
const elsewhere = [
  { say: 'orange recipe', is: [] },
  { say: 'quantum mortgage', is: [] },
  { say: 'paint a wall', is: [] },
];
// As on the site, people have typed the names of pages more than once.
const typed = documents.flatMap(({ id, title, also }) =>
  [title, ...also].flatMap((say) => [say, `${say} everywhere`].map((one) => ({ say: one, is: [id] }))),
);
const said = [...elsewhere, ...typed];
/** Words that no page and no phrase has stand beside those that one has. */
const kin = {
  kin: {
    foamy: ['foam', 'bubbles', 'froth'],
    hairy: ['hair', 'pelt'],
    dragged: ['let go', 'smears', 'gray', 'dragged'],
  },
};
const index = buildIndex(documents, words, said, kin);
const sure = (query: string): boolean => find(index, query)[0]?.perhaps === false;
const ids = (query: string, typing = false): string[] => find(index, query, { typing }).map(({ id }) => id);

describe('find', () => {
  it('lists a page by its names before one that has the word in running text', () => {
    expect(ids('bubbles')[0]).toBe('bubbles');
  });
  it('reads plurals and other forms', () => expect(ids('bubbly')[0]).toBe('bubbles'));
  it('reads British spelling', () => {
    expect(ids('colour')[0]).toBe('drag');
    expect(ids('grey smear')[0]).toBe('drag');
  });
  it('reads words written as one, and one as two', () => {
    expect(ids('orangepeel')[0]).toBe('orange');
    expect(ids('fish eyes')[0]).toBe('crater');
  });
  it('reads apostrophes and capitals', () => expect(ids("My poly won't DRY!")[0]).toBe('dry'));
  it('reads misspelled words', () => expect(ids('cloudly')[0]).toBe('glue'));
  it('reads words of kin, which no page has, and slips of them', () => {
    expect(ids('froth')[0]).toBe('bubbles');
    expect(ids('frothh')[0]).toBe('bubbles');
    expect(ids('let go')[0]).toBe('drag');
    expect(ids('go let')).toEqual([]);
  });
  it('is less sure of a word of kin than of the word itself', () => {
    const [said] = find(index, 'pelt');
    const [named] = find(index, 'hair');
    expect(said?.id).toBe('hair');
    expect(said?.score).toBeLessThan(named?.score ?? 0);
  });
  it('ignores a slip of a word that says nothing', () => expect(ids('evrything bubbles')[0]).toBe('bubbles'));
  it('ignores pairs of words that say nothing', () => expect(ids('can I bubbles')[0]).toBe('bubbles'));
  it('lists what fits little as perhaps', () => {
    expect(sure('hair on the wall of my mortgage')).toBe(false);
    expect(sure('quantum hair mortgage')).toBe(false);
    expect(sure('dog hair')).toBe(true);
    expect(find(index, 'quantum hair mortgage').length).toBeLessThanOrEqual(3);
  });
  it('lists nothing where no word is known', () => expect(ids('zzzz qqqq')).toEqual([]));
  it('says which words were matched, as typed', () => {
    expect(find(index, 'Cloudly and Hazy')[0]?.matched).toEqual(['cloudly', 'hazy']);
  });
  it('lists no more than asked for', () => expect(find(index, 'bubbles', { limit: 1 })).toHaveLength(1));
  it('puts a flaw before another page of the same words', () => {
    const twice = buildIndex(
      [{ ...page('a-word', 'Bubbles', []), kind: 'glossary' }, page('z-flaw', 'Bubbles', [])],
      words,
    );
    expect(find(twice, 'bubbles').map(({ id }) => id)).toEqual(['z-flaw', 'a-word']);
  });
});

describe('find while typing', () => {
  it('takes the last word as a beginning', () => {
    expect(ids('bub', true)[0]).toBe('bubbles');
    expect(ids('orange pe', true)[0]).toBe('orange');
  });
  it('does not when the word is finished', () => {
    expect(ids('cra ', true)).toEqual([]);
    expect(ids('cra')).toEqual([]);
  });
  it('holds the answer at every keystroke of a name', () => {
    for (let at = 3; at <= 'fisheyes'.length; at++)
      expect(ids('fisheyes'.slice(0, at), true)[0]).toBe('crater');
  });
  it('bears a slip in the beginning', () => expect(ids('clowd', true)[0]).toBe('glue'));
  it('finds nothing by what is no word yet', () => {
    for (const typed of ['t', 'the', '7', 'ß7', '-a']) expect(() => ids(typed, true)).not.toThrow();
  });
});

describe('buildIndex', () => {
  it('is plain data', () => {
    const sent = JSON.parse(JSON.stringify(index));
    expect(sent).toEqual(index);
    expect(find(sent, 'dog hair')).toEqual(find(index, 'dog hair'));
  });
  it('gives the same bytes for the same input', () => {
    expect(JSON.stringify(buildIndex(documents, words, said, kin))).toBe(JSON.stringify(index));
  });
});

describe('a word of the trade whose whole name is typed', () => {
  const term = (id: string, title: string): FindDocument => ({ ...page(id, title, []), kind: 'glossary' });
  const withTerms = buildIndex(
    [...documents, term('word-peel', 'Orange peel'), term('word-window', 'Crater window')],
    words,
    said,
    kin,
  );
  const first = (query: string) =>
    find(withTerms, query)
      .slice(0, 2)
      .map(({ id }) => id);

  it('stands below the page that covers it, and above one that knows a part of it', () => {
    expect(first('orange peel')).toEqual(['orange', 'word-peel']);
    expect(first('crater window')[0]).toBe('word-window');
  });
});
