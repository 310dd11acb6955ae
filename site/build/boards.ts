import type { Entry, Knowledge } from '#engine/index.ts';
import type { NamedBoard } from './pictures/boards.ts';
import { sheetBoards } from './practice-sheet.ts';

/** The boards of a defect, the one that tells it best first. */
export const defectBoards = ({ id, boards }: Entry<'defect'>): readonly NamedBoard[] =>
  boards.map((recipe, index) => ({ name: `defects/${id}-${index + 1}`, recipe }));

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
  ...sheetBoards(known),
];
