import { tellsOfLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Ear, Match } from '../words/match.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import { spreadOf } from '../words/spread.ts';
import { SAID } from '../words/sure.ts';
import type { Word } from '../words/words.ts';
import { countedTimes } from './counted-times.ts';
import { monthTimes, seasonTimes, weekdayTimes } from './days.ts';
import { besideLabel, labelTime } from './label-time.ts';
import { namedTimes } from './named-times.ts';

/** "the can says 2 hours, it has been twice that" */
const timeBesideLabel = (ear: Ear, words: readonly Word[]): SpokenSpan[] => {
  const label = labelTime(ear, words);
  const beside = label && besideLabel(ear, words, label);
  if (!beside) return [];
  return [
    {
      from: words[beside.at]?.from ?? 0,
      to: words[beside.to - 1]?.to ?? 0,
      ...spreadOf(beside.hours, beside.hours),
      sure: SAID,
      laid: true,
      now: true,
    },
  ];
};

/** All times that a text tells of its coats, each with how sure it is that it is one. */
export const toldTimes = (
  ear: Ear,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): SpokenSpan[] => {
  const telling = { ear, words, matches, manner, lays: tellsOfLaying(words, matches) };
  const found = [
    ...weekdayTimes(words, manner),
    ...monthTimes(words),
    ...seasonTimes(words, manner),
    ...timeBesideLabel(ear, words),
    ...countedTimes(telling),
  ];
  return [...found, ...namedTimes(telling, found)];
};
