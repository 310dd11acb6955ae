import { CLOCK_WORDS } from 'virtual:clock-words';
import type { ClockWords } from '#engine/model/clock-words.ts';

/** What the clock says: content/clock.yaml, read when the site is built. */
export const clockWords: ClockWords = CLOCK_WORDS;
