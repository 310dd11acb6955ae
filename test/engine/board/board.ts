import { BoardRecipe, type FeatureKind } from '#engine/model/board/recipe.ts';

/** What is wrong on this base can not be seen on the other: clear jelly on navy, rust on navy. */
export const ON_WHITE: readonly FeatureKind[] = [
  'ambering',
  'bleed',
  'dark-blotch',
  'gel',
  'rust',
  'soapy-streaks',
  'pinholes',
];

/** A recipe as an author writes it, with what is not under test left out. */
export const recipeOf = (part: object): BoardRecipe =>
  BoardRecipe.parse({ base: { paint: 'navy' }, alt: 'a board made for a test', ...part });

/** Mean difference of two pictures (0–255) over the pixels that `inside` picks. */
export const meanDifference = (
  a: Uint8ClampedArray,
  b: Uint8ClampedArray,
  inside: (pixel: number) => boolean = () => true,
): number => {
  let sum = 0;
  let count = 0;
  for (let pixel = 0; pixel < a.length / 4; pixel++) {
    if (!inside(pixel)) continue;
    for (let c = 0; c < 3; c++) sum += Math.abs((a[pixel * 4 + c] ?? 0) - (b[pixel * 4 + c] ?? 0)) / 3;
    count++;
  }
  return sum / Math.max(1, count);
};
