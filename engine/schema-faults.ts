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
    return [{ path, atKey: false, fault: badValue(issue, path, data) }];
  const options = [...issue.errors].sort((a, b) => cost(a) - cost(b));
  return (options[0] ?? []).flatMap((inner) => locate(inner, data, path));
};

/** What is wanted where another kind of value stands, by the library's name of it. */
const WANTED: Readonly<Record<string, string>> = {
  string: 'write a text',
  number: 'write a number',
  int: 'write a whole number',
  boolean: 'write true or false',
  array: 'write a list: [one, two]',
  tuple: 'write a list: [one, two]',
  object: 'write fields and their values: { field: value }',
  record: 'write fields and their values: { field: value }',
};

const many = (count: number | bigint, one: string): string =>
  `${count} ${one}${Number(count) === 1 ? '' : 's'}`;

/** A bound in words: letters of a text, things of a list, a number. */
const bound = (origin: string, side: 'least' | 'most', count: number | bigint, inclusive = true): string => {
  if (origin === 'string')
    return side === 'least' && Number(count) === 1
      ? 'write something here'
      : `write at ${side} ${many(count, 'letter')}`;
  if (origin === 'array' || origin === 'tuple' || origin === 'set')
    return side === 'least' && Number(count) === 1
      ? 'the list is empty; give at least one'
      : `give at ${side} ${count} in the list`;
  if (inclusive) return `write a number of at ${side} ${count}`;
  return `write a number ${side === 'least' ? 'over' : 'under'} ${count}`;
};

/** What an author is to write, where the schema library says it in words of its own; words of our schemas stay. */
const inWords = (issue: ZodIssue): string => {
  const { message } = issue;
  if (!/^(?:Too (?:small|big)|Invalid (?:input|string|number|URL))(?::|$)/.test(message)) return message;
  switch (issue.code) {
    case 'too_small':
      return bound(issue.origin, 'least', issue.minimum, issue.inclusive);
    case 'too_big':
      return bound(issue.origin, 'most', issue.maximum, issue.inclusive);
    case 'invalid_type':
      return WANTED[issue.expected] ?? message;
    case 'not_multiple_of':
      return `write a multiple of ${issue.divisor}`;
    case 'invalid_value':
      return `write ${issue.values.map(String).join(' or ')}`;
    case 'invalid_format':
      return issue.format === 'url'
        ? 'write a whole address: https://…'
        : `it is not of the form ${'pattern' in issue ? issue.pattern : issue.format}`;
    case 'invalid_union':
      return (
        [...new Set(issue.errors.flatMap(([first]) => (first ? [inWords(first)] : [])))].join(', or ') ||
        message
      );
    default:
      return message;
  }
};

