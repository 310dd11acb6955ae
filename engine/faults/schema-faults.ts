import type { z } from 'zod';
import { STARTS } from '../model/starts.ts';
import { nearest } from '../plain/nearest.ts';
import { isRecord } from '../plain/record.ts';
import { inQuotes } from './in-quotes.ts';
import type { Fault } from './issue.ts';
import { aboutField, fieldsAt, innerOf, type Schema, schemasAt } from './schema-at.ts';
import { inWords, meant, wanted } from './schema-wants.ts';

export type Located = { path: PropertyKey[]; atKey: boolean; fault: Fault };
type ZodIssue = z.core.$ZodIssue;
/** The value that was read and its schema. */
type Whole = { readonly data: unknown; readonly schema: Schema };

const BRANCH_KEYS = ['ask', 'remedy', 'defect', 'leave'];
/** What else may stand in a branch. */
const BESIDE = ['yes', 'no', 'cause', 'because'];

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Record<PropertyKey, unknown> | undefined)?.[key], value);

/** How far a value is from fitting an option of a union: unknown keys weigh most. */
const cost = (issues: readonly ZodIssue[]): number =>
  issues.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys') return sum + 2 * issue.keys.length;
    if (issue.code === 'invalid_union') return sum + Math.min(1, ...issue.errors.map(cost));
    return sum + (issue.path.length > 1 ? 0.4 : 1);
  }, 0);

const keysOf = (value: unknown): string[] => (isRecord(value) ? Object.keys(value) : []);

/** A branch that says not one thing: a letter is wrong in what it says, or it says nothing, or several things. */
const branchFaults = (value: unknown, path: PropertyKey[]): Located[] => {
  const keys = keysOf(value);
  const slip = keys
    .filter((key) => !BESIDE.includes(key))
    .map((key) => ({ key, meant: nearest(key, BRANCH_KEYS) }))
    .find(({ key, meant }) => meant !== undefined && !BRANCH_KEYS.includes(key));
  return slip && !keys.some((key) => BRANCH_KEYS.includes(key))
    ? [
        {
          path: [...path, slip.key],
          atKey: true,
          fault: { code: 'unknown-key', key: slip.key, nearest: slip.meant, allowed: BRANCH_KEYS },
        },
      ]
    : [{ path, atKey: false, fault: { code: 'bad-branch', keys } }];
};

const inUnion = (
  issue: ZodIssue & { code: 'invalid_union' },
  whole: Whole,
  path: PropertyKey[],
): Located[] => {
  const value = at(whole.data, path);
  const isBranch = issue.errors.length === 4 && path[0] === 'tree';
  if (isBranch) {
    const chosen = BRANCH_KEYS.filter((key) => keysOf(value).includes(key));
    if (chosen.length !== 1) return branchFaults(value, path);
    const option = issue.errors[BRANCH_KEYS.indexOf(chosen[0] ?? 'ask')] ?? [];
    return option.flatMap((inner) => locate(inner, whole, path));
  }
  if (issue.errors.length === 0 || typeof value !== 'object')
    return [{ path, atKey: false, fault: badValue(issue, path, whole) }];
  const options = [...issue.errors].sort((a, b) => cost(a) - cost(b));
  return (options[0] ?? []).flatMap((inner) => locate(inner, whole, path));
};

/** The words of which one is wanted; none where it is not one of some words. */
const choicesOf = (issue: ZodIssue): string[] => {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  return issue.code === 'invalid_union' && 'options' in issue && Array.isArray(issue.options)
    ? issue.options.map(String)
    : [];
};

const badValue = (issue: ZodIssue, path: readonly PropertyKey[], whole: Whole): Fault => {
  const value = at(whole.data, path);
  const choices = choicesOf(issue);
  if (choices.length && (typeof value === 'string' || typeof value === 'number'))
    return {
      code: 'bad-choice',
      at: path,
      value: String(value),
      nearest: nearest(String(value), choices),
      allowed: choices,
    };
  return { code: 'bad-value', at: path, ...wanted(issue, value, path, whole) };
};

/** A name that the author gives, in the wrong form. */
const badName = (issue: ZodIssue & { code: 'invalid_key' }, path: PropertyKey[], whole: Whole): Fault => {
  const name = String(path.at(-1) ?? '');
  const keys = schemasAt(whole.schema, whole.data, path.slice(0, -1)).flatMap(
    (schema) => innerOf(schema).keyType ?? [],
  );
  const starts = keys.flatMap((key) => STARTS.get(key)?.starts ?? []);
  const rest = name.slice(name.indexOf('/') + 1);
  const candidates = name.includes('/')
    ? starts.map((start) => (start.endsWith('/') ? `${start}${rest}` : start))
    : starts;
  const [first] = issue.issues;
  return {
    code: 'bad-name',
    name,
    nearest: nearest(name, candidates) ?? meant(name, keys),
    wants: first ? inWords(first, keys) : issue.message,
  };
};

