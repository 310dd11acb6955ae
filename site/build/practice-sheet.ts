import type { Knowledge } from '#engine/index.ts';
import { dealPractice, type PracticeItem } from '#engine/practice.ts';
import { readPractice } from '../../content/tools/practice.ts';
import type { NamedBoard } from './pictures/boards.ts';

/** The boards of the printed sheet: nine that a beginner meets first, one of them sound. Each shows its flaw at 60 mm. */
const ON_THE_SHEET = [
  ['bubbles', 101],
  ['lap-marks', 112],
  ['hairs-and-dust', 107],
  ['runs-and-sags', 104],
  ['sound', 105],
  ['fisheyes', 106],
  ['wrinkling', 103],
  ['pools', 108],
  ['cloudy-film', 112],
] as const;

export const sheetItems = (known: Knowledge): readonly PracticeItem[] => {
  const words = readPractice(known, process.cwd());
  return ON_THE_SHEET.filter(([flaw]) => flaw === 'sound' || known.has('defect', flaw)).map(([flaw, seed]) =>
    dealPractice(known, words, { level: 'look', flaw, seed }),
  );
};

/** Their pictures, which say nothing of what is on them. */
export const sheetBoards = (known: Knowledge): readonly NamedBoard[] =>
  sheetItems(known).map(({ board }, index) => ({
    name: `practice/sheet-${index + 1}`,
    recipe: {
      ...board,
      alt: `Practice board ${index + 1}, ${board['width-mm']} mm wide, in low side light.`,
    },
  }));
