/**
 * What stands once for many files, filled in by hand-worked examples and laws: what is written stays, what is left out is
 * the usual, twice filled is once filled, and what is no entry at all is left for the check to tell. Invented entries.
 */
import { describe, expect, it } from 'vitest';
import { filled } from '#engine/knowledge/fill.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { readContent } from '../../../content/tools/read.ts';

type Data = Record<string, unknown>;
const ACTS = {
  film: {
    wet: { do: 'leave', say: 'Leave it.', does: ['vapor'], not: 'No touch.' },
    recoatable: { do: 'repair', say: 'Mend it.' },
  },
  oil: { wet: { do: 'wipe-back', say: 'Wipe it.' } },
};
const STEPS = { dust: [{ say: 'one' }, { say: 'two' }], none: 'no list' };
const SHARED = { acts: ACTS, steps: STEPS };

const raw = (kind: EntryKind, id: string, data: unknown): RawEntry => ({
  kind,
  id,
  file: `${id}.mdx`,
  data,
  lineOf: (path) => path.length * 100 + (typeof path[1] === 'number' ? path[1] : 0),
});
const of = (entry: RawEntry, shared = SHARED): RawEntry => filled([entry], shared)[0] as RawEntry;
const nowOf = (now: unknown, shared: typeof SHARED = SHARED): Data =>
  (of(raw('remedy', 'mend', { now }), shared).data as Data)['now'] as Data;
const stepsOf = (steps: unknown): unknown => (of(raw('remedy', 'mend', { steps })).data as Data)['steps'];

describe('the acts of a remedy', () => {
  it('are the usual ones where nothing is said', () => {
    expect(nowOf({})).toEqual({ ...ACTS.film, cured: ACTS.film.recoatable });
  });
  it('take from the usual one what they do not say; a mark goes only with the words it was written for', () => {
    const { wet } = nowOf({ wet: { not: 'Hands off.' } });
    expect(wet).toEqual({ ...ACTS.film.wet, not: 'Hands off.' });
    expect(nowOf({ wet: { say: 'Look.' } })['wet']).toEqual({ do: 'leave', say: 'Look.', not: 'No touch.' });
    // What is written stays before what is filled in.
    expect(Object.keys(wet as Data)[0]).toBe('not');
  });
  it('are whole where they say what to do', () => {
    expect(nowOf({ wet: { do: 'lift' } })['wet']).toEqual({ do: 'lift' });
    expect(nowOf({ cured: { do: 'stop' } })['cured']).toEqual({ do: 'stop' });
  });
  it('of a cured film are those of one that may be coated again, own words first', () => {
    expect(nowOf({ recoatable: { say: 'Sand.' } })['cured']).toEqual({ do: 'repair', say: 'Sand.' });
    expect(nowOf({ cured: { say: 'Polish.' } })['cured']).toEqual({ do: 'repair', say: 'Polish.' });
  });
  it('are those of the kind of repair that is named', () => {
    expect(nowOf({ as: 'oil' })).toEqual({ wet: ACTS.oil.wet, cured: undefined });
    expect(nowOf({ as: 'oil', cured: { do: 'wait' } })).toEqual({ wet: ACTS.oil.wet, cured: { do: 'wait' } });
  });
  it('keep a stage that no kind of repair has', () => {
    expect(nowOf({ overdue: { do: 'stop' } })['overdue']).toEqual({ do: 'stop' });
  });
  it('that are no fields stay as they are', () => {
    expect(nowOf({ wet: 'leave' })['wet']).toBe('leave');
    expect(nowOf({ wet: null })['wet']).toBeNull();
    expect(nowOf({ wet: ['a'] })['wet']).toEqual(['a']);
    for (const now of ['text', null, ['a'], 3]) expect(nowOf(now)).toEqual(now);
    expect(of(raw('remedy', 'mend', {})).data).toEqual({});
  });
  it('of a kind that is nearly written are taken from the one that is meant, and that is told', () => {
    const slip = of(raw('remedy', 'mend', { now: { as: 'oli' } }));
    expect((slip.data as { now: Data }).now['wet']).toEqual(ACTS.oil.wet);
    expect(slip.told).toEqual([
      {
        line: 200,
        fault: {
          code: 'unknown-name',
          what: 'kind of repair',
          name: 'oli',
          nearest: 'oil',
          in: 'content/acts.yaml',
        },
      },
    ]);
  });
  it('of a kind that is not there are their own, and that is told', () => {
    const gone = of(raw('remedy', 'mend', { now: { as: 'something-else', wet: { do: 'lift' } } }));
    expect((gone.data as Data)['now']).toEqual({ wet: { do: 'lift' } });
    expect(gone.told).toHaveLength(1);
    expect(gone.told?.[0]?.fault).toMatchObject({ name: 'something-else', nearest: undefined });
  });
  it('tell nothing where none is named, though the usual kind is not there', () => {
    const bare = of(raw('remedy', 'mend', { now: { wet: { do: 'lift' } } }), {
      acts: {},
      steps: {},
    } as never);
    expect((bare.data as Data)['now']).toEqual({ wet: { do: 'lift' } });
    expect(bare).not.toHaveProperty('told');
  });
});

