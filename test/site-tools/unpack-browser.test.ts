/** The browser of the tests is there whole or not at all, whoever else unpacks it, and whatever went wrong before. */
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  closeSync,
  constants,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { expectRoomIn, type Inflate, NoRoomForBrowser, unpackInto } from '../site/unpack-browser.ts';

let parent: string;
let folder: string;
beforeEach(() => {
  parent = mkdtempSync(join(tmpdir(), 'unpack-'));
  folder = join(parent, 'browser-1');
});
afterEach(() => rmSync(parent, { recursive: true, force: true }));

/** Stands for the browser: a small program that the system can start, and can not while it is being written. */
const PROGRAM = '/bin/true';
const inflate: Inflate = async (into) => {
  copyFileSync(PROGRAM, join(into, 'chromium'));
  chmodSync(join(into, 'chromium'), 0o700);
};
const never: Inflate = () => Promise.reject(new Error('unpacked again'));
const failing =
  (code: string): Inflate =>
  () =>
    Promise.reject(Object.assign(new Error(code), { code }));
const messageOf = (work: () => unknown): Promise<string> =>
  (async () => work())().then(
    () => 'nothing was thrown',
    (error) => `${(error as Error).name}: ${(error as Error).message}`,
  );

it.runIf(existsSync(PROGRAM))('unpacks once, and finds it the next time', async () => {
  const path = await unpackInto(folder, inflate);
  execFileSync(path);
  expect(await unpackInto(folder, never)).toBe(path);
  expect(readdirSync(parent)).toEqual(['browser-1']);
});

it.runIf(existsSync(PROGRAM))('can be started while a second run is still writing', async () => {
  let [begin, finish] = [() => {}, () => {}];
  const begun = new Promise<void>((done) => {
    begin = done;
  });
  const finished = new Promise<void>((done) => {
    finish = done;
  });
  const slow = unpackInto(folder, async (into) => {
    const program = readFileSync(PROGRAM);
    const file = openSync(join(into, 'chromium'), constants.O_CREAT | constants.O_WRONLY, 0o700);
    writeSync(file, program.subarray(0, 1000));
    // A program that is open for writing can not be started by anyone.
    expect(() => execFileSync(join(into, 'chromium'))).toThrow(/ETXTBSY/);
    begin();
    await finished;
    writeSync(file, program.subarray(1000));
    closeSync(file);
  });
  await begun;
  const path = await unpackInto(folder, inflate);
  execFileSync(path);
  finish();
  expect(await slow).toBe(path);
  execFileSync(path);
  expect(readdirSync(parent)).toEqual(['browser-1']);
});

it('does not take what a broken-off run left for the browser, and clears it away once it is old', async () => {
  const [old, young] = ['browser-1.part-old', 'browser-1.part-young'].map((name) => join(parent, name));
  for (const part of [old!, young!]) {
    mkdirSync(part);
    writeFileSync(join(part, 'chromium'), 'half');
  }
  const hourAgo = Date.now() / 1000 - 3600;
  utimesSync(old!, hourAgo, hourAgo);
  await unpackInto(folder, async (into) => writeFileSync(join(into, 'chromium'), 'whole'));
  expect(readFileSync(join(folder, 'chromium'), 'utf8')).toBe('whole');
  // The young one may belong to a run that goes on.
  expect(readdirSync(parent).sort()).toEqual(['browser-1', 'browser-1.part-young']);
});

it('leaves nothing behind where unpacking fails', async () => {
  await expect(unpackInto(folder, never)).rejects.toThrow('unpacked again');
  expect(readdirSync(parent)).toEqual([]);
});

it('says where a folder is read-only or full, and what to do', async () => {
  const todo = 'It takes 220 MB. Make room there, or set CHROME_PATH to the path of an installed Chrome.';
  const begin = `NoRoomForBrowser: The browser for the tests cannot be unpacked: ${parent}`;
  expect(await messageOf(() => unpackInto(folder, failing('EROFS')))).toBe(
    `${begin} is read-only (EROFS). ${todo}`,
  );
  expect(await messageOf(() => unpackInto(folder, failing('ENOSPC')))).toBe(
    `${begin} is full (ENOSPC). ${todo}`,
  );
});

it.runIf(existsSync('/dev/full'))('knows a full disk by what the system says', async () => {
  const full: Inflate = async () => writeFileSync('/dev/full', 'a byte too many');
  expect(await messageOf(() => unpackInto(folder, full))).toContain(`${parent} is full (ENOSPC).`);
});

it.runIf(process.getuid && process.platform === 'linux')(
  'knows a folder that may not be written',
  async () => {
    const before = process.geteuid?.();
    chmodSync(parent, 0o555);
    // Nothing is forbidden to root.
    if (before === 0) process.seteuid?.(65_534);
    try {
      expect(await messageOf(() => unpackInto(folder, inflate))).toContain(
        `${parent} may not be written to (EACCES).`,
      );
      expect(await messageOf(() => expectRoomIn(parent, 1))).toBe(
        `NoRoomForBrowser: The temporary folder ${parent} may not be written to (EACCES). The tests keep their files there. ` +
          'Make room, or set TMPDIR to a folder that can be written to.',
      );
    } finally {
      if (before === 0) process.seteuid?.(0);
      chmodSync(parent, 0o700);
    }
  },
);

it('looks for room in the temporary folder', async () => {
  expectRoomIn(parent, 1);
  expect(readdirSync(parent)).toEqual([]);
  expect(await messageOf(() => expectRoomIn(parent, 60_000_000, () => 3_900_000))).toContain(
    `${parent} has 3 MB left, and 60 MB are needed.`,
  );
  expect(await messageOf(() => expectRoomIn(join(parent, 'none'), 1))).toContain(
    'none is not there (ENOENT).',
  );
  expect(() => expectRoomIn(join(parent, 'none'), 1)).toThrow(NoRoomForBrowser);
});
