import { z } from 'zod';
import type { Issue } from '#engine/issue.ts';
import { knowledgeOf } from '#engine/knowledge.ts';
import { nearest } from '#engine/nearest.ts';
import { type ContentRoot, textOf } from '../files.ts';
import { readTable, type Table } from '../table.ts';
import { notAmerican } from './dictionary.ts';
import { claimedIn, unclaimedIn } from './figures.ts';
import { lineAt, type Prose, proseOf } from './texts.ts';
import { unitFaults } from './units.ts';
import { bareWord, pastTheReader, placesOf, wordsIn } from './words.ts';

const FILE = 'content/wording.yaml';

export const Wording = z.strictObject({
  spelled: z
    .array(z.string().min(2))
    .default([])
    .describe('Words that are spelled right though an American dictionary lacks them.'),
  write: z
    .record(z.string(), z.array(z.string().min(2)).min(1))
    .default({})
    .describe('The word that is written here → what is not written in its place.'),
  'of-others': z
    .array(z.strictObject({ file: z.string(), why: z.string().min(12) }))
    .default([])
    .describe('Files that tell of someone other than the reader.'),
});
type Wording = z.infer<typeof Wording>;

/** How this site words things; no file is no rule. */
const wordingTable = (root: ContentRoot): Table<Wording> =>
  textOf(root, FILE) === undefined
    ? { ok: true, value: { spelled: [], write: {}, 'of-others': [] }, lineOf: () => 1 }
    : readTable(knowledgeOf([]), root, FILE, Wording);

type Fault = { readonly prose: Prose; readonly at: number } & (
  | { readonly code: 'misspelt'; readonly word: string; readonly nearest: string | undefined }
  | { readonly code: 'other-word'; readonly word: string; readonly write: string }
  | { readonly code: 'past-the-reader'; readonly word: string }
  | { readonly code: 'one-system'; readonly figure: string; readonly wants: string }
  | { readonly code: 'figures-differ'; readonly figure: string; readonly beside: string; readonly is: string }
  | { readonly code: 'figure-unclaimed'; readonly figure: string }
);

/** A text with its words, which most checks ask first. */
type Read = { readonly prose: Prose; readonly words: ReadonlySet<string>; readonly lower: string };

const spelling = (texts: readonly Read[], { spelled, write }: Wording): Fault[] => {
  // What has a word of its own here is told with that word.
  const passed = new Set([...spelled, ...Object.values(write).flat()].map((word) => word.toLowerCase()));
  const all = new Set(texts.flatMap(({ words }) => [...words]));
  const bare = new Set(
    [...all].map(bareWord).filter((word) => word.length > 1 && !passed.has(word.toLowerCase())),
  );
  const wrong = notAmerican(bare);
  if (wrong.size === 0) return [];
  const right = [...bare].filter((word) => !wrong.has(word));
  return texts.flatMap(({ prose, words }) =>
    [...words]
      .filter((word) => wrong.has(bareWord(word)))
      .flatMap((word) => {
        const meant = nearest(bareWord(word).toLowerCase(), right);
        return placesOf(prose.text, word).map(
          ({ at }): Fault => ({ prose, at, code: 'misspelt', word, nearest: meant }),
        );
      }),
  );
};

const otherWords = ({ prose, words, lower }: Read, { write }: Wording): Fault[] =>
  Object.entries(write).flatMap(([word, others]) =>
    others
      .filter((other) =>
        /^[a-z]+$/.test(other) ? words.has(other) || lower.includes(other) : lower.includes(other),
      )
      .flatMap((other) => placesOf(prose.text, `${other}s?`, 'giu'))
      .map(({ at, word: found }): Fault => {
        const plural = found.endsWith('s') && !others.includes(found.toLowerCase());
        return { prose, at, code: 'other-word', word: found, write: plural ? `${word}s` : word };
      }),
  );

const figures = ({ prose }: Read, claimed: ReadonlySet<string>): Fault[] =>
  /\d/.test(prose.text)
    ? [
        ...unitFaults(prose.text).map(
          ({ at, figure, ...found }): Fault =>
            found.why === 'alone'
              ? { prose, at, code: 'one-system', figure, wants: found.wants }
              : { prose, at, code: 'figures-differ', figure, beside: found.beside, is: found.is },
        ),
        ...unclaimedIn(prose.raw, claimed).map(
          ({ at, figure }): Fault => ({ prose, at, code: 'figure-unclaimed', figure }),
        ),
      ]
    : [];

/** Everything that is worded otherwise than this site words it, file by file. */
export const proseFaults = (root: ContentRoot): readonly Issue[] => {
  const table = wordingTable(root);
  if (!table.ok) return table.issues;
  const wording = table.value;
  const ofOthers = new Set(wording['of-others'].map(({ file }) => file));
  const texts = proseOf(root).map(
    (prose): Read => ({ prose, words: wordsIn(prose.text), lower: prose.text.toLowerCase() }),
  );
  const claimed = new Set(texts.flatMap(({ prose }) => claimedIn(prose.raw)));
  const faults = [
    ...spelling(texts, wording),
    ...texts.flatMap((read): Fault[] => {
      const { prose, words } = read;
      if (prose.read === 'words') return otherWords(read, wording);
      const past = ofOthers.has(prose.file) ? [] : pastTheReader(prose.text, words);
      return [
        ...otherWords(read, wording),
        ...past.flatMap((word) =>
          placesOf(prose.text, word).map(({ at }): Fault => ({ prose, at, code: 'past-the-reader', word })),
        ),
        ...figures(read, claimed),
      ];
    }),
  ];
  const stale = wording['of-others'].flatMap(({ file }, at): Issue[] =>
    textOf(root, file) === undefined
      ? [{ file: FILE, line: table.lineOf(['of-others', at]), code: 'needless-exception', of: file }]
      : [],
  );
  const told = faults.map(
    ({ prose, at, ...fault }): Issue => ({ file: prose.file, line: lineAt(prose.text, at), ...fault }),
  );
  return [
    ...stale,
    ...told.sort((one, two) => (one.file === two.file ? one.line - two.line : one.file < two.file ? -1 : 1)),
  ];
};
