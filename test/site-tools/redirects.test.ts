/** An id that moves keeps every address that it had; a build that would lose one fails and names it. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { checkLedger, lastingAddresses } from '../../site/tools/ledger.ts';
import { writeRedirects } from '../../site/tools/redirects.ts';

let dist = '';
const page = (path: string, html = '<p></p>') => {
  mkdirSync(join(dist, path), { recursive: true });
  writeFileSync(join(dist, path, 'index.html'), html);
};
const read = (path: string) => readFileSync(join(dist, path), 'utf8');
const ledger = () => join(dist, '..', 'addresses.txt');

beforeEach(() => {
  dist = join(mkdtempSync(join(tmpdir(), 'ledger-')), 'dist');
  for (const path of ['', 'defects/runs', 'r/runs', 'remedies/shave', 'r/shave']) page(path);
  page('glossary', '<dl><div id="nib"></div></dl>');
  page('defects/runs/stage-wet/lifted-yes');
  page('see/lines-yes');
});
afterEach(() => rmSync(join(dist, '..'), { recursive: true, force: true }));

it('keeps what people link to, and not the pages that follow a tree', () => {
  expect(lastingAddresses(dist)).toEqual([
    '/',
    '/defects/runs/',
    '/glossary/',
    '/glossary/#nib',
    '/r/runs/',
    '/r/shave/',
    '/remedies/shave/',
  ]);
});

it('fails for a lost address, names it, and is content once it is retired', () => {
  writeFileSync(ledger(), '# addresses\n/\n/defects/sags/\n/r/sags/\n/glossary/#speck\n');
  expect(() => checkLedger(dist, ledger())).toThrow(
    /\/defects\/sags\/ was published[\s\S]*\/glossary\/#speck was[\s\S]*\/r\/sags\/ was published/,
  );
  writeRedirects(dist, { 'defect/sags': 'runs', 'term/speck': 'nib' }, '/');
  expect(checkLedger(dist, ledger())).toContain('/r/shave/');
  expect(read('defects/sags/index.html')).toContain('content="0; url=/defects/runs/"');
  expect(read('r/sags/index.html')).toContain('content="0; url=/defects/runs/"');
});

it('tells hosts that read it, with what lay below a flaw', () => {
  writeRedirects(dist, { 'defect/sags': 'runs', 'remedy/plane': 'shave' }, '/some/path/');
  expect(read('_redirects').split('\n')).toEqual([
    '/some/path/defects/sags/ /some/path/defects/runs/ 301',
    '/some/path/defects/sags/* /some/path/defects/runs/:splat 301',
    '/some/path/r/sags/ /some/path/defects/runs/ 301',
    '/some/path/remedies/plane/ /some/path/remedies/shave/ 301',
    '/some/path/r/plane/ /some/path/remedies/shave/ 301',
    '',
  ]);
});

it('follows an id that moved twice', () => {
  writeRedirects(dist, { 'defect/curtains': 'sags', 'defect/sags': 'runs' }, '/');
  expect(read('r/curtains/index.html')).toContain('url=/defects/runs/');
});

it.each([
  ['a circle', { 'defect/a': 'b', 'defect/b': 'a' }, 'goes in a circle'],
  ['a target that is not there', { 'defect/sags': 'gone' }, '/defects/gone/, which is not there'],
  ['an id in use', { 'defect/runs': 'runs-too' }, '/defects/runs/ is in use'],
  ['a kind without pages', { 'rule/dust': 'lead' }, '"rule/dust" has no page'],
  ['a word that is not there', { 'term/speck': 'gone' }, 'term/speck'],
])('refuses %s', (_what, retired, says) => {
  expect(() => writeRedirects(dist, retired as Record<string, string>, '/')).toThrow(says);
});
