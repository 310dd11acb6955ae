/** One broken file a fault: each is linked beside a sound little knowledge and must be told in exactly these words. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { buildIndex, documentsOf } from '#engine/find.ts';
import { link } from '#engine/link.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import { lessonsAreCautioned } from '#engine/prove/lessons-are-cautioned.ts';
import { prove } from '#engine/prove/prove.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { survey } from '#engine/see/survey.ts';
import { tooHard } from '../../content/tools/hard-words.ts';
import { readSearchWords } from '../../content/tools/hear.ts';
import { lostNames, reachable, sharedNames } from '../../content/tools/reachable.ts';
import { readContent, readEntry } from '../../content/tools/read.ts';
import { known as real } from './real/knowledge.ts';

const root = process.cwd();
const folder = join(root, 'test/content/faults');
const soundRoot = join(root, 'test/content/sound');
const sound = readContent(soundRoot);
const doings = readContent(root).filter((entry) => entry.kind === 'doing');
const RETIRED = { 'remedy/scour': 'rub' };

const issuesWith = (entries: typeof sound): readonly Issue[] => {
  const linked = link([...sound, ...doings, ...entries], RETIRED);
  return linked.ok ? [...prove(linked.value), ...tooHard(linked.value, soundRoot)] : linked.issues;
};

const annotated = (text: string, key: string): string[] =>
  [...text.matchAll(new RegExp(`^(?:# )?${key}: (.+)$`, 'gm'))].map((found) => found[1] ?? '');

const matches = (line: string, pattern: string): boolean => {
  const [head = '', tail] = pattern.split('*');
  return tail === undefined ? line === pattern : line.startsWith(head) && line.endsWith(tail);
};

const files = readdirSync(folder).filter((name) => name.endsWith('.mdx'));

describe('faults of content', () => {
  it('finds nothing in the sound knowledge that the broken files are added to', () => {
    expect(issuesWith([]).map(say)).toEqual([]);
  });

  for (const name of files) {
    const path = join(folder, name);
    const text = readFileSync(path, 'utf8');
    const id = basename(name, '.mdx');
    const code = annotated(text, 'code')[0] ?? id;

    it(`tells ${code} with its place and what to do`, () => {
      const kind = annotated(text, 'kind').find((value) => /^[a-z]+$/.test(value)) as EntryKind;
      const issues = issuesWith([readEntry(root, kind, `test/content/faults/${name}`)]);
      const file = `test/content/faults/${name}`;
      const wanted = annotated(text, 'expect').map((line) => `${file}:${line}`);
      if (text.includes('# also-expect-orphan'))
        wanted.unshift(
          `${file}:1: no flaw leads to the remedy "${id}"; write { remedy: ${id} } after the answer under "tree:" that should lead to it, in the file in content/defects of the flaw that it belongs to, or delete this file`,
        );
      expect(wanted.length).toBeGreaterThan(0);
      const told = issues.map(say);
      expect(told.length, told.join('\n')).toBe(wanted.length);
      for (const [index, line] of told.entries())
        expect(matches(line, wanted[index] ?? ''), `${line}\n${wanted[index]}`).toBe(true);
      expect(issues.map((issue) => issue.code)).toContain(code);
    });
  }

  it('has a broken file for every code that the engine can raise', () => {
    const source = readFileSync(join(root, 'engine/faults/issue.ts'), 'utf8');
    const shape = readFileSync(join(root, 'engine/model/knowledge.ts'), 'utf8');
    const codes = [
      ...new Set([...`${source}${shape}`.matchAll(/code: '([a-z-]+)'/g)].map((found) => found[1])),
    ];
    const shown = files.map(
      (name) => annotated(readFileSync(join(folder, name), 'utf8'), 'code')[0] ?? basename(name, '.mdx'),
    );
    // These have tests of their own: below, in shared.test.ts and in slips/.
    const apart = [
      'needless-exception',
      'unreachable-defect',
      'unused-name',
      'left-over',
      'still-there',
      'near-name',
      'bad-name',
      'unknown-name',
      'needs-quotes',
      // In told-by-the-check.test.ts.
      'needless-sign',
      'mark-untold',
      'lost-address',
      // In prose.test.ts.
      'misspelt',
      'word-twice',
      'stray-file',
      'other-word',
      'past-the-reader',
      'one-system',
      'figures-differ',
      'figure-unclaimed',
      'bare-figure',
    ];
    expect([...new Set([...shown, ...apart])].sort()).toEqual(codes.sort());
  });

  it('tells all faults of all files in one run', () => {
    const broken = ['dead-link', 'unknown-key', 'no-source'].map((id) =>
      readEntry(
        root,
        ({ 'dead-link': 'defect', 'unknown-key': 'source', 'no-source': 'rule' } as const)[id] as EntryKind,
        `test/content/faults/${id}.mdx`,
      ),
    );
    expect(
      issuesWith(broken)
        .map((issue) => issue.code)
        .sort(),
    ).toEqual(['dead-link', 'no-source', 'unknown-key']);
  });

  it('tells an exception for a term that no question or verdict uses', () => {
    const linked = link([...sound, ...doings]);
    if (!linked.ok) throw new Error('the sound knowledge does not link');
    expect([...tooHard(linked.value, join(root, 'test/content/needless'))].map(say)).toEqual([
      'content/hard-words.yaml:3: the exception for the term "phlogiston" is no longer needed; remove it',
    ]);
  });

  it('tells a defect that no look-alike leads to, and one that no true answers end with', () => {
    const data = {
      ...(sound.find((entry) => entry.id === 'spot')?.data as object),
      name: 'Scorch',
      'look-alikes': [],
    };
    const scorch = {
      kind: 'defect',
      id: 'scorch',
      file: 'content/defects/scorch.mdx',
      data,
      lineOf: () => 1,
    } as const;
    const linked = link([...sound, ...doings, scorch]);
    if (!linked.ok) throw new Error('the knowledge does not link');
    const matrix = matrixOf(linked.value);
    const figures = { ...survey(matrix), neverFirst: ['scorch'] };
    const told = [...reachable(linked.value, matrix, figures)]
      .filter((issue) => issue.file.includes('scorch'))
      .map(say);
    expect(told).toEqual([
      'content/defects/scorch.mdx:1: whoever answers the questions of "What do you see?" as the signs here say does not come to "scorch": "spot" comes first; under "signs:" give "scorch" yes and "spot" no, or the other way round, for a question that tells the two apart',
      'content/defects/scorch.mdx:1: no other flaw is said to look like "scorch"; write after "look-alikes:" the name of a flaw that it is mistaken for, for example spot',
    ]);
  });

  it('tells a name that finds other pages', () => {
    const linked = link([...sound, ...doings]);
    if (!linked.ok) throw new Error('the sound knowledge does not link');
    const others = ['one', 'two', 'three', 'four'].map((id) => ({
      id,
      kind: 'page' as const,
      title: 'A spot, one name, two names, three names, four names',
      also: ['a spot', 'one name', 'two names', 'three names', 'four names'],
      signs: [],
      text: 'spot spot spot one name two names',
    }));
    const index = buildIndex(
      [...others, ...documentsOf(linked.value).filter(({ id }) => id !== 'spot')],
      readSearchWords(root),
      [],
    );
    const told = [...lostNames(sharedNames(linked.value, index), index)].map(say);
    expect(told).toContainEqual(
      expect.stringMatching(
        /spot\.mdx:\d+: whoever types "A spot" into the search does not find this page among the first three, which are [a-z]+, [a-z]+, [a-z]+; put a word into it that is said of this page alone$/,
      ),
    );
    expect(told).toContainEqual(
      expect.stringMatching(
        /: whoever types "two names" into .*; put a word into it that is said of this page alone, or take it out$/,
      ),
    );
  });

  it('tells which rule falls short of a step, and which one a lesson leaves out', () => {
    const name = 'test/content/faults/no-caution.mdx';
    const stop = sound.find(({ id }) => id === 'stop-first');
    if (!stop) throw new Error('the stop is gone');
    const only = { when: { any: [{ piece: ['crib', 'valuable'] }, { age: 'unknown' }] }, sure: 'yes' };
    const cribs = {
      ...stop,
      id: 'cribs',
      data: { ...(stop.data as object), hazards: ['stripper'], ...only },
    };
    const told = issuesWith([readEntry(root, 'remedy', name), cribs]).map(say);
    expect(told.filter((line) => line.includes('lays on a paint stripper'))).toEqual([
      expect.stringMatching(
        /^test\/content\/faults\/no-caution\.mdx:15: no warning that stops people stands before the step "Take .+", which lays on a paint stripper, in this case: .*piece not told.*; content\/rules\/cribs\.mdx warns of it, but only with when: \{ any: \[\{ piece: \[crib, valuable\] \}, \{ age: unknown \}\] \} and sure: yes; change that, so that it holds in this case too$/,
      ),
    ]);
    const lessons = real.lessons.map((lesson) => ({ ...lesson, rules: [] }));
    const lacking = [...lessonsAreCautioned({ ...real, lessons })].map(say);
    expect(lacking.length).toBeGreaterThan(10);
    for (const line of lacking)
      expect(line).toMatch(
        /: no [a-z ]+ stands before the lesson ".+", which .+; add [a-z-]+ under "rules:"$/,
      );
  });
});
