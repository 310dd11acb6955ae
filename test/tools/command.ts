/** Runs a command of the project as an author does, in a folder of her own. */
import { execFile } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

const root = process.cwd();

export type Ran = { readonly code: number; readonly out: string; readonly err: string };

/** `node content/tools/<tool>.ts …` (`check` is no TypeScript), with `cwd` as the project. Never rejects: an exit code is an answer. */
export const run = (tool: string, args: readonly string[], cwd = root, input?: string): Promise<Ran> =>
  new Promise((done) => {
    const child = execFile(
      process.execPath,
      [join(root, 'content/tools', `${tool}.${tool === 'check' ? 'mjs' : 'ts'}`), ...args],
      { cwd, encoding: 'utf8', maxBuffer: 64_000_000 },
      (error, out, err) =>
        done({ code: typeof error?.code === 'number' ? error.code : error ? -1 : 0, out, err }),
    );
    child.stdin?.end(input ?? '');
  });

const made: string[] = [];

/** A copy of the content in a temporary folder, with `changes` written over it. */
export const copyOfContent = (changes: Readonly<Record<string, string>> = {}): string => {
  const folder = mkdtempSync(join(tmpdir(), 'halfdry-'));
  made.push(folder);
  cpSync(join(root, 'content'), join(folder, 'content'), { recursive: true });
  for (const [file, text] of Object.entries(changes)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  return folder;
};

export const clearCopies = () => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
};
