import { FACTS } from '../../model/facts.ts';
import { isStill, laidAfter, laidNext } from '../coats/coat-story.ts';
import { type HeardFact, SURE } from '../words/heard.ts';
import { isLaying, isOfTheCan } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Ear, Match } from '../words/match.ts';
import type { SpokenSpan } from '../words/spoken-span.ts';
import { OF_THE_LAST } from '../words/sure.ts';
import { isKind, type Span, type Word } from '../words/words.ts';
import { earned } from './earned.ts';
import { COAT } from './laid-since.ts';
import { lastOfStory } from './story-times.ts';
import { toldTimes } from './told-times.ts';

type Times = readonly SpokenSpan[];

/** "Six weeks ago: oil, shellac, then wax": days between the coats are little beside it. */
const FORTNIGHT = 250;
const MONTHS = 1400;

/** Where the sentence ends that holds the character at `to`. */
const sentenceEnd = (words: readonly Word[], to: number): number => {
  const at = words.findLast(({ from }) => from < to)?.sentence ?? 0;
  return words.findLast(({ sentence }) => sentence === at)?.to ?? to;
};

const beginsSentence = (words: readonly Word[], { from }: Span): boolean => {
  const at = words.findIndex((word) => word.from === from);
  return words[at - 1]?.sentence !== words[at]?.sentence;
};

/** Those that were picked, or all where none was. */
const orAll = (those: Times, all: Times): Times => (those.length ? those : all);

/** A time before the next coat of the story is not that of the last. */
const isOfLastCoat = (words: readonly Word[], manner: Manner, time: SpokenSpan): boolean => {
  const { from, to, sure, now, least } = time;
  if (sure < SURE) return false;
  if (isStill(words, from, to)) return true;
  if (now && least >= FORTNIGHT && !laidAfter(words, manner, sentenceEnd(words, to))) return true;
  return !laidAfter(words, manner, to) && (now || !laidNext(words, to));
};

/** A time whose ends lie so many times apart is a wide one, from half a day on: "last week". */
const WIDE = 8;
const HALF_A_DAY = 12;
const isWide = ({ least, most }: SpokenSpan): boolean => most > WIDE * least && least > HALF_A_DAY;

/** A day that was told within that week is nearer than the name of the week. */
const nearerOf = (told: Times): Times => {
  const exact = told.filter((one) => !isWide(one));
  const wide = told.filter(isWide);
  const isWithin = ({ likely }: SpokenSpan) =>
    wide.some(({ least, most }) => least <= likely && likely <= most);
  return exact.some(isWithin) ? exact : told;
};

/** Told from today goes before what the story tells of the day after. */
const fromToday = (told: Times): Times =>
  told.some(({ now, laid, least }) => now && (laid || least >= FORTNIGHT))
    ? told.filter(({ now }) => now)
    : told;

/**
 * Times so much less sure than the surest count beside it: one that just follows beside one said outright, and none that
 * is as likely as not beside one said.
 */
const BESIDE_THE_SUREST = 0.25;

/** So many times longer is what a day or two more does not change; a time of hours may be that of a coat that is wet. */
const MUCH_LONGER = 10;
const HOURS = 8;

/** "Nine months later she called. Next day it was twenty doors": told from what was told last, and little beside it. */
const withoutDaysAfter = (words: readonly Word[], told: Times): Times => {
  const laid = words.flatMap((word, at) =>
    COAT.test(word.word) || isKind(word, 'laying', 'laying-now') || isLaying(words, at) ? [word.from] : [],
  );
  const isAfterLonger = (one: SpokenSpan): boolean =>
    !one.now &&
    !one.laid &&
    one.least >= HOURS &&
    told.some(
      (other) =>
        other.to < one.from &&
        other.likely > MUCH_LONGER * one.likely &&
        !laid.some((at) => at > other.to && at < one.from),
    );
  return told.filter((one) => !isAfterLonger(one));
};

/** A time from the last coat on leaves no other beside it. */
const surestOf = (told: Times): Times => {
  const strongest = Math.max(...told.map(({ sure }) => sure));
  const bar = strongest === OF_THE_LAST ? strongest : strongest - BESIDE_THE_SUREST;
  return told.filter(({ sure }) => sure >= bar);
};

/** The latest, those beside a word of laying first: "coated four days ago, set a lamp on it yesterday". */
const latestLaid = (told: Times): SpokenSpan | undefined => {
  const ofLaying = told.filter(({ laid }) => laid);
  const beside = ofLaying.filter(({ near }) => near);
  return [...orAll(beside, orAll(ofLaying, told))].sort((a, b) => a.likely - b.likely)[0];
};

/** What tells that a coat was laid after that time. */
const laidAgain = (words: readonly Word[], manner: Manner, time: SpokenSpan): Span | undefined => {
  if (isStill(words, time.from, time.to)) return undefined;
  const again = laidAfter(words, manner, time.to);
  // Days between the coats are little beside months, unless a sentence begins with it: "Then I brushed poly on".
  const isLong = time.now === true && time.laid && time.least >= MONTHS;
  return again && isLong && !beginsSentence(words, again) ? undefined : again;
};

/** What is left of how sure a time is, where other times speak against it: less where it alone is one of laying. */
const BESIDE_OTHERS = 0.92;
const ALONE_OF_LAYING = 0.95;
/** What is left where another coat was laid after it: too little to be taken as told. */
const LAID_AGAIN = 0.6;

const doubtBy = (others: Times, { laid }: SpokenSpan): number => {
  if (others.length === 0) return 1;
  return laid && !others.some((one) => one.laid) ? ALONE_OF_LAYING : BESIDE_OTHERS;
};

const round = (hours: number): number =>
  Math.round(Math.min(FACTS['hours-since-coat'].max, hours) * 100) / 100;

const spanOf = ({ from, to }: Span): Span => ({ from, to });

/**
 * Hours since the last coat was laid. A time beside a word of laying goes before the others; of several the latest
 * counts, so that a film is never taken drier than the text allows. The others speak against it.
 */
export const hoursOf = (
  ear: Ear,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): HeardFact[] => {
  if (isOfTheCan(words)) return [];
  const all = toldTimes(ear, words, matches, manner).map((time) => earned(words, matches, manner, time));
  const told = withoutDaysAfter(words, all);
  const ofLast = told.filter((time) => isOfLastCoat(words, manner, time));
  const asked = fromToday(nearerOf(orAll(ofLast, told)));
  const surest = surestOf(asked);
  const first = latestLaid(surest);
  if (!first) return [];
  const latest = lastOfStory(words, manner, first, surest);
  const again = laidAgain(words, manner, latest);
  const others = asked.filter((one) => one.least > latest.most || one.most < latest.least);
  return [
    {
      fact: 'hours-since-coat',
      value: round(latest.likely),
      range: [round(latest.least), round(latest.most)],
      sure: latest.sure * doubtBy(others, latest) * (again ? LAID_AGAIN : 1),
      rests: [spanOf(latest)],
      against: [...others.map(spanOf), ...(again ? [again] : [])],
    },
  ];
};
