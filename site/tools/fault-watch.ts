import { type ChildProcess, spawn } from 'node:child_process';
import { constants, setPriority } from 'node:os';
import { fileURLToPath } from 'node:url';

/** One fault of the content, as `npm run check` tells it. */
export type ToldFault = { readonly file: string; readonly line: number; readonly says: string };
/** What was found last; `checking` while a newer check runs. */
export type FaultState = { readonly faults: readonly ToldFault[]; readonly checking: boolean };

const CHECK = fileURLToPath(new URL('../../content/tools/check.mjs', import.meta.url));
/** Several files are often saved at once. */
const QUIET_MS = 120;

const FAULT = /^(content\/[^:]+):(\d+): (.+)$/;

/** The lines of a check that name a place; any other output of a check that broke is one fault without. */
export const faultsIn = (errors: string): readonly ToldFault[] => {
  const found = errors.split('\n').flatMap((line): ToldFault[] => {
    const [, file, number, says] = FAULT.exec(line) ?? [];
    return file && says ? [{ file, line: Number(number), says }] : [];
  });
  if (found.length || !errors.trim()) return found;
  return [{ file: 'content', line: 1, says: errors.trim().split('\n')[0] ?? '' }];
};

/**
 * Runs `npm run check` after every edit, beside the server so that no page waits for it, and tells what it found. An edit
 * ends a check that still runs.
 */
export const watchFaults = (root: string, tell: (state: FaultState) => void) => {
  let state: FaultState = { faults: [], checking: false };
  let running: ChildProcess | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const told: (() => void)[] = [];
  const set = (next: FaultState): void => {
    state = next;
    tell(state);
    if (state.checking) return;
    for (const go of told.splice(0)) go();
  };
  const check = (): void => {
    waiting = undefined;
    running?.kill();
    const child = spawn(process.execPath, [CHECK], { cwd: root, stdio: ['ignore', 'ignore', 'pipe'] });
    running = child;
    // The page that was edited comes first where cores are few.
    if (child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL);
    let errors = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      errors += text;
    });
    child.on('close', (_code, signal) => {
      if (signal === null && running === child) set({ faults: faultsIn(errors), checking: false });
    });
    set({ faults: state.faults, checking: true });
  };
  return {
    state: (): FaultState => state,
    /** When the content as it is saved has been checked: the search has then learned it, on another core. */
    checked: (): Promise<void> =>
      waiting || state.checking ? new Promise((go) => told.push(go)) : Promise.resolve(),
    edited: (): void => {
      clearTimeout(waiting);
      waiting = setTimeout(check, QUIET_MS);
    },
    stop: (): void => {
      clearTimeout(waiting);
      running?.kill();
    },
  };
};
