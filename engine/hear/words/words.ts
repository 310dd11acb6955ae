import { stem } from '../../find/stem.ts';
import type { WordKind } from '../../model/word-kinds.ts';

/** A stretch of the text, in UTF-16 units; `to` is the first beyond it. */
export type Span = { readonly from: number; readonly to: number };

export type KindsOfWord = ReadonlySet<WordKind>;
const OF_NO_KIND: KindsOfWord = new Set();

/** A word of the text as the ear reads it. */
export type Word = Span & {
  /** Lower case, without apostrophes and accents. */
  readonly word: string;
  readonly stem: string;
  /** What the content says it is: `top-coat`, `laying`. */
  readonly kinds: KindsOfWord;
  /** Clauses end at a stop, a line break, a bracket or a turn (`but`, `because`); sentences at a stop or a line break. */
  readonly clause: number;
  readonly sentence: number;
  /** A part ends where a clause does and at a comma, too. */
  readonly part: number;
  /** Whether its sentence ends with a question mark. */
  readonly asks: boolean;
  /** Whether a comma stands before it. */
  readonly comma: boolean;
};

/** More than this of a text is not read; a whole post is shorter. */
const MOST_READ = 6000;

/** Words stand first, since most pieces are words; but for the halves no two kinds begin alike. */
const PIECE =
  /[\p{L}\p{M}]+(?:['’‘`´][\p{L}\p{M}]+)*|[%.!?;:\n(),]|½|(?<![\d/])1\/2(?![\d/])|\d+(?:st|nd|rd|th)(?![\p{L}\d])|\d+(?:[.,]\d+)?|[–—]|\s-\s/gu;
/** Pieces that are no words; the point in a number stops nothing. */
const STOPS: ReadonlySet<string> = new Set('.!?\n');
const BREAKS: ReadonlySet<string> = new Set(';:()–—');
/** "sticky - why": a stroke between blanks, whichever these are. */
const isStroke = (piece: string): boolean => piece.length === 3 && piece[1] === '-';

const stems = new Map<string, string>();
const REMEMBERED = 4000;

/** The stem of a word, remembered. A number is its own stem. */
export const stemOf = (word: string): string => {
  const known = stems.get(word);
  if (known !== undefined) return known;
  if (stems.size >= REMEMBERED) stems.clear();
  const fresh = /\d/.test(word) ? word : stem(word);
  stems.set(word, fresh);
  return fresh;
};

const PLAIN = /^[a-z0-9]+$/;

const plain = (piece: string): string => {
  // A half is written so, too.
  if (piece === '½' || piece === '1/2') return 'half';
  const lower = piece.toLowerCase();
  return PLAIN.test(lower) ? lower : lower.normalize('NFD').replace(/[\u0300-\u036f'’‘`´]/g, '');
};

/** Whether a word is of one of these kinds; where there is none it is of no kind. */
export const isKind = (word: Word | undefined, ...kinds: readonly WordKind[]): boolean =>
  word !== undefined && kinds.some((kind) => word.kinds.has(kind));

/** What the ear knows of single words. */
export type Vocabulary = {
  /** Puts a spelling right. */
  readonly spelled: (word: string) => string;
  /** Words that end a clause. */
  readonly turns: ReadonlySet<string>;
  readonly kindsOf: ReadonlyMap<string, KindsOfWord>;
};

/** How a sentence begins that asks, with or without its mark: "is it dry", "does the wax smear". */
const ASKED_FIRST = /^(is|are|was|were|does|do|did|has|have|will)$/;
const ASKED_OF = /^(it|this|that|the|my|our|they|these|those|a|an)$/;

const beginsAsking = (words: readonly Word[], at: number): boolean =>
  ASKED_FIRST.test(words[at]?.word ?? '') &&
  ASKED_OF.test(words[at + 1]?.word ?? '') &&
  words[at + 1]?.sentence === words[at]?.sentence;

/** The words of a text with their places. */
export const wordsIn = (text: string, { spelled, turns, kindsOf }: Vocabulary): Word[] => {
  const words: Word[] = [];
  let clause = 0;
  let sentence = 0;
  let part = 0;
  let comma = false;
  for (const found of text.slice(0, MOST_READ).matchAll(PIECE)) {
    const [piece] = found;
    if (piece === ',') {
      comma = true;
      part++;
    } else if (STOPS.has(piece)) {
      if (piece === '?')
        for (let at = words.length - 1; words[at]?.sentence === sentence; at--)
          words[at] = { ...(words[at] as Word), asks: true };
      clause++;
      sentence++;
      part++;
    } else if (BREAKS.has(piece) || isStroke(piece)) {
      clause++;
      part++;
    } else if (piece !== '%') {
      const word = spelled(plain(piece));
      // "twenty or so coats" turns nowhere
      if (turns.has(word) && !(word === 'so' && words.at(-1)?.word === 'or')) {
        clause++;
        part++;
      }
      words.push({
        word,
        stem: stemOf(word),
        kinds: kindsOf.get(word) ?? OF_NO_KIND,
        from: found.index,
        to: found.index + piece.length,
        clause,
        sentence,
        part,
        asks: false,
        comma,
      });
      comma = false;
    }
  }
  const asking = new Set(
    words.flatMap(({ sentence: of }, at) =>
      of !== words[at - 1]?.sentence && beginsAsking(words, at) ? [of] : [],
    ),
  );
  return asking.size
    ? words.map((word) => (asking.has(word.sentence) ? { ...word, asks: true } : word))
    : words;
};
