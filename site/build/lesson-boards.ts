import type { Entry } from '#engine/index.ts';
import { defectBoards } from './boards.ts';
import { knowledge } from './knowledge.ts';
import type { NamedBoard } from './pictures/boards.ts';

/** A board of a flaw that the lesson is about, another one for each lesson. */
const LESSON_BOARDS = new Map<string, NamedBoard>();
for (const { id, defects } of knowledge.lessons) {
  const taken = new Set([...LESSON_BOARDS.values()].map(({ name }) => name));
  const boards = defects.flatMap((defect) => defectBoards(knowledge.get('defect', defect)));
  const board = boards.find(({ name }) => !taken.has(name)) ?? boards[0];
  if (board) LESSON_BOARDS.set(id, board);
}
export const lessonBoard = ({ id }: Entry<'lesson'>): NamedBoard | undefined => LESSON_BOARDS.get(id);