describe('the steps of a remedy', () => {
  it('stand in place of their name, in order', () => {
    expect(stepsOf([{ say: 'a' }, 'dust', { say: 'b' }, 'dust'])).toEqual([
      { say: 'a' },
      { say: 'one' },
      { say: 'two' },
      { say: 'b' },
      { say: 'one' },
      { say: 'two' },
    ]);
  });
  it('each have the line of the place where they stand in the file', () => {
    const made = of(raw('remedy', 'mend', { steps: ['dust', { say: 'b' }] }));
    expect([0, 1, 2].map((at) => made.lineOf(['steps', at]))).toEqual([200, 200, 201]);
    expect([0, 1, 2].map((at) => made.inFile?.(['steps', at, 'say']))).toEqual([
      ['steps', 0, 'say'],
      ['steps', 0, 'say'],
      ['steps', 1, 'say'],
    ]);
    // Other paths, and a step that is not there, stay.
    expect(made.inFile?.(['claims', 1, 'says'])).toEqual(['claims', 1, 'says']);
    expect(made.inFile?.(['steps', 9])).toEqual(['steps', 9]);
    expect(made.inFile?.(['steps'])).toEqual(['steps']);
    expect(made.inFile?.([])).toEqual([]);
  });
  it('of a name that is not there are none, and that is told with the nearest', () => {
    const gone = of(raw('remedy', 'mend', { steps: [{ say: 'a' }, 'dusk', 'zzzzzzzz'] }));
    expect((gone.data as Data)['steps']).toEqual([{ say: 'a' }]);
    expect(gone.told?.map(({ line, fault }) => [line, fault])).toEqual([
      [
        201,
        {
          code: 'unknown-name',
          what: 'shared step',
          name: 'dusk',
          nearest: 'dust',
          in: 'content/steps.yaml',
        },
      ],
      [
        202,
        {
          code: 'unknown-name',
          what: 'shared step',
          name: 'zzzzzzzz',
          nearest: undefined,
          in: 'content/steps.yaml',
        },
      ],
    ]);
  });
  it('that are no list stay, and a name of no list stands for nothing', () => {
    for (const steps of ['dust', null, { a: 1 }]) expect(stepsOf(steps)).toEqual(steps);
    expect(stepsOf(['none'])).toEqual([]);
    const plain = of(raw('remedy', 'mend', { name: 'Mend' }));
    expect(plain.data).toEqual({ name: 'Mend' });
    expect(plain).not.toHaveProperty('inFile');
  });
});

