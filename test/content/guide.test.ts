/**
 * The author's guide keeps its word: every field of every kind has its line with what the schema says of it, the
 * examples of a table make an entry that links, each step and feature can be written as shown, each slip is told in the
 * words that the guide quotes, and its commands and pictures are there.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { CORE_SCHEMA, load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { say } from '#engine/faults/say.ts';
import { filled } from '#engine/knowledge/fill.ts';
import { link } from '#engine/link.ts';
import { BoardFeature, BoardRecipe } from '#engine/model/board/recipe.ts';
import { ENTRY_KINDS, type EntryKind, FOLDERS, SCHEMAS } from '#engine/model/index.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { Step } from '#engine/model/step.ts';
import { filesIn } from '../../content/tools/files.ts';
import { provenKnowledge } from '../../content/tools/knowledge.ts';
import { itAtLength } from '../thorough.ts';
import { rawContent, retired } from './real/knowledge.ts';

const guide = readFileSync('content/README.md', 'utf8');
const bare = (cell: string): string => cell.replace(/^(\*\*|`)(.*)\1$/s, '$2');

/** The rows of the table below a heading, each cell without its marks. */
const table = (heading: string): string[][] => {
  const part = guide.split(/^#{2,3} /m).find((one) => one.startsWith(heading));
  if (part === undefined) throw new Error(`the guide has no part "${heading}"`);
  const rows = part.split('\n').filter((line) => line.startsWith('| '));
  return rows.slice(2).map((row) =>
    row
      .slice(2, -2)
      .split(' | ')
      .map((cell) => bare(cell.trim())),
  );
};
const yaml = (text = ''): unknown => load(text, { schema: CORE_SCHEMA });
const partOf = (kind: EntryKind): string => `A ${kind}, \`content/${FOLDERS[kind]}/\``;

type Field = z.core.$ZodType & { readonly description?: string };
const describedAs = (field: Field): string => {
  const { innerType } = field._zod.def as { innerType?: Field };
  return field.description ?? (innerType ? describedAs(innerType) : '');
};
type Shape = Readonly<Record<string, Field>>;

/** What the guide must say of the fields of a schema: name, and words of the schema itself. */
const told = (shape: Shape): string[][] =>
  Object.entries(shape).map(([name, field]) => [name, describedAs(field)]);
const named = (rows: readonly string[][]): string[][] => rows.map(([name = '', , what = '']) => [name, what]);

const ID = 'shown-in-the-guide';
/** The entry that the examples of a table make, with one of them spoiled if asked. */
const entryOf = (kind: EntryKind, spoiled?: string): RawEntry => ({
  kind,
  id: ID,
  file: `content/${FOLDERS[kind]}/${ID}.mdx`,
  data: Object.fromEntries(
    table(partOf(kind)).map(([name = '', example]) => [name, name === spoiled ? { x: 1 } : yaml(example)]),
  ),
  lineOf: () => 1,
});
const [acts, steps] = ['acts', 'steps'].map(
  (name) => yaml(readFileSync(`content/${name}.yaml`, 'utf8')) as Record<string, unknown>,
);
const faultsOf = (entries: readonly RawEntry[]): string[] => {
  const linked = link([...rawContent, ...filled(entries, { acts: acts ?? {}, steps: steps ?? {} })], retired);
  return linked.ok ? [] : linked.issues.map(say);
};

describe('the table of fields', () => {
  it.each(ENTRY_KINDS)('of a %s has each field, with what the schema says of it', (kind) =>
    expect(named(table(partOf(kind)))).toEqual(told((SCHEMAS[kind] as unknown as { shape: Shape }).shape)),
  );

  it('marks the fields that must be there', () => {
    for (const kind of ENTRY_KINDS) {
      const { shape } = SCHEMAS[kind] as unknown as { shape: Record<string, z.ZodType> };
      const must = Object.keys(shape).filter((name) => !shape[name]?.safeParse(undefined).success);
      const part = guide.split(/^### /m).find((one) => one.startsWith(partOf(kind))) ?? '';
      expect(
        [...part.matchAll(/^\| \*\*(.+?)\*\* \|/gm)].map(([, name]) => name),
        kind,
      ).toEqual(must);
    }
  });

  it('gives examples that make an entry of each kind, and would not if one were wrong', () => {
    expect(faultsOf(ENTRY_KINDS.map((kind) => entryOf(kind)))).toEqual([]);
    for (const [kind, name] of [
      ['defect', 'often'],
      ['remedy', 'steps'],
      ['rule', 'when'],
    ] as const)
      expect(faultsOf([entryOf(kind, name)]).length, `${kind} ${name}`).toBeGreaterThan(0);
  });

  it('of steps and boards has every kind and every feature, each as it may be written', () => {
    const parts: readonly (readonly [string, readonly (readonly [string, string])[], z.ZodType])[] = [
      ['A step', Step.options.map((one) => [one.shape.kind.value, one.description ?? '']), Step],
      [
        'What a board can show',
        BoardFeature.options.map(({ shape: { kind } }) => [kind.value, kind.description ?? '']),
        BoardFeature,
      ],
    ];
    for (const [heading, kinds, schema] of parts) {
      const rows = table(heading);
      expect(named(rows)).toEqual(kinds.map((one) => [...one]));
      for (const [name, example] of rows) {
        expect(schema.safeParse(yaml(example)).error?.issues ?? [], `${name}`).toEqual([]);
        expect((yaml(example) as { kind: string }).kind).toBe(name);
      }
    }
    const board = table('A board, under');
    expect(named(board)).toEqual(told(BoardRecipe.shape));
    const written = Object.fromEntries(board.map(([name, example]) => [name, yaml(example)]));
    expect(BoardRecipe.safeParse(written).error?.issues ?? []).toEqual([]);
  });
});

describe('the slips that happen most', () => {
  itAtLength('are told by the check in the words that the guide quotes', { timeout: 120_000 }, () => {
    const rows = table('The ten slips');
    expect(rows).toHaveLength(10);
    const files = Object.values(FOLDERS).flatMap((folder) =>
      filesIn('.', `content/${folder}`, '.mdx').map((name) => `content/${folder}/${name}`),
    );
    for (const [what, written = '', meant = '', words = '?'] of rows) {
      const file = files.find((one) => readFileSync(one, 'utf8').includes(meant));
      if (!file) throw new Error(`no file holds ${meant}`);
      const was = readFileSync(file, 'utf8');
      const texts = new Map([[file, was.replace(meant, () => written)]]);
      const line = was.slice(0, was.indexOf(meant)).split('\n').length;
      const own = provenKnowledge({ folder: process.cwd(), texts }).issues.filter(
        (issue) => issue.file === file,
      );
      const pattern = words
        .replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')
        .replaceAll(/(step|change) \d+/g, '$1 \\d+');
      expect(own.map(say).join('\n'), `${what}`).toMatch(new RegExp(`^${file}:${line}: ${pattern}$`, 'm'));
    }
  });
});

describe('the rest of the guide', () => {
  it('names commands, files and pictures that are there, and pictures that are light', () => {
    const scripts = Object.keys(
      (JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> }).scripts,
    );
    for (const [, script = ''] of guide.matchAll(/npm run ([a-z]+)/g)) expect(scripts).toContain(script);
    const pictures = [...guide.matchAll(/!\[[^\]]+\]\(([^)]+)\)/g)].map(([, path = '']) =>
      join('content', path),
    );
    expect(pictures.length).toBeGreaterThan(3);
    expect(pictures.filter((path) => !existsSync(path))).toEqual([]);
    expect(pictures.reduce((sum, path) => sum + statSync(path).size, 0)).toBeLessThan(200_000);
    for (const [, path = ''] of guide.matchAll(/\]\((\.\.\/[^)]+)\)/g))
      expect(existsSync(join('content', path)), path).toBe(true);
    for (const page of ['README.md', 'DEVELOPERS.md'])
      expect(readFileSync(page, 'utf8'), page).toContain('(content/README.md)');
  });
});
