/** What the schema library says in words of its own is told as what to write; what our schemas say stays as they say it. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { nearest, nearestId } from '#engine/nearest.ts';
import { schemaFaults } from '#engine/schema-faults.ts';

const told = (schema: z.ZodType, value: unknown): string[] => {
  const whole = z.strictObject({ at: schema });
  const parsed = whole.safeParse({ at: value });
  if (parsed.success) return [];
  return schemaFaults(parsed.error, { at: value }, whole).map(({ fault }) =>
    fault.code === 'bad-value' ? fault.message : fault.code,
  );
};

describe('a value that does not fit', () => {
  const CASES: readonly (readonly [string, z.ZodType, unknown])[] = [
    ['write at least 12 letters', z.string().min(12), 'short'],
    ['write something here', z.string().min(1), ''],
    ['write at most 3 letters', z.string().max(3), 'four'],
    ['give at least 2 in the list', z.array(z.string()).min(2), ['one']],
    ['the list is empty; give at least one', z.array(z.string()).min(1), []],
    ['give at most 1 in the list', z.array(z.string()).max(1), ['a', 'b']],
    ['write a number of at least 3', z.number().min(3), 1],
    ['write a number of at most 3', z.number().max(3), 4],
    ['write a number over 0', z.number().gt(0), 0],
    ['write a number under 9', z.number().lt(9), 9],
    ['write a whole number', z.number().int(), 1.5],
    ['write a multiple of 5', z.number().multipleOf(5), 3],
    ['write a text', z.string(), 3],
    ['write a number', z.number(), null],
    ['write true or false', z.boolean(), 3],
    ['write true', z.literal(true), false],
    ['write a list: [one, two]', z.array(z.string()), 3],
    ['write [2, 12]', z.tuple([z.number(), z.number()]), '2-12'],
    ['write fields and their values: { field: value }', z.record(z.string(), z.string()), 3],
    ['write a text, or write a list: [one, two]', z.union([z.string(), z.array(z.string())]), 3],
    ['write a whole address: https://…', z.url(), 'here'],
    ['it is not of the form /^a/', z.string().regex(/^a/), 'b'],
    [
      'a question ends with a question mark',
      z.string().regex(/[?]$/, 'a question ends with a question mark'),
      'b',
    ],
  ];
  it.each(CASES)('is told: %s', (message, schema, value) => expect(told(schema, value)).toEqual([message]));
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
