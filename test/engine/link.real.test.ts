/**
 * Every link of the real knowledge, broken one at a time: the entry is told, at the line of that link, and nothing else.
 * Which fields link to what is written here again, by hand.
 */
import { describe, expect, it } from 'vitest';
import type { Issue } from '#engine/faults/issue.ts';
import { link } from '#engine/link.ts';
import type { EntryKind } from '#engine/model/kinds.ts';
import type { RawEntry } from '#engine/model/knowledge.ts';
import { nearest, nearestId } from '#engine/plain/nearest.ts';
import { readContent } from '../../content/tools/read.ts';

const raw = readContent(process.cwd());
const by = new Map(raw.map((entry) => [`${entry.kind}/${entry.id}`, entry]));
const GONE = 'zzz-qqq-vvv';

type Data = Record<string, unknown>;
type Link = { readonly kind: EntryKind; readonly path: readonly (string | number)[] };

const rowsOf = (value: unknown): readonly Data[] => (Array.isArray(value) ? (value as Data[]) : []);
const idsAt = (data: Data, field: string, kind: EntryKind): Link[] =>
  rowsOf(data[field]).map((_, at) => ({ kind, path: [field, at] }));
const treeLinks = (branch: Data, path: readonly (string | number)[]): Link[] => [
  ...(branch['ask']
    ? [
        { kind: 'question' as const, path: [...path, 'ask'] },
        ...treeLinks(branch['yes'] as Data, [...path, 'yes']),
        ...treeLinks(branch['no'] as Data, [...path, 'no']),
      ]
    : []),
  ...(branch['remedy'] ? [{ kind: 'remedy' as const, path: [...path, 'remedy'] }] : []),
  ...(branch['defect'] ? [{ kind: 'defect' as const, path: [...path, 'defect'] }] : []),
];

const linksOf = ({ kind, data }: RawEntry): Link[] => {
  const of = data as Data;
  const sources: Link[] = rowsOf(of['claims']).flatMap(({ source }, at) =>
    source ? [{ kind: 'source' as const, path: ['claims', at, 'source'] }] : [],
  );
  if (kind === 'defect')
    return [
      ...treeLinks(of['tree'] as Data, ['tree']),
      ...idsAt(of, 'look-alikes', 'defect'),
      ...((of['while-wet-rests-on'] as Data | undefined)?.['source']
        ? [{ kind: 'source' as const, path: ['while-wet-rests-on', 'source'] }]
        : []),
      ...sources,
    ];
  if (kind === 'remedy')
    return [
      ...((of['if-not'] as Data)['remedy'] ? [{ kind: 'remedy' as const, path: ['if-not', 'remedy'] }] : []),
      ...sources,
    ];
  if (kind === 'lesson')
    return [
      ...idsAt(of, 'defects', 'defect'),
      ...idsAt(of, 'remedies', 'remedy'),
      ...idsAt(of, 'terms', 'term'),
      ...idsAt(of, 'rules', 'rule'),
      ...rowsOf(of['boards']).map((_, at): Link => ({ kind: 'defect', path: ['boards', at, 'defect'] })),
      ...rowsOf(of['items']).map((_, at): Link => ({ kind: 'defect', path: ['items', at, 'flaw'] })),
      ...sources,
    ];
  return sources;
};

/** The entry with something else at a place. */
const changed = (entry: RawEntry, path: readonly (string | number)[], value: unknown): RawEntry => {
  const data = structuredClone(entry.data) as Data;
  let at = data as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  at[path.at(-1) as string] = value;
  return { ...entry, data };
};
const valueAt = (entry: RawEntry, path: readonly (string | number)[]): unknown => {
  let at: unknown = entry.data;
  for (const key of path) at = (at as Record<string | number, unknown>)[key];
  return at;
};
/** The entry with all that it links to; what these lack is not asked. */
const issuesWith = (entry: RawEntry, retired = {}): readonly Issue[] => {
  const whole = by.get(`${entry.kind}/${entry.id}`) ?? entry;
  const signs = Object.keys(((whole.data as Data)['signs'] as Data | undefined) ?? {});
  const there = new Set([
    ...linksOf(whole).map(({ kind, path }) => `${kind}/${valueAt(whole, path)}`),
    ...signs.map((id) => `question/${id}`),
  ]);
  there.delete(`${entry.kind}/${entry.id}`);
  const linked = link([entry, ...[...there].flatMap((name) => by.get(name) ?? [])], retired);
  return linked.ok ? [] : linked.issues.filter(({ file }) => file === entry.file);
};

