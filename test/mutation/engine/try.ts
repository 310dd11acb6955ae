/** Tries mutants one after another and says what became of each. */
import { dirname } from 'node:path';
import type { Mutant } from './instrument.ts';
import type { Known } from './knows.ts';
import { Worker } from './process.ts';
import type { Verdict } from './worker.ts';

export type State = 'killed' | 'timed out' | 'survived' | 'no coverage';
export type Tried = {
  readonly mutant: Mutant;
  readonly state: State;
  readonly by?: string;
  readonly ms: number;
};

/**
 * So much of tests is run for one mutant, in milliseconds of work; where a process has to read the engine
 * anew, so much, and so many files of tests. What lives then gets a second look, in what was not asked.
 */
const LOOKS = [
  { work: 600, read: 400, files: 3 },
  { work: 5_400, read: 3_000, files: 8 },
] as const;
/** No machine is so slow that a test which ends takes so much longer; one that turns in a circle ends by itself. */
const SLOWEST = 60;

type Asked = { readonly file: string; readonly at: number; readonly calls: number; readonly ms: number };

/** As many as fit into so much work; one that is too long for what is left does not keep shorter ones out. */
const within = (tests: readonly Asked[], most: number): Asked[] => {
  let spent = 0;
  return tests.filter(({ ms }) => {
    if (spent + ms > most) return false;
    spent += ms;
    return true;
  });
};

/** What is asked at this look and was not at the one before. */
const lookedAt = (tests: readonly Asked[], second: boolean): Asked[] => {
  const [first, more] = LOOKS;
  const before = within(tests, first.work);
  if (!second) return before;
  const known = new Set(before);
  return within(
    tests.filter((test) => !known.has(test)),
    more.work,
  );
};

/** Tests mirror the paths: those of the very file first, then those of its folder and of the one above it. */
export const nearness = (file: string, test: string): number => {
  const own = `test/${file.replace(/\.ts$/, '')}`;
  if (test.startsWith(own)) return 0;
  const [folder, above] = [dirname(own), dirname(dirname(own))];
  if (dirname(test) === folder || test.startsWith(`${folder}.`)) return 1;
  return above !== 'test/engine' && dirname(test) === above ? 1 : 2;
};

/** The quickest of every file, then the second of each: files of tests ask for different things. */
const inTurn = (of: string, tests: readonly Asked[]): Asked[] => {
  const turns = new Map<string, number>();
  const placed = tests.map((test) => {
    const turn = turns.get(test.file) ?? 0;
    turns.set(test.file, turn + 1);
    return { test, turn, near: nearness(of, test.file) };
  });
  return placed
    .sort((a, b) => a.near - b.near || a.turn - b.turn || a.test.ms - b.test.ms)
    .map(({ test }) => test);
};

/**
 * Most mutants are tried in one process that has read everything: there a test costs what it takes. What modules keep
 * is emptied between two mutants, and a test that fails is run once more without the mutant: only where it holds then
 * was it the mutant. One that is met while files are read is tried in a new process that reads the engine with it on.
 */
export class Trier {
  readonly #known: Known;
  readonly #count: number;
  /** The mutants of each file. */
  readonly #files = new Map<string, number[]>();
  #warm: Worker | undefined;

  constructor(known: Known, mutants: readonly Mutant[]) {
    this.#known = known;
    this.#count = mutants.length;
    for (const { file, id } of mutants) {
      const ids = this.#files.get(file);
      if (ids) ids.push(id);
      else this.#files.set(file, [id]);
    }
  }

  end(): void {
    this.#warm?.end();
    this.#warm = undefined;
  }

  #askedOf(mutant: Mutant, second: boolean): { readonly met: Asked[]; readonly read: Asked[] } {
    const { tests, metBy, readBy, readers } = this.#known;
    const look = LOOKS[second ? 1 : 0];
    const met = lookedAt(
      inTurn(
        mutant.file,
        (metBy[mutant.id] ?? []).map((index) => tests[index] as Asked),
      ),
      second,
    );
    const first = new Set(readBy[mutant.id] ?? []);
    if (!first.size) return { met, read: [] };
    // Met while files are read: whoever reads the file of the mutant may show it. First the tests beside it, then those
    // that use it most.
    const uses = new Map<string, number>();
    for (const index of this.#usesOf(mutant.file)) {
      const { file } = tests[index] as Asked;
      uses.set(file, (uses.get(file) ?? 0) + 1);
    }
    // Of what holds nothing but constants no test meets anything as it runs.
    const near = (file: string) => (!uses.size || uses.has(file) ? nearness(mutant.file, file) : 3);
    const files = [...new Set([...first, ...(readers.get(mutant.file) ?? [])])]
      .sort(
        (a, b) =>
          near(a) - near(b) ||
          (uses.get(b) ?? 0) - (uses.get(a) ?? 0) ||
          Number(first.has(b)) - Number(first.has(a)),
      )
      .slice(0, look.files);
    const read = files.flatMap((file) =>
      tests.filter((test) => test.file === file).toSorted((a, b) => a.ms - b.ms),
    ) as Asked[];
    return { met, read: within(read, look.read) };
  }

  readonly #uses = new Map<string, Set<number>>();
  /** The tests that meet anything in that file. */
  #usesOf(file: string): Set<number> {
    const known = this.#uses.get(file);
    if (known) return known;
    const found = new Set((this.#files.get(file) ?? []).flatMap((id) => this.#known.metBy[id] ?? []));
    this.#uses.set(file, found);
    return found;
  }

  async #ask(worker: Worker, mutant: Mutant, tests: readonly Asked[]): Promise<Verdict> {
    const usual = tests.reduce((sum, { ms }) => sum + ms, 0);
    try {
      const answer = await worker.ask(
        { do: 'try', mutant: mutant.id, tests: tests.map(({ file, at, calls }) => ({ file, at, calls })) },
        300_000 + usual * SLOWEST,
      );
      if (answer.do !== 'tried') throw new Error('it answered something else');
      return answer.verdict;
    } catch (fault) {
      return { state: 'timed out', by: fault instanceof Error ? fault.message : String(fault) };
    }
  }

  /** A second look is for one that lived through the first. */
  async try(mutant: Mutant, second = false): Promise<Tried> {
    const began = performance.now();
    const told = (verdict: Verdict, state = verdict.state as State): Tried => ({
      mutant,
      state,
      ...('by' in verdict ? { by: verdict.by } : {}),
      ms: Math.round(performance.now() - began),
    });
    const { met, read } = this.#askedOf(mutant, second);
    let last: Verdict | undefined;
    if (met.length) {
      this.#warm ??= new Worker(this.#count);
      last = await this.#ask(this.#warm, mutant, met);
      if (last.state === 'killed') return told(last);
      if (last.state !== 'survived') this.end();
      if (last.state === 'timed out') return told(last);
    }
    // Where tests meet it as they run, what else is met as files are read is left to the second look.
    if (last?.state === 'survived' && !second) return told(last);
    const again = last?.state === 'spoiled' ? [...within(met, LOOKS[0].work), ...read] : read;
    if (!again.length) return told({ state: 'survived' }, last || second ? 'survived' : 'no coverage');
    const fresh = new Worker(this.#count, mutant.id);
    const verdict = await this.#ask(fresh, mutant, again);
    fresh.end();
    return told(verdict);
  }
}
