/**
 * Words of strangers, a fifth of the threads held out: nobody has learned from them here. All searches get the same pages
 * and, as words of these pages, what the other threads say.
 */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import Fuse from 'fuse.js';
import MiniSearch from 'minisearch';
import { buildIndex, documentsOf, find, pageName } from '#engine/find.ts';
import type { Knowledge } from '#engine/knowledge/knowledge.ts';
import { readSearchWords } from '../../../content/tools/hear.ts';
import { readKin } from '../../../content/tools/kin.ts';
import { readSaid } from '../../../content/tools/said.ts';
import { median } from '../measure.ts';

type Phrase = { readonly id: string; readonly q: string; readonly is: readonly string[] };
type Search = (query: string) => readonly string[];

const PARTS = 5;
/** The slowest of the searches takes most of a second for a phrase: it is asked one in so many. */
const SLOW_ASKED = 10;
const threadOf = ({ id }: Phrase): number =>
  [...(id.split('-')[0] ?? '')].reduce((sum, sign) => (Math.imul(sum, 31) + sign.charCodeAt(0)) >>> 0, 7);

export const searchQuality = (known: Knowledge) => {
  const root = process.cwd();
  const heldOut = readFileSync('test/words/phrases.open.jsonl', 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Phrase)
    .filter((phrase) => phrase.is?.length && threadOf(phrase) % PARTS === 0);
  const held = new Set(heldOut.map(({ q }) => q.toLowerCase()));
  const { phrases, tools } = readSaid(known, root);
  const learned = phrases.filter(({ say }) => !held.has(say.toLowerCase()));
  const documents = documentsOf(known, tools);
  const words = readSearchWords(root);
  const index = buildIndex(documents, words, learned, readKin(root));

  const saidOf = Map.groupBy(
    learned.flatMap(({ say, is }) => is.map((page) => ({ say, page }))),
    ({ page }) => page,
  );
  const pages = documents.map(({ id, kind, title, also, signs, text }) => {
    const page = pageName({ id, kind });
    const said = (saidOf.get(page) ?? []).map(({ say }) => say);
    return { id: page, title, also: [...also, ...said].join('\n'), signs: signs.join('\n'), text };
  });
  const fields = ['title', 'also', 'signs', 'text'] as const;
  const mini = new MiniSearch({
    fields: [...fields],
    searchOptions: { boost: { title: 3, also: 3, signs: 2 }, fuzzy: 0.2, prefix: true, combineWith: 'OR' },
  });
  mini.addAll(pages);
  const bm25 = new MiniSearch({ fields: [...fields], searchOptions: { combineWith: 'OR' } });
  bm25.addAll(pages);
  const fuse = new Fuse(pages, { keys: [...fields], ignoreLocation: true });

  const searches: readonly (readonly [string, Search, number, number?])[] = [
    [
      'Halfdry',
      (query) => find(index, query, { limit: 3 }).map(pageName),
      gzipSync(JSON.stringify(index)).length,
    ],
    [
      'MiniSearch 7.2, tuned',
      (query) => mini.search(query).map(({ id }) => String(id)),
      gzipSync(JSON.stringify(mini)).length,
    ],
    [
      'BM25 alone (MiniSearch, no fuzziness)',
      (query) => bm25.search(query).map(({ id }) => String(id)),
      gzipSync(JSON.stringify(bm25)).length,
    ],
    [
      `Fuse.js 7.5 as it comes, one phrase in ${SLOW_ASKED}`,
      (query) => fuse.search(query, { limit: 3 }).map(({ item }) => item.id),
      gzipSync(JSON.stringify(pages)).length,
      SLOW_ASKED,
    ],
  ];
  return {
    phrases: heldOut.length,
    rows: searches.map(([name, search, bytes, step = 1]) => {
      const times: number[] = [];
      const asked = heldOut.filter((_, at) => at % step === 0);
      const ranks = asked.map(({ q, is }) => {
        const began = performance.now();
        const hits = search(q);
        times.push(performance.now() - began);
        return hits.slice(0, 3).findIndex((hit) => is.includes(hit));
      });
      const within = (places: number) =>
        ranks.filter((rank) => rank >= 0 && rank < places).length / ranks.length;
      times.sort((a, b) => a - b);
      return {
        name,
        first: within(1),
        inThree: within(3),
        ms: median(times),
        p95: times[Math.floor(times.length * 0.95)] ?? Number.NaN,
        bytes,
      };
    }),
  };
};

export type SearchFigures = ReturnType<typeof searchQuality>;
