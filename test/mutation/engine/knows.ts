/** Which mutants there are, which tests meet them, and how long a test takes. */
import { createHash } from 'node:crypto';
import { existsSync, globSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { instrument, type Mutant, plain } from './instrument.ts';
import { BUILT, KEPT, Worker } from './process.ts';
import type { Answer, Met } from './worker.ts';

/**
 * The tests of pure functions. Left out: what needs a page or a package of the site (client, site), commands, the
 * bench, and by name what takes minutes or times itself.
 */
const TESTS = ['test/engine', 'test/content', 'test/cases', 'test/find', 'test/words'].map(
  (folder) => `${folder}/**/*.test.ts`,
);
const NOT = new Set(['test/find/latency.test.ts', 'test/engine/board/speed.test.ts']);
/** A test that takes longer, switches and all, is not asked. */
const LONGEST = 6000;

/** The engine's own first: what they met is of use before the others are through. */
export const testFiles = (): string[] =>
  [...TESTS, 'test/api.test.ts'].flatMap((some) =>
    globSync(some)
      .filter((file) => !NOT.has(file))
      .sort(),
  );

/** Schemas and their words are held by the compiler and by `npm run check`; they are no functions. */
const isTried = (file: string) => !file.startsWith('engine/model');

/** What a module keeps from one call to the next, by maps that the process empties between two mutants. */
const forgetful = (code: string): string =>
  code.replaceAll('new WeakMap', 'new $Weak').replace(/^(const \w+ = new )Map(?=\s*\(\))/gm, '$1$Kept');

/** Writes the engine with its switches and gives its mutants, numbered in order of files. */
export const prepare = (): { readonly mutants: readonly Mutant[]; readonly mark: string } => {
  rmSync(BUILT, { recursive: true, force: true });
  mkdirSync(BUILT, { recursive: true });
  const mutants: Mutant[] = [];
  const hash = createHash('sha256');
  for (const file of globSync('engine/**/*.ts').sort()) {
    const text = readFileSync(file, 'utf8');
    hash.update(file).update(text);
    const made = instrument(file, text, mutants.length);
    if (isTried(file)) mutants.push(...made.mutants);
    const code = isTried(file) ? made.code : plain(text);
    writeFileSync(join(BUILT, file.replaceAll('/', '+')), forgetful(code));
  }
  return { mutants, mark: hash.digest('hex').slice(0, 16) };
};

export type Known = {
  readonly tests: readonly Omit<Met, 'hits'>[];
  /** For each mutant the tests that meet it, the quickest first. */
  readonly metBy: readonly (readonly number[])[];
  /** For each mutant the test files in whose reading it is met first. */
  readonly readBy: readonly (readonly string[])[];
  /** For each file of the engine the test files that read it. */
  readonly readers: ReadonlyMap<string, readonly string[]>;
};

type Kept = {
  readonly tests: readonly (Omit<Met, 'hits'> & { readonly hits: string })[];
  readonly load: string;
  readonly engine: readonly string[];
};
const packed = (bytes: Uint8Array): string => {
  const bits = new Uint8Array(Math.ceil(bytes.length / 8));
  for (let i = 0; i < bytes.length; i += 1)
    if (bytes[i]) bits[i >> 3] = (bits[i >> 3] as number) | (1 << (i & 7));
  return Buffer.from(bits).toString('base64');
};
const each = (bits: string, found: (id: number) => void) => {
  const bytes = Buffer.from(bits, 'base64');
  for (let i = 0; i < bytes.length; i += 1) {
    const byte = bytes[i] as number;
    if (byte) for (let bit = 0; bit < 8; bit += 1) if (byte & (1 << bit)) found(i * 8 + bit);
  }
};

/** All that a file reads, and what that reads. */
const reach = (graph: ReadonlyMap<string, readonly string[]>, file: string, seen = new Set<string>()) => {
  for (const to of graph.get(file) ?? [])
    if (!seen.has(to)) {
      seen.add(to);
      reach(graph, to, seen);
    }
  return seen;
};

/** Runs the tests of these files once with nothing changed; what was met in a file that did not change is kept. */
export const meetAll = async (
  mutants: readonly Mutant[],
  mark: string,
  files: readonly string[],
): Promise<Known> => {
  const folder = join(KEPT, `met-${mark}`);
  mkdirSync(folder, { recursive: true });
  let worker: Worker | undefined;
  const kept: [string, Kept][] = [];
  for (const file of files) {
    const own = createHash('sha256').update(readFileSync(file)).digest('hex').slice(0, 8);
    const at = join(folder, `${file.replaceAll('/', '+')}.${own}.json`);
    if (!existsSync(at)) {
      worker ??= new Worker(mutants.length);
      const answer: Answer = await worker.ask({ do: 'meet', file }, 600_000);
      if (answer.do !== 'met') throw new Error('it answered something else');
      if (answer.fault) console.error(`not read: ${file}: ${answer.fault}`);
      const graph = new Map(answer.imports);
      const one: Kept = {
        tests: answer.tests.map((test) => ({ ...test, hits: packed(test.hits) })),
        load: packed(answer.load),
        engine: [...reach(graph, file)].filter((to) => to.startsWith('engine/')),
      };
      writeFileSync(at, JSON.stringify(one));
    }
    kept.push([file, JSON.parse(readFileSync(at, 'utf8')) as Kept]);
  }
  worker?.end();

  const tests: Omit<Met, 'hits'>[] = [];
  const metBy: number[][] = mutants.map(() => []);
  const readBy: string[][] = mutants.map(() => []);
  const readers = new Map<string, string[]>();
  for (const [file, one] of kept) {
    for (const { hits, ...test } of one.tests) {
      if (test.ms > LONGEST) continue;
      const index = tests.push(test) - 1;
      each(hits, (id) => metBy[id]?.push(index));
    }
    each(one.load, (id) => readBy[id]?.push(file));
    for (const engine of one.engine) readers.set(engine, [...(readers.get(engine) ?? []), file]);
  }
  const ms = (index: number) => tests[index]?.ms ?? 0;
  for (const list of metBy) list.sort((a, b) => ms(a) - ms(b));
  return { tests, metBy, readBy, readers };
};
