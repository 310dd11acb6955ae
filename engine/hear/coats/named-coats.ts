import { entryOf } from '../../plain/entry-of.ts';
import { numberAt } from '../words/spans.ts';
import { FOLLOWS, JUST } from '../words/sure.ts';
import { isTopOrSheen } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';
import { type Count, countBefore, ORDINALS, partOf } from './coat-counts.ts';
import { BEFORE, type Coats, type Said } from './laid-coats.ts';

/** A layer below, which is no coat of the finish. */
const BELOW = /^(stain|stains|primer|dye|conditioner|filler|stripper|remover|bleach)$/;
/** What a kind of finish is called, and which it may be. */
const KINDS: Readonly<Record<string, RegExp>> = {
  shellac: /^shellac$/,
  lacquer: /lacquer$/,
  oil: /^(oil|hardwax-oil|oil-based|wipe-on)$/,
  wax: /wax/,
};

/** "one coat of shellac, then lacquer": what was counted lies below. */
export const isOfOtherKind = (named: string, family: string | undefined): boolean =>
  family !== undefined && entryOf(KINDS, named)?.test(family) === false;

/** Coats of paint: they count only where no clear coat is told of. */
const PAINT = /^(paint|latex|chalk|chalky|milk|color|whites?)$/;
/** A word for a coat, at `at`, with what is said of it. */
type NamedCoat = {
  readonly at: number;
  readonly word: Word;
  readonly after: Word | undefined;
  /** "three coats" */
  readonly before: Count | undefined;
  /** What it is of: "coat of lacquer". */
  readonly kind: Word | undefined;
  readonly ofPaint: boolean;
  /** A layer below, or a finish of another kind. */
  readonly isOther: boolean;
};

/** Words behind a coat that tell what it is of. */
const SAID_OF = 5;

const namedCoat = ({ ear, words, family }: Coats, at: number, word: Word): NamedCoat => {
  const said = words
    .slice(at + 1, at + SAID_OF)
    .filter((next) => next.clause === word.clause && next.part === word.part);
  const before = countBefore(ear, words, at);
  const counted = partOf(words, at, at - BEFORE, at).filter(({ from }) => before && from >= before.span.from);
  const all = [...counted, ...said];
  // "coats of paint and two of clear" tells of paint, "coats of clear over the stain" of none.
  const first = all.findIndex((one) => BELOW.test(one.word) || PAINT.test(one.word) || isTopOrSheen(one));
  // "two coats of oil stain" are of stain
  const kindAt = BELOW.test(all[first + 1]?.word ?? '') ? first + 1 : first;
  const kind = all[kindAt];
  const name = kind?.word ?? '';
  const isSealer = name === 'sealer' && all[kindAt - 1]?.word === 'sanding';
  return {
    at,
    word,
    after: words[at + 1],
    before,
    kind,
    ofPaint: PAINT.test(name),
    isOther: BELOW.test(name) || isSealer || isOfOtherKind(name, family),
  };
};

/** "from one coat to the next", "cover in one coat" */
const isIdiom = ({ before, after }: NamedCoat): boolean =>
  before?.high === 1 && /^(to|at)$/.test(after?.word ?? '');

/** "three coats a day" goes on for days */
const isEachDay = ({ before, at, word, after }: NamedCoat, words: readonly Word[]): boolean =>
  (before?.high ?? 0) > 1 &&
  !ORDINALS.test(words[at - 1]?.word ?? '') &&
  after?.part === word.part &&
  /^(a|per|each|every) (day|night|week|session)$/.test(`${after?.word} ${words[at + 2]?.word}`);

/** "three coats", "the second coat" */
const countedBefore = ({ words }: Coats, coat: NamedCoat): Count | undefined =>
  coat.before && !isIdiom(coat) && !isEachDay(coat, words)
    ? { ...coat.before, ofPaint: coat.ofPaint }
    : undefined;

/** "coat 4", "coat number four", "coats two and three" */
const numbered = ({ ear, words }: Coats, { at, word, after, ofPaint }: NamedCoat): Count | undefined => {
  const told = after?.word === 'number' ? words[at + 2] : after;
  const number = told?.clause === word.clause ? numberAt(ear, told) : undefined;
  if (number === undefined || /^(a|an|half)$/.test(told?.word ?? '') || word.word === 'layer')
    return undefined;
  // "the coat two days ago"
  if (told === after && ear.units.has(words[at + 2]?.word ?? '')) return undefined;
  const and = words[at + 2]?.word === 'and' ? numberAt(ear, words[at + 3]) : undefined;
  const high = Math.max(number, and ?? 0);
  const to = (and ? words[at + 3] : told)?.to ?? word.to;
  return { low: high, high, sure: FOLLOWS, span: { from: word.from, to }, ofPaint };
};

/** "a coat of clear", the only one told of */
const onlyOne = ({ words, isOne }: Coats, coat: NamedCoat): Count | undefined => {
  const { at, word, after, before, kind, ofPaint } = coat;
  if (!isOne || before || after?.word !== 'of' || !(isTopOrSheen(kind) || ofPaint)) return undefined;
  const one = words[at - 1]?.word ?? '';
  const isA = one === 'a' || (words[at - 2]?.word === 'a' && !/^(final|last|new|fresh|next)$/.test(one));
  return isA ? { low: 1, high: 1, sure: JUST, span: { from: word.from, to: after.to }, ofPaint } : undefined;
};

/** What a word for a coat tells. */
export const ofNamed = (coats: Coats, at: number, word: Word): Said[] => {
  const coat = namedCoat(coats, at, word);
  if (coat.isOther) return [];
  return [
    { count: countedBefore(coats, coat), from: at, to: at + 1 },
    { count: numbered(coats, coat), from: at, to: at + 2 },
    { count: onlyOne(coats, coat), from: at, to: at + 1 },
  ];
};
