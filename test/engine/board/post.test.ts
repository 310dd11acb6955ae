import { describe, expect, it } from 'vitest';
import { drawPost, type PostPlace, postPlaces } from '#engine/board/post.ts';
import { recipeOf } from './board.ts';

const apart = (a: PostPlace, b: PostPlace): boolean =>
  a.left + a.width <= b.left ||
  b.left + b.width <= a.left ||
  a.top + a.height <= b.top ||
  b.top + b.height <= a.top;

describe.each(['square', 'upright', 'wide'] as const)('a %s post', (shape) => {
  it.each([1, 2] as const)('keeps %d boards and its words inside and apart, on whole pixels', (count) => {
    const post = postPlaces(shape, count);
    const places = [...post.boards, post.line, post.link];
    expect(post.boards).toHaveLength(count);
    for (const [n, place] of places.entries()) {
      expect(Object.values(place).every(Number.isInteger)).toBe(true);
      expect(place.left >= 0 && place.left + place.width <= post.width).toBe(true);
      expect(place.top >= 0 && place.top + place.height <= post.height).toBe(true);
      for (const other of places.slice(n + 1)) expect(apart(place, other)).toBe(true);
    }
  });

  it('shows at least half of each board of a pair', () => {
    for (const { width, height } of postPlaces(shape, 2).boards)
      expect(Math.min((width * 3) / (height * 4), (height * 4) / (width * 3))).toBeGreaterThan(0.48);
  });
});

it('draws both boards of a pair, each in its own state, on paper', () => {
  const recipe = recipeOf({ features: [{ kind: 'milky' }] });
  const { width, data } = drawPost('wide', [
    { recipe, light: 'facing', wet: true },
    { recipe, light: 'raking' },
  ]);
  const { boards, line } = postPlaces('wide', 2);
  const at = (x: number, y: number) => [...data.subarray((y * width + x) * 4, (y * width + x) * 4 + 4)];
  const middles = boards.map((b) => at(b.left + (b.width >> 1), b.top + (b.height >> 1)));
  expect(middles[0]).not.toEqual(middles[1]);
  for (const [red = 0, , blue = 0] of middles) expect(blue).toBeGreaterThan(red);
  expect(at(line.left + 5, line.top + 5)).toEqual([248, 247, 244, 255]);
});