/** `2-12` where two numbers are wanted, `28.11.2026` where a day is. */
const written = (value: unknown, message: string): string => {
  const pair =
    typeof value === 'string' &&
    message === WANTED['array'] &&
    /^\s*([\d.]+)\s*(?:-|–|to)\s*([\d.]+)/.exec(value);
  if (pair) return `write [${pair[1]}, ${pair[2]}]`;
  const day =
    typeof value === 'string' &&
    /ISO date/i.test(message) &&
    /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(value);
  if (day) {
    const [, one = '', mark, two = '', year] = day;
    const [month, date] = mark === '/' ? [one, two] : [two, one];
    return `write the year first: ${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  }
  if (/ISO date/i.test(message)) return 'write a day as year-month-day: 2026-11-28';
  return message;
};

const placeOf = (path: readonly PropertyKey[]): string => path.map(String).join('.') || 'front matter';

const badValue = (issue: ZodIssue, path: readonly PropertyKey[], data: unknown): Fault => {
  const value = at(data, path);
  const choices = issue.code === 'invalid_value' ? issue.values.map(String) : [];
  if (choices.length && (typeof value === 'string' || typeof value === 'number'))
    return {
      code: 'bad-choice',
      at: placeOf(path),
      value: String(value),
      nearest: nearest(String(value), choices),
      allowed: choices,
    };
  return {
    code: 'bad-value',
    at: placeOf(path),
    message: written(
      value,
      inWords(issue.code === 'invalid_key' ? (issue.issues[0] ?? issue) : issue).replace(
        /^Invalid (input|option): /,
        '',
      ),
    ),
  };
};

const locate = (issue: ZodIssue, data: unknown, prefix: PropertyKey[]): Located[] => {
  const path = [...prefix, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    const value = at(data, path) as Record<string, unknown>;
    // In braces a comma ends a value: the rest of the sentence is read as keys with nothing behind them.
    const empty = issue.keys.filter((key) => value[key] === null);
    const cut = empty.some((key) => /\s/.test(key)) ? empty : [];
    const [first] = cut;
    return [
      ...(first === undefined
        ? []
        : [
            {
              path: [...path, first],
              atKey: true,
              fault: { code: 'needs-quotes', why: 'comma', text: cut.join(', ') } as const,
            },
          ]),
      ...issue.keys
        .filter((key) => !cut.includes(key))
        .map((key) => ({
          path: [...path, key],
          atKey: true,
          fault: { code: 'unknown-key', key, nearest: undefined, allowed: [] } as const,
        })),
    ];
  }
  if (issue.code === 'invalid_union')
    return inUnion(issue as ZodIssue & { code: 'invalid_union' }, data, path);
  if (issue.code === 'invalid_type' && at(data, path) === undefined) {
    const key = String(path.at(-1) ?? '');
    return [{ path: path.slice(0, -1), atKey: false, fault: { code: 'missing-key', key } }];
  }
  return [{ path, atKey: false, fault: badValue(issue, path, data) }];
};

type Inner = {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
  readonly element?: z.core.$ZodType;
  readonly items?: readonly z.core.$ZodType[];
  readonly valueType?: z.core.$ZodType;
  readonly innerType?: z.core.$ZodType;
  readonly options?: readonly z.core.$ZodType[];
  readonly getter?: () => z.core.$ZodType;
  readonly out?: z.core.$ZodType;
  readonly values?: readonly unknown[];
};

/** The keys that a schema allows at a path of a value; none where it is no object. */
const keysAt = (schema: z.core.$ZodType, data: unknown, path: readonly PropertyKey[]): readonly string[] => {
  const inner: Inner = schema._zod.def;
  const further = inner.innerType ?? inner.getter?.() ?? inner.out;
  if (further) return keysAt(further, data, path);
  if (inner.options) {
    const kind = (data as { kind?: unknown } | undefined)?.kind;
    const lists = inner.options.map((option) => {
      const { shape }: Inner = option._zod.def;
      const literal: Inner | undefined = shape?.['kind']?._zod.def;
      return !literal?.values || literal.values.includes(kind) ? keysAt(option, data, path) : [];
    });
    return [...new Set(lists.flat())];
  }
  const [key, ...rest] = path;
  if (key === undefined) return Object.keys(inner.shape ?? {});
  const next = inner.shape?.[String(key)] ?? inner.element ?? inner.items?.[Number(key)] ?? inner.valueType;
  return next ? keysAt(next, (data as Record<PropertyKey, unknown> | undefined)?.[key], rest) : [];
};

/** All faults of one value against its schema, each with its path; unknown keys name the nearest known one. */
export const schemaFaults = (error: z.core.$ZodError, data: unknown, schema: z.core.$ZodType): Located[] => {
  const found = error.issues
    .flatMap((issue) => locate(issue, data, []))
    .map((one): Located => {
      if (one.fault.code !== 'unknown-key') return one;
      const { key } = one.fault;
      const allowed = keysAt(schema, data, one.path.slice(0, -1));
      const meant = nearest(key, allowed) ?? allowed.find((other) => other.startsWith(`${key}-`));
      return { ...one, fault: { ...one.fault, nearest: meant, allowed } };
    });
  // A misspelt key is missing under its right name as well: one slip is told once.
  const misspelt = new Set(
    found.flatMap(({ path, fault }) =>
      fault.code === 'unknown-key' && fault.nearest
        ? [JSON.stringify([...path.slice(0, -1), fault.nearest])]
        : [],
    ),
  );
  return found.filter(
    ({ path, fault }) => fault.code !== 'missing-key' || !misspelt.has(JSON.stringify([...path, fault.key])),
  );
};
