/**
 * The same commit gives the same bytes: a second build, into another folder, against dist/. It takes as long as a
 * build, and only one extra is made. If a file under content/, engine/ or site/ was saved meanwhile, run it again.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { filesBelow, sha256, treeHash } from '../../site/build/hash.ts';

it('builds the same bytes twice', { timeout: 900_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), 'again-'));
  const again = join(folder, 'dist');
  try {
    execFileSync(process.execPath, ['site/tools/build.ts'], {
      env: { ...process.env, OUT: again, TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8' },
      stdio: 'inherit',
    });
    const names = filesBelow('dist');
    expect(filesBelow(again)).toEqual(names);
    const hashOf = (dist: string, name: string) => sha256(readFileSync(join(dist, name)));
    expect(names.filter((name) => hashOf('dist', name) !== hashOf(again, name))).toEqual([]);
    expect(treeHash(again)).toBe(treeHash('dist'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
