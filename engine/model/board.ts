/*
 * What a board is called by, and of its schema the types alone: what draws boards on a phone brings no library of
 * schemas with it.
 */
export { PAINTS, type Paint, SHEEN_NAMES, type Sheen, WOODS, type Wood } from './board/names.ts';
export type { BoardFeature, BoardRecipe, FeatureKind, FeatureOf } from './board/recipe.ts';
