/**
 * Slips against a schema, each told once, at its place, with what was meant: made of small schemas of every kind that the
 * content has. Invented schemas.
 */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Fault } from '#engine/faults/issue.ts';
import { say } from '#engine/faults/say.ts';
import { schemaFaults } from '#engine/faults/schema-faults.ts';

type Told = {
  readonly at: string;
  readonly atKey: boolean;
  readonly code: string;
  readonly fault: Record<string, unknown>;
};
const told = (schema: z.ZodType, data: unknown): readonly Told[] => {
  const { error } = schema.safeParse(data);
  return error
    ? schemaFaults(error, data, schema).map(({ path, atKey, fault }) => ({
        at: path.join('.'),
        atKey,
        code: fault.code,
        fault: fault as unknown as Record<string, unknown>,
      }))
    : [];
};
const lines = (schema: z.ZodType, data: unknown) =>
  told(schema, data).map(({ at, atKey, code }) => `${code} ${at}${atKey ? ' (key)' : ''}`);

const Leaf = z.strictObject({ leave: z.string().min(3) });
const Branch: z.ZodType = z.lazy(() =>
  z.union([
    z.strictObject({ ask: z.string(), yes: Branch, no: Branch }),
    z.strictObject({ remedy: z.string(), cause: z.string().optional() }),
    z.strictObject({ defect: z.string() }),
    Leaf,
  ]),
);
const Tree = z.strictObject({ tree: Branch });

describe('a branch of a tree', () => {
  const fine = { leave: 'Fine.' };
  it('is one thing', () => {
    expect(lines(Tree, { tree: fine })).toEqual([]);
    expect(lines(Tree, { tree: { ask: 'a', yes: fine, no: { remedy: 'r', cause: 'c' } } })).toEqual([]);
    expect(told(Tree, { tree: { ask: 'a', leave: 3 } })[0]?.fault['keys']).toEqual(['ask', 'leave']);
    expect(lines(Tree, { tree: { yes: fine } })).toEqual(['bad-branch tree']);
    expect(lines(Tree, { tree: 'text' })).toEqual(['bad-branch tree']);
    expect(told(Tree, { tree: ['a'] })[0]?.fault['keys']).toEqual([]);
  });
  it('is told of by the field that is nearly written', () => {
    const [slip] = told(Tree, { tree: { remidy: 'r' } });
    expect(slip).toMatchObject({
      at: 'tree.remidy',
      atKey: true,
      code: 'unknown-key',
      fault: { key: 'remidy', nearest: 'remedy', allowed: ['ask', 'remedy', 'defect', 'leave'] },
    });
    expect(lines(Tree, { tree: { remidy: 'r', leave: 'Fine.' } })).toEqual(['unknown-key tree.remidy (key)']);
    expect(lines(Tree, { tree: { because: 'r' } })).toEqual(['bad-branch tree']);
    expect(lines(Tree, { tree: { zzzzzzz: 'r' } })).toEqual(['bad-branch tree']);
  });
  it('is told of by what is wrong in it, deep down as well', () => {
    expect(lines(Tree, { tree: { ask: 'a', yes: fine } })).toEqual(['missing-key tree']);
    expect(told(Tree, { tree: { ask: 'a', yes: fine } })[0]?.fault['key']).toBe('no');
    expect(lines(Tree, { tree: { leave: 'x' } })).toEqual(['bad-value tree.leave']);
    expect(lines(Tree, { tree: { ask: 'a', yes: fine, no: { defect: 3 } } })).toEqual([
      'bad-value tree.no.defect',
    ]);
    expect(lines(Tree, { tree: { ask: 'a', yes: { leave: 'x' }, no: { remedi: 'r' } } }).sort()).toEqual([
      'bad-value tree.yes.leave',
      'unknown-key tree.no.remedi (key)',
    ]);
  });
});

