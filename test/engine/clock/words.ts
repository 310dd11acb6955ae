import { readClockWords } from '../../../content/tools/clock-words.ts';

/** What the clock says, as it stands in the content. */
export const WORDS = readClockWords(process.cwd());
