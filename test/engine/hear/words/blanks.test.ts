/**
 * Blanks tell nothing: a post is heard the same whether its words stand apart by one blank, by several, by hard ones, or
 * were broken into lines by a width. Held over posts of strangers (test/words). Which characters are blank or of no width
 * is Unicode's (White_Space, Default_Ignorable_Code_Point); the widths are those of plain mail (RFC 5322 advises 78).
 */
import { describe, expect, it } from 'vitest';
import { plainBlanks } from '#engine/hear/words/blanks.ts';
import { WHOLE } from '../../../thorough.ts';
import { readPosts } from '../../../words/words.ts';
import { heard } from '../hearing.ts';

const posts = readPosts('open')
  .filter(({ id }) => id.endsWith('-p1'))
  .filter((_, at) => at % (WHOLE ? 5 : 20) === 0)
  .map(({ text }) => text);

const told = (text: string) =>
  heard(text).facts.map(({ fact, value, sure }) => `${fact} ${value} ${sure.toFixed(3)}`);
const wrapped = (text: string, width: number, end: string): string => {
  let [out, line] = ['', 0];
  for (const word of text.split(' ')) {
    const breaks = line > 0 && line + word.length > width;
    out += breaks ? end : line > 0 ? ' ' : '';
    line = (breaks ? 0 : line + 1) + word.length;
    out += word;
  }
  return out;
};

describe('blanks', () => {
  it.each([
    ['two', '  '],
    ['three', '   '],
    ['hard', '\u00a0'],
    ['thin', '\u2009'],
    ['narrow and hard', '\u202f'],
    ['tab', '\t'],
    ['of no width', ' \u200b'],
  ])('may be %s', (_, blank) => {
    for (const text of posts) expect(told(text.replaceAll(' ', blank)), text).toEqual(told(text));
  });

  it.each([60, 72, 78])('may be breaks of lines after %i letters', (width) => {
    const other = posts.filter((text) => `${told(wrapped(text, width, '\r\n'))}` !== `${told(text)}`);
    // Where a line begins with a name in capitals nobody can tell it from a new line.
    expect(other.length / posts.length).toBeLessThan(0.03);
  });

  it.each([
    ['I brushed varnish 2\nhours ago, 60\n°F and 85\u00a0% humidity.', 'hours-since-coat', 2, '2\nhours ago'],
    ['Poly  went on  4  hours  ago at  68  degrees', 'air-celsius', 20, '68  degrees'],
    ['\n\n  Poly\u200b went on 4 hours ago', 'hours-since-coat', 4, '4 hours ago'],
  ])('are counted where a finding rests: %j', (text, name, value, words) => {
    const found = heard(text).facts.find(({ fact }) => fact === name);
    expect(found?.value).toBe(value);
    expect(found?.rests.map(({ from, to }) => text.slice(from, to))).toEqual([words]);
  });

  it('are counted where a name of a flaw stands', () => {
    const text = 'Poly  over  navy  chalk paint,  hairs  in it';
    const names = heard(text).names.flatMap(({ rests }) => rests.map(({ from, to }) => text.slice(from, to)));
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(name).toMatch(/^hairs/);
  });

  it.each([
    'poly on oak\nsticky',
    'Two coats of poly on the oak top of the table.\nstill sticky',
    'Two coats of poly on the oak top of my kitchen table\n\nsticky',
    'Two coats of poly on the oak top of my kitchen table\n- sticky',
    'Two coats of poly on the oak top of my kitchen table\nHelp',
  ])('keep lines apart that were meant apart: %j', (text) =>
    expect((plainBlanks(text)?.text ?? text).match(/\n/g)?.length).toBe(1),
  );

  it('are left as they are where they are plain', () =>
    expect(plainBlanks('Poly on oak, still sticky. What now?')).toBeUndefined());
});