describe('a field', () => {
  const Page = z.strictObject({
    title: z.string().describe('What it is called. In few words.'),
    kind: z.enum(['flaw', 'repair']),
    'look-alikes': z.array(z.string()).default([]),
    more: z.strictObject({ grit: z.number() }).optional(),
  });
  it('that is misspelled is told once, not as missing too', () => {
    const [slip, ...more] = told(Page, { titel: 'A', kind: 'flaw' });
    expect(slip).toMatchObject({
      at: 'titel',
      atKey: true,
      code: 'unknown-key',
      fault: { key: 'titel', nearest: 'title' },
    });
    expect(more).toEqual([]);
    expect(lines(Page, { zzzzzzzz: 'A', kind: 'flaw' }).sort()).toEqual([
      'missing-key ',
      'unknown-key zzzzzzzz (key)',
    ]);
    expect(lines(Page, { title: 'A', kind: 'flaw', more: { grot: 3 } })).toEqual([
      'unknown-key more.grot (key)',
    ]);
    // The same slip elsewhere does not excuse what is missing here.
    expect(lines(Page, { kind: 'flaw', more: { grit: 3, titel: 'A' } }).sort()).toEqual([
      'missing-key ',
      'unknown-key more.titel (key)',
    ]);
  });
  it('that begins as a longer one is taken for it', () => {
    expect(told(Page, { title: 'A', kind: 'flaw', look: [] })[0]?.fault).toMatchObject({
      key: 'look',
      nearest: 'look-alikes',
    });
    expect(told(Page, { title: 'A', kind: 'flaw', qqqqqqqq: 1 })[0]?.fault).toMatchObject({
      nearest: undefined,
      allowed: ['title', 'kind', 'look-alikes', 'more'],
    });
  });
  it('that is missing is told with what it is, or of which it is one', () => {
    expect(told(Page, { kind: 'flaw' })[0]).toMatchObject({
      at: '',
      atKey: false,
      code: 'missing-key',
      fault: { key: 'title', about: 'What it is called. In few words' },
    });
    expect(told(Page, { title: 'A' })[0]?.fault).toMatchObject({ key: 'kind', about: 'one of flaw, repair' });
    expect(told(z.strictObject({ a: z.number() }), {})[0]?.fault).toMatchObject({
      key: 'a',
      about: undefined,
    });
  });
  it('of a choice is told with the nearest of its words', () => {
    expect(told(Page, { title: 'A', kind: 'flow' })[0]).toMatchObject({
      code: 'bad-choice',
      at: 'kind',
      fault: { value: 'flow', nearest: 'flaw', allowed: ['flaw', 'repair'] },
    });
    expect(told(Page, { title: 'A', kind: 'xyz' })[0]?.fault['nearest']).toBeUndefined();
    expect(told(Page, { title: 'A', kind: ['flaw'] })[0]?.code).toBe('bad-value');
    expect(told(z.strictObject({ a: z.literal([120, 320]) }), { a: 321 })[0]).toMatchObject({
      code: 'bad-choice',
      fault: { value: '321', nearest: '320', allowed: ['120', '320'] },
    });
  });
});

describe('kinds told apart by a field', () => {
  const Step = z.strictObject({
    steps: z.array(
      z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('sand'), grit: z.number() }),
        z.strictObject({ kind: z.literal('wait'), hours: z.number().optional() }),
      ]),
    ),
  });
  it('are told of by that field where it is wrong, misspelled or missing', () => {
    expect(told(Step, { steps: [{ kind: 'sond', grit: 3 }] })[0]).toMatchObject({
      code: 'bad-choice',
      at: 'steps.0.kind',
      fault: { nearest: 'sand', allowed: ['sand', 'wait'] },
    });
    expect(told(Step, { steps: [{ knd: 'sand', grit: 3 }] })[0]).toMatchObject({
      code: 'unknown-key',
      at: 'steps.0.knd',
      atKey: true,
      fault: { nearest: 'kind', allowed: ['kind'] },
    });
    expect(told(Step, { steps: [{ grit: 3 }] })[0]).toMatchObject({
      code: 'missing-key',
      at: 'steps.0',
      fault: { key: 'kind', about: 'one of sand, wait' },
    });
  });
  it('are held each to its own fields', () => {
    expect(told(Step, { steps: [{ kind: 'wait', grit: 3 }] })[0]?.fault).toMatchObject({
      code: 'unknown-key',
      key: 'grit',
      allowed: ['kind', 'hours'],
    });
    expect(told(Step, { steps: [{ kind: 'sand' }] })[0]).toMatchObject({
      code: 'missing-key',
      at: 'steps.0',
      fault: { key: 'grit' },
    });
    expect(told(Step, { steps: [{ kind: 'sand', grt: 3 }] }).map(({ code }) => code)).toEqual([
      'unknown-key',
    ]);
  });
});

