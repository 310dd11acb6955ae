import type { z } from 'zod';
import { inQuotes } from './in-quotes.ts';
import type { Fault } from './issue.ts';
import { STARTS } from './model/starts.ts';
import { nearest } from './nearest.ts';
import { aboutField, fieldsAt, fits, innerOf, schemasAt, spanOf } from './schema-at.ts';

export type Located = { path: PropertyKey[]; atKey: boolean; fault: Fault };
type ZodIssue = z.core.$ZodIssue;
type Schema = z.core.$ZodType;
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

const keysOf = (value: unknown): string[] =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.keys(value) : [];

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
const either = (words: readonly string[]): string =>
  [words.slice(0, -1).join(', '), words.at(-1)].filter(Boolean).join(' or ');

/** A bound in words: letters of a text, things of a list, a number. */
const bound = (origin: string, side: 'least' | 'most', count: number | bigint, inclusive = true): string => {
  if (origin === 'string')
    return side === 'least' && Number(count) === 1
      ? 'write something here'
      : `write at ${side} ${many(count, 'letter')}`;
  if (origin === 'array' || origin === 'tuple' || origin === 'set')
    return side === 'least' && Number(count) === 1
      ? 'write at least one in it'
      : `give at ${side} ${count} in the list`;
  if (inclusive) return `write a number of at ${side} ${count}`;
  return `write a number ${side === 'least' ? 'over' : 'under'} ${count}`;
};

/** So few whole numbers are told one by one. */
const FEW = 10;

/** Which numbers may stand where these schemas hold: `write 1, 2 or 3`. */
const numbersAt = (schemas: readonly Schema[]): string | undefined => {
  const [span] = schemas.flatMap((schema) => spanOf(schema) ?? []);
  if (!span) return undefined;
  const { least, most, whole } = span;
  return whole && most - least < FEW
    ? `write ${either(Array.from({ length: most - least + 1 }, (_, index) => String(least + index)))}`
    : `write a ${whole ? 'whole ' : ''}number from ${least} to ${most}`;
};

/** What an author is to write, where the schema library says it in words of its own; words of our schemas stay. */
const inWords = (issue: ZodIssue, schemas: readonly Schema[]): string => {
  const { message } = issue;
  if (!/^(?:Too (?:small|big)|Invalid (?:input|option|string|number|URL))(?::|$)/.test(message))
    return message;
  switch (issue.code) {
    case 'too_small':
    case 'too_big': {
      const isNumber = ['number', 'int', 'bigint'].includes(issue.origin);
      return (
        (isNumber && numbersAt(schemas)) ||
        (issue.code === 'too_small'
          ? bound(issue.origin, 'least', issue.minimum, issue.inclusive)
          : bound(issue.origin, 'most', issue.maximum, issue.inclusive))
      );
    }
    case 'invalid_type':
      return (
        (['number', 'int'].includes(issue.expected) && numbersAt(schemas)) ||
        (WANTED[issue.expected] ?? message)
      );
    case 'not_multiple_of':
      return `write a multiple of ${issue.divisor}`;
    case 'invalid_value':
      return `write ${either(issue.values.map(String))}`;
    case 'invalid_format':
      return issue.format === 'url'
        ? 'write a whole address: https://…'
        : `it is not of the form ${'pattern' in issue ? issue.pattern : issue.format}`;
    case 'invalid_union':
      return (
        [...new Set(issue.errors.flatMap(([first]) => (first ? [inWords(first, schemas)] : [])))]
          .map((words, index) => (index ? words.replace(/^write /, '') : words))
          .join(', or ') || message
      );
    default:
      return message;
  }
};

/** A text as it may be quoted in a sentence. */
const short = (text: string): string => (text.length > 90 ? `${text.slice(0, 88)}…` : text);

/** What stands there, by what was read. */
const found = (value: unknown): string => {
  if (value === null || value === undefined) return 'nothing stands';
  if (Array.isArray(value)) return 'a list stands';
  if (typeof value === 'object') return 'fields of their own stand';
  return `"${short(String(value))}" can not stand`;
};

const DAY = /^(\d{1,4})([./-])(\d{1,2})\2(\d{1,4})$/;
const MONTHS = 12;
const daysOf = (year: number, month: number): number => {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
};
const A_DAY = 'write the day as year-month-day; 2026-11-28 is November 28, 2026';

type Wants = { readonly what: string; readonly wants: string };

/** `28.11.2026` or `last week` where a day is wanted. */
const dayWanted = (value: unknown): Wants => {
  const text = String(value);
  const [, one = '', mark, two = '', three = ''] = DAY.exec(text) ?? [];
  if (!mark) return { what: `"${short(text)}", which is no date, stands`, wants: A_DAY };
  const isOrdered = one.length === 4;
  const [year, month, date] = isOrdered
    ? [one, two, three]
    : mark === '/'
      ? [three, one, two]
      : [three, two, one];
  const none =
    Number(month) < 1 || Number(month) > MONTHS
      ? `there is no month ${Number(month)}`
      : Number(date) < 1 || Number(date) > daysOf(Number(year), Number(month))
        ? `that month has no day ${Number(date)}`
        : undefined;
  if (none) return { what: `"${text}", which is no day of the calendar (${none}), stands`, wants: A_DAY };
  const right = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  return {
    what: found(value),
    wants: isOrdered ? `write ${right}` : `write the year first: ${right}`,
  };
};

