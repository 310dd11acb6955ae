import { FACTS } from '#engine/model/facts.ts';
import { ENTRY_KINDS, FOLDERS } from '#engine/model/kinds.ts';
import { type ContentRoot, filesIn, textOf } from '../files.ts';

/**
 * A file as it is read for its style: what is no prose of ours is blank, so that every place keeps its offset. Of
 * `words` only the words are read: tables hold bare figures in units of their own, and what an owner says of her piece;
 * titles of sources name figures and people.
 */
export type Prose = {
  readonly file: string;
  readonly text: string;
  /** As it is written. */
  readonly raw: string;
  readonly read: 'all' | 'words';
};

/** Tables that hold sentences of ours; the others hold what people type, or names. */
const TABLES: Readonly<Record<string, Prose['read']>> = {
  acts: 'all',
  steps: 'all',
  care: 'words',
  choices: 'words',
  clock: 'words',
  'first-coat': 'words',
  hands: 'words',
  plan: 'words',
  sights: 'words',
};
/** Fields that hold what people type, or what belongs to someone else. */
const NOT_OURS =
  /^( *)(?:- )?(?:also|heard|not-heard|covers|standard|for|link|source|at):.*\n(?:\1(?:[ -]).*\n)*/gm;
const NO_PROSE =
  /\bhttps?:\/\/\S+|<[A-Za-z][^<>\n]*>|^ *#.*$|^[ -]*[a-z][a-z-]*:(?= |$)|(?<=[{,] ?)[a-z][a-z-]*:(?= )/gm;
const SOURCES = `content/${FOLDERS.source}/`;
const JOINED = /[a-z0-9]+(?:-[a-z0-9]+)+/g;

const blank = (text: string): string => text.replace(/[^\n]/g, ' ');

/** What a source says that is not ours: the work's own words between quotes, names, and who wrote it when. */
const OF_THE_WORK =
  /(?<=[\s"])['‘“][^'’”\n]*['’”](?=[\s,.]|"?$)|^(?!title:|read:).*$|(?<![\p{L}’'])\p{Lu}[\p{L}’']*/gmu;

/** Ids and values of facts, which are names and no words. */
const namesOf = (root: ContentRoot): ReadonlySet<string> =>
  new Set([
    ...ENTRY_KINDS.flatMap((kind) =>
      filesIn(root, `content/${FOLDERS[kind]}`, '.mdx').map((name) => name.slice(0, -'.mdx'.length)),
    ),
    ...Object.values(FACTS).flatMap((fact) => ('values' in fact ? fact.values : [])),
  ]);

/** Every text of content/ that an author words. */
export const proseOf = (root: ContentRoot): readonly Prose[] => {
  const names = namesOf(root);
  const pages = ENTRY_KINDS.flatMap((kind) =>
    filesIn(root, `content/${FOLDERS[kind]}`, '.mdx').map(
      (name) => [`content/${FOLDERS[kind]}/${name}`, kind === 'source' ? 'words' : 'all'] as const,
    ),
  );
  const tables = Object.entries(TABLES).map(([name, read]) => [`content/${name}.yaml`, read] as const);
  return [...pages, ...tables].flatMap(([file, read]) => {
    const text = textOf(root, file);
    if (text === undefined) return [];
    const ours = (file.startsWith(SOURCES) ? text.replace(OF_THE_WORK, blank) : text)
      .replace(NOT_OURS, blank)
      .replace(NO_PROSE, blank)
      .replace(JOINED, (name) => (names.has(name) ? blank(name) : name));
    return [{ file, text: ours, raw: text, read }];
  });
};

/** The line of an offset, from 1. */
export const lineAt = (text: string, at: number): number => text.slice(0, at).split('\n').length;
