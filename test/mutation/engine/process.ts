/** A child process that tries mutants, and its end where it does not answer. */
import { type ChildProcess, fork } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Answer, Ask } from './worker.ts';

/** Kept between runs; `reports/` is not under version control. */
export const KEPT = 'reports/mutation';
export const BUILT = join(KEPT, 'engine');

const WORKER = fileURLToPath(new URL('./worker.ts', import.meta.url));

export class Worker {
  readonly #child: ChildProcess;
  #over = false;

  /** With `fresh` that mutant is switched on before the engine is read. */
  constructor(count: number, fresh?: number) {
    this.#child = fork(WORKER, {
      serialization: 'advanced',
      execArgv: ['--disable-warning=ExperimentalWarning', '--max-old-space-size=4096'],
      stdio: ['ignore', 'ignore', fresh === undefined ? 'inherit' : 'ignore', 'ipc'],
      env: {
        ...process.env,
        MUTATE_BUILT: BUILT,
        MUTATE_COUNT: String(count),
        // No word that was right may be lost for one that is won.
        MUTATE: '1',
        ...(fresh === undefined ? {} : { MUTATE_FRESH: String(fresh) }),
      },
    });
    this.#child.on('exit', () => {
      this.#over = true;
    });
  }

  /** Throws where no answer comes in time, or the process ends. */
  ask(ask: Ask, limit: number): Promise<Answer> {
    return new Promise((yes, no) => {
      const done = (settle: () => void) => {
        clearTimeout(timer);
        this.#child.off('message', heard);
        this.#child.off('exit', gone);
        settle();
      };
      const heard = (answer: Answer) => done(() => yes(answer));
      const gone = () => done(() => no(new Error('the process ended')));
      const timer = setTimeout(() => {
        this.end();
        done(() => no(new Error('no answer in time')));
      }, limit);
      if (this.#over) return gone();
      this.#child.once('message', heard);
      this.#child.once('exit', gone);
      this.#child.send(ask);
    });
  }

  end(): void {
    this.#over = true;
    this.#child.kill('SIGKILL');
  }
}
