import type { FindIndex, FindKind, FindNames, Hit } from './document.ts';
import type { Token } from './language.ts';
import { nameMark } from './names.ts';
import { type OpenIndex, type OpenNames, open, openNames } from './open.ts';
import { read } from './read.ts';
import { learnedChances, mixed } from './voices.ts';
import { ABOUT, KIND, POSTING_UNIT } from './weights.ts';

export interface FindOptions {
  /** Most hits to list; 10 unless told. */
  readonly limit?: number;
  /** The last word may not be finished. */
  readonly typing?: boolean;
}

/** What the words of a query say of every document. */
type Counted = {
  readonly scores: Float64Array;
  /** Part of the query that each answers, in words. */
  readonly covered: Float64Array;
  readonly matched: ReadonlyMap<number, readonly string[]>;
  /** Words of the query, strange ones weighing more. */
  readonly asked: number;
};

/** Two typed words that the documents write as one (`fish eyes`, `fisheyes`) are read as that one. */
const joined = (ready: OpenIndex, tokens: readonly Token[]): Token[] => {
  const found: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const here = tokens[at];
    const next = tokens[at + 1];
    if (!here) continue;
    const pair = next && ready.say.tokens(here.word + next.word)[0];
    if (pair && ready.term(pair.stem) !== undefined) {
      found.push({ ...pair, typed: `${here.typed} ${next.typed}` });
      at++;
    } else found.push(here);
  }
  return found;
};

/** Each stem counts once: two forms of one word are one word. */
const once = (tokens: readonly Token[]): Token[] => {
  const met = new Set<string>();
  return tokens.filter(({ stem }) => !met.has(stem) && met.add(stem));
};

const countedIn = (ready: OpenIndex, tokens: readonly Token[], unfinished: boolean): Counted => {
  const { postings, rareness, index } = ready;
  const count = index.documents.length;
  const scores = new Float64Array(count);
  const covered = new Float64Array(count);
  const matched = new Map<number, string[]>();
  // Of all that one word may stand for, the best counts, in each document apart.
  const best = new Float64Array(count);
  const bestCover = new Float64Array(count);
  let asked = 0;
  tokens.forEach((token, position) => {
    const { rows, asks } = read(ready, token, unfinished && position === tokens.length - 1);
    asked += asks;
    const met = new Set<number>();
    for (const [row, trust] of rows) {
      const posting = postings[row] ?? [];
      const worth = trust * (rareness[row] ?? 0);
      for (let at = 0; at < posting.length; at += 2) {
        const document = posting[at] ?? 0;
        const weight = (posting[at + 1] ?? 0) / POSTING_UNIT;
        met.add(document);
        best[document] = Math.max(best[document] ?? 0, worth * weight);
        bestCover[document] = Math.max(bestCover[document] ?? 0, trust * Math.min(1, weight / ABOUT));
      }
    }
    for (const document of met) {
      scores[document] = (scores[document] ?? 0) + (best[document] ?? 0);
      covered[document] = (covered[document] ?? 0) + (bestCover[document] ?? 0);
      best[document] = 0;
      bestCover[document] = 0;
      const words = matched.get(document);
      if (words) words.push(token.typed);
      else matched.set(document, [token.typed]);
    }
  });
  return { scores, covered, matched, asked };
};

/** What both voices say of a text. */
type Weighed = {
  /** Chance of every document, in the order of the index. */
  readonly chances: Float64Array;
  /** Chance that it is of other matters, by what was learned; undefined where no word of it was. */
  readonly elsewhere: number | undefined;
  readonly counted: Counted;
  /** Rows of the pages whose whole name it is. */
  readonly named: readonly number[];
  /** Whether any word of it is known, be it for its kin. */
  readonly known: boolean;
};

/** The rows whose whole name was typed, `~row` where it is their title. */
const namedIn = ({ say, names }: OpenNames, typed: string): readonly number[] => {
  const mark = nameMark(say, typed);
  return mark === undefined ? [] : (names.get(mark) ?? []);
};

/** Weighs every document by a text. */
export const weighed = (index: FindIndex, query: string, typing = false): Weighed => {
  const ready = open(index);
  const unfinished = typing && /[a-z0-9]$/i.test(query);
  const tokens = once(joined(ready, ready.say.tokens(query)));
  const counted = countedIn(ready, tokens, unfinished);
  const all = ready.say.all(query);
  // A last word that may not be finished counts once it is a word that was learned.
  const last = all.at(-1);
  const half = unfinished && last !== undefined && !ready.features.has(last.stem);
  const learned = learnedChances(ready, half ? all.slice(0, -1) : all);
  const named = namedIn(ready, query);
  const byKind = counted.scores.map((score, at) => score * KIND[index.documents[at]?.kind ?? 'defect']);
  return {
    chances: mixed(index, byKind, learned),
    named,
    elsewhere: learned?.[index.documents.length],
    counted,
    known:
      counted.matched.size > 0 ||
      tokens.some(({ stem }, at) => ready.kin.has(stem) || ready.kin.has(`${stem} ${tokens[at + 1]?.stem}`)),
  };
};

