import type { Entry, Knowledge } from '#engine/index.ts';
import { knowledge } from './knowledge.ts';
import type { NamedBoard } from './pictures/boards.ts';

/** The boards of a defect, the one that tells it best first. */
export const defectBoards = ({ id, boards }: Entry<'defect'>): readonly NamedBoard[] =>
  boards.map((recipe, index) => ({ name: `defects/${id}-${index + 1}`, recipe }));

/** A board of a flaw that the lesson is about, another one for each lesson. */
const LESSON_BOARDS = new Map<string, NamedBoard>();
for (const { id, defects } of knowledge.lessons) {
  const taken = new Set([...LESSON_BOARDS.values()].map(({ name }) => name));
  const boards = defects.flatMap((defect) => defectBoards(knowledge.get('defect', defect)));
  const board = boards.find(({ name }) => !taken.has(name)) ?? boards[0];
  if (board) LESSON_BOARDS.set(id, board);
}
export const lessonBoard = ({ id }: Entry<'lesson'>): NamedBoard | undefined => LESSON_BOARDS.get(id);

/** What yes and no look like, for a question that is answered by looking. */
export const questionBoards = ({ id, boards }: Entry<'question'>) =>
  boards && {
    yes: { name: `questions/${id}-yes`, recipe: boards.yes },
    no: { name: `questions/${id}-no`, recipe: boards.no },
  };

/** Every board of the site, to be drawn. */
export const allBoards = (known: Knowledge): readonly NamedBoard[] => [
  ...known.defects.flatMap(defectBoards),
  ...known.questions.flatMap((question) => Object.values(questionBoards(question) ?? {})),
];