describe('one of several shapes', () => {
  const Either = z.strictObject({
    at: z.union([
      z.strictObject({ paint: z.enum(['navy', 'white']) }),
      z.strictObject({ wood: z.enum(['oak', 'pine']), tone: z.number() }),
    ]),
  });
  it('is told of by the one that comes nearest', () => {
    expect(told(Either, { at: { paint: 'navi' } }).map(({ code, at }) => `${code} ${at}`)).toEqual([
      'bad-choice at.paint',
    ]);
    expect(told(Either, { at: { wood: 'oke', tone: 1 } }).map(({ code, at }) => `${code} ${at}`)).toEqual([
      'bad-choice at.wood',
    ]);
    expect(told(Either, { at: { wood: 'oak' } }).map(({ code, at }) => `${code} ${at}`)).toEqual([
      'missing-key at',
    ]);
    expect(told(Either, { at: 'navy' }).map(({ code, at }) => `${code} ${at}`)).toEqual(['bad-value at']);
  });
});

describe('a text that a comma cut in two', () => {
  const Row = z.strictObject({
    rows: z.array(z.strictObject({ say: z.string(), not: z.string().optional() })),
  });
  it('is told as one that wants quotes, written out', () => {
    const [cut, ...more] = told(Row, { rows: [{ say: 'Wipe it', 'then wait a day': null }] });
    expect(cut).toMatchObject({
      at: 'rows.0.then wait a day',
      atKey: true,
      code: 'needs-quotes',
      fault: { why: 'comma', text: 'then wait a day', write: 'say: "Wipe it, then wait a day"' },
    });
    expect(more).toEqual([]);
  });
  it('several times, is told as one', () => {
    const [cut, ...more] = told(Row, { rows: [{ say: 'Wipe it', 'then wait': null, 'then look': null }] });
    expect(cut?.fault).toMatchObject({
      text: 'then wait, then look',
      write: 'say: "Wipe it, then wait, then look"',
    });
    expect(more).toEqual([]);
  });
  it('of two fields, is told of both', () => {
    const cuts = told(Row, {
      rows: [{ say: 'Wipe it', 'then wait': null, not: 'Rub it', 'or press it': null }],
    });
    expect(cuts.map(({ fault }) => fault['write'])).toEqual([
      'say: "Wipe it, then wait"',
      'not: "Rub it, or press it"',
    ]);
  });
  it('a field of one word, or one with a value, is a field that is not known', () => {
    expect(lines(Row, { rows: [{ say: 'Wipe it', wait: null }] })).toEqual(['unknown-key rows.0.wait (key)']);
    expect(lines(Row, { rows: [{ say: 'Wipe it', 'then wait': 3 }] })).toEqual([
      'unknown-key rows.0.then wait (key)',
    ]);
    expect(told(Row, { rows: [{ 'then wait': null, say: 'Wipe it' }] })[0]?.fault).toMatchObject({
      code: 'needs-quotes',
      write: undefined,
    });
  });
});

