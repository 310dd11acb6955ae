/**
 * The browser that the package brings, unpacked once into a folder that holds nothing else. Whoever sees the folder
 * sees it whole: it is filled under another name, and renamed then.
 */
import { execFile } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statfsSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { promisify } from 'node:util';

/** Fills an empty folder with the browser, whose own file is called `chromium`. */
export type Inflate = (folder: string) => Promise<unknown>;

/** A folder can not take what the browser needs; the message says why and what to do. */
export class NoRoomForBrowser extends Error {
  override readonly name = 'NoRoomForBrowser';
}

/** Unpacking takes seconds: what is older than these minutes was left by a run that was broken off. */
const LEFT_BEHIND_MINUTES = 10;

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'may not be written to',
  EPERM: 'may not be written to',
  EROFS: 'is read-only',
  ENOENT: 'is not there',
  ENOTDIR: 'is no folder',
  ENOSPC: 'is full',
  EDQUOT: 'is full',
};

/** The error in words, where it comes from the folder; otherwise the error itself. */
const inWords = (what: string, error: unknown, todo: string): unknown => {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? '';
  const reason = REASONS[code];
  return reason ? new NoRoomForBrowser(`${what} ${reason} (${code}). ${todo}`, { cause: error }) : error;
};

const browserIn = (folder: string): string | undefined => {
  const file = join(folder, 'chromium');
  return existsSync(file) ? file : undefined;
};

const clearLeftBehind = (parent: string, prefix: string): void => {
  const before = Date.now() - LEFT_BEHIND_MINUTES * 60_000;
  for (const entry of readdirSync(parent)) {
    if (!entry.startsWith(prefix)) continue;
    const part = join(parent, entry);
    // The other run may have renamed it by now.
    const { mtimeMs = before } = statSync(part, { throwIfNoEntry: false }) ?? {};
    if (mtimeMs < before) rmSync(part, { recursive: true, force: true });
  }
};

/**
 * The path of the browser in `folder`, which is filled first if it is not there yet. Two processes may do so at once:
 * each fills a folder of its own; the first to be ready gives it the name, the other takes what is there then.
 *
 * @throws NoRoomForBrowser where the folder can not be written or is full
 */
export const unpackInto = async (folder: string, inflate: Inflate): Promise<string> => {
  const parent = dirname(folder);
  const prefix = `${basename(folder)}.part-`;
  let part: string | undefined;
  try {
    const ready = browserIn(folder);
    if (ready) return ready;
    mkdirSync(parent, { recursive: true });
    clearLeftBehind(parent, prefix);
    part = mkdtempSync(join(parent, prefix));
    await inflate(part);
    try {
      renameSync(part, folder);
    } catch (error) {
      if (!browserIn(folder)) throw error;
    }
    return join(folder, 'chromium');
  } catch (error) {
    throw inWords(
      `The browser for the tests cannot be unpacked: ${parent}`,
      error,
      'It takes 220 MB. Make room there, or set CHROME_PATH to the path of an installed Chrome.',
    );
  } finally {
    if (part) rmSync(part, { recursive: true, force: true });
  }
};

const freeBytes = (folder: string): number => {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
};

/**
 * Looks whether the browser can keep its profile in the temporary folder, and the tests their files.
 *
 * @param needed bytes that must be free
 * @throws NoRoomForBrowser where it can not be written or has too little room
 */
export const expectRoomIn = (folder: string, needed: number, free = freeBytes): void => {
  const todo =
    'The tests keep their files there. Make room, or set TMPDIR to a folder that can be written to.';
  try {
    rmSync(mkdtempSync(join(folder, 'halfdry-room-')), { recursive: true });
  } catch (error) {
    throw inWords(`The temporary folder ${folder}`, error, todo);
  }
  const [left, all] = [free(folder), needed].map((bytes) => Math.floor(bytes / 1e6));
  if (free(folder) < needed)
    throw new NoRoomForBrowser(
      `The temporary folder ${folder} has ${left} MB left, and ${all} MB are needed. ${todo}`,
    );
};

/**
 * Unpacks as the package does, in a process of its own whose temporary folder is the one to fill: the package writes
 * nowhere else, and takes for whole whatever lies there.
 */
const inflatePackage: Inflate = async (folder) => {
  const script = "await (await import('@sparticuz/chromium')).default.executablePath()";
  const env = { ...process.env, TMPDIR: folder };
  try {
    await promisify(execFile)(process.execPath, ['--input-type=module', '--eval', script], { env });
  } catch (error) {
    const said = String((error as { stderr?: unknown }).stderr ?? error);
    throw Object.assign(new Error(said), { code: /code: '(E[A-Z]+)'/.exec(said)?.[1] });
  }
};

/** The path of the packaged browser (Linux x64), unpacked beside the other caches of the project. */
export const unpackPackaged = (): Promise<string> => {
  const { version } = JSON.parse(readFileSync('node_modules/@sparticuz/chromium/package.json', 'utf8')) as {
    version: string;
  };
  return unpackInto(resolve(`node_modules/.cache/halfdry-browser-${version}`), inflatePackage);
};
