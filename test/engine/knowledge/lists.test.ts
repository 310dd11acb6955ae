/** The linked knowledge: lists in order, looked up by kind and id, and a miss told by both. Invented entries. */
import { expect, it } from 'vitest';
import { knowledgeOf, partOf } from '#engine/knowledge/knowledge.ts';
import { visits } from '#engine/knowledge/tree.ts';
import { wetClaim } from '#engine/knowledge/wet-claim.ts';
import type { AnyEntry } from '#engine/model/knowledge.ts';

const KINDS = [
  'defect',
  'question',
  'remedy',
  'rule',
  'product',
  'lesson',
  'source',
  'term',
  'doing',
] as const;
const pluralOf = (kind: string) => (kind === 'remedy' ? 'remedies' : `${kind}s`);
const entry = (kind: string, id: string) => ({ kindOf: kind, id, file: `${id}.mdx` }) as unknown as AnyEntry;

it('each kind has its list, by id, and is found there alone', () => {
  const known = knowledgeOf(
    KINDS.flatMap((kind) => ['b', 'c', 'a'].map((id) => entry(kind, `${kind}-${id}`))),
  );
  for (const kind of KINDS) {
    const list = (known as unknown as Record<string, readonly { id: string }[]>)[pluralOf(kind)];
    expect(list?.map(({ id }) => id)).toEqual(['a', 'b', 'c'].map((id) => `${kind}-${id}`));
    expect(known.get(kind, `${kind}-b`)).toBe(list?.[1]);
    expect(known.has(kind, `${kind}-b`)).toBe(true);
    for (const other of KINDS) if (other !== kind) expect(known.has(other, `${kind}-b`)).toBe(false);
    expect(() => known.get(kind, 'gone')).toThrow(`no ${kind} "gone"`);
  }
});

it('a part has what it was sent with, and tells what it was not', () => {
  const part = partOf({ remedies: [{ id: 'mend' }], terms: [{ id: 'film' }] });
  const anyPart = part as unknown as {
    get: (kind: string, id: string) => { id: string };
    has: (kind: string, id: string) => boolean;
  };
  expect(anyPart.get('remedy', 'mend')).toEqual({ id: 'mend' });
  expect(anyPart.get('term', 'film')).toEqual({ id: 'film' });
  expect(anyPart.has('remedy', 'film')).toBe(false);
  expect(anyPart.has('defect', 'mend')).toBe(false);
  expect(() => anyPart.get('defect', 'mend')).toThrow('no defect "mend"');
});

it('a tree is gone through parents first, yes before no, with the answers that lead there', () => {
  const tree = { ask: 'a', yes: { ask: 'b', yes: { leave: 'x' }, no: { remedy: 'r' } }, no: { defect: 'd' } };
  expect(
    [...visits(tree as never)].map(({ path, answers }) => [
      path.join('.'),
      answers.map(({ question, answer }) => `${question} ${answer}`).join(', '),
    ]),
  ).toEqual([
    ['', ''],
    ['yes', 'a yes'],
    ['yes.yes', 'a yes, b yes'],
    ['yes.no', 'a yes, b no'],
    ['no', 'a no'],
  ]);
});

it('what is said of a wet coat is a claim of both sentences', () => {
  const rests = { grade: 'published', source: 's' };
  expect(
    wetClaim({ 'while-wet': 'One.', 'while-setting': 'Two.', 'while-wet-rests-on': rests } as never),
  ).toEqual({ says: 'One. Two.', ...rests });
  expect(wetClaim({ 'while-wet': 'One.', 'while-wet-rests-on': rests } as never)).toEqual({
    says: 'One.',
    ...rests,
  });
});
