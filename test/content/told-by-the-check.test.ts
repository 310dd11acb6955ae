/** What the check tells of the real content with one slip in it: signs, days, years and published addresses. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { say } from '#engine/faults/say.ts';
import { everyFault } from '../../content/tools/every-fault.ts';
import { linkedKnowledge, provenKnowledge } from '../../content/tools/knowledge.ts';
import { itAtLength } from '../thorough.ts';

const folder = process.cwd();
const textOf = (file: string): string => readFileSync(file, 'utf8');
const lineOf = (text: string, line: string): number => text.split('\n').indexOf(line) + 1;
const slipped = (file: string, from: string | RegExp, to: string) => {
  const text = textOf(file).replace(from, () => to);
  expect(text).not.toBe(textOf(file));
  return { text, root: { folder, texts: new Map([[file, text]]) } };
};

describe('signs', () => {
  itAtLength('are not written where they say what the question says of every flaw', () => {
    const file = 'content/defects/lap-marks.mdx';
    const { text, root } = slipped(file, 'signs:\n', 'signs:\n  thread-shaped: no\n');
    expect(provenKnowledge(root).issues.map(say)).toEqual([
      `${file}:${lineOf(text, '  thread-shaped: no')}: "thread-shaped" is no for every flaw that says nothing of it; remove this line, or write what this flaw shows instead`,
    ]);
  });

  // The whole check takes seconds: one run of it tells all of these slips, each by its own line.
  it('are told where no words speak of a special mark, and where one stands alone', () => {
    const slips = [
      ['content/defects/roller-stipple.mdx', 'parallel-ridges: no', 'parallel-ridges: yes'],
      ['content/defects/yellowing.mdx', 'round-over-a-knot: no', 'round-over-a-knot: yes'],
      ['content/defects/prints-in-wax.mdx', 'ever-waxed-or-polished: yes', 'ever-waxed-or-polished: no'],
      ['content/defects/dark-wax-blotches.mdx', 'dark-wax-used: yes', 'dark-wax-used: no'],
    ] as const;
    const texts = new Map(slips.map(([file, from, to]) => [file, slipped(file, from, to).text]));
    const lines = everyFault({ folder, texts }).issues.map(say);
    const [mark, knot, waxed, dark] = slips.map(
      ([file, , to]) => `${file}:${lineOf(texts.get(file) ?? '', `  ${to}`)}`,
    );
    expect(lines).toContain(
      `${mark}: "parallel-ridges" is yes, but no words here tell of it (Does it look combed, with fine side-by-side lines?); tell it after "looks:" or "also:" with one of these: brush marks, ridges, combed; or change the sign to no`,
    );
    for (const [at, sign, says] of [
      [
        knot,
        'round-over-a-knot: yes',
        'but only other flaws ask that, and no words here tell of it; change the sign to no, or write under looks: how it shows',
      ],
      [
        waxed,
        'ever-waxed-or-polished: no',
        'and every other flaw that tells of it says the opposite; change the sign to yes, or to mostly-no where it is met at times',
      ],
      [
        dark,
        'dark-wax-used: no',
        'but the words here tell that it is so, and no other flaw shows it; change the sign to yes, or to mostly-no where it is met at times',
      ],
    ]) {
      const head = `${at}: under "signs:" stands ${sign} (`;
      expect(lines.filter((line) => line.startsWith(head) && line.endsWith(`), ${says}`))).toHaveLength(1);
    }
  });
});

describe('what readers follow', () => {
  it('is a day for every flaw and repair, and a year for every source', () => {
    const changes = `above the second line --- add: changes: [{ on: ${new Date().toISOString().slice(0, 10)} }]`;
    const lacking = [
      ['content/defects/lap-marks.mdx', 'changes', changes],
      ['content/remedies/wipe-the-beads-off.mdx', 'changes', changes],
      [
        'content/sources/film-s7.mdx',
        'year',
        'add a line year: … and write in place of the dots the year of this edition, or undated',
      ],
    ] as const;
    const texts = new Map(
      lacking.map(([file, field]) => [
        file,
        slipped(file, new RegExp(`^${field}:.*\\n(?: .*\\n)*`, 'm'), '').text,
      ]),
    );
    expect(provenKnowledge({ folder, texts }).issues.map(say)).toEqual(
      lacking.map(([file, field, mend]) => `${file}:1: the field "${field}" is missing; ${mend}`),
    );
  });
});

describe('a published address', () => {
  // Names of sources are numbers, and the nearest is another book.
  it('is told when its file is renamed, with where to write what stands for it', () => {
    const file = 'content/sources/film-s7.mdx';
    const texts = new Map([
      [file, undefined],
      ['content/sources/film-s7-read-again.mdx', textOf(file)],
    ]);
    const line = lineOf(textOf('content/addresses.txt'), '/sources/film-s7/');
    expect(linkedKnowledge({ folder, texts }).issues.map(say)[0]).toBe(
      `content/addresses.txt:${line}: /sources/film-s7/ was published and must answer for ever, but there is no source "film-s7"; ` +
        'bring content/sources/film-s7.mdx back, or say in content/retired.yaml what stands for it: source/film-s7: the-name-of-its-file',
    );
  });

  it('is not asked of a new page, nor of what is retired', () => {
    const texts = new Map([
      ['content/retired.yaml', `${textOf('content/retired.yaml')}source/never-there: film-s7\n`],
      ['content/addresses.txt', `${textOf('content/addresses.txt')}/sources/never-there/\n`],
    ]);
    expect(linkedKnowledge({ folder, texts }).issues.map(say)).toEqual([]);
  });
});
