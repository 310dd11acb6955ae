/** Tries mutants one after another and says what became of each. */
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

/** So much of tests is run for one mutant, in milliseconds of an undisturbed run; the quickest come first. */
const BUDGET = 15_000;

type Asked = { readonly file: string; readonly at: number; readonly calls: number; readonly ms: number };

const within = (tests: readonly Asked[]): Asked[] => {
  let spent = 0;
  return tests.filter(({ ms }) => {
    spent += ms;
    return spent <= BUDGET;
  });
};

/**
 * Most mutants are tried in one process that has read everything: there a test costs what it takes. What lives on in
 * that process can hide a mutant (a table made once for all), so none counts as survived before a new process, which
 * read the engine with the mutant switched on, has run the same tests and those that read its file.
 */
export class Trier {
  readonly #known: Known;
  readonly #count: number;
  #warm: Worker | undefined;

  constructor(known: Known, count: number) {
    this.#known = known;
    this.#count = count;
  }

  end(): void {
    this.#warm?.end();
    this.#warm = undefined;
  }

  #askedOf(mutant: Mutant): { readonly met: Asked[]; readonly all: Asked[] } {
    const { tests, metBy, readBy, readers } = this.#known;
    const met = (metBy[mutant.id] ?? []).map((index) => tests[index] as Asked);
    const read = new Set(readBy[mutant.id] ?? []);
    if (!read.size) return { met: within(met), all: within(met) };
    // Met while files are read: whoever reads the file of the mutant may show it. First those that use it most.
    const files = new Set([...(readers.get(mutant.file) ?? []), ...read]);
    const seen = new Set(met);
    const uses = this.#usesOf(mutant.file);
    const rest = tests
      .map((test, index) => ({ test: test as Asked, index }))
      .filter(({ test }) => files.has(test.file) && !seen.has(test))
      .sort(
        (a, b) =>
          Number(read.has(b.test.file)) - Number(read.has(a.test.file)) ||
          Number(uses.has(b.index)) - Number(uses.has(a.index)) ||
          a.test.ms - b.test.ms,
      )
      .map(({ test }) => test);
    return { met: within(met), all: within([...met, ...rest]) };
  }

  readonly #uses = new Map<string, Set<number>>();
  readonly files = new Map<string, number[]>();
  /** The tests that meet anything in that file. */
  #usesOf(file: string): Set<number> {
    const known = this.#uses.get(file);
    if (known) return known;
    const found = new Set((this.files.get(file) ?? []).flatMap((id) => this.#known.metBy[id] ?? []));
    this.#uses.set(file, found);
    return found;
  }

  async #ask(worker: Worker, mutant: Mutant, tests: readonly Asked[], more: number): Promise<Verdict> {
    const usual = tests.reduce((sum, { ms }) => sum + ms, 0);
    try {
      const answer = await worker.ask(
        { do: 'try', mutant: mutant.id, tests: tests.map(({ file, at, calls }) => ({ file, at, calls })) },
        more + usual * 15,
      );
      if (answer.do !== 'tried') throw new Error('it answered something else');
      return answer.verdict;
    } catch (fault) {
      return { state: 'timed out', by: fault instanceof Error ? fault.message : String(fault) };
    }
  }

  async try(mutant: Mutant): Promise<Tried> {
    const began = performance.now();
    const told = (verdict: Verdict, state = verdict.state as State): Tried => ({
      mutant,
      state,
      ...('by' in verdict ? { by: verdict.by } : {}),
      ms: Math.round(performance.now() - began),
    });
    const { met, all } = this.#askedOf(mutant);
    if (!all.length) return told({ state: 'survived' }, 'no coverage');
    if (met.length) {
      this.#warm ??= new Worker(this.#count);
      const verdict = await this.#ask(this.#warm, mutant, met, 60_000);
      if (verdict.state === 'killed') return told(verdict);
      if (verdict.state !== 'survived') this.end();
      if (verdict.state === 'timed out') return told(verdict);
    }
    const fresh = new Worker(this.#count, mutant.id);
    const verdict = await this.#ask(fresh, mutant, all, 60_000);
    fresh.end();
    return told(verdict);
  }
}
