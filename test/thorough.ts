import { it } from 'vitest';

/** `npm run test:slow` looks at everything; `npm test` at one of each kind, so that it ends within minutes. */
export const THOROUGH = process.env['THOROUGH'] === '1';

/** A story that others tell in part: a test of `npm run test:slow` only. */
export const itAtLength = it.runIf(THOROUGH);

/** The first `count` of these in `npm test`, all of them in `npm run test:slow`. */
export const someOf = <T>(count: number, all: readonly T[]): readonly T[] =>
  THOROUGH ? all : all.slice(0, count);

/** Whether all are tried: in `npm run test:slow`, and where changes of the engine are to be told (`npm run mutate`). */
export const WHOLE = THOROUGH || process.env['MUTATE'] !== undefined;

/** Every so manieth of these in `npm test`, spread from the first to the last, and all of them where all are tried. */
export const oneInSo = <T>(many: number, all: readonly T[]): readonly T[] =>
  WHOLE ? all : all.filter((_, at) => at % many === 0);
