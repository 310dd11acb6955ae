import type { Manner } from '../words/manner.ts';
import { type Ear, type Match, spanOf } from '../words/match.ts';
import { EACH_WORD, type Mention, PLAIN } from '../words/mention.ts';
import { isOfOthers } from '../words/of-others.ts';
import { oneOf } from '../words/one-of.ts';
import { isLaid, isOfBelow, namesTop, placeOf } from '../words/place.ts';
import { isKind, type Span, type Word } from '../words/words.ts';
import { claimed } from './claimed.ts';

/** A post as it is read for choices: its words, the phrases met in them, and how they are meant. */
export type PostRead = {
  readonly ear: Ear;
  readonly words: readonly Word[];
  readonly matches: readonly Match[];
  readonly manner: Manner;
};

/** What tells each fact, and what speaks against it. Kinds that are left open stand under `among`. */
export type Mentions = {
  readonly told: ReadonlyMap<string, readonly Mention[]>;
  readonly against: ReadonlyMap<string, readonly Span[]>;
};

/** What is added where the base is said to lie below. */
const BASE_BELOW = 0.1;

/** "took the original stain off", "it needs the old varnish and stain taken off" */
const isTakenOff = (words: readonly Word[], { from, to }: Match): boolean => {
  const { part } = words[from] ?? {};
  const near = (start: number, end: number, what: RegExp) =>
    words.slice(Math.max(0, start), end).some((word) => word.part === part && what.test(word.word));
  return (
    near(to, to + 3, /^(off|away|removed)$/) &&
    (near(
      from - 6,
      from,
      /^(took|take|taking|strip|stripped|stripping|remove|sand|sanded|sanding|get|got|getting|needs?)$/,
    ) ||
      near(to, to + 2, /^(taken|came|coming|sanded|stripped)$/))
  );
};

/** "I took the old finish off with a scraper": what was taken off lies there no more. */
const isOldTakenOff = (words: readonly Word[], { from, to }: Match): boolean => {
  const { part } = words[from] ?? {};
  const near = (start: number, end: number) =>
    words.slice(Math.max(0, start), end).filter((word) => word.part === part);
  return (
    near(to, to + 2).some(({ word }) => /^(off|away)$/.test(word)) &&
    near(from - 4, from).some(({ word }) => /^(took|got|scraped)$/.test(word)) &&
    !near(from - 4, from).some(({ word }) => /^(most|some|half|not|didnt|never)$/.test(word))
  );
};

/** "semi gloss wall latex, then a clear": the sheen of the paint is not that of the top coat. */
const isSheenOfPaint = (words: readonly Word[], matches: readonly Match[], { to, from }: Match): boolean =>
  words
    .slice(to, to + 2)
    .some(
      ({ word, part }) =>
        part === words[from]?.part && /^(latex|enamel|emulsion|paint|wall|trim|undercoat)$/.test(word),
    ) && namesTop(words, matches);

const said = (words: readonly Word[], from: number, count: number): string =>
  words
    .slice(from, from + count)
    .map(({ word }) => word)
    .join(' ');

const GUESSED = oneOf(
  'think|thinking|assume|guess|could|might|maybe|probably|perhaps|suppose|suspect|usually|normally',
);

/** "could be shellac", "lacquer I assume", "I usually finish with oil": guessed, or told of other times. */
const isGuessed = (words: readonly Word[], { from, to }: Match): boolean => {
  const near = words.slice(Math.max(0, from - 5), to + 4);
  return near.some(({ word, clause }) => clause === words[from]?.clause && GUESSED.test(word));
};

/** "Won’t stick to my old dresser": denied is what it does, and not the piece that it does it to. */
const isOnWhat = (words: readonly Word[], denied: number, { from }: Match): boolean =>
  /^(wont|doesnt|dont|didnt|cant|cannot|never|wouldnt|isnt|not)$/.test(words[denied]?.word ?? '') &&
  words.slice(denied + 2, from).some(({ word }) => /^(to|on|off|from|onto)$/.test(word));

const TOP = oneOf('coats?|clear|poly|polyurethane|varnish|lacquer|shellac|topcoat|wax|oil|finish');
const COLORING = oneOf('stain|stained|stains|staining|dye|dyed');

/** What the thing is made of, and what was laid on it before: "I want to touch up a cherry bench". */
const isOfTheThing = (words: readonly Word[], { of: [fact, value], from, to }: Match): boolean =>
  (fact === 'base-tone' &&
    value === 'wood' &&
    !words.slice(Math.max(0, from - 3), to + 1).some(({ word }) => COLORING.test(word))) ||
  (fact === 'base' && (value === 'old-finish' || value === 'laminate'));

/** "one day old poly" is no old finish */
const isOldByTime = (words: readonly Word[], { from }: Match): boolean =>
  words[from]?.word === 'old' && /^(minute|hour|day|week|month)s?$/.test(words[from - 1]?.word ?? '');

/** "polyurethane (oil)" */
const isOilOfPoly = (words: readonly Word[], { from, to, size }: Match): boolean =>
  size === 1 &&
  words[to - 1]?.word === 'oil' &&
  /^(poly|polyur|urethane|varnish)/.test(words[from - 1]?.word ?? '');

