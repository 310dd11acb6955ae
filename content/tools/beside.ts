/** The second thread of `npm run check`: it parses the content while the first loads its code, and works beside the proofs. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { FOLDERS } from '#engine/model/kinds.ts';
import { dataOf, fenced, yamlOf } from './front-matter.ts';
import { wordedOtherwise, wordingIn } from './prose/worded.ts';
import { type Reckoned, reckon, type Work } from './reckon.ts';

/** A file with what its YAML says; without where that could not be told. */
export type ReadFile = {
  readonly file: string;
  readonly text: string;
  readonly parsed?: { readonly of: string; readonly data: unknown };
};
export type Told = { readonly read: readonly ReadFile[] } | { readonly reckoned: Reckoned };

const READ = ['', 'hear', 'practice', ...Object.values(FOLDERS)];

const parsedOf = (file: string, text: string): ReadFile['parsed'] => {
  const of = file.endsWith('.yaml') ? fenced(text) : text;
  const yaml = yamlOf(of);
  try {
    return yaml === undefined ? undefined : { of, data: dataOf(yaml) };
  } catch {
    // The first thread tells what is wrong with it.
    return undefined;
  }
};

const readAll = (root: string): readonly ReadFile[] =>
  READ.flatMap((folder) => {
    const path = join(root, 'content', folder);
    if (!existsSync(path)) return [];
    return readdirSync(path, { withFileTypes: true }).flatMap((one): ReadFile[] => {
      if (!one.isFile() || !/\.(?:mdx|yaml)$/.test(one.name)) return [];
      const text = readFileSync(join(path, one.name), 'utf8');
      const file = ['content', ...(folder ? [folder] : []), one.name].join('/');
      const parsed = parsedOf(file, text);
      return [{ file, text, ...(parsed ? { parsed } : {}) }];
    });
  });

const { root } = workerData as { readonly root: string };
const read = readAll(root);
const tell = (told: Told) => parentPort?.postMessage(told);
tell({ read });

const texts = new Map(read.map(({ file, text }) => [file, text]));
const wording = wordingIn(read.find(({ file }) => file === 'content/wording.yaml')?.parsed?.data ?? {});
// While the first thread links what was read.
const worded = wording && wordedOtherwise({ folder: root, texts }, wording);
parentPort?.on('message', (work: Work) =>
  tell({ reckoned: { ...(worded ? { worded } : {}), ...reckon(work) } }),
);
