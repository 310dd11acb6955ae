/** Pieces that sentences to an author are made of: quotes that are read back, lists of choices, days of the calendar. */
import fc from 'fast-check';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { dayWanted } from '#engine/faults/day-wanted.ts';
import { either } from '#engine/faults/either.ts';
import { asClause, found, short } from '#engine/faults/found.ts';
import { inQuotes } from '#engine/faults/in-quotes.ts';
import { wayOut, within, written } from '#engine/faults/mend.ts';

it('a text between quotes is read back as it was, by a reader of YAML', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...`ab '"\\:,#-`), maxLength: 12 }), (text) => {
      expect(load(inQuotes(text))).toBe(text);
    }),
    { numRuns: 200 },
  );
  expect(inQuotes('plain')).toBe('"plain"');
});

it('a condition is written so that a reader of YAML reads the same', () => {
  for (const value of [
    { age: 'unknown' },
    { any: [{ piece: ['crib', 'valuable'] }, { age: 'unknown' }] },
    { 'air-celsius': { below: 10 } },
    ['a', 'b'],
    true,
    12,
  ])
    expect(load(written(value))).toEqual(value);
  expect(written({ a: 1, b: undefined })).toBe('{ a: 1 }');
  expect(written(null)).toBe('null');
});

it.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b'], 'a or b'],
  [['a', 'b', 'c', 'd'], 'a, b, c or d'],
] as const)('%o: %s', (words, told) => {
  expect(either(words)).toBe(told);
});

describe('what stands there', () => {
  it('is quoted, or told by its kind', () => {
    expect(found(undefined)).toBe(found(null));
    expect(found(null)).toContain('nothing');
    expect(found(['a'])).toContain('list');
    expect(found({ a: 1 })).toContain('fields');
    for (const value of ['a text', 3, true, 0, ''])
      expect(found(value)).toMatch(new RegExp(`^"${String(value)}" `));
  });
  it('is cut where it is long, at ninety letters', () => {
    for (const length of [1, 89, 90]) expect(short('x'.repeat(length))).toBe('x'.repeat(length));
    for (const length of [91, 300]) expect(short('ab'.repeat(length))).toBe(`${'ab'.repeat(44)}…`);
  });
  it('stands within a sentence without its capital and its stop, unless the capital is its name', () => {
    expect(asClause('Its name on a can.')).toBe('its name on a can');
    expect(asClause('A stop.')).toBe('a stop');
    expect(asClause('US grade 7.')).toBe('US grade 7');
    expect(asClause('from 0.5 up')).toBe('from 0.5 up');
    expect(asClause('in the US')).toBe('in the US');
  });
});

describe('a mark', () => {
  it('goes within the braces of one line, or on a line of its own', () => {
    expect(within('of: oil', true)).toMatch(/^write , of: oil before the }/);
    expect(within('of: oil', false)).toMatch(/^write below it, .*: of: oil$/);
  });
  it('stands behind the words that lead to it; words alone stand alone', () => {
    expect(wayOut({ mend: 'delete it' }, () => true)).toBe('delete it');
    expect(wayOut({ mend: 'delete it, or', mark: 'of: oil' }, () => true)).toBe(
      `delete it, or ${within('of: oil', true)}`,
    );
    expect(wayOut({ mark: 'of: oil' }, () => false)).toBe(within('of: oil', false));
    expect(wayOut({}, () => false)).toBe('');
  });
});

describe('a day that is written otherwise', () => {
  const pad = (part: number) => String(part).padStart(2, '0');
  const day = fc.date({ min: new Date('1000-01-01'), max: new Date('2100-12-31'), noInvalidDate: true });

  it('is told in the order year, month, day, as the calendar of the machine has it', () => {
    fc.assert(
      fc.property(day, (date) => {
        const [y, m, d] = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()];
        const right = date.toISOString().slice(0, 10);
        expect(dayWanted(`${d}.${m}.${y}`).wants).toBe(`write the year first: ${right}`);
        expect(dayWanted(`${pad(d)}-${pad(m)}-${y}`).wants).toBe(`write the year first: ${right}`);
        expect(dayWanted(`${m}/${d}/${y}`).wants).toBe(`write the year first: ${right}`);
        expect(dayWanted(`${y}/${m}/${d}`).wants).toBe(`write ${right}`);
        expect(dayWanted(`${y}.${pad(m)}.${d}`).wants).toBe(`write ${right}`);
        expect(dayWanted(`${d}.${m}.${y}`).what).toContain(`"${d}.${m}.${y}"`);
      }),
      { numRuns: 100 },
    );
  });

  it.each([
    ['2026-13-01', 'no month 13'],
    ['2026-0-01', 'no month 0'],
    ['1.13.2026', 'no month 13'],
    ['13/1/2026', 'no month 13'],
    ['2026-04-31', 'no day 31'],
    ['2026-02-29', 'no day 29'],
    ['1900-02-29', 'no day 29'],
    ['2026-01-32', 'no day 32'],
    ['2026-01-0', 'no day 0'],
  ])('%s is none: %s', (text, why) => {
    const { what, wants } = dayWanted(text);
    expect(what).toContain(text);
    expect(what).toContain(why);
    expect(wants).toMatch(/year-month-day/);
  });

  it.each(['2024-2-29', '2000-2-29', '31.12.2026', '12/31/2026', '30.4.2026', '1.1.2026'])(
    '%s is one',
    (text) => {
      expect(dayWanted(text).what).not.toMatch(/no (?:day|month|date)/);
    },
  );

  it.each([
    'last week',
    '2026',
    '2026-1',
    '12026-01-01',
    '2026-001-01',
    '2026.1-1',
    'x2026-1-1',
    '2026-1-1x',
  ])('%s is no date', (text) => {
    expect(dayWanted(text).what).toMatch(/no date/);
    expect(dayWanted(text).wants).toMatch(/year-month-day/);
  });
});
