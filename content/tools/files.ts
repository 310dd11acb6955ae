import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where content is read from: a folder that holds `content/`, or one with some files read from memory instead. */
export type ContentRoot = string | { readonly folder: string; readonly texts: ReadonlyMap<string, string> };

const folderOf = (root: ContentRoot): string => (typeof root === 'string' ? root : root.folder);

/** The text of a file below the root, named from there; undefined where there is none. */
export const textOf = (root: ContentRoot, file: string): string | undefined => {
  const kept = typeof root === 'string' ? undefined : root.texts.get(file);
  if (kept !== undefined) return kept;
  const path = join(folderOf(root), file);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
};

/** Names of the files of a folder below the root that end so, sorted. */
export const filesIn = (root: ContentRoot, folder: string, ending: string): readonly string[] => {
  const path = join(folderOf(root), folder);
  const there = existsSync(path) ? readdirSync(path) : [];
  const kept = typeof root === 'string' ? [] : [...root.texts.keys()];
  const own = kept
    .filter((file) => file.startsWith(`${folder}/`))
    .map((file) => file.slice(folder.length + 1));
  return [...new Set([...there, ...own])]
    .filter((name) => name.endsWith(ending) && !name.includes('/'))
    .sort();
};
