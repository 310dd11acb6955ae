import type { Entry, Knowledge } from '#engine/index.ts';
import type { Remedy } from '#engine/model/remedy.ts';
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

/** The same piece without the flaw, as a repair makes it that sands or coats it. */
const soundBoard = ({ id, boards: [first] }: Entry<'defect'>): NamedBoard | undefined =>
  first && {
    name: `defects/${id}-sound`,
    recipe: { ...first, wet: false, features: [], alt: 'The same piece with a sound coat.' },
    views: ['raking'],
  };

/** What is only wiped, waited for or lived with is not made anew, so no sound coat is promised of it. */
export const soundAfter = ({ now, steps }: Remedy, flaw: Entry<'defect'>): NamedBoard | undefined =>
  now.cured.do === 'repair' && steps.some(({ kind }) => kind === 'sand' || kind === 'coat')
    ? soundBoard(flaw)
    : undefined;

/** Every board of the site, to be drawn. */
export const allBoards = (known: Knowledge): readonly NamedBoard[] => [
  ...known.defects.flatMap(defectBoards),
  ...known.defects.flatMap((defect) => soundBoard(defect) ?? []),
  ...known.questions.flatMap((question) => Object.values(questionBoards(question) ?? {})),
  ...sheetBoards(known),
];
