/** Names that several things have are told apart by what differs, and by no more. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { toldApart } from '../../../engine/plain/apart.ts';

type Thing = { readonly id: string; readonly name: string; readonly kind: string; readonly day: string };
const marks = [({ kind }: Thing) => kind, ({ day }: Thing) => day];
const wordsOf = (...things: Omit<Thing, 'id'>[]) => {
  const all = things.map((thing, at) => ({ ...thing, id: String(at) }));
  const told = toldApart(all, marks);
  return all.map(({ id }) => told.get(id));
};
const chair = (kind: string, day: string) => ({ name: 'Chair', kind, day });

it('says the first mark that tells them apart alone', () => {
  expect(wordsOf(chair('shellac', 'Mon'), chair('wax', 'Mon'))).toEqual(['shellac', 'wax']);
  expect(wordsOf(chair('wax', 'Mon'), chair('wax', 'Tue'))).toEqual(['Mon', 'Tue']);
});

it('says several where it takes them, and a number where nothing differs', () => {
  expect(wordsOf(chair('wax', 'Mon'), chair('wax', 'Tue'), chair('oil', 'Mon'))).toEqual([
    'wax, Mon',
    'wax, Tue',
    'oil, Mon',
  ]);
  expect(wordsOf(chair('wax', 'Mon'), chair('wax', 'Mon'))).toEqual(['number 1', 'number 2']);
});

it('says nothing of a name that stands once, and takes names alike in other letters', () => {
  expect(wordsOf(chair('wax', 'Mon'), { name: ' chair ', kind: 'oil', day: 'Mon' })).toEqual(['wax', 'oil']);
  expect(wordsOf(chair('wax', 'Mon'), { name: 'Desk', kind: 'oil', day: 'Mon' })).toEqual([
    undefined,
    undefined,
  ]);
});

it('leaves no two of one name with the same words', () => {
  const some = fc.constantFrom('a', 'b', 'c');
  fc.assert(
    fc.property(fc.array(fc.record({ name: some, kind: some, day: some }), { maxLength: 12 }), (things) => {
      const words = wordsOf(...things);
      const shown = things.map(({ name }, at) => `${name}: ${words[at] ?? ''}`);
      expect(new Set(shown).size).toBe(things.length);
    }),
  );
});
