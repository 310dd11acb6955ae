import type { FindIndex, Hit } from './document.ts';
import type { Token } from './language.ts';
import { type OpenIndex, open } from './open.ts';
import { read } from './read.ts';
import { ABOUT, KIND, LONE, SHARE } from './weights.ts';

export interface FindOptions {
  /** Most hits to list; 10 unless told. */
  readonly limit?: number;
  /** The last word may not be finished. */
  readonly typing?: boolean;
}

interface Tally {
  score: number;
  covered: number;
  readonly matched: string[];
}

/** Best score and cover of each document for one word of the query. */
const perWord = ({ index, rareness }: OpenIndex, rows: ReadonlyMap<number, number>): Map<number, Tally> => {
  const found = new Map<number, Tally>();
  for (const [row, trust] of rows) {
    const posting = index.postings[row] ?? [];
    const topical = trust * (posting.length > 2 ? 1 : LONE);
    for (let at = 0; at < posting.length; at += 2) {
      const document = posting[at] ?? 0;
      const weight = (posting[at + 1] ?? 0) / 10;
      const best = found.get(document) ?? { score: 0, covered: 0, matched: [] };
      best.score = Math.max(best.score, trust * (rareness[row] ?? 0) * weight);
      best.covered = Math.max(best.covered, topical * Math.min(1, weight / ABOUT));
      found.set(document, best);
    }
  }
  return found;
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

/** The documents that answer a query, best first; none where too little of it is known. */
export const find = (
  index: FindIndex,
  query: string,
  { limit = 10, typing = false }: FindOptions = {},
): Hit[] => {
  const ready = open(index);
  const unfinished = typing && /[a-z0-9]$/i.test(query);
  const tokens = joined(ready, ready.say.tokens(query));
  const tallies = new Map<number, Tally>();
  let asked = 0;
  tokens.forEach((token, position) => {
    const { rows, asks } = read(ready, token, unfinished && position === tokens.length - 1);
    asked += asks;
    for (const [document, { score, covered }] of perWord(ready, rows)) {
      const tally = tallies.get(document) ?? { score: 0, covered: 0, matched: [] };
      tally.score += score;
      tally.covered += covered;
      tally.matched.push(token.typed);
      tallies.set(document, tally);
    }
  });
  const hits: Hit[] = [];
  for (const [at, { score, covered, matched }] of tallies) {
    const document = index.documents[at];
    if (!document || covered < SHARE * asked) continue;
    hits.push({ ...document, score: score * Math.sqrt(covered / asked) * KIND[document.kind], matched });
  }
  return hits.sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1)).slice(0, limit);
};