describe('claims and changes', () => {
  const dataOf = (data: Data) => of(raw('rule', 'one', data)).data as Data;
  it('a claim with a source and no grade is published', () => {
    expect(
      dataOf({
        claims: [
          { says: 'a', source: 's' },
          { says: 'b' },
          { says: 'c', source: 's', grade: 'from-memory' },
          'text',
          null,
        ],
      })['claims'],
    ).toEqual([
      { says: 'a', source: 's', grade: 'published' },
      { says: 'b' },
      { says: 'c', source: 's', grade: 'from-memory' },
      'text',
      null,
    ]);
    expect(dataOf({ claims: 'none' })['claims']).toBe('none');
    expect(dataOf({})).toEqual({});
  });
  it('the oldest change is the first version, where it says neither what nor why', () => {
    const first = { what: 'First version.', why: 'New page.' };
    expect(dataOf({ changes: [{ on: '2026-02-01' }, { on: '2026-01-01' }] })['changes']).toEqual([
      { on: '2026-02-01' },
      { on: '2026-01-01', ...first },
    ]);
    for (const own of [{ what: 'Begun.' }, { why: 'So.' }])
      expect(dataOf({ changes: [{ on: '2026-01-01', ...own }] })['changes']).toEqual([
        { on: '2026-01-01', ...own },
      ]);
    // Of two on one day the one that stands first.
    expect(dataOf({ changes: [{ on: '2026-01-01' }, { on: '2026-01-01' }] })['changes']).toEqual([
      { on: '2026-01-01', ...first },
      { on: '2026-01-01' },
    ]);
    expect(dataOf({ changes: [] })['changes']).toEqual([]);
    expect(dataOf({ changes: 'none' })['changes']).toBe('none');
    expect(dataOf({ changes: ['x', { on: '2026-01-01' }] })['changes']).toEqual(['x', { on: '2026-01-01' }]);
  });
});

describe('the signs of a flaw, and what it looks like', () => {
  const asks = [
    raw('question', 'sticky', { 'every-flaw': 'no' }),
    raw('question', 'rare', {}),
    raw('rule', 'shiny', { 'every-flaw': 'yes' }),
    raw('question', 'broken', null),
  ];
  const flaw = (id: string, data: Data) => raw('defect', id, data);
  const all = (...flaws: readonly RawEntry[]) =>
    Object.fromEntries(
      filled([...asks, ...flaws], SHARED).flatMap(({ kind, id, data }) =>
        kind === 'defect' ? [[id, data as Data]] : [],
      ),
    );
  it('are those of every flaw where it says nothing of them', () => {
    const { one, two } = all(
      flaw('one', { signs: { round: 'yes' } }),
      flaw('two', { signs: { sticky: 'yes' } }),
    );
    expect(one?.['signs']).toEqual({ round: 'yes', sticky: 'no' });
    expect(two?.['signs']).toEqual({ sticky: 'yes' });
  });
  it('hold both ways, each once', () => {
    const { one, two, six } = all(
      flaw('one', { 'look-alikes': ['two', 'six'] }),
      flaw('two', { 'look-alikes': ['one'] }),
      flaw('six', { 'look-alikes': [] }),
    );
    expect(one?.['look-alikes']).toEqual(['two', 'six']);
    expect(two?.['look-alikes']).toEqual(['one']);
    expect(six?.['look-alikes']).toEqual(['one']);
  });
  it('that are no fields, or no list, stay', () => {
    const { one, two, six } = all(
      flaw('one', { signs: 'none', 'look-alikes': 'two' }),
      flaw('two', {}),
      flaw('six', { 'look-alikes': ['one', 'two'] }),
    );
    expect(one).toEqual({ signs: 'none', 'look-alikes': 'two' });
    expect(two).toEqual({});
    expect(six?.['look-alikes']).toEqual(['one', 'two']);
  });
});

it('an entry without fields is left alone', () => {
  for (const data of [null, undefined, 'text', ['a']]) {
    const entry = raw('remedy', 'mend', data);
    expect(of(entry)).toBe(entry);
  }
});

it('filled twice is filled once, over all that is there', () => {
  const content = readContent(process.cwd());
  const again = filled(content, { acts: {}, steps: {} });
  expect(again.map(({ data }) => data)).toEqual(content.map(({ data }) => data));
  expect(again.flatMap(({ told = [] }) => told).length).toBe(content.flatMap(({ told = [] }) => told).length);
});
