import type { BoardFeature, BoardRecipe, Paint, Sheen, Wood } from '../model/board.ts';
import type { Chance } from './chance.ts';

/** Paints that show a flaw alike, so that one may stand for another. */
const ALIKE: readonly (readonly Paint[])[] = [
  ['navy', 'black'],
  ['white', 'cream'],
  ['sage', 'gray'],
  ['red'],
  ['duck-egg'],
];
const WOODS: readonly Wood[] = ['oak', 'pine', 'walnut', 'maple', 'mahogany', 'cherry'];
const PAINTS: readonly Paint[] = ALIKE.flat();
/** How far a size may move from what the author wrote, in percent. */
const MOVES = 15;
/** And a place, in percent of the board's width. */
const SHIFTS = 8;
const MOST_SEED = 65_536;

const rounded = (value: number): number => Math.round(value * 1000) / 1000;
const moved = (value: number, chance: Chance): number =>
  rounded((value * (100 - MOVES + chance.under(2 * MOVES + 1))) / 100);

const isSize = (name: string): boolean => /-(mm|um|cm2)$/.test(name);
const widened = (value: unknown, by: number): unknown =>
  Array.isArray(value) ? value.map((one) => rounded(Number(one) * by)) : value;

/** Sizes that authors write as large as a recipe takes them. */
const MOST: Readonly<Record<string, number>> = { 'grain-um': 300, 'pitch-mm': 10 };

/** The same flaw, not quite as large, as strong or in the same place. Counts of features stay as they were written. */
const variedFeature = (feature: BoardFeature, width: number, chance: Chance): BoardFeature =>
  Object.fromEntries(
    Object.entries(feature).map(([name, value]) => {
      if (name === 'at' && Array.isArray(value))
        return [
          name,
          value.map((one) => rounded(Number(one) + ((chance.under(2 * SHIFTS + 1) - SHIFTS) * width) / 100)),
        ];
      if (name === 'strength' && typeof value === 'number')
        return [name, Math.min(1, moved(Math.max(value, 0.5), chance))];
      if (isSize(name) && Array.isArray(value)) {
        const by = (100 - MOVES + chance.under(2 * MOVES + 1)) / 100;
        return [name, widened(value, by)];
      }
      if (isSize(name) && typeof value === 'number')
        return [name, Math.min(MOST[name] ?? Number.POSITIVE_INFINITY, moved(value, chance))];
      return [name, value];
    }),
  ) as BoardFeature;

/**
 * Another board of the same kind: new numbers, another paint that shows it as well, sizes and places moved a little.
 */
export const variedBoard = (recipe: BoardRecipe, chance: Chance): BoardRecipe => {
  const { paint } = recipe.base;
  const alike = paint && ALIKE.find((group) => group.includes(paint));
  return {
    ...recipe,
    seed: chance.under(MOST_SEED),
    base: alike ? { paint: chance.one(alike) } : recipe.base,
    'film-um': moved(recipe['film-um'], chance),
    features: recipe.features.map((feature) => variedFeature(feature, recipe['width-mm'], chance)),
  };
};

/** The same board on a wider or narrower cut: what was in its middle stays there, at its own size. */
const cutTo = (recipe: BoardRecipe, width: number): BoardRecipe => {
  const by = width / recipe['width-mm'];
  return {
    ...recipe,
    'width-mm': width,
    features: recipe.features.map((feature) => {
      if (!('at' in feature) || !feature.at) return feature;
      const at: [number, number] = [rounded(feature.at[0] * by), rounded(feature.at[1] * by)];
      return { ...feature, at };
    }),
  };
};

const sameGroup = (one: Paint, other: Paint): boolean =>
  ALIKE.some((group) => group.includes(one) && group.includes(other));

/** Two boards cut alike, and over the same paint or wood where that shows the second as well as its own. */
export const besides = (first: BoardRecipe, second: BoardRecipe): readonly [BoardRecipe, BoardRecipe] => {
  const width = Math.max(first['width-mm'], second['width-mm']);
  const [one, other] = [cutTo(first, width), cutTo(second, width)];
  const { base } = one;
  const same =
    (base.paint && other.base.paint && sameGroup(base.paint, other.base.paint)) ||
    (base.wood && other.base.wood && !other.features.some(({ kind }) => kind === 'rust'));
  return [one, same ? { ...other, base } : other];
};

/** A good surface, of any color and sheen. */
export const soundBoard = (chance: Chance): BoardRecipe => ({
  'width-mm': chance.one([40, 60, 80]),
  base: chance.under(2) ? { paint: chance.one(PAINTS) } : { wood: chance.one(WOODS) },
  sheen: chance.one<Sheen>(['satin', 'semi-gloss', 'gloss', 'eggshell']),
  'film-um': 30 + chance.under(40),
  seed: chance.under(MOST_SEED),
  piece: 0,
  wet: false,
  features: [],
  alt: 'A finished surface.',
});
