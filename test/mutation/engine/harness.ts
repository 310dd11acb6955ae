/** What a test file finds as `vitest`: its `expect`, and as much of `describe` and `it` as lets one test run alone. */
import { format } from 'node:util';
import * as vitest from 'vitest';

type Run = (...given: never[]) => unknown;
type Hook = { readonly run: Run };
type Suite = {
  readonly above: Suite | undefined;
  readonly before: Hook[];
  readonly after: Hook[];
  readonly each: Hook[];
  readonly afterEach: Hook[];
  ready: boolean;
};
export type Test = { readonly name: string; readonly suite: Suite; readonly run: () => unknown };

const suiteIn = (above: Suite | undefined): Suite => ({
  above,
  before: [],
  after: [],
  each: [],
  afterEach: [],
  ready: false,
});

let suite = suiteIn(undefined);
let path: string[] = [];
let tests: Test[] = [];
let pending: Promise<unknown>[] = [];

/** The tests of one file, gathered while it is read. */
export const gather = async (read: () => Promise<unknown>): Promise<Test[]> => {
  suite = suiteIn(undefined);
  path = [];
  tests = [];
  pending = [];
  await read();
  await Promise.all(pending);
  return tests;
};

const named = (name: unknown, row: readonly unknown[], at: number): string => {
  const text = String(name).replaceAll('%#', String(at));
  const [first] = row;
  const filled = text.replace(/\$([\w.]+)/g, (whole, key: string) => {
    const value = key
      .split('.')
      .reduce<unknown>((of, part) => (of as Record<string, unknown> | undefined)?.[part], first);
    return value === undefined ? whole : String(value);
  });
  return filled.includes('%') ? format(filled, ...row) : filled;
};

const functionOf = (given: readonly unknown[]): Run | undefined =>
  given.find((one): one is Run => typeof one === 'function');

const addTest = (name: unknown, run: () => unknown) =>
  tests.push({ name: [...path, String(name)].join(' › '), suite, run });

const addSuite = (name: unknown, run: () => unknown) => {
  const above = suite;
  suite = suiteIn(above);
  path.push(String(name));
  try {
    const done = run();
    if (done instanceof Promise) pending.push(done);
  } finally {
    suite = above;
    path.pop();
  }
};

const context = { expect: vitest.expect, skip: () => undefined, task: { name: '' } };

type Adds = (name: unknown, run: () => unknown) => unknown;
const family = (adds: Adds, isTest: boolean) => {
  const one = (name: unknown, ...given: unknown[]) => {
    const run = functionOf(given) as ((...all: unknown[]) => unknown) | undefined;
    if (run) adds(name, () => (isTest ? run(context) : run()));
  };
  const none = () => undefined;
  const each =
    (table: readonly unknown[]) =>
    (name: unknown, ...given: unknown[]) => {
      const run = functionOf(given) as ((...all: unknown[]) => unknown) | undefined;
      table.forEach((entry, at) => {
        const row = Array.isArray(entry) ? entry : [entry];
        adds(named(name, row, at), () => run?.(...row));
      });
    };
  return Object.assign(one, {
    each,
    for: (table: readonly unknown[]) => (name: unknown, run: (row: unknown, to: unknown) => unknown) =>
      table.forEach((row, at) => {
        adds(named(name, [row], at), () => run(row, context));
      }),
    skip: Object.assign(none, { each: () => none }),
    todo: none,
    only: one,
    runIf: (holds: unknown) =>
      holds ? Object.assign(one, { each }) : Object.assign(none, { each: () => none }),
    skipIf: (holds: unknown) =>
      holds ? Object.assign(none, { each: () => none }) : Object.assign(one, { each }),
  });
};

export const it = family(addTest, true);
export const test = it;
export const describe = family(addSuite, false);
export const suiteOf = describe;
export const beforeAll = (run: Run) => suite.before.push({ run });
export const afterAll = (run: Run) => suite.after.push({ run });
export const beforeEach = (run: Run) => suite.each.push({ run });
export const afterEach = (run: Run) => suite.afterEach.push({ run });
export const onTestFinished = () => undefined;
export const onTestFailed = () => undefined;
export const { vi, assert, expectTypeOf, assertType, chai, inject } = vitest;
/** A soft one would have to be told at the end of its test; here it ends the test. */
export const expect = new Proxy(vitest.expect, {
  get: (of, key) => (key === 'soft' ? of : Reflect.get(of, key)),
});

const lineOf = (of: Suite | undefined): Suite[] => (of ? [...lineOf(of.above), of] : []);

/** What stands before the tests of a suite, once. */
export const makeReady = async ({ suite: of }: Test): Promise<void> => {
  for (const one of lineOf(of)) {
    if (one.ready) continue;
    one.ready = true;
    for (const { run } of one.before) await (run as () => unknown)();
  }
};

/** Runs one test; throws where it fails. */
export const runTest = async ({ suite: of, run }: Test): Promise<void> => {
  const line = lineOf(of);
  try {
    for (const one of line) for (const hook of one.each) await (hook.run as () => unknown)();
    await run();
  } finally {
    for (const one of line.reverse())
      for (const hook of one.afterEach.toReversed()) await (hook.run as () => unknown)();
  }
};
