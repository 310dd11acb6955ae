/** What the schema library says in words of its own is told as what to write; what our schemas say stays as they say it. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';
import { nearest, nearestId } from '#engine/plain/nearest.ts';

const told = (schema: z.ZodType, value: unknown): string[] => {
  const whole = z.strictObject({ at: schema });
  const parsed = whole.safeParse({ at: value });
  if (parsed.success) return [];
  return schemaFaults(parsed.error, { at: value }, whole).map(({ fault }) =>
    fault.code === 'bad-value' ? fault.wants : fault.code,
  );
};

describe('a value that does not fit', () => {
  const CASES: readonly (readonly [string, z.ZodType, unknown])[] = [
    ['write at least 12 letters', z.string().min(12), 'short'],
    ['write something here', z.string().min(1), ''],
    ['write at most 3 letters', z.string().max(3), 'four'],
    ['give at least 2 in the list', z.array(z.string()).min(2), ['one']],
    ['write at least one in it', z.array(z.string()).min(1), []],
    ['give at most 1 in the list', z.array(z.string()).max(1), ['a', 'b']],
    ['write a number of at least 3', z.number().min(3), 1],
    ['write a number of at most 3', z.number().max(3), 4],
    ['write a number over 0', z.number().gt(0), 0],
    ['write a number under 9', z.number().lt(9), 9],
    ['write 1, 2 or 3', z.int().min(1).max(3), 4],
    ['write 1, 2 or 3', z.int().min(1).max(3), 'easy'],
    ['write a number from 8 to 300', z.number().min(8).max(300), 7],
    [
      'write a whole number from 1800 to 2100, or undated',
      z.union([z.int().min(1800).max(2100), z.literal('undated')]),
      'about 2008',
    ],
    ['write the year first: 2026-11-28', z.iso.date(), '28.11.2026'],
    ['write the year first: 2026-11-28', z.iso.date(), '11/28/2026'],
    ['write 2026-01-05', z.iso.date(), '2026-1-5'],
    ['write the day as year-month-day: 2026-11-28 is November 28, 2026', z.iso.date(), '2026-02-30'],
    ['write the day as year-month-day: 2026-11-28 is November 28, 2026', z.iso.date(), 2026],
    ['write a whole number', z.number().int(), 1.5],
    ['write a multiple of 5', z.number().multipleOf(5), 3],
    ['write a text there, or put it between quotes: at: "3"', z.string(), 3],
    ['write a text there', z.string().min(4), 3],
    ['write there its name on a can', z.string().min(4).describe('Its name on a can. No brand.'), 3],
    ['write one text, without the brackets or hyphens', z.string(), ['a', 'b']],
    ['write it there', z.string(), null],
    ['write a number', z.number(), null],
    ['write true or false', z.boolean(), 3],
    ['write true', z.literal(true), false],
    ['put it between square brackets: at: [3]', z.array(z.string()), 3],
    ['put it on a line of its own below, with a hyphen: - a', z.array(z.string()), 'a - b - c'],
    ['write two numbers in brackets: [2, 12]', z.tuple([z.number(), z.number()]), '2-12'],
    ['write two numbers in brackets: [2, 12]', z.tuple([z.number(), z.number()]), 'some'],
    ['write fields and their values: { field: value }', z.record(z.string(), z.string()), 3],
    ['write a text, or a list: [one, two]', z.union([z.string(), z.array(z.string())]), 3],
    ['write a whole address: https://…', z.url(), 'here'],
    ['it is not of the form /^a/', z.string().regex(/^a/), 'b'],
    [
      'end it with a question mark: Is it?',
      z.string().regex(/[?]$/, 'end it with a question mark'),
      'Is it.',
    ],
    ['write one word: cloudy', z.string().regex(/^[a-z]+$/, 'write one word'), 'Cloudy!'],
  ];
  it.each(CASES)('is told: %s', (message, schema, value) => expect(told(schema, value)).toEqual([message]));
});

it('tells what is wrong with a row, where the schema says it before what to write', () => {
  const pair = z.tuple([z.number(), z.number()]);
  const whole = z.strictObject({
    at: pair.refine(([from, to]) => from <= to, 'write the smaller number first'),
    row: z
      .strictObject({ a: z.number() })
      .refine(({ a }) => a > 1, 'a: is 1 and b: is 2; write the same in both'),
  });
  const value = { at: [2, 1], row: { a: 1 } };
  const { error } = whole.safeParse(value);
  if (!error) throw new Error('it fits');
  expect(schemaFaults(error, value, whole).map(({ fault }) => say({ file: 'x', line: 1, ...fault }))).toEqual(
    [
      'x:1: "[2, 1]" cannot stand after "at:"; write the smaller number first',
      'x:1: a: is 1 and b: is 2, after "row:"; write the same in both',
    ],
  );
});

describe('a word that goes on in several ways', () => {
  it('is taken for none of them', () => {
    expect(nearest('mostly', ['yes', 'mostly-yes', 'mostly-no'])).toBeUndefined();
    expect(nearest('mostly-n', ['yes', 'mostly-yes', 'mostly-no'])).toBe('mostly-no');
  });
});

describe('an id that is not there', () => {
  const IDS = ['full-panel-recoat', 'dull-and-recoat', 'panel-doors', 'scrape-the-glue-off'];
  it('is taken for the one with the same words, where none is spelled like it', () => {
    expect(nearest('recoat-panel', IDS)).toBeUndefined();
    expect(nearestId('recoat-panel', IDS)).toBe('full-panel-recoat');
    expect(nearestId('glue-scraping-off', IDS)).toBe('scrape-the-glue-off');
  });
  it('is taken for the one that is spelled like it before all else', () =>
    expect(nearestId('scrape-the-glu-off', IDS)).toBe('scrape-the-glue-off'));
  it('is taken for none by one common word', () => expect(nearestId('recoat-now', IDS)).toBeUndefined());
});
