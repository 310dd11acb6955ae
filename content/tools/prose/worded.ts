import type { Fault, Issue } from '#engine/faults/issue.ts';
import { nearest } from '#engine/plain/nearest.ts';
import type { ContentRoot } from '../files.ts';
import { likeIn, notAmerican } from './dictionary.ts';
import { claimedIn, unclaimedIn } from './figures.ts';
import type { HouseStyle } from './house-style.ts';
import { lineAt, type Prose, proseOf } from './texts.ts';
import { bareFigures, unitFaults } from './units.ts';
import { bareWord, partsOf, pastTheReader, placesOf, twiceIn, wordsIn } from './words.ts';

/** A fault, and where it stands in the text. */
type Placed = { readonly prose: Prose; readonly at: number; readonly fault: Fault };

/** A text with its words, which most checks ask first. */
type Read = { readonly prose: Prose; readonly words: ReadonlySet<string>; readonly lower: string };

const spelling = (texts: readonly Read[], { spelled, write }: HouseStyle): Placed[] => {
  // What has a word of its own here is told with that word.
  const passed = new Set([...spelled, ...Object.values(write).flat()].map((word) => word.toLowerCase()));
  const all = new Set(texts.flatMap(({ words }) => [...words]));
  const bare = new Set(
    [...all].map(bareWord).filter((word) => word.length > 1 && !passed.has(word.toLowerCase())),
  );
  const wrong = notAmerican(bare);
  if (wrong.size === 0) return [];
  const right = [...bare].filter((word) => !wrong.has(word));
  const like = likeIn(wrong);
  const meant = (word: string): string | undefined => {
    const bare = bareWord(word);
    // A letter is left out more often than put in: of words that are as near, the longest, and one that is used here.
    const all = [...right, ...(like.get(bare) ?? [])].sort((one, other) => other.length - one.length);
    const one = nearest(bare.toLowerCase(), all);
    return one && /^[A-Z]/.test(word) ? one.replace(/^./, (first) => first.toUpperCase()) : one;
  };
  return texts.flatMap(({ prose, words }) =>
    [...words]
      .filter((word) => wrong.has(bareWord(word)))
      .flatMap((word) => {
        const places = partsOf(prose.text, word);
        if (!places.length) return [];
        return places.map(
          ({ at }): Placed => ({ prose, at, fault: { code: 'misspelt', word, nearest: meant(word) } }),
        );
      }),
  );
};

const otherWords = ({ prose, words, lower }: Read, { write }: HouseStyle): Placed[] =>
  Object.entries(write).flatMap(([word, others]) =>
    others
      .filter((other) =>
        /^[a-z]+$/.test(other) ? words.has(other) || lower.includes(other) : lower.includes(other),
      )
      .flatMap((other) => placesOf(prose.text, `${other}s?`, 'giu'))
      .map(({ at, word: found }): Placed => {
        const plural = found.endsWith('s') && !others.includes(found.toLowerCase());
        return { prose, at, fault: { code: 'other-word', word: found, write: plural ? `${word}s` : word } };
      }),
  );

/** A typewriter's apostrophe; single quotes of YAML double it. */
const STRAIGHT = /[\p{L}\d]+('{1,2})\p{L}+/gu;

const straightMarks = ({ prose }: Read): Placed[] =>
  prose.text.includes("'")
    ? [...prose.text.matchAll(STRAIGHT)].map(
        ({ index, 0: word, 1: mark = '' }): Placed => ({
          prose,
          at: index,
          fault: { code: 'other-word', word: word.replace(mark, "'"), write: word.replace(mark, '’') },
        }),
      )
    : [];

const figures = ({ prose }: Read, claimed: ReadonlySet<string>): Placed[] =>
  /\d/.test(prose.text)
    ? [
        ...unitFaults(prose.text).map(
          ({ at, figure, ...found }): Placed =>
            found.why === 'alone'
              ? { prose, at, fault: { code: 'one-system', figure, wants: found.wants } }
              : { prose, at, fault: { code: 'figures-differ', figure, beside: found.beside, is: found.is } },
        ),
        ...bareFigures(prose.text).map(
          ({ at, figure }): Placed => ({ prose, at, fault: { code: 'bare-figure', figure } }),
        ),
        ...unclaimedIn(prose.raw, claimed).map(
          ({ at, figure }): Placed => ({ prose, at, fault: { code: 'figure-unclaimed', figure } }),
        ),
      ]
    : [];

/** Everything that an author words otherwise than this site words it, file by file. */
export const wordedOtherwise = (root: ContentRoot, style: HouseStyle): readonly Issue[] => {
  const ofOthers = new Set(style['of-others'].map(({ file }) => file));
  const texts = proseOf(root).map(
    (prose): Read => ({ prose, words: wordsIn(prose.text), lower: prose.text.toLowerCase() }),
  );
  const claimed = new Set(texts.flatMap(({ prose }) => claimedIn(prose.raw)));
  const faults = [
    ...spelling(texts, style),
    ...texts.flatMap((read): Placed[] => {
      const { prose, words } = read;
      const worded = [
        ...otherWords(read, style),
        ...straightMarks(read),
        ...twiceIn(prose.text).map(
          ({ at, word }): Placed => ({ prose, at, fault: { code: 'word-twice', word } }),
        ),
      ];
      if (prose.read === 'words') return worded;
      const past = ofOthers.has(prose.file) ? [] : pastTheReader(prose.text, words);
      return [
        ...worded,
        ...past.flatMap((word) =>
          placesOf(prose.text, word).map(
            ({ at }): Placed => ({ prose, at, fault: { code: 'past-the-reader', word } }),
          ),
        ),
        ...figures(read, claimed),
      ];
    }),
  ];
  return faults
    .map(({ prose, at, fault }): Issue => ({ file: prose.file, line: lineAt(prose.text, at), ...fault }))
    .sort((one, two) => (one.file === two.file ? one.line - two.line : one.file < two.file ? -1 : 1));
};
