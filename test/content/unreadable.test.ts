/** Slips in the marks of YAML that leave a file unreadable: each is told on its own line, in words without the parser's. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { FOLDERS } from '#engine/model/index.ts';
import { filesIn } from '../../content/tools/files.ts';
import { parseFrontMatter } from '../../content/tools/read.ts';
import { strayMark } from '../../content/tools/yaml-marks.ts';

const told = (text: string): string | undefined => {
  const { broken } = parseFrontMatter(text);
  return broken && say({ file: 'page.mdx', line: broken.line, ...broken.fault });
};

const QUOTE = 'put the whole text between quotes';
const AROUND = 'quotes round the whole text';
const FIRST = 'the first line must be three hyphens and nothing else: ---';

const SLIPS: readonly (readonly [yaml: string, line: number, sentence: string])[] = [
  ['often: common\nsigns\n  round: yes\n', 3, 'a colon is missing after "signs"; write signs:'],
  ['name A spot\nsummary: x\n', 2, 'a colon is missing after "name"; write name: A spot'],
  ['name: a\nsummary:x y\n', 3, 'a space is missing after "summary:"; write summary: x y'],
  [
    'ask: [\nhow: x\n',
    2,
    'a "[" is opened after "ask:" and never closed; take it out and write there what belongs after "ask:", or close it with "]"',
  ],
  [
    'also: [one, two\noften: common\n',
    2,
    'a "[" is opened after "also:" and never closed; close it with "]" where it ends, or take it out',
  ],
  [
    'prevent: [unclosed\n  - a\nclaims: []\n',
    2,
    'a "[" is opened after "prevent:" and never closed; take out "[unclosed"; what belongs to "prevent:" stands on the lines below',
  ],
  [
    "prevent: 'unclosed\n  - it's\nclaims: []\n",
    2,
    'a quote mark, \', is opened after "prevent:" and never closed; take out "\'unclosed"; what belongs to "prevent:" stands on the lines below',
  ],
  [
    'name: a\nkind: "article\n',
    3,
    'a quote mark, ", is opened after "kind:" and never closed; close it with the same mark where it ends, or take it out',
  ],
  [
    'steps:\n  - { kind: sand, say: x\n  - { kind: look, say: y }\n',
    3,
    'a "{" is opened after "steps:" and never closed; close it with "}" where it ends, or take it out',
  ],
  [
    'now: { wet: [x}, not: y }\n',
    2,
    'a "[" is opened after "wet:" and never closed; close it with "]" where it ends, or take it out',
  ],
  ['also: [one]]\nname: a\n', 2, 'a "]" closes nothing; take it out, or open it where it begins'],
  [
    'claims: none\n  - says: a\n    at: b\n',
    2,
    '"none" stands after "claims:", and what belongs to "claims:" follows on the lines below; take out "none", or take out the lines below',
  ],
  [
    'looks: one two\n  three: four\n',
    2,
    `the text after "looks:" goes on in the next line, where "three:" was read as a field of its own; ${QUOTE}: looks: "one two three: four"`,
  ],
  [
    'looks: one two\n  and three: four\n  five\n',
    2,
    `the text after "looks:" goes on in the next line, where "and three:" was read as a field of its own; ${QUOTE}: looks: "one two and three: four five"`,
  ],
  [
    'now: none\n  wet: { do: leave }\n',
    2,
    '"none" stands after "now:", and what belongs to "now:" follows on the lines below; take out "none", or take out the lines below',
  ],
  [
    "say: 'don't touch'\n",
    2,
    `the quote that is opened after "say:" ends before the text does; put double ${AROUND}: say: "don't touch"`,
  ],
  [
    'say: "Big" spots\n',
    2,
    `the quote that is opened after "say:" ends before the text does; put single ${AROUND}: say: '"Big" spots'`,
  ],
  [
    'say: "Big" it\'s\n',
    2,
    `the quote that is opened after "say:" ends before the text does; put single ${AROUND}: say: '"Big" it''s'`,
  ],
  [
    'a: { say: "Big" spots }\n',
    2,
    `the quote that is opened after "say:" ends before the text does; put single ${AROUND}: say: '"Big" spots'`,
  ],
  [
    'a: { say: "Big" spots, not: x }\n',
    2,
    `the quote that is opened after "say:" ends before the text does; put single ${AROUND}: say: '"Big" spots'`,
  ],
  [
    'also: ["Big" spots, x]\n',
    2,
    'the quote that is opened after "also:" ends before the text does; put quotes round the whole text, single ones where it holds double ones',
  ],
  ['say: *not* now\n', 2, `a text cannot begin with * (after "say:"); ${QUOTE}: say: "*not* now"`],
  [
    'a: { say: *not* now, not: x }\n',
    2,
    `a text cannot begin with * (after "say:"); ${QUOTE}: say: "*not* now"`,
  ],
  ['say: @home\n', 2, `a text cannot begin with @ (after "say:"); ${QUOTE}: say: "@home"`],
  [
    'say: Look: here\n',
    2,
    `the text "Look: here" holds a colon, which begins a new field; ${QUOTE}: say: "Look: here"`,
  ],
  [
    'a: { say: Look: here, not: x }\n',
    2,
    `the text "Look: here" holds a colon, which begins a new field; ${QUOTE}: say: "Look: here"`,
  ],
  [
    'a: { kind: sand grit: 320 }\n',
    2,
    'a comma is missing before "grit:"; write one: a comma parts the fields within { }',
  ],
  ['a: 1\nb: 2\na: 3\n', 4, 'the field "a" stands twice; keep one of the two, with all that belongs to it'],
  [
    'title: - one\n',
    2,
    'a list begins on the line of "title:"; if it is one text, take the hyphen out; if it is a list, begin each hyphen on a line of its own below it, or write the list between square brackets: [one, two]',
  ],
  [
    'now:\n  wet: x\n not: y\n',
    4,
    '"not:" is set in by one space, and "wet:" above it is set in by two spaces; begin both at the same place',
  ],
  ['now:\n\twet: x\n', 3, 'this line begins with a tab; write spaces in its place'],
  [
    'a: 1\n b: 2\n',
    3,
    '"b:" is set in by one space more than the line above it; begin both at the same place',
  ],
  [
    'a: "x \\q"\n',
    2,
    "a backslash, \\, stands within double quotes; take it out, or write single quotes: '…'",
  ],
];

describe('a file that cannot be read', () => {
  it.each(SLIPS)('is told of %j', (yaml, line, sentence) =>
    expect(told(`---\n${yaml}---\n`)).toBe(`page.mdx:${line}: ${sentence}`),
  );

  it('gives a line to write that can be read and says the same', () => {
    const written = SLIPS.flatMap(([yaml, , sentence]) => {
      const [, field, line] = /(?:quotes|text): (([a-z]+): .+)$/.exec(sentence)?.slice(0, 3) ?? [];
      return field && line && /^[a-z]+: [^{]/.test(yaml) ? [[yaml, field] as const] : [];
    });
    expect(written.length).toBeGreaterThan(4);
    for (const [yaml, line] of written) {
      const { data, broken } = parseFrontMatter(`---\n${line}\n---\n`);
      expect(broken, line).toBeUndefined();
      const text = yaml
        .slice(yaml.indexOf(': ') + 2)
        .trim()
        .replaceAll(/\n\s*/g, ' ');
      expect([text, text.slice(1, -1)]).toContain(Object.values(data as object)[0]);
    }
  });

  it.each([
    ['-- \nname: a\n---\n', 'the first line is "--"; write three hyphens there and nothing else: ---'],
    [
      '---\nname: a\n',
      'the fields at the top of this file have no end; write a line of three hyphens, ---, below the last of them',
    ],
    ['name: a\n', `${FIRST}; write it above "name: a", and write the same line again below the last field`],
    ['\nname: a\n---\n', `${FIRST}; write it above "name: a"`],
    ['Some words\n---\nname: a\n---\n', `${FIRST}; delete what stands above it: "Some words"`],
    ['\n---\nname: a\n---\n', `${FIRST}; delete the empty lines above it`],
    [
      '\n',
      'there are no fields at the top of this file; copy all that stands in another file of the same folder, and put your own words in',
    ],
  ])('is told of the lines of its top: %j', (text, sentence) =>
    expect(told(text)).toBe(`page.mdx:1: ${sentence}`),
  );
});

it('finds no mark amiss in any file as it stands', () => {
  const files = [
    ...Object.values(FOLDERS).flatMap((folder) =>
      filesIn('.', `content/${folder}`, '.mdx').map((name) => `content/${folder}/${name}`),
    ),
    ...['content', 'content/hear', 'content/practice'].flatMap((folder) =>
      filesIn('.', folder, '.yaml').map((name) => `${folder}/${name}`),
    ),
  ];
  expect(files.length).toBeGreaterThan(900);
  for (const file of files) {
    const text = readFileSync(file, 'utf8');
    const yaml = file.endsWith('.mdx') ? (/^---\n([\s\S]*?)^---/m.exec(text)?.[1] ?? '') : text;
    expect(strayMark(yaml.split('\n')), file).toBeUndefined();
  }
});
