import { answerOf, type Case, type Entry } from '#engine/index.ts';
import { entryOf } from '#engine/plain/entry-of.ts';
import { defectBoards } from './boards.ts';
import { knowledge } from './knowledge.ts';
import type { NamedBoard } from './pictures/boards.ts';
import { practiceWords } from './practice.ts';

/** The boards of a flaw, those last that show what the answers speak against: a white ring for a dark one. */
export const boardsFor = (flaw: Entry<'defect'>, on: Case): readonly NamedBoard[] => {
  const shown = entryOf(practiceWords.shows, flaw.id) ?? [];
  const boards = defectBoards(flaw).map((board, at) => ({
    board,
    against: Object.entries(shown[at] ?? {}).filter(([question, shows]) => {
      const answer = answerOf(knowledge, on, question);
      return (answer === 'yes' || answer === 'no') && answer !== shows;
    }).length,
  }));
  return boards.sort((a, b) => a.against - b.against).map(({ board }) => board);
};
