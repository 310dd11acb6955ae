import { BoardRecipe } from '#engine/model/board/recipe.ts';
import { allBoards } from '../boards.ts';
import { knowledge } from '../knowledge.ts';
import { boardFile, type NamedBoard } from './boards.ts';
import { shownBest } from './feature-fields.ts';

const BOARD = /\/boards\/(?<name>[\w/-]+)-(?<view>raking|facing)\.webp$/;
const FEATURE = /\/preview\/features\/(?<kind>[\w-]+)\.webp$/;

/** The board that shows a feature: of the flaw or question with least beside it, or the feature alone on navy paint. */
const featureBoard = (kind: string): NamedBoard | undefined => {
  const written = allBoards(knowledge).map(({ name, recipe }) => ({ file: name, recipe }));
  const shown = shownBest(written, kind)?.recipe;
  const alone = { base: { paint: 'navy' }, features: [{ kind }], alt: 'One feature alone.' };
  const recipe = shown ?? BoardRecipe.safeParse(alone).data;
  return recipe && { name: `features/${kind}`, recipe };
};

/** The file of a board's picture, drawn now if it has not been yet; undefined where there is no such board. */
export const boardOnRequest = async (path: string): Promise<string | undefined> => {
  const { kind } = FEATURE.exec(path)?.groups ?? {};
  if (kind) {
    const board = featureBoard(kind);
    return board && boardFile(board, 'raking');
  }
  const { name, view } = BOARD.exec(path)?.groups ?? {};
  const board = allBoards(knowledge).find((one) => one.name === name);
  return board && boardFile(board, view === 'facing' ? 'facing' : 'raking');
};
