import type { z } from 'zod';
import type { Fault } from './issue.ts';
import { nearest } from './nearest.ts';

export type Located = { path: PropertyKey[]; atKey: boolean; fault: Fault };
type ZodIssue = z.core.$ZodIssue;

const BRANCH_KEYS = ['ask', 'remedy', 'defect', 'leave'];

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Record<PropertyKey, unknown> | undefined)?.[key], value);

/** How far a value is from fitting an option of a union: unknown keys weigh most. */
const cost = (issues: readonly ZodIssue[]): number =>
  issues.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys') return sum + 2 * issue.keys.length;
    if (issue.code === 'invalid_union') return sum + Math.min(1, ...issue.errors.map(cost));
    return sum + (issue.path.length > 1 ? 0.4 : 1);
  }, 0);

const keysOf = (value: unknown): string[] =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.keys(value) : [];

const inUnion = (
  issue: ZodIssue & { code: 'invalid_union' },
  data: unknown,
  path: PropertyKey[],
): Located[] => {
  const value = at(data, path);
  const isBranch = issue.errors.length === 4 && path[0] === 'tree';
  if (isBranch) {
    const chosen = BRANCH_KEYS.filter((key) => keysOf(value).includes(key));
    if (chosen.length !== 1)
      return [{ path, atKey: false, fault: { code: 'bad-branch', keys: keysOf(value) } }];
    const option = issue.errors[BRANCH_KEYS.indexOf(chosen[0] ?? 'ask')] ?? [];
    return option.flatMap((inner) => locate(inner, data, path));
  }
  if (issue.errors.length === 0 || typeof value !== 'object')
    return [{ path, atKey: false, fault: badValue(issue, path) }];
  const options = [...issue.errors].sort((a, b) => cost(a) - cost(b));
  return (options[0] ?? []).flatMap((inner) => locate(inner, data, path));
};

const badValue = (issue: ZodIssue, path: readonly PropertyKey[]): Fault => ({
  code: 'bad-value',
  at: path.map(String).join('.') || 'front matter',
  message: issue.message.replace(/^Invalid (input|option): /, ''),
});

const locate = (issue: ZodIssue, data: unknown, prefix: PropertyKey[]): Located[] => {
  const path = [...prefix, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: [...path, key],
      atKey: true,
      fault: { code: 'unknown-key', key, nearest: undefined, allowed: [] },
    }));
  }
  if (issue.code === 'invalid_union')
    return inUnion(issue as ZodIssue & { code: 'invalid_union' }, data, path);
  if (issue.code === 'invalid_type' && at(data, path) === undefined) {
    const key = String(path.at(-1) ?? '');
    return [{ path: path.slice(0, -1), atKey: false, fault: { code: 'missing-key', key } }];
  }
  return [{ path, atKey: false, fault: badValue(issue, path) }];
};

/** All faults of one value against its schema, each with its path; unknown keys name the nearest known one. */
export const schemaFaults = (error: z.core.$ZodError, data: unknown, topKeys: readonly string[]): Located[] =>
  error.issues
    .flatMap((issue) => locate(issue, data, []))
    .map((found) =>
      found.fault.code === 'unknown-key'
        ? {
            ...found,
            fault: {
              ...found.fault,
              nearest: nearest(found.fault.key, topKeys),
              allowed: found.path.length === 1 ? topKeys : [],
            },
          }
        : found,
    );