/** One link of each kind of field, from the first entry that has it. */
const links = new Map<string, { readonly entry: RawEntry; readonly one: Link }>();
for (const entry of raw)
  for (const one of linksOf(entry)) {
    const field = `${entry.kind} ${one.path.map((key) => (typeof key === 'number' ? '#' : key)).join('.')}`;
    const plain = field.replace(/tree(\.(yes|no))*/, 'tree');
    if (!links.has(plain)) links.set(plain, { entry, one });
  }

describe.each([...links])('%s', (_, { entry, one }) => {
  it('is told at its line where nothing is there', () => {
    const broken = changed(entry, one.path, GONE);
    const dead = issuesWith(broken).filter(({ code }) => code === 'dead-link');
    expect(dead).toHaveLength(1);
    expect(dead[0]).toMatchObject({
      kind: one.kind,
      id: GONE,
      file: entry.file,
      line: broken.lineOf(one.path),
    });
    expect((dead[0] as { nearest?: string }).nearest).toBeUndefined();
  });

  it('is told to have moved where it did, and guessed where it is a slip of the pen', () => {
    const retired = issuesWith(changed(entry, one.path, GONE), { [`${one.kind}/${GONE}`]: 'now-here' });
    expect(retired.filter(({ code }) => code === 'dead-link')).toEqual([]);
    expect(retired.filter(({ code }) => code === 'retired-link')).toMatchObject([
      { kind: one.kind, id: GONE, now: 'now-here', file: entry.file },
    ]);
    const meant = String(valueAt(entry, one.path));
    const slip = `${meant}q`;
    const dead = issuesWith(changed(entry, one.path, slip)).filter(({ code }) => code === 'dead-link');
    expect(dead).toMatchObject([{ id: slip, nearest: meant }]);
  });
});

it('links what is whole, and finds each entry by its kind and id', () => {
  const linked = link(raw);
  if (!linked.ok) throw new Error('it does not link');
  for (const { kind, id } of raw) {
    expect(linked.value.has(kind, id)).toBe(true);
    expect(linked.value.get(kind, id).id).toBe(id);
  }
  expect(linked.value.has('defect', GONE)).toBe(false);
  expect(() => linked.value.get('defect', GONE)).toThrow(`no defect "${GONE}" in the linked knowledge`);
  for (const list of [linked.value.defects, linked.value.remedies, linked.value.questions])
    expect(list.map(({ id }) => id)).toEqual(list.map(({ id }) => id).toSorted());
});

