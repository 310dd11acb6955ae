/** What is looked at while the knowledge grows. */
import { execFileSync } from 'node:child_process';
import { gzipSync } from 'node:zlib';
import { emptyCase, withFact } from '#engine/case/case.ts';
import { rulesOf, treesOf } from '#engine/compiled/compiled.ts';
import { buildIndex, documentsOf, type FindIndex, find } from '#engine/find.ts';
import { believe, nextAsked } from '#engine/hear/belief/belief.ts';
import { type Mind, mindOf } from '#engine/hear.ts';
import { type Knowledge, nodesOf, walk } from '#engine/index.ts';
import { link } from '#engine/link.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { prove } from '#engine/prove/prove.ts';
import { matrixOf } from '#engine/see/matrix.ts';
import { seeNodes } from '#engine/see/nodes.ts';
import { survey } from '#engine/see/survey.ts';
import { readSearchWords } from '../../../content/tools/hear.ts';
import { readKin } from '../../../content/tools/kin.ts';
import { readSaid } from '../../../content/tools/said.ts';
import { beliefCases } from '../belief-cases.ts';
import { built } from '../build/run.ts';
import { chanceFrom } from '../chance.ts';
import { median } from '../measure.ts';
import type { Grown } from './figures.ts';
import { renamed } from './knowledge.ts';
import { wordsOfCopy } from './words.ts';

/** The knowledge at one size, and what is made of it once it is asked for. */
export type Sized = {
  readonly size: number;
  readonly entries: readonly RawEntry[];
  /** The knowledge as it is. */
  readonly first: Knowledge;
  readonly known: () => Knowledge;
  readonly mind: () => Mind;
  readonly index: () => FindIndex;
};

const once = <T>(make: () => T): (() => T) => {
  let made: { readonly one: T } | undefined;
  return () => {
    made ??= { one: make() };
    return made.one;
  };
};

/** Of what people said one line in so many is learned from: learning from all takes minutes already at a few times the size. */
const ONE_IN = 10;

/** What people said, and as much of each copy in its own words. */
const phrasesAt = (first: Knowledge, size: number) => {
  const { phrases: all, tools } = readSaid(first, process.cwd());
  const phrases = all.filter((_, at) => at % ONE_IN === 0);
  const copies = Array.from({ length: size }, (_, at) => at + 1);
  const isCopied = (page: string) => !page.startsWith('page/') && !page.startsWith('product/');
  return {
    tools,
    phrases: copies.flatMap((copy) =>
      copy === 1
        ? phrases
        : phrases
            .filter(({ is }) => is.length > 0 && is.every(isCopied))
            .map((phrase) => ({
              ...phrase,
              say: wordsOfCopy(phrase.say, copy),
              is: phrase.is.map((page) => renamed(page, copy)),
            })),
    ),
  };
};

export const sized = (first: Knowledge, entries: readonly RawEntry[], size: number): Sized => {
  const known = once(() => {
    const linked = link(entries);
    if (!linked.ok) throw new Error(`what was grown ${size}× does not link: ${linked.issues.length} faults`);
    return linked.value;
  });
  return {
    size,
    entries,
    first,
    known,
    mind: once(() => mindOf(known())),
    index: once(() => {
      const { phrases, tools } = phrasesAt(first, size);
      const root = process.cwd();
      return buildIndex(documentsOf(known(), tools), readSearchWords(root), phrases, readKin(root));
    }),
  };
};

/** Of the processor: what else runs on the machine makes it hardly longer. */
const ms = (work: () => unknown): number => {
  const began = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1000;
};
const lasted = (work: () => unknown): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};
const gz = (data: unknown): number => gzipSync(JSON.stringify(data)).length;

const SAMPLE = 60;
/** The median of a sample, after a round that warms up. */
const each = <T>(all: readonly T[], work: (one: T) => unknown): number => {
  for (const one of all) work(one);
  return median(all.map((one) => lasted(() => work(one))));
};
const sampleOf = <T>(all: readonly T[]): readonly T[] => {
  const { pick } = chanceFrom(20_261_132);
  return Array.from({ length: SAMPLE }, () => pick(all));
};