/** Hits listed where nothing is sure. */
const PERHAPS_LISTED = 3;
/** A hit that is this much less likely than the first is not listed. */
const FAR_BEHIND = 0.02;

/** How well a text belongs here: 0 not at all, 1 wholly. Chosen on open phrases. */
const belongs = ({ chances, elsewhere = 0, counted, named }: Weighed): number => {
  if (named.length) return 1;
  let first = 0;
  chances.forEach((chance, at) => {
    if (chance > (chances[first] ?? 0)) first = at;
  });
  // "How many coats" has small words only: what was learned of them stands alone.
  const share = counted.asked
    ? Math.min(1, (counted.covered[first] ?? 0) / counted.asked)
    : (chances[first] ?? 0);
  return share * (1 - elsewhere) ** STRICT;
};

/**
 * A wall, a deck or a car is spoken of with the words of this trade, so a small chance that a text is of other matters
 * tells more than the share of its words that a page knows. Chosen on open threads that were not learned from.
 */
const STRICT = 13;
/** From here on what is first counts as an answer; below it all is listed as perhaps. */
const SURE_FROM = 0.4;

/**
 * Rows with a chance of at least `least`, or named, by chance; those whose whole name was typed before the others, but
 * words of the trade only below what they name.
 */
const ordered = ({ documents }: FindIndex, { chances, named, counted }: Weighed, least: number): number[] => {
  const called = new Set(named.map((name) => (name < 0 ? ~name : name)));
  const rows = [...chances.keys()]
    .filter((row) => (chances[row] ?? 0) >= least || called.has(row))
    .sort(
      (a, b) =>
        (chances[b] ?? 0) - (chances[a] ?? 0) ||
        ((documents[a]?.id ?? '') < (documents[b]?.id ?? '') ? -1 : 1),
    );
  if (!named.length) return rows;
  const titled = new Set(named.filter((name) => name < 0).map((name) => ~name));
  const isTerm = (row: number): boolean => documents[row]?.kind === 'glossary';
  const pages = rows.filter((row) => called.has(row) && !isTerm(row));
  const terms = rows.filter((row) => called.has(row) && isTerm(row));
  const byTitle = (list: readonly number[]) => [
    ...list.filter((row) => titled.has(row)),
    ...list.filter((row) => !titled.has(row)),
  ];
  const rest = rows.filter((row) => !called.has(row));
  // A page that knows but a part of what was typed says nothing of the word that it is.
  const isOfAll = (row = 0): boolean => (counted.covered[row] ?? 0) >= counted.asked * MOST_OF_IT;
  const above = isOfAll(rest[0]) ? rest.splice(0, 1) : [];
  const first = pages.length ? byTitle(pages) : above;
  // A word is explained below the first pages that bear it.
  const lead = first.splice(0, Math.max(1, NAMED_IN_SIGHT - terms.length));
  return [...lead, ...byTitle(terms), ...first, ...rest];
};

/** A page stands above the word whose name was typed where it covers so much of that. */
const MOST_OF_IT = 0.75;
/** Every page whose whole name was typed stands within so many. */
const NAMED_IN_SIGHT = 3;

/**
 * The documents that answer a query, likeliest first. Where little of it fits, the nearest three come as `perhaps`;
 * none where no word of it is known.
 */
export const find = (
  index: FindIndex,
  query: string,
  { limit = 10, typing = false }: FindOptions = {},
): Hit[] => {
  const found = weighed(index, query, typing);
  const { chances, counted, named, known } = found;
  if (!known && !named.length && (counted.asked || found.elsewhere === undefined)) return [];
  const fit = belongs(found);
  const sure = fit >= SURE_FROM;
  const least = Math.max(...chances) * FAR_BEHIND;
  const rows = ordered(index, found, least).slice(0, sure ? limit : Math.min(limit, PERHAPS_LISTED));
  let score = 0;
  return rows
    .toReversed()
    .flatMap((row) => {
      const document = index.documents[row];
      if (!document) return [];
      score = Math.max(score, (chances[row] ?? 0) * Math.min(1, fit / SURE_FROM));
      return [{ ...document, score, perhaps: !sure, matched: counted.matched.get(row) ?? [] }];
    })
    .toReversed();
};

/**
 * Whether a page is among the first three of `find` because its whole name was typed, whatever else the words tell. No
 * stands for not known: other words may bring it there.
 */
export const isNamedInSight = (index: FindNames, query: string, kind: FindKind, id: string): boolean => {
  const named = namedIn(openNames(index), query);
  const pages = named.flatMap((name) => index.documents[name < 0 ? ~name : name] ?? []);
  // Where only words of the trade bear it, what is likeliest stands above them.
  const above = pages.length > 0 && pages.every((page) => page.kind === 'glossary') ? 1 : 0;
  return pages.length + above <= NAMED_IN_SIGHT && pages.some((page) => page.kind === kind && page.id === id);
};
