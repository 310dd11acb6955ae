/** Boards of practice are the author's, not quite: how far each figure may move, and what two boards beside each other share. */
import { describe, expect, it } from 'vitest';
import type { BoardRecipe } from '#engine/model/board.ts';
import { besides, soundBoard, variedBoard } from '#engine/practice/boards.ts';
import { chanceOf } from '#engine/practice/chance.ts';
import { recipeOf } from '../board/board.ts';

const many = <T>(draw: (seed: number) => T) => Array.from({ length: 400 }, (_, seed) => draw(seed));
const varied = (recipe: BoardRecipe) => many((seed) => variedBoard(recipe, chanceOf(seed, 1)));
const range = (all: readonly number[]) => [Math.min(...all), Math.max(...all)] as const;
const within = (all: readonly number[], low: number, high: number) => {
  const [least, most] = range(all);
  expect(least).toBeGreaterThanOrEqual(low - 1e-6);
  expect(most).toBeLessThanOrEqual(high + 1e-6);
  // And they do move: to the outer fifth on either side.
  expect(least).toBeLessThan(low + (high - low) / 5);
  expect(most).toBeGreaterThan(high - (high - low) / 5);
};

describe('another board of the same kind', () => {
  const recipe = recipeOf({
    base: { paint: 'navy' },
    'film-um': 40,
    features: [
      { kind: 'white-ring', at: [30, 20], 'diameter-mm': 20, 'width-mm': 2, strength: 0.8 },
      { kind: 'hair', count: 3, 'length-mm': 20 },
      { kind: 'nibs', 'diameter-mm': [0.2, 0.6] },
    ],
  });
  const all = varied(recipe);
  const feature = (at: number, field: string) =>
    all.map(({ features }) => (features[at] as unknown as Record<string, number>)[field] ?? Number.NaN);

  it('has its sizes moved by 15 in 100, its strength too but never above the most, its place by 8 of its width', () => {
    within(feature(0, 'diameter-mm'), 17, 23);
    within(feature(0, 'width-mm'), 1.7, 2.3);
    within(feature(0, 'strength'), 0.68, 0.92);
    within(
      all.map((one) => one['film-um']),
      34,
      46,
    );
    const places = all.map(({ features }) => (features[0] as { at: [number, number] }).at);
    within(
      places.map(([x]) => x),
      30 - 4.8,
      30 + 4.8,
    );
    within(
      places.map(([, y]) => y),
      20 - 4.8,
      20 + 4.8,
    );
    const strong = varied(recipeOf({ features: [{ kind: 'haze', strength: 1 }] }));
    expect(range(strong.map(({ features }) => (features[0] as { strength: number }).strength))[1]).toBe(1);
    // What is faint is drawn as strong as a beginner needs it.
    const faint = varied(recipeOf({ features: [{ kind: 'haze', strength: 0.1 }] }));
    within(
      faint.map(({ features }) => (features[0] as { strength: number }).strength),
      0.425,
      0.575,
    );
  });

  it('keeps counts, kinds and their order, and moves both ends of a range together', () => {
    expect(new Set(feature(1, 'count'))).toEqual(new Set([3]));
    for (const { features } of all) {
      expect(features.map(({ kind }) => kind)).toEqual(['white-ring', 'hair', 'nibs']);
      const [low, high] = (features[2] as { 'diameter-mm': [number, number] })['diameter-mm'];
      expect(high / low).toBeCloseTo(3, 1);
      expect(low).toBeGreaterThanOrEqual(0.17 - 1e-6);
      expect(low).toBeLessThanOrEqual(0.23 + 1e-6);
    }
  });

  it('lies on a paint that shows it alike, or on the same wood, and is another by its seed', () => {
    expect(new Set(all.map(({ base }) => base.paint))).toEqual(new Set(['navy', 'black']));
    expect(new Set(varied(recipeOf({ base: { paint: 'red' } })).map(({ base }) => base.paint))).toEqual(
      new Set(['red']),
    );
    expect(new Set(varied(recipeOf({ base: { wood: 'oak' } })).map(({ base }) => base.wood))).toEqual(
      new Set(['oak']),
    );
    expect(new Set(all.map(({ seed }) => seed)).size).toBeGreaterThan(380);
    for (const one of all) expect(one).toMatchObject({ sheen: recipe.sheen, wet: false, 'width-mm': 60 });
  });
});

describe('two boards beside each other', () => {
  const small = recipeOf({
    'width-mm': 40,
    base: { paint: 'navy' },
    features: [{ kind: 'haze' }, { kind: 'hair', at: [20, 15] }],
  });
  const large = recipeOf({
    'width-mm': 80,
    base: { paint: 'black' },
    features: [{ kind: 'hair', at: [40, 30] }],
  });

  it('are cut as wide as the wider, with what was in the middle in the middle, at its own size', () => {
    for (const [one, other] of [besides(small, large), besides(large, small).toReversed()] as const) {
      expect([one?.['width-mm'], other?.['width-mm']]).toEqual([80, 80]);
      expect(one?.features[1]).toEqual({ ...small.features[1], at: [40, 30] });
      expect(one?.features[0]).toEqual(small.features[0]);
      expect(other?.features).toEqual(large.features);
    }
  });

  it('lie on one ground where it shows both, and on their own where it does not', () => {
    const on = (base: object, features: object[] = []) => recipeOf({ base, features });
    const second = (one: BoardRecipe, other: BoardRecipe) => besides(one, other)[1].base;
    expect(second(on({ paint: 'navy' }), on({ paint: 'black' }))).toEqual({ paint: 'navy' });
    expect(second(on({ paint: 'navy' }), on({ paint: 'white' }))).toEqual({ paint: 'white' });
    expect(second(on({ wood: 'oak' }), on({ wood: 'pine' }))).toEqual({ wood: 'oak' });
    expect(second(on({ wood: 'oak' }), on({ paint: 'white' }))).toEqual({ paint: 'white' });
    // Rust is blue-black on oak alone.
    expect(second(on({ wood: 'pine' }), on({ wood: 'oak' }, [{ kind: 'rust' }]))).toEqual({ wood: 'oak' });
  });
});

it('a sound board has nothing on it, dry, with a film of 30 to 69 µm, on all grounds', () => {
  const all = many((seed) => soundBoard(chanceOf(seed, 2)));
  for (const one of all) {
    expect([one.features, one.wet, one.piece]).toEqual([[], false, 0]);
    expect([40, 60, 80]).toContain(one['width-mm']);
    expect(['satin', 'semi-gloss', 'gloss', 'eggshell']).toContain(one.sheen);
    expect((one.base.paint === undefined) !== (one.base.wood === undefined)).toBe(true);
  }
  within(
    all.map((one) => one['film-um']),
    30,
    69,
  );
  expect(new Set(all.flatMap(({ base }) => base.wood ?? [])).size).toBe(6);
  expect(new Set(all.flatMap(({ base }) => base.paint ?? [])).size).toBe(8);
  const painted = all.filter(({ base }) => base.paint).length / all.length;
  expect(Math.abs(painted - 0.5)).toBeLessThan(0.1);
});
