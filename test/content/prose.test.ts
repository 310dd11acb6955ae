/**
 * What the check says of wording: a fault a kind, each with its line and what to do, in a little content made in memory.
 * Conversions are held to those of NIST SP 811 (2008), appendix B.8, from memory: 1 in = 25.4 mm, 1 mil = 25.4 µm,
 * 1 ft = 0.3048 m, 1 ft² = 0.0929 m², 1 gal = 3.785 L, 1 lb = 0.4536 kg, °C = (°F − 32) / 1.8.
 */
import { describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import type { ContentRoot } from '../../content/tools/files.ts';
import { proseFaults } from '../../content/tools/prose/check.ts';
import { unitFaults } from '../../content/tools/prose/units.ts';
import { strayFiles } from '../../content/tools/stray.ts';

const WORDING = `spelled: [recoat]
write:
  top coat: [topcoat]
  mold: [mould]
of-others:
  - { file: content/terms/other.mdx, why: It is about someone else. }
`;
const FILE = 'content/terms/a-word.mdx';
/** A folder without content, so that only what stands here is read. */
const rootOf = (text: string, more: Readonly<Record<string, string>> = {}): ContentRoot => ({
  folder: 'test/content/faults',
  texts: new Map(
    Object.entries({
      'content/house-style.yaml': WORDING,
      'content/terms/other.mdx': '---\nterm: other\nmeans: She has it.\n---\n',
      [FILE]: text,
      ...more,
    }),
  ),
});
const toldOf = (...given: Parameters<typeof rootOf>): string[] => proseFaults(rootOf(...given)).map(say);
const page = (means: string): string => `---\nterm: a word\nmeans: ${means}\n---\n\nBelow it.\n`;

describe('the wording of the content', () => {
  it('finds nothing in the real content, nor where nothing is wrong', () => {
    expect(proseFaults(process.cwd()).map(say)).toEqual([]);
    expect(toldOf(page('You can recoat it tomorrow; it’s a child’s chair.'))).toEqual([]);
  });

  it('tells British spelling and slips of the pen, in fields and below them', () => {
    expect(toldOf(page('The colour is right.'))).toEqual([
      `${FILE}:3: "colour" is in no American dictionary; did you mean "color"? If it is right as it stands, add it after spelled: in content/house-style.yaml`,
    ]);
    expect(toldOf(`${page('The color is right.')}\nThe colr is wrong.\n`)).toEqual([
      `${FILE}:8: "colr" is in no American dictionary; did you mean "color"? If it is right as it stands, add it after spelled: in content/house-style.yaml`,
    ]);
  });

  it('tells a straight apostrophe, also where YAML doubles it', () => {
    const told = (word: string, write: string) =>
      `${FILE}:3: this site does not write "${word}"; write "${write}"`;
    expect(toldOf(page("It is a child's chair."))).toEqual([told("child's", 'child’s')]);
    expect(toldOf(page("'It is a child''s chair.'"))).toEqual([told("child's", 'child’s')]);
    expect(toldOf(page("'It is the makers’ own.'"))).toEqual([]);
  });

  it('leaves alone what people type, ids, addresses and names of sources', () => {
    const text =
      '---\nterm: a word\nalso: [colur, topcoat]\nmeans: It is as good as new.\nstandard: ISO colourr\n---\n\nSee https://example.org/colour for it.\n';
    expect(toldOf(text)).toEqual([]);
    expect(toldOf(page('It is so.'), { 'content/sources/x.mdx': '---\ntitle: Colour\n---\n' })).toEqual([]);
  });

  it('tells a figure in parentheses that has lost its unit, but no year and no name of a standard', () => {
    expect(toldOf(page('Take an inch (2–3) beyond, and one square foot (30 cm × 30) at a time.'))).toEqual([
      `${FILE}:3: "(2–3)" holds a figure without its unit; write the unit behind it`,
      `${FILE}:3: "(30 cm × 30)" holds a figure without its unit; write the unit behind it`,
    ]);
    expect(toldOf(page('As a test of ISO (2409) and a book (2008) say, an inch (2–3 cm).'))).toEqual([]);
  });

  it('tells a slip in a part of a word with hyphens', () => {
    expect(toldOf(page('A moistrue-resistant coat.'))).toEqual([
      `${FILE}:3: "moistrue" is in no American dictionary; did you mean "moisture"? If it is right as it stands, add it after spelled: in content/house-style.yaml`,
    ]);
  });

  it('reads our own words in the title of a source, and what was read of it', () => {
    const told = (title: string, read = 'The whole of it.') =>
      toldOf(page('It is so.'), {
        'content/sources/x.mdx': `---\ntitle: "${title}"\nkind: article\nread: "${read}"\n---\n`,
      });
    expect(told("Colour Makers’ Guild, 'The colour of the the grain', page on Mould")).toEqual([]);
    expect(told('A maker’s sheet with with a topcoat')).toEqual([
      'content/sources/x.mdx:2: this site does not write "topcoat"; write "top coat"',
      'content/sources/x.mdx:2: "with" stands twice in a row; remove one of them',
    ]);
    expect(told('A sheet', 'An exerpt.')).toEqual([
      'content/sources/x.mdx:4: "exerpt" is in no American dictionary; did you mean "excerpt"? If it is right as it stands, add it after spelled: in content/house-style.yaml',
    ]);
  });

  it('tells a word that stands twice', () => {
    expect(toldOf(page('Wait for the the can to warm. It had had a coat.'))).toEqual([
      `${FILE}:3: "the" stands twice in a row; remove one of them`,
    ]);
  });

  it('tells a file that nothing reads', () => {
    const more = { 'content/defects/spot.md': page('So.'), 'content/defect/spot.mdx': page('So.') };
    expect(strayFiles(rootOf(page('It is so.'), more)).map(say)).toEqual([
      'content/defects/spot.md:1: nothing reads this file; name it content/defects/spot.mdx, or delete it',
      'content/defect/spot.mdx:1: nothing reads this file; name it content/defects/spot.mdx, or delete it',
    ]);
    expect(strayFiles(process.cwd())).toEqual([]);
  });

  it('tells a word for which this site has another', () => {
    expect(toldOf(page('Two topcoats, and mould below.'))).toEqual([
      `${FILE}:3: this site does not write "topcoats"; write "top coats"`,
      `${FILE}:3: this site does not write "mould"; write "mold"`,
    ]);
  });

  it('tells whatever speaks past the reader, but in a file that is about others', () => {
    expect(toldOf(page('She lays it, and I wait. The user sands it.'))).toEqual([
      `${FILE}:3: "She" speaks past the reader; speak to the reader: you, your`,
      `${FILE}:3: "I" speaks past the reader; speak to the reader: you, your`,
      `${FILE}:3: "The user" speaks past the reader; speak to the reader: you, your`,
    ]);
  });

  it('tells a figure that stands in one system of units alone, and one that differs from the one beside it', () => {
    expect(toldOf(page('Coat it at 70 °F or more.'))).toEqual([
      `${FILE}:3: "70 °F" stands in one system of units alone; write "70 °F (21 °C)"`,
    ]);
    expect(toldOf(page('Keep it under 4 mil (40 µm).'))).toEqual([
      `${FILE}:3: "4 mil" and "40 µm" are not the same; 4 mil is 100 µm; mend the one that is wrong`,
    ]);
  });

  it('tells a figure that hands act on and no claim holds', () => {
    const rule = (most: string): string =>
      `---\nsay: Thin it up to ${most} and no more.\nclaims:\n  - { says: Thinned up to 10 %., grade: common-practice }\n---\n`;
    expect(toldOf(page('It is so.'), { 'content/rules/thin.mdx': rule('10 %') })).toEqual([]);
    expect(toldOf(page('It is so.'), { 'content/rules/thin.mdx': rule('15 %') })).toEqual([
      'content/rules/thin.mdx:2: no claim holds the figure "15 %"; add a claim that says it and how we know it, or use a figure that one has',
    ]);
  });

  it('tells an exception for a file that is gone, and a slip in its own table', () => {
    const gone = WORDING.replace('other.mdx', 'gone.mdx');
    expect(
      toldOf(page('It is so.'), { 'content/house-style.yaml': gone, 'content/terms/other.mdx': page('So.') }),
    ).toEqual([
      'content/house-style.yaml:6: the exception for content/terms/gone.mdx is no longer needed; remove it',
    ]);
    expect(toldOf(page('It is so.'), { 'content/house-style.yaml': 'speled: [recoat]\n' })).toEqual([
      'content/house-style.yaml:1: there is no field "speled" here; did you mean "spelled"?',
    ]);
  });
});

describe('two systems of units', () => {
  it('agree within what each rounds away', () => {
    for (const text of [
      '65 to 75 °F (18 to 24 °C)',
      '20 °F (11 °C) warmer than its dew point',
      '20 °F (11 K) above its dew point',
      '6 to 8 in (15 to 20 cm)',
      '1/16 in (1.6 mm)',
      '4 to 5 mil (100 to 125 µm)',
      'an inch (25 mm)',
      'ten square feet (1 m²)',
      '5 sq ft (0.5 m²)',
      '2 ft (60 cm)',
      'a 2-lb cut (240 g of flakes to the liter)',
      '500 mL (17 fl oz)',
      '500 ft² to the gallon (12 m² to the liter)',
      'P220, 24 hours, step 2 in three, 7 in a cold room',
    ])
      expect(unitFaults(text), text).toEqual([]);
  });

  it('do not where one of them is wrong', () => {
    for (const text of [
      '65 to 75 °F (18 to 34 °C)',
      '70 °F (20 °C)',
      '20 °F (11 °C) in the room',
      '6 to 8 in (15 to 25 cm)',
      '1/16 in (4 mm)',
      '4 to 5 mil (100 to 150 µm)',
      '5 sq ft (5 m²)',
      '2 ft (90 cm)',
      '500 mL (25 fl oz)',
      '500 ft² to the gallon (20 m² to the liter)',
    ])
      expect(
        unitFaults(text).map(({ why }) => why),
        text,
      ).toEqual(['differ']);
  });

  it('are both wanted', () => {
    for (const text of [
      'at 23 °C',
      '3 mm apart',
      '6 in away',
      '100 µm wet',
      '4 mil',
      '2 ft from it',
      '20 m²',
      '5 kg',
    ])
      expect(
        unitFaults(text).map(({ why }) => why),
        text,
      ).toEqual(['alone']);
  });
});