/** From a sample of the flaws. */
const nodeCount = (known: Knowledge): number =>
  sampleOf(known.defects).reduce((sum, { id }) => sum + [...nodesOf(known, id)].length, 0) *
  (known.defects.length / SAMPLE);

type Subject = {
  readonly what: string;
  readonly unit: Grown['unit'];
  readonly of: (at: Sized) => number;
  /** Not tried at the next size once it took so many milliseconds. */
  readonly patience?: number;
  /** Not tried at more than this size. */
  readonly upTo?: number;
};

/** The whole of `npm run check`, in a process of its own. */
const checkedAt = (size: number): { readonly ms: number; readonly memory: number } =>
  JSON.parse(
    execFileSync(process.execPath, ['test/bench/growth/check-one.ts', String(size)], { encoding: 'utf8' }),
  );
const checks = new Map<number, ReturnType<typeof checkedAt>>();
const checked = (size: number): ReturnType<typeof checkedAt> => {
  const found = checks.get(size) ?? checkedAt(size);
  checks.set(size, found);
  return found;
};

/** Of the pages at 1× one in so many are built; at every size as many. */
const BUILT_ONE_IN = 15;

export const SUBJECTS: readonly Subject[] = [
  {
    what: 'check, the whole of it',
    unit: 'ms',
    of: ({ size }) => checked(size).ms,
    patience: Number.POSITIVE_INFINITY,
  },
  {
    what: 'check, the whole of it: memory',
    unit: 'bytes',
    of: ({ size }) => checked(size).memory,
    patience: Number.POSITIVE_INFINITY,
  },
  { what: 'check: link', unit: 'ms', of: (at) => ms(() => at.known()), patience: Number.POSITIVE_INFINITY },
  {
    what: 'check: proofs',
    unit: 'ms',
    of: (at) => ms(() => prove(at.known())),
    patience: Number.POSITIVE_INFINITY,
  },
  {
    what: 'check: the search for the flaw planned',
    unit: 'ms',
    patience: Number.POSITIVE_INFINITY,
    of: (at) => ms(() => survey(matrixOf(at.known()))),
  },
  {
    what: 'search index learned, from a tenth of what was said',
    unit: 'ms',
    patience: 60_000,
    of: (at) => ms(() => at.index()),
  },
  {
    what: 'trees and rules compiled',
    unit: 'ms',
    of: (at) => ms(() => [treesOf(at.known()), rulesOf(at.known())]),
  },
  {
    what: 'a whole walk',
    unit: 'µs',
    of: (at) => {
      const on = withFact(emptyCase(), 'stage', 'cured');
      return (
        1e3 * each(sampleOf(at.known().defects), ({ id }) => walk(at.known(), on, id, { forCause: true }))
      );
    },
  },
  {
    what: 'next question by belief, facts told',
    unit: 'ms',
    of: (at) =>
      each(beliefCases(at.mind(), SAMPLE), (told) =>
        nextAsked(at.mind(), believe(at.mind(), { told }), { stage: 'cured', waits: new Set() }),
      ),
  },
  {
    what: 'one search in it',
    unit: 'ms',
    of: (at) => {
      const { phrases } = readSaid(at.first, process.cwd());
      return each(sampleOf(phrases), ({ say }) => find(at.index(), say, { limit: 6 }));
    },
  },
  { what: 'data: the knowledge, gz', unit: 'bytes', of: (at) => gz(at.entries.map(({ data }) => data)) },
  { what: 'data: signs and belief, gz', unit: 'bytes', of: (at) => gz(at.mind()) },
  { what: 'data: that search index, gz', unit: 'bytes', of: (at) => gz(at.index()), patience: 30_000 },
  { what: 'pages of walks', unit: 'pages', of: (at) => nodeCount(at.known()) },
  {
    what: 'some 450 pages of it built, the search for the flaw left out',
    unit: 'ms',
    of: ({ size }) => built({ kind: 'site', oneIn: BUILT_ONE_IN * size, times: size }).ms,
    patience: 90_000,
    upTo: 10,
  },
  {
    what: 'pages of the search for the flaw',
    unit: 'pages',
    of: (at) => [...seeNodes(matrixOf(at.known()))].length,
  },
];
