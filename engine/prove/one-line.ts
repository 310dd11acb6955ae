import type { LineOf } from '../model/knowledge.ts';

/**
 * Whether what stands at a path of a file is written on one line between braces, and not with a line for each field.
 */
export const isOneLine = (lineOf: LineOf, path: readonly PropertyKey[], value: object): boolean =>
  Object.keys(value).every((field) => lineOf([...path, field], true) === lineOf(path));
