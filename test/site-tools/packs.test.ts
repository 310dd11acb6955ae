/** What is packed for the phone is unpacked by the worker to the same bytes, and nothing else is found in it. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, expect, it } from 'vitest';
import { writePacks } from '../../site/tools/packs.ts';
import { writeWorker } from '../../site/tools/worker.ts';
import { readPack } from '../../site/worker/pack.ts';
import { comesLater, packKey } from '../../site/worker/pack-key.ts';

const style = '<style>p{color:#123}</style>';
const html = (text: string) =>
  `<html><head>${style}</head><header class="top">Top</header><p>${text}</p><footer class="foot">Foot</footer></html>`;
const FILES: Readonly<Record<string, string>> = {
  'index.html': html('café “first”'),
  '404.html': html('lost'),
  'defects/runs/index.html': html('runs'),
  'defects/runs/cause/index.html': html('cause of runs'),
  'data/find.json': '{"a":1}',
};

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

const built = (files: Readonly<Record<string, string>>): string => {
  const dist = mkdtempSync(join(tmpdir(), 'packs-'));
  folders.push(dist);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(dist, name, '..'), { recursive: true });
    writeFileSync(join(dist, name), text);
  }
  return dist;
};
const opened = (dist: string, key: string, hash: string | undefined) => {
  const bytes = gunzipSync(readFileSync(join(dist, 'offline', `${key}.${hash}.bin`)));
  return readPack(new Uint8Array(bytes).buffer);
};

it('gives back every file, byte by byte', async () => {
  const dist = built(FILES);
  const list = await writePacks(dist);
  expect(Object.keys(list)).toEqual(['core', 'defects-runs']);
  for (const [name, text] of Object.entries(FILES)) {
    const address = name.replace(/(^|\/)index\.html$/, '$1');
    const key = packKey(address);
    const found = opened(dist, key, list[key])(address);
    expect(Buffer.concat(found?.parts ?? []).toString('utf8')).toBe(text);
    expect(found?.type).toMatch(name.endsWith('.json') ? /^application\/json/ : /^text\/html/);
  }
});

it('finds nothing for an address that is not in it, and no names of the language', async () => {
  const dist = built(FILES);
  const core = opened(dist, 'core', (await writePacks(dist))['core']);
  for (const path of ['gone/', '__proto__', 'constructor', 'toString']) expect(core(path)).toBeUndefined();
});

it('leaves out what is for the host alone, and refuses what has no media type', async () => {
  const dist = built({ ...FILES, _headers: '', 'sw.js': '', 'cards/a.png': '', '.nojekyll': '' });
  expect(await writePacks(dist)).toEqual(await writePacks(built(FILES)));
  await expect(writePacks(built({ ...FILES, 'a.xyz': '' }))).rejects.toThrow('a.xyz: give its media type');
});

it('changes one pack for one edit, and the version with it', async () => {
  const before = built(FILES);
  const after = built({ ...FILES, 'defects/runs/index.html': html('runs and sags') });
  const [one, two] = [await writePacks(before), await writePacks(after)];
  expect(two['core']).toBe(one['core']);
  expect(two['defects-runs']).not.toBe(one['defects-runs']);
  expect(await writeWorker(before)).not.toBe(await writeWorker(after));
  expect(await writeWorker(built(FILES))).toBe(await writeWorker(before));
});

it('lets pictures come after words', () => {
  expect(comesLater(packKey('boards/defects/runs-1-raking.webp'))).toBe(true);
  expect(comesLater(packKey('defects/runs/'))).toBe(false);
  expect(comesLater(packKey('data/find.json'))).toBe(false);
});
