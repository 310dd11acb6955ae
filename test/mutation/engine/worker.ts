/** A process in which tests run with one mutant switched on, or with none while it is noted what each test meets. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { imports } from './hooks.ts';

export type TestId = { readonly file: string; readonly at: number };
/** What a test met when nothing was changed. */
export type Met = TestId & {
  readonly name: string;
  readonly ms: number;
  readonly calls: number;
  readonly hits: Uint8Array;
};
export type Ask =
  | { readonly do: 'meet'; readonly file: string }
  | { readonly do: 'try'; readonly mutant: number; readonly tests: readonly (TestId & { calls: number })[] };
export type Verdict =
  | { readonly state: 'killed' | 'timed out'; readonly by: string }
  | { readonly state: 'survived' }
  /** The test fails by itself by now, so that what was seen says nothing. */
  | { readonly state: 'spoiled' };
export type Answer =
  | {
      readonly do: 'met';
      readonly tests: readonly Met[];
      readonly load: Uint8Array;
      readonly imports: [string, string[]][];
      readonly fault?: string;
    }
  | { readonly do: 'tried'; readonly verdict: Verdict };

const count = Number(process.env['MUTATE_COUNT']);
const fresh = process.env['MUTATE_FRESH'];

let hits = new Uint8Array(count);
let active = fresh ? Number(fresh) : -1;
let calls = 0;
let most = Number.POSITIVE_INFINITY;

class Endless extends Error {}
(globalThis as { $m?: (id: number) => boolean }).$m = (id) => {
  hits[id] = 1;
  calls += 1;
  if (calls > most) throw new Endless('it goes on and on');
  return id === active;
};

/** Counted up where what was kept may be of another mutant. */
let turn = 0;
const forgetting = <K, V>(
  fresh: () => { get(key: K): V | undefined; set(key: K, value: V): unknown; has(key: K): boolean },
) =>
  class {
    #turn = -1;
    #kept = fresh();
    #now() {
      if (this.#turn !== turn) {
        this.#turn = turn;
        this.#kept = fresh();
      }
      return this.#kept;
    }
    get(key: K) {
      return this.#now().get(key);
    }
    has(key: K) {
      return this.#now().has(key);
    }
    set(key: K, value: V) {
      this.#now().set(key, value);
      return this;
    }
    get size() {
      return (this.#now() as unknown as Map<K, V>).size;
    }
    clear() {
      this.#turn = -1;
    }
  };
Object.assign(globalThis, {
  $Weak: forgetting(() => new WeakMap<object, unknown>()),
  $Kept: forgetting(() => new Map<unknown, unknown>()),
});

const { gather, makeReady, runTest } = await import('./harness.ts');
await import('../../seed.ts');
// A test that fails need not tell the smallest case.
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });

let stray: unknown;
process.on('unhandledRejection', (fault) => {
  stray = fault;
});

type Tests = Awaited<ReturnType<typeof gather>>;
const read = new Map<string, Tests>();
const testsOf = async (file: string): Promise<Tests> => {
  const known = read.get(file);
  if (known) return known;
  const found = await gather(() => import(pathToFileURL(join(process.cwd(), file)).href));
  read.set(file, found);
  return found;
};

const inTime = async (work: Promise<void>): Promise<void> => {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, no) => {
    timer = setTimeout(() => no(new Endless('it never ends')), 20_000);
  });
  try {
    await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
};

const fails = async (test: Tests[number]): Promise<unknown> => {
  stray = undefined;
  calls = 0;
  try {
    await inTime(runTest(test));
    return stray;
  } catch (fault) {
    return fault ?? new Error('it failed');
  }
};

const meet = async (file: string): Promise<Answer> => {
  hits = new Uint8Array(count);
  const load = hits;
  const met: Met[] = [];
  try {
    const tests = await testsOf(file);
    for (const [at, test] of tests.entries()) {
      hits = load;
      await makeReady(test);
      hits = new Uint8Array(count);
      const began = process.cpuUsage();
      const fault = await fails(test);
      // What else runs on the machine is not counted.
      const { user, system } = process.cpuUsage(began);
      const ms = (user + system) / 1000;
      if (!fault) met.push({ file, at, name: test.name, ms, calls, hits });
      else
        console.error(
          `left out, since it fails here: ${file} › ${test.name}: ${String(fault).slice(0, 200)}`,
        );
    }
  } catch (fault) {
    return { do: 'met', tests: [], load, imports: [], fault: String(fault) };
  }
  return { do: 'met', tests: met, load, imports: [...imports].map(([from, to]) => [from, [...to]]) };
};

const tryIt = async (mutant: number, tests: readonly (TestId & { calls: number })[]): Promise<Verdict> => {
  for (const { file, at, calls: usual } of tests) {
    let test: Tests[number];
    try {
      calls = 0;
      // A file that was not read yet is read without the mutant.
      if (!fresh && !read.has(file)) active = -1;
      most = fresh ? 3e8 : Number.POSITIVE_INFINITY;
      const found = (await testsOf(file))[at];
      if (!found) throw new Error('a test is gone');
      test = found;
      await makeReady(test);
    } catch (fault) {
      if (!fresh) throw fault;
      return { state: fault instanceof Endless ? 'timed out' : 'killed', by: `${file} (read)` };
    }
    if (!fresh && active !== mutant) turn += 1;
    active = mutant;
    most = usual * 30 + 1e6;
    const fault = await fails(test);
    if (!fault) continue;
    if (!fresh) {
      active = -1;
      turn += 1;
      most = usual * 30 + 1e6;
      if (await fails(test)) return { state: 'spoiled' };
    }
    return { state: fault instanceof Endless ? 'timed out' : 'killed', by: `${file} › ${test.name}` };
  }
  if (!fresh) active = -1;
  turn += 1;
  return { state: 'survived' };
};

process.on('message', async (ask: Ask) => {
  const answer: Answer =
    ask.do === 'meet' ? await meet(ask.file) : { do: 'tried', verdict: await tryIt(ask.mutant, ask.tests) };
  process.send?.(answer);
});