/** The first of some fields, as they are to be written. */
const asFields = (fields: readonly string[]): string =>
  `{ ${fields
    .slice(0, 3)
    .map((one) => `${one}: …`)
    .join(', ')}${fields.length > 3 ? ', …' : ''} }`;

/** A list where one text is wanted, a number, or one text where a list is. */
const otherKind = (
  value: unknown,
  message: string,
  field: string,
  schemas: readonly Schema[],
  inner: readonly string[],
): Wants => {
  const plain = { what: found(value), wants: message };
  if (message === WANTED['string']) {
    if (Array.isArray(value))
      return {
        what: 'a list, which square brackets or hyphens make, stands',
        wants: 'write one text, without them',
      };
    if (typeof value === 'number' || typeof value === 'boolean') {
      const quoted = schemas.some((schema) => fits(schema, String(value)));
      return {
        what: `only ${typeof value === 'number' ? 'a number' : 'a bare word'}, ${value}, stands`,
        wants: `write it in words${quoted ? `, or put it between quotes: ${field}: "${value}"` : ''}`,
      };
    }
  }
  const isOne = typeof value === 'string' || typeof value === 'number';
  if (message === WANTED['array'] && isOne) {
    const pair = /^\s*([\d.]+)\s*(?:-|–|to)\s*([\d.]+)/.exec(String(value));
    const isTuple = schemas.some((schema) => innerOf(schema).type === 'tuple');
    if (isTuple && pair)
      return { ...plain, wants: `write two numbers in brackets: [${pair[1]}, ${pair[2]}]` };
    if (isTuple) return { ...plain, wants: 'write two numbers in brackets: [2, 12]' };
    const [first = '', ...rest] = String(value).split(' - ');
    // A list of things with fields of their own is not made by brackets alone.
    if (inner.length) return { ...plain, wants: `write a list: [${asFields(inner)}]` };
    return rest.length
      ? {
          what: `"${short(first)}", before the hyphens of a list, can not stand`,
          wants: `put it on a line of its own below, with a hyphen: - ${first}`,
        }
      : { ...plain, wants: `put it between square brackets: ${field}: [${short(first)}]` };
  }
  return message === WANTED['object'] && inner.length
    ? { ...plain, wants: `write its fields: ${asFields(inner)}` }
    : plain;
};

/** What an author most likely meant where a text is not of the wanted form. */
const meant = (value: string, schemas: readonly Schema[]): string | undefined => {
  const plain = value
    .toLowerCase()
    .replaceAll(/['’]/g, '')
    .replaceAll(/[^a-z0-9 -]+/g, '')
    .trim();
  const question = `${value.replace(/[\s.,;:!]*$/, '')}?`;
  return [plain, plain.replaceAll(/[ -]+/g, '-'), question].find(
    (one) => one !== value && schemas.some((schema) => fits(schema, one)),
  );
};

/** What stands at a path and what is wanted there, in plain words. */
const wanted = (issue: ZodIssue, path: readonly PropertyKey[], { data, schema }: Whole): Wants => {
  const value = at(data, path);
  const schemas = schemasAt(schema, data, path);
  const message = inWords(issue, schemas).replace(/^Invalid (input|option): /, '');
  if (value === null || value === undefined)
    return { what: found(value), wants: message === WANTED['string'] ? 'write it there' : message };
  if (/ISO date/i.test(message) || schemas.some((one) => innerOf(one).format === 'date'))
    return dayWanted(value);
  const isMisfit = issue.code === 'custom' || issue.code === 'too_small' || issue.code === 'too_big';
  if (isMisfit && typeof value === 'object')
    return {
      what:
        issue.code === 'custom'
          ? 'what does not fit stands'
          : `${keysIn(value) ? `a list of ${keysIn(value)}` : 'an empty list'} stands`,
      wants: message,
    };
  if (typeof value === 'string') {
    const better = issue.code === 'invalid_format' ? meant(value, schemas) : undefined;
    if (better) return { what: found(value), wants: `${message}: ${better}` };
  }
  const field = path.findLast((key) => typeof key === 'string');
  const inner = fieldsAt(schema, data, message === WANTED['array'] ? [...path, 0] : path);
  return otherKind(value, message, String(field ?? ''), schemas, inner);
};

const keysIn = (value: object): number => (Array.isArray(value) ? value : Object.keys(value)).length;

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
  return { code: 'bad-value', at: path, ...wanted(issue, path, whole) };
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
  // A misspelt key is missing under its right name as well: one slip is told once.
  const misspelt = new Set(
    all.flatMap(({ path, fault }) =>
      fault.code === 'unknown-key' && fault.nearest
        ? [JSON.stringify([...path.slice(0, -1), fault.nearest])]
        : [],
    ),
  );
  return all.filter(
    ({ path, fault }) => fault.code !== 'missing-key' || !misspelt.has(JSON.stringify([...path, fault.key])),
  );
};