const BELOW = oneOf('stain|stains|dye|primer|conditioner|filler|sealer');

/** "wiped an oil stain over it, then sprayed lacquer": what the layer below was laid with. */
const isToolOfBelow = (words: readonly Word[], matches: readonly Match[], { from, to }: Match): boolean => {
  const near = words.slice(from, to + 4).filter(({ part }) => part === words[from]?.part);
  const below = near.findIndex(({ word }) => BELOW.test(word));
  const top = near.findIndex(({ word }, at) => TOP.test(word) && !BELOW.test(near[at + 1]?.word ?? ''));
  // "the same brush for the primer and then for the topcoat"
  if (near[below + 1]?.word === 'and') return false;
  return below >= 0 && (top < 0 || below < top) && namesTop(words, matches);
};

/** "scrubbed it with a brush": so far back the word stands that tells what a tool was used for. */
const USED_FOR = 6;

/** "cleaned it with a sponge", "vacuumed with the brush": what dirt was taken off with. */
const isToolOfCleaning = (words: readonly Word[], { from, to }: Match): boolean => {
  if (words.slice(from, to).some((word) => isKind(word, 'laying', 'laying-now'))) return false;
  const before = words
    .slice(Math.max(0, from - USED_FOR), from)
    .filter(({ part }) => part === words[from]?.part);
  const cleans = before.findLastIndex((word) => isKind(word, 'cleaning'));
  const since = before.slice(cleans + 1);
  return cleans >= 0 && !since.some((word) => isKind(word, 'laying', 'laying-now') || word.word === 'and');
};

/** Phrases that tell nothing of this coat or of what lies below it. */
const OF_NOTHING: readonly ((post: PostRead, match: Match) => boolean)[] = [
  ({ words }, match) => match.of[0] === 'family' && isOfBelow(words, match),
  ({ words }, { from, to }) => isOfOthers(words, from, to),
  ({ words }, match) => match.of[0] === 'base' && match.of[1] === 'stain' && isTakenOff(words, match),
  ({ words, matches }, match) => match.of[0] === 'sheen' && isSheenOfPaint(words, matches, match),
  ({ words }, match) => isOldByTime(words, match),
  ({ words }, match) => match.of[0] === 'base' && match.of[1] === 'old-finish' && isOldTakenOff(words, match),
  ({ words, matches }, match) => match.of[0] === 'applicator' && isToolOfBelow(words, matches, match),
  ({ words }, match) => match.of[0] === 'applicator' && isToolOfCleaning(words, match),
];

/** What was wiped on need be no wipe-on varnish. */
const isOnlyWiped = (words: readonly Word[], { of: [, value], from }: Match): boolean =>
  value === 'wipe-on' && /^(wiped|wipe it|wipe them)/.test(said(words, from, 2));

/** "should I oil my oak table": the table and its wood are there, whatever is to be done to it. */
const isThere = (words: readonly Word[], match: Match): boolean =>
  match.of[0] === 'piece' || match.of[0] === 'age' || isOfTheThing(words, match);

const isDenied = ({ words, manner }: PostRead, match: Match): boolean => {
  const there = isThere(words, match);
  const denied = manner.denied(match);
  if (denied !== undefined && !(there && isOnWhat(words, denied, match))) return true;
  return !there && (manner.notYet(match) || manner.feared(match));
};

const mentionOf = ({ ear, words }: PostRead, match: Match): Mention => {
  const [fact, value = ''] = match.of;
  const place = placeOf(ear, words, match);
  return {
    value,
    weight: PLAIN + EACH_WORD * (match.size - 1) + (fact === 'base' && place === 'below' ? BASE_BELOW : 0),
    span: spanOf(words, match),
    place,
    laid: isLaid(words, match),
  };
};

/** What a post tells of each choice, phrase by phrase. */
export const mentionsIn = (post: PostRead): Mentions => {
  const { words } = post;
  const told = new Map<string, Mention[]>();
  const against = new Map<string, Span[]>();
  const put = <One>(all: Map<string, One[]>, fact: string, one: One) =>
    all.set(fact, [...(all.get(fact) ?? []), one]);
  for (const match of claimed(post.matches)) {
    const [fact = ''] = match.of;
    const span = spanOf(words, match);
    if (isDenied(post, match)) put(against, fact, span);
    else if (OF_NOTHING.some((isIt) => isIt(post, match))) continue;
    else if (isOilOfPoly(words, match))
      put(told, 'family', {
        value: 'oil-based',
        weight: PLAIN + EACH_WORD,
        span,
        place: undefined,
        laid: true,
      });
    else if (isOnlyWiped(words, match)) continue;
    else if (fact === 'family' && isGuessed(words, match)) put(against, fact, span);
    else put(told, match.kind === 'among' ? 'among' : fact, mentionOf(post, match));
  }
  // As they are told, so that the last is the one that was laid last.
  for (const those of told.values()) those.sort((a, b) => a.span.from - b.span.from);
  return { told, against };
};
