import { partOf } from '#engine/index.ts';
import type { PracticeData } from './practice-data.ts';

/** What was sent, as knowledge that a practice board is dealt from. */
export const practiceKnowledge = ({ words: _, colors: _colors, ...lists }: PracticeData) => partOf(lists);
