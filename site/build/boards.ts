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

/** The same piece without the flaw: what a repair that sands or coats it is to come to. */
export const soundBoard = ({ id, boards: [first] }: Entry<'defect'>): NamedBoard | undefined =>
  first && {
    name: `defects/${id}-sound`,
    recipe: { ...first, wet: false, features: [], alt: 'The same piece with a sound coat.' },
    views: ['raking'],
  };

/** Every board of the site, to be drawn. */
export const allBoards = (known: Knowledge): readonly NamedBoard[] => [
  ...known.defects.flatMap(defectBoards),
  ...known.defects.flatMap((defect) => soundBoard(defect) ?? []),
  ...known.questions.flatMap((question) => Object.values(questionBoards(question) ?? {})),
  ...sheetBoards(known),
];
