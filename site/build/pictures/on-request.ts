import { allBoards } from '../boards.ts';
import { knowledge } from '../knowledge.ts';
import { boardFile } from './boards.ts';

const ADDRESS = /\/boards\/(?<name>[\w/-]+)-(?<view>raking|facing)\.webp$/;

/** The file of a board's picture, drawn now if it has not been yet; undefined where the content has no such board. */
export const boardOnRequest = async (path: string): Promise<string | undefined> => {
  const { name, view } = ADDRESS.exec(path)?.groups ?? {};
  const board = allBoards(knowledge).find((one) => one.name === name);
  return board && boardFile(board, view === 'facing' ? 'facing' : 'raking');
};
