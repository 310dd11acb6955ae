import type { z } from 'zod';
import { dayWanted } from './day-wanted.ts';
import { either } from './either.ts';
import { asClause, found, short, type Wants } from './found.ts';
import { aboutField, fieldsAt, fits, innerOf, type Schema, schemasAt, spanOf } from './schema-at.ts';

type ZodIssue = z.core.$ZodIssue;

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
  if (origin === 'array')
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
export const inWords = (issue: ZodIssue, schemas: readonly Schema[]): string => {
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
  about: string | undefined,
): Wants => {
  const plain = { what: found(value), wants: message };
  if (message === WANTED['string']) {
    if (Array.isArray(value))
      return {
        what: 'a list, which square brackets or hyphens make, stands',
        wants: 'write one text, without the brackets or hyphens',
      };
    if (typeof value === 'number' || typeof value === 'boolean') {
      const quoted = schemas.some((schema) => fits(schema, String(value)));
      return {
        what: `only ${typeof value === 'number' ? 'a number' : 'a bare word'}, ${value}, stands`,
        wants: `write ${about ? `there ${asClause(about)}` : 'a text there'}${quoted ? `, or put it between quotes: ${field}: "${value}"` : ''}`,
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
          what: `"${short(first)}", before the hyphens of a list, cannot stand`,
          wants: `put it on a line of its own below, with a hyphen: - ${first}`,
        }
      : { ...plain, wants: `put it between square brackets: ${field}: [${short(first)}]` };
  }
  return message === WANTED['object'] && inner.length
    ? { ...plain, wants: `write its fields: ${asFields(inner)}` }
    : plain;
};

/** What an author most likely meant where a text is not of the wanted form. */
export const meant = (value: string, schemas: readonly Schema[]): string | undefined => {
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
export const wanted = (
  issue: ZodIssue,
  value: unknown,
  path: readonly PropertyKey[],
  { data, schema }: { readonly data: unknown; readonly schema: Schema },
): Wants => {
  const schemas = schemasAt(schema, data, path);
  const message = inWords(issue, schemas).replace(/^Invalid (input|option): /, '');
  if (value === null || value === undefined)
    return { what: found(value), wants: message === WANTED['string'] ? 'write it there' : message };
  if (/ISO date/i.test(message) || schemas.some((one) => innerOf(one).format === 'date'))
    return dayWanted(value);
  // A schema that says what is wrong and what to write says both.
  const [, wrong, mend] = (issue.code === 'custom' && /^(.+); (.+)$/.exec(message)) || [];
  if (wrong && mend) return { what: `${wrong},`, wants: mend };
  const isMisfit = issue.code === 'custom' || issue.code === 'too_small' || issue.code === 'too_big';
  if (isMisfit && typeof value === 'object')
    return {
      what:
        issue.code === 'custom'
          ? misfit(value)
          : `${keysIn(value) ? `a list of ${keysIn(value)}` : 'an empty list'} stands`,
      wants: message,
    };
  if (typeof value === 'string') {
    const better = issue.code === 'invalid_format' ? meant(value, schemas) : undefined;
    if (better) return { what: found(value), wants: `${message}: ${better}` };
  }
  const field = String(path.findLast((key) => typeof key === 'string') ?? '');
  // Of one thing in a list nothing is said but what is said of the list.
  const about = path.at(-1) === field ? aboutField(schema, data, path.slice(0, -1), field) : undefined;
  const inner = fieldsAt(schema, data, message === WANTED['array'] ? [...path, 0] : path);
  return otherKind(value, message, field, schemas, inner, about?.replace(/\. [A-Z].*$/, ''));
};

/** A list of plain values is told as it stands. */
const misfit = (value: object): string =>
  Array.isArray(value) && value.every((one) => typeof one !== 'object')
    ? `"[${value.join(', ')}]" cannot stand`
    : 'what does not fit stands';

const keysIn = (value: object): number => (Array.isArray(value) ? value : Object.keys(value)).length;