/** In braces a comma ends a value: the rest of a sentence is read as fields with nothing behind them. */
const cutByCommas = (value: Record<string, unknown>, keys: readonly string[]): string[][] => {
  const empty = keys.filter((key) => value[key] === null);
  const groups: string[][] = [];
  let before: string | undefined;
  for (const key of Object.keys(value)) {
    if (!empty.includes(key)) {
      before = key;
      continue;
    }
    const last = groups.at(-1);
    if (last && last.at(0) === before) last.push(key);
    else groups.push([before ?? '', key]);
  }
  return groups.filter((group) => group.slice(1).some((key) => /\s/.test(key)));
};

const unknownFields = (
  issue: ZodIssue & { code: 'unrecognized_keys' },
  path: PropertyKey[],
  whole: Whole,
): Located[] => {
  const value = at(whole.data, path) as Record<string, unknown>;
  const cut = cutByCommas(value, issue.keys);
  const known = fieldsAt(whole.schema, whole.data, path);
  return [
    ...cut.map(([field = '', ...rest]): Located => {
      const begun = value[field];
      return {
        path: [...path, rest[0] ?? ''],
        atKey: true,
        fault: {
          code: 'needs-quotes',
          why: 'comma',
          text: rest.join(', '),
          write: typeof begun === 'string' ? `${field}: ${inQuotes([begun, ...rest].join(', '))}` : undefined,
        },
      };
    }),
    ...issue.keys
      .filter((key) => !cut.some((group) => group.slice(1).includes(key)))
      .map(
        (key): Located => ({
          path: [...path, key],
          atKey: true,
          fault: {
            code: 'unknown-key',
            key,
            nearest: nearest(key, known) ?? known.find((other) => other.startsWith(`${key}-`)),
            allowed: known,
          },
        }),
      ),
  ];
};

/** A field that is not there; one by which kinds are told apart may be there in other letters. */
const missingField = (issue: ZodIssue, path: PropertyKey[], whole: Whole): Located => {
  const inside = path.slice(0, -1);
  const key = String(path.at(-1));
  const choices = choicesOf(issue);
  const slip = 'discriminator' in issue && keysOf(at(whole.data, inside)).find((one) => nearest(one, [key]));
  if (slip)
    return {
      path: [...inside, slip],
      atKey: true,
      fault: { code: 'unknown-key', key: slip, nearest: key, allowed: [key] },
    };
  const said = issue.code === 'custom' ? issue.message : aboutField(whole.schema, whole.data, inside, key);
  const about = [said?.replace(/\.$/, ''), choices.length ? `one of ${choices.join(', ')}` : '']
    .filter(Boolean)
    .join('; ');
  return { path: inside, atKey: false, fault: { code: 'missing-key', key, about: about || undefined } };
};

const locate = (issue: ZodIssue, whole: Whole, prefix: PropertyKey[]): Located[] => {
  const path = [...prefix, ...issue.path];
  if (issue.code === 'unrecognized_keys') return unknownFields(issue, path, whole);
  if (issue.code === 'invalid_key') return [{ path, atKey: true, fault: badName(issue, path, whole) }];
  if (path.length > 0 && at(whole.data, path) === undefined) return [missingField(issue, path, whole)];
  if (issue.code === 'invalid_union')
    return inUnion(issue as ZodIssue & { code: 'invalid_union' }, whole, path);
  return [{ path, atKey: false, fault: badValue(issue, path, whole) }];
};

/** All faults of one value against its schema, each with its path; unknown keys name the nearest known one. */
export const schemaFaults = (error: z.core.$ZodError, data: unknown, schema: Schema): Located[] => {
  const all = error.issues.flatMap((issue) => locate(issue, { data, schema }, []));
  // A misspelled key is missing under its right name as well: one slip is told once.
  const misspelled = new Set(
    all.flatMap(({ path, fault }) =>
      fault.code === 'unknown-key' && fault.nearest
        ? [JSON.stringify([...path.slice(0, -1), fault.nearest])]
        : [],
    ),
  );
  return all.filter(
    ({ path, fault }) =>
      fault.code !== 'missing-key' || !misspelled.has(JSON.stringify([...path, fault.key])),
  );
};
