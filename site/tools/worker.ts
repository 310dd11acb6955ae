import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { sha256 } from './hash.ts';
import { HEADERS } from './headers.ts';
import { writePacks } from './packs.ts';

/** In the order that they need each other. Not every browser takes modules as workers, so they become one file. */
const SOURCES = ['pack-key', 'pack', 'store', 'worker'];

const PLAIN: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  removeComments: true,
};

/** The worker's own files as one plain script: without types, imports and comments. */
const script = (): string =>
  SOURCES.map((name) => ts.transpile(readFileSync(`site/worker/${name}.ts`, 'utf8'), PLAIN))
    .join('\n')
    .replace(/^import [^;]*;$/gm, '')
    .replace(/^export \{\};$/gm, '')
    .replace(/^export /gm, '')
    .replace(/\n\s+/g, '\n');

/**
 * Writes the packs and `sw.js`, last of all steps: it rests on the final bytes of every page.
 * Gives the version, which is a hash of all that is kept.
 */
export const writeWorker = (dist: string): string => {
  const packs = writePacks(dist);
  const body = script();
  const version = sha256(JSON.stringify(packs) + body).slice(0, 12);
  const known = { VERSION: version, PACKS: packs, HEADERS };
  const constants = Object.entries(known).map(([name, value]) => `const ${name} = ${JSON.stringify(value)};`);
  writeFileSync(join(dist, 'sw.js'), `'use strict';\n${constants.join('\n')}\n${body}\n`);
  return version;
};
