import type { z } from 'zod';

/** What is wrong with one field of one card, and what to do; `field` is empty where it is the whole card or file. */
export type CardFault = { readonly card: string; readonly field: string; readonly says: string };

export const cardFault = (card: string, field: string, says: string): CardFault => ({ card, field, says });

const LONGEST = 60;
const short = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);

/** `coats, entry 2, celsius`: people count from one. */
const fieldOf = (path: readonly PropertyKey[]): string =>
  path.map((key) => (typeof key === 'number' ? `entry ${key + 1}` : short(String(key)))).join(', ');

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  array: 'a list',
  tuple: 'a list',
  object: 'a group of fields',
  record: 'a group of fields',
};

/** `100 entries` of a list, `80 letters` of a text, the bare number else. */
const counted = (bound: number | bigint, origin: string): string =>
  origin === 'array' ? `${bound} entries` : origin === 'string' ? `${bound} letters` : String(bound);

const words = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return issue.message.endsWith('received undefined')
        ? 'is missing; add it.'
        : `must be ${KINDS[issue.expected] ?? issue.expected}; correct it.`;
    case 'too_big':
      return `must be ${counted(issue.maximum, issue.origin)} at most; correct it.`;
    case 'too_small':
      return `must be ${counted(issue.minimum, issue.origin)} at least; correct it.`;
    case 'invalid_value':
      return `must be one of ${issue.values.map(String).slice(0, 12).join(', ')}; correct it.`;
    case 'invalid_format':
      return 'is not written as it has to be; correct it.';
    case 'custom':
      return `does not fit: ${issue.message}.`;
    default:
      return 'does not fit; correct it or take it out.';
  }
};

/** One fault of the schema in plain words; one for each key that has no business there. */
export const sayIssue = (issue: z.core.$ZodIssue, card: string): CardFault[] =>
  issue.code === 'unrecognized_keys'
    ? issue.keys
        .slice(0, 5)
        .map((key) => cardFault(card, fieldOf([...issue.path, key]), 'is no field of a card; take it out.'))
    : [cardFault(card, fieldOf(issue.path), words(issue))];

/** A fault as one line. */
export const sayCardFault = ({ card, field, says }: CardFault): string =>
  field ? `${card}: ${field} ${says}` : `${card} ${says}`;
