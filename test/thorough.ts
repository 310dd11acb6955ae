import { it } from 'vitest';

/** `npm run test:slow` looks at everything; `npm test` at one of each kind, so that it ends within minutes. */
export const THOROUGH = process.env['THOROUGH'] === '1';

/** A story that others tell in part: a test of `npm run test:slow` only. */
export const itAtLength = it.runIf(THOROUGH);

/** The first `count` of these in `npm test`, all of them in `npm run test:slow`. */
export const someOf = <T>(count: number, all: readonly T[]): readonly T[] =>
  THOROUGH ? all : all.slice(0, count);
