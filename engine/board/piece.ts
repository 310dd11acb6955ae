import { type BoardRecipe, PAINTS, SHEEN_NAMES, WOODS } from '../model/board.ts';
import { start } from './noise.ts';

/**
 * Which piece a board is cut from: the start of its grain, its film and the place of its window. A flaw is drawn by the
 * seed alone; boards of one seed still lie on pieces of their own where size, ground or sheen differ.
 */
export const pieceOf = ({ seed, piece, base, sheen, 'width-mm': width }: BoardRecipe): number => {
  const ground = base.wood ? WOODS.indexOf(base.wood) : WOODS.length + PAINTS.indexOf(base.paint ?? 'white');
  return [ground, SHEEN_NAMES.indexOf(sheen), Math.round(width), piece].reduce(start, seed);
};
