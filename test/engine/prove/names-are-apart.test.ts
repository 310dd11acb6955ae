/** Two names for one thing are found by their words, whatever their order, endings and small words. Invented names. */
import { expect, it } from 'vitest';
import { namesAreApart } from '#engine/prove/names-are-apart.ts';
import { defect, known, remedy } from '../small.ts';

const NO_TREE = { leave: 'It is good as it is.' };
const near = (...ids: readonly string[]) =>
  [...namesAreApart(known(...ids.map((id) => defect(id, NO_TREE, { name: `Name of ${id}` }))))].map(
    (issue) =>
      `${(issue as { id: string }).id} = ${(issue as unknown as { other: { id: string } }).other.id}`,
  );

it.each([
  ['scratch-sanding', 'sanding-scratch'],
  ['marks-of-sanding', 'sanded-mark'],
  ['wax-it-with-oil', 'oil-waxing'],
  ['crack-in-the-coat', 'cracked-coats'],
])('%s is %s', (one, other) => {
  expect(near(one, other)).toEqual([`${[one, other].sort()[1]} = ${[one, other].sort()[0]}`]);
});

it.each([
  ['sand-the-coat', 'sand-the-wax'],
  ['single-coat', 'le-coat'],
  ['edge-rust', 'ge-rust'],
  ['string-wax', 'str-waxing-on-oil'],
  ['essence', 'ence'],
])('%s is not %s', (one, other) => {
  expect(near(one, other)).toEqual([]);
});

it('the same name in other letters is found, whatever the ids, and each kind stands for itself', () => {
  const two = known(
    defect('one', NO_TREE, { name: 'Fine haze' }),
    defect('two', NO_TREE, { name: 'fine Haze' }),
    remedy('one', {}, { name: 'Fine haze' }),
  );
  const found = [...namesAreApart(two)];
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({
    code: 'near-name',
    kind: 'defect',
    id: 'two',
    name: 'fine Haze',
    other: { id: 'one', name: 'Fine haze' },
  });
});