describe('a name in a form that is none', () => {
  const Names = z.strictObject({
    at: z.record(z.string().regex(/^[a-z-]+$/, 'write small letters'), z.number()),
  });
  it('is told with what was meant', () => {
    const [bad] = told(Names, { at: { 'Big Name': 1 } });
    expect(bad).toMatchObject({
      at: 'at.Big Name',
      atKey: true,
      code: 'bad-name',
      fault: { name: 'Big Name', nearest: 'big-name', wants: 'write small letters' },
    });
    expect(told(Names, { at: { '12': 1 } })[0]?.fault).toMatchObject({ nearest: undefined });
  });
});

it('every slip becomes a line that names its place in words', () => {
  const schema = z.strictObject({ steps: z.array(z.strictObject({ grit: z.number().min(80) })) });
  const data = { steps: [{ grit: 100 }, { grit: 40 }] };
  const [fault] = told(schema, data);
  expect(say({ file: 'x', line: 3, ...(fault?.fault as unknown as Fault) })).toBe(
    'x:3: "40" cannot stand after "grit:" in step 2; write a number of at least 80',
  );
});

describe('a value of another kind', () => {
  const wants = (schema: z.ZodType, value: unknown) => {
    const [one] = told(z.strictObject({ at: schema }), { at: value });
    return one && `${one.fault['what']} | ${one.fault['wants']}`;
  };
  it('is told by what stands there and what is to be written', () => {
    expect(wants(z.string(), true)).toBe(
      'only a bare word, true, stands | write a text there, or put it between quotes: at: "true"',
    );
    expect(wants(z.string(), 12)).toMatch(/^only a number, 12, stands \|/);
    expect(wants(z.string(), { a: 1 })).toBe('fields of their own stand | write a text');
    expect(wants(z.array(z.string()), 'one')).toBe(
      '"one" cannot stand | put it between square brackets: at: [one]',
    );
    expect(wants(z.array(z.string()), 'one - two')).toMatch(
      /^"one", before the hyphens of a list, cannot stand \| .*: - one$/,
    );
    expect(wants(z.array(z.strictObject({ a: z.string(), b: z.string() })), 'one')).toMatch(
      /\| write a list: \[\{ a: …, b: … \}\]$/,
    );
    expect(wants(z.array(z.string()), true)).toBe('"true" cannot stand | write a list: [one, two]');
    expect(wants(z.tuple([z.number(), z.number()]), '2 to 12')).toMatch(
      /\| write two numbers in brackets: \[2, 12\]$/,
    );
    expect(wants(z.tuple([z.number(), z.number()]), '4–6')).toMatch(/: \[4, 6\]$/);
    expect(wants(z.tuple([z.number(), z.number()]), 5)).toMatch(/: \[2, 12\]$/);
    expect(wants(z.strictObject({ a: z.number(), b: z.number(), c: z.number(), d: z.number() }), 'x')).toBe(
      '"x" cannot stand | write its fields: { a: …, b: …, c: …, … }',
    );
    expect(wants(z.strictObject({ a: z.number(), b: z.number(), c: z.number() }), 'x')).toMatch(
      /\{ a: …, b: …, c: … \}$/,
    );
    expect(wants(z.string().describe('Its name. No brand.'), 3)).toMatch(/\| write there its name,? ?/);
    expect(wants(z.number(), 'x')).toBe('"x" cannot stand | write a number');
  });
  it('in a list too short is told by how many are there', () => {
    expect(wants(z.array(z.string()).min(3), ['a', 'b'])).toBe(
      'a list of 2 stands | give at least 3 in the list',
    );
    expect(wants(z.array(z.string()).min(1), [])).toBe('an empty list stands | write at least one in it');
    expect(
      wants(
        z.record(z.string(), z.number()).refine(() => false, 'write others'),
        { a: 1 },
      ),
    ).toBe('what does not fit stands | write others');
    expect(
      wants(
        z.array(z.number()).refine(() => false, 'write others'),
        [1, 2],
      ),
    ).toBe('"[1, 2]" cannot stand | write others');
    expect(
      wants(
        z.array(z.object({})).refine(() => false, 'write others'),
        [{}],
      ),
    ).toBe('what does not fit stands | write others');
  });
});
