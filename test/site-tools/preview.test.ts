/** What the live preview tells an author: faults of the content, and where a flaw stands. Its pages are no part of the site. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readIndex } from '../../content/tools/said.ts';
import { apartOf, endsOf, findsOf, soughtOf, stagesOf } from '../../site/preview/stand.ts';
import { faultsIn, watchFaults } from '../../site/tools/fault-watch.ts';
import { oneReload } from '../../site/tools/one-reload.ts';
import { known } from '../content/real/knowledge.ts';
import { clearCopies, copyOfContent } from '../tools/command.ts';

const folder = mkdtempSync(join(tmpdir(), 'preview-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
  clearCopies();
}, 60_000);

describe('faults over the page', () => {
  it('are the lines of the check, and the first line of a check that broke', () => {
    expect(faultsIn('content/a/b.mdx:3: there is no field "x" here; remove it\n\n1 fault.\n')).toEqual([
      { file: 'content/a/b.mdx', line: 3, says: 'there is no field "x" here; remove it' },
    ]);
    expect(faultsIn('')).toEqual([]);
    expect(faultsIn('SyntaxError: odd\n at …')).toEqual([
      { file: 'content', line: 1, says: 'SyntaxError: odd' },
    ]);
  });

  it('come after an edit and go when it is mended', { timeout: 120_000 }, async () => {
    // A second fault stays, so that the check ends before the search learns.
    const [file, other] = ['content/sources/film-s1.mdx', 'content/sources/film-s2.mdx'];
    const source = (kind: string) => `---\ntitle: A work\nkind: ${kind}\nread: The whole.\n---\n`;
    const copy = copyOfContent({ [file]: source('artcle'), [other]: source('buk') });
    const watch = watchFaults(copy, () => undefined);
    watch.edited();
    await watch.checked();
    expect(watch.state()).toEqual({
      checking: false,
      faults: [
        { file, line: 3, says: '"artcle" cannot stand after "kind:"; did you mean "article"?' },
        { file: other, line: 3, says: expect.stringMatching(/^"buk" cannot stand after "kind:"/) },
      ],
    });
    writeFileSync(join(copy, file), source('article'));
    watch.edited();
    await watch.checked();
    expect(watch.state().faults.map((fault) => fault.file)).toEqual([other]);
    watch.stop();
  });
});

describe('the second reload', () => {
  const file = join(folder, 'a.mdx');
  const page = (name: string, body: string) => writeFileSync(file, `---\nname: ${name}\n---\n${body}\n`);
  /** The reloads that come through after an edit. */
  const after = (edit: () => void): string[] => {
    const through: string[] = [];
    const reloads = oneReload([file]);
    const send = reloads.filtered(({ type, path }) => through.push(`${type} ${path ?? ''}`));
    edit();
    reloads.edited(file);
    send({ type: 'full-reload' });
    send({ type: 'full-reload', path: '*' });
    return through;
  };

  it('is left out where fields changed, and kept where the text did', () => {
    page('one', 'Text.');
    expect(after(() => page('two', 'Text.'))).toEqual(['full-reload ']);
    expect(after(() => page('two', 'Another text.'))).toEqual(['full-reload ', 'full-reload *']);
  });
});

describe('where a flaw stands', () => {
  it('is told of its walk: a line for each stage, and every end of its tree', () => {
    expect(stagesOf(known, 'dull-spots').map(({ stage, verdict }) => [stage, verdict])).toEqual([
      ['wet', 'Hands off'],
      ['setting', 'Hands off'],
      ['dry-to-touch', 'Leave it to dry'],
      ['recoatable', 'Asks'],
      ['cured', 'Asks'],
    ]);
    const ends = endsOf(known, 'dull-spots');
    expect(ends).toHaveLength(5);
    expect(ends[0]?.answers.map(({ answer }) => answer)).toEqual(['yes', 'yes']);
    expect(ends.at(-1)?.end).toMatch(/^Leave it: /);
  });

  it('is told of the search for the flaw: answered as its file says, the flaw is listed', () => {
    for (const { id } of known.defects.filter((_, index) => index % 8 === 0)) {
      const { asked, place, likely } = soughtOf(known, id);
      expect(asked.length, id).toBeGreaterThan(2);
      expect(place, id).toBeGreaterThan(0);
      expect(likely.length, id).toBeGreaterThan(0);
    }
  });

  it('is told of its look-alikes and of what its names find', () => {
    expect(apartOf(known, 'dull-spots').every(({ by }) => by.length > 0)).toBe(true);
    const finds = findsOf(known, readIndex(known, process.cwd()), 'dull-spots');
    expect(finds[0]).toEqual({ typed: 'Dull spots', place: 1, first: 'Dull spots' });
    expect(finds.every(({ place }) => place >= 1 && place <= 3)).toBe(true);
  });
});