describe('what is asked of an entry by itself', () => {
  const defect = by.get('defect/brush-marks') as RawEntry;
  const of = issuesWith;

  it('a claim that is published names its source, and one of common practice need not', () => {
    const published = changed(defect, ['claims', 0], { says: 'It is so, as is told.', grade: 'published' });
    expect(of(published)).toMatchObject([
      { code: 'no-source', grade: 'published', says: 'It is so, as is told.' },
    ]);
    const remembered = changed(defect, ['claims', 0], {
      says: 'It is so, as is told.',
      grade: 'from-memory',
    });
    expect(of(remembered)).toMatchObject([{ code: 'no-source', grade: 'from-memory' }]);
    const common = changed(defect, ['claims', 0], {
      says: 'It is so, as is told.',
      grade: 'common-practice',
    });
    expect(of(common).filter(({ code }) => code === 'no-source')).toEqual([]);
  });

  it('a tree that leads back to itself is told once, with the way round', () => {
    const round = changed(defect, ['tree'], { defect: 'brush-marks' });
    expect(of(round)).toMatchObject([{ code: 'see-cycle', path: ['brush-marks', 'brush-marks'] }]);
  });

  it('a fact that nobody knows, and a value that it never has, are told', () => {
    const rule = raw.find(({ kind, data }) => kind === 'rule' && (data as Data)['when']) as RawEntry;
    const unknown = of(changed(rule, ['when'], { famly: 'oil' }));
    expect(unknown).toMatchObject([{ code: 'unknown-fact', fact: 'famly', nearest: 'family' }]);
    const never = of(changed(rule, ['when'], { family: 'shelac' }));
    expect(never).toMatchObject([
      { code: 'bad-fact-value', fact: 'family', value: 'shelac', nearest: 'shellac' },
    ]);
    expect(of(changed(rule, ['when'], { family: 'shellac' }))).toEqual([]);
  });

  it('an entry that is no entry is told, and a fault of shape makes no link to it dead', () => {
    const empty = { ...defect, data: null };
    expect(issuesWith(empty)).toMatchObject([{ code: 'no-front-matter', why: 'empty', file: defect.file }]);
    const named = changed(defect, ['name'], undefined);
    expect(issuesWith(named)).toMatchObject([{ code: 'missing-key', key: 'name' }]);
    const other = by.get('defect/orange-peel') as RawEntry;
    const linked = link([named, changed(other, ['look-alikes'], ['brush-marks'])]);
    const dead = linked.ok ? [] : linked.issues.filter(({ code }) => code === 'dead-link');
    expect(dead.filter((issue) => 'id' in issue && issue.id === 'brush-marks')).toEqual([]);
  });
});

/** Insert, delete, replace or swap two neighbors, by the definition (Damerau 1964; Levenshtein 1966), no more than so many. */
const within = (a: string, b: string, most: number): boolean => {
  if (a === b) return true;
  if (most === 0) return false;
  const at = [...a].findIndex((letter, index) => letter !== b[index]);
  const i = at < 0 ? a.length : at;
  const [restA, restB] = [a.slice(i), b.slice(i)];
  return (
    (restA !== '' && within(restA.slice(1), restB, most - 1)) ||
    (restB !== '' && within(restA, restB.slice(1), most - 1)) ||
    (restA !== '' && restB !== '' && within(restA.slice(1), restB.slice(1), most - 1)) ||
    (restA.length > 1 &&
      restA[0] === restB[1] &&
      restA[1] === restB[0] &&
      within(restA.slice(2), restB.slice(2), most - 1))
  );
};

describe('what was probably meant', () => {
  it.each<[string, readonly string[], string | undefined]>([
    ['famly', ['family', 'base'], 'family'],
    ['fmaily', ['family', 'base'], 'family'],
    ['familly', ['family', 'base'], 'family'],
    ['sheen', ['shine', 'sheer', 'sheens'], 'sheer'],
    ['mostly', ['mostly-yes', 'mostly-no'], undefined],
    ['mostly', ['mostly-yes', 'most'], 'most'],
    ['abc', ['xyz'], undefined],
    ['', ['ab'], 'ab'],
    ['abcdefghi', ['abcdxxxhi'], 'abcdxxxhi'],
    ['abcdefghi', ['abcxxxxhi'], undefined],
  ])('%s of %o is %s', (name, names, wanted) => {
    expect(nearest(name, names)).toBe(wanted);
    if (wanted) expect(within(name, wanted, Math.max(2, Math.floor(wanted.length / 3)))).toBe(true);
  });

  it('is found by two words that it shares, in whatever order and form, and by no single one', () => {
    const ids = ['sand-the-coat-flush', 'lay-a-thin-coat', 'wipe-with-mineral-spirits'];
    expect(nearestId('coat-sanding', ids)).toBe('sand-the-coat-flush');
    expect(nearestId('thin-coats-of-it', ids)).toBe('lay-a-thin-coat');
    expect(nearestId('mineral-wipes', ids)).toBe('wipe-with-mineral-spirits');
    expect(nearestId('mineral-oil-on-top', ids)).toBeUndefined();
  });
});
