import { expect, it } from 'vitest';
import { z } from 'zod';
import { BoardRecipe, FEATURE_KINDS } from '#engine/model/board/recipe.ts';

const alt = 'a board made for a test';

it('fills in what an author leaves out', () => {
  const recipe = BoardRecipe.parse({ base: { wood: 'oak' }, features: [{ kind: 'hair' }], alt });
  expect(recipe).toMatchObject({ 'width-mm': 60, sheen: 'satin', wet: false });
  expect(recipe.features[0]).toMatchObject({ kind: 'hair', count: 1 });
});

it.each([
  ['both paint and wood', { base: { paint: 'navy', wood: 'oak' }, alt }],
  ['neither paint nor wood', { base: {}, alt }],
  ['a knot in paint', { base: { paint: 'navy', knot: [20, 20] }, alt }],
  ['a kind that does not exist', { base: { paint: 'navy' }, features: [{ kind: 'sparkle' }], alt }],
  ['a field of another kind', { base: { paint: 'navy' }, features: [{ kind: 'nibs', 'ridge-um': 3 }], alt }],
  [
    'a pair with the larger number first',
    { base: { paint: 'navy' }, features: [{ kind: 'nibs', 'diameter-mm': [1, 0.2] }], alt },
  ],
  ['no alternative text', { base: { paint: 'navy' } }],
])('refuses %s', (_what, recipe) => {
  expect(BoardRecipe.safeParse(recipe).success).toBe(false);
});

it('explains every field of every kind to an editor', () => {
  const schema = z.toJSONSchema(BoardRecipe, { io: 'input' });
  const text = JSON.stringify(schema);
  for (const kind of FEATURE_KINDS) expect(text).toContain(`"const":"${kind}"`);
  const undescribed: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (typeof node !== 'object' || node === null) return;
    for (const [name, value] of Object.entries(node)) {
      if (name === 'properties')
        for (const [field, of] of Object.entries(value as Record<string, { description?: string }>))
          if (!of.description) undescribed.push(`${path}.${field}`);
      walk(value, `${path}.${name}`);
    }
  };
  walk(schema, '');
  expect(undescribed).toEqual([]);
});
