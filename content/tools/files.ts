import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Where content is read from: a folder that holds `content/`, or one with some files read from memory instead; one that
 * is undefined there is gone.
 */
export type ContentRoot =
  | string
  | { readonly folder: string; readonly texts: ReadonlyMap<string, string | undefined> };

const folderOf = (root: ContentRoot): string => (typeof root === 'string' ? root : root.folder);

/** The text of a file below the root, named from there; undefined where there is none. */
export const textOf = (root: ContentRoot, file: string): string | undefined => {
  if (typeof root !== 'string' && root.texts.has(file)) return root.texts.get(file);
  const path = join(folderOf(root), file);
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
};

/** Names of the files of a folder below the root that end so, sorted. */
export const filesIn = (root: ContentRoot, folder: string, ending: string): readonly string[] => {
  const path = join(folderOf(root), folder);
  const there = existsSync(path)
    ? readdirSync(path, { withFileTypes: true }).flatMap((one) => (one.isFile() ? [one.name] : []))
    : [];
  const kept = typeof root === 'string' ? [] : [...root.texts.keys()];
  const own = kept
    .filter((file) => file.startsWith(`${folder}/`))
    .map((file) => file.slice(folder.length + 1));
  const gone = (name: string) =>
    typeof root !== 'string' &&
    root.texts.has(`${folder}/${name}`) &&
    root.texts.get(`${folder}/${name}`) === undefined;
  return [...new Set([...there, ...own])]
    .filter((name) => name.endsWith(ending) && !name.includes('/') && !gone(name))
    .sort();
};

/** Names of the folders right below a folder of the root, sorted. */
export const foldersIn = (root: ContentRoot, folder: string): readonly string[] => {
  const path = join(folderOf(root), folder);
  const there = existsSync(path)
    ? readdirSync(path, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []))
    : [];
  const kept =
    typeof root === 'string'
      ? []
      : [...root.texts].flatMap(([file, text]) => (text === undefined ? [] : [file]));
  const own = kept
    .filter((file) => file.startsWith(`${folder}/`))
    .map((file) => file.slice(folder.length + 1))
    .flatMap((rest) => (rest.includes('/') ? [rest.slice(0, rest.indexOf('/'))] : []));
  return [...new Set([...there, ...own])].sort();
};
