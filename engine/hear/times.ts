import { FACTS } from '../model/facts.ts';
import { isStill, laidAfter, laidNext } from './coat-story.ts';
import { monthTimes, seasonTimes, weekdayTimes } from './days.ts';
import { earned } from './earned.ts';
import { HEDGE, isElapsed } from './elapsed.ts';
import { type HeardFact, SURE } from './heard.ts';
import { besideLabel, labelTime } from './label-time.ts';
import { laidIn } from './laid-since.ts';
import { isLaying, isMerely, isOfTheCan, tellsOfLaying } from './laying.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import { isElse } from './other-times.ts';
import { ordinalSpan, spanAt } from './spans.ts';
import type { SpokenSpan } from './spoken-span.ts';
import { DOUBTED, FOLLOWS, HALF, JUST, OF_THE_LAST, OUTRIGHT, SAID } from './sure.ts';
import {
  isAfterTop,
  isAlone,
  isDoubted,
  isDrying,
  isOfDrying,
  isOfFilm,
  isOfFlaw,
  isOfLaying,
  isOfUse,
  laysBeside,
  MONTH,
  namesFilm,
  speaksOfFilm,
  tightest,
} from './time-words.ts';
import { isTop } from './top-words.ts';
import type { Span, Word } from './words.ts';

const any = (words: readonly Word[], from: number, to: number, set: ReadonlySet<string>): boolean =>
  words.slice(Math.max(0, from), to).some((word) => set.has(word.word));

/** How far a time in numbers is taken as told about: "two hours" is from 1.6 to 2.6. */
const LESS = 0.8;
const MORE = 1.3;
/** "Six weeks ago: oil, shellac, then wax": days between the coats are little beside it. */
const FORTNIGHT = 250;
const MONTHS = 1400;
const LATER = /^(ago|later|since|on|now|back|in|still|after)$/;
const SPAN_WORD = /^(after|for|past|last|still|within|over|just|only|been|waited|waiting)$/;
/** A time told from the last coat on. */
const SINCE = /^(since|after)$/;

/** "thirty years ago, when we made clocks": a story of then, unless it tells of a coat. */
const isOfAnotherStory = (words: readonly Word[], when: number): boolean => {
  const then = words[when];
  if (then?.word !== 'when' || then.sentence !== words[when - 1]?.sentence) return false;
  const ends = words.findIndex(({ part }, at) => at > when && part !== then.part);
  const to = ends < 0 ? words.length : ends;
  return !words.slice(when, to).some((word, index) => isTop(word) || isLaying(words, when + index));
};

const toldTimes = (
  ear: Ear,
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): SpokenSpan[] => {
  const lays = tellsOfLaying(words, matches);
  const found: SpokenSpan[] = [
    ...weekdayTimes(words, manner),
    ...monthTimes(words),
    ...seasonTimes(words, manner),
  ];
  const label = labelTime(ear, words);
  const beside = label && besideLabel(ear, words, label);
  if (beside)
    found.push({
      from: words[beside.at]?.from ?? 0,
      to: words[beside.to - 1]?.to ?? 0,
      least: beside.hours * LESS,
      likely: beside.hours,
      most: beside.hours * MORE,
      sure: SAID,
      laid: true,
      now: true,
    });
  for (let at = 0; at < words.length; at++) {
    const nth = ordinalSpan(ear, words, at);
    const span = nth ?? spanAt(ear, words, at);
    const here = words[at];
    if (!span || !here) continue;
    const next = words[span.to];
    const after = next?.sentence === here.sentence ? next : undefined;
    const old = after?.word === 'old';
    const long = span.low >= MONTH;
    let back = at - 1;
    while (back > at - 4 && HEDGE.test(words[back]?.word ?? '') && words[back]?.part === here.part) back--;
    const alone = isAlone(words, at, span.to);
    const elapsed = nth !== undefined || isElapsed(words, at, span.to, back);
    // "2 hours so far"
    const on = next?.word === 'on' && next.part === here.part && words[span.to + 1]?.part !== here.part;
    // "now, at 22 hours"
    const atNow = words[at - 1]?.word === 'at' && words[at - 2]?.word === 'now';
    const soFar = next?.word === 'so' && words[span.to + 1]?.word === 'far';
    const strong =
      elapsed ||
      (after !== undefined && LATER.test(after.word) && after.clause === here.clause) ||
      SPAN_WORD.test(words[at - 1]?.word ?? '') ||
      (SPAN_WORD.test(words[back]?.word ?? '') && words[back]?.part === here.part) ||
      alone ||
      soFar ||
      atNow ||
      // "then two weeks of waiting"
      (next?.word === 'of' && /^(waiting|drying|curing)$/.test(words[span.to + 1]?.word ?? '')) ||
      // "Not even two months and the finish lifts."
      (after?.word === 'and' && words[back]?.sentence !== here.sentence) ||
      (old && long) ||
      // "Oak cabinets, 25 years." stands alone.
      (long && (after === undefined || after.clause !== here.clause));
    const beside = any(words, at - 4, span.to + 4, ear.laid) || any(words, at - 3, span.to + 2, ear.ago);
    if (!strong && !beside) continue;
    if (old && !long && !elapsed && !namesFilm(words, at)) continue;
    const match: Match = { sense: '', kind: '', of: [], from: at, to: span.to, size: 2 };
    if (manner.notYet(match) || isElse(words, matches, at, span.to)) continue;
    const ago = after?.word === 'ago' || after?.word === 'back';
    if (ago && long && isOfAnotherStory(words, span.to + 1)) continue;
    const waited = /^wait(ed|ing)?$/.test(words[at - 1]?.word ?? '');
    // "waited two weeks after the last coat, and ten weeks on it is soft"
    const ofLast =
      !waited &&
      SINCE.test(after?.word ?? '') &&
      (words
        .slice(span.to + 1, span.to + 4)
        .some(({ word }) => /^(last|final|coat|second|third)$/.test(word)) ||
        isAfterTop(words, span.to));
    found.push({
      from: here.from,
      to: (ago ? after : words[span.to - 1])?.to ?? here.to,
      least: span.low * LESS,
      likely: (span.low + span.high) / 2,
      most: span.high * MORE,
      sure: ofLast
        ? OF_THE_LAST
        : (long && !(elapsed && !old) && isDoubted(words, matches, at, span.to, { old, ago }, manner)) ||
            (!long &&
              !lays &&
              !elapsed &&
              !old &&
              after?.word !== 'now' &&
              !isOfFilm(words, matches, at) &&
              !isOfDrying(words, at) &&
              !(after?.word === 'later' && isOfFlaw(words, matches, at)) &&
              !(ago && namesFilm(words, at) && !isOfUse(matches)))
          ? HALF
          : ago
            ? OUTRIGHT
            : strong
              ? SAID
              : waited
                ? JUST
                : JUST,
      laid: ofLast || alone || soFar || atNow || isOfLaying(words, at) || isDrying(words, at),
      near: laysBeside(words, at),
      now:
        ago ||
        alone ||
        soFar ||
        atNow ||
        on ||
        after?.word === 'now' ||
        words[back]?.word === 'been' ||
        ofLast,
    });
    at = span.to - 1;
  }
  for (const match of tightest(matches.filter(({ kind }) => kind === 'times'))) {
    if (manner.notYet(match) || isElse(words, matches, match.from, match.to)) continue;
    if (isMerely(words, match.from)) continue;
    if (words[match.to - 1]?.word === 'ago' && isOfAnotherStory(words, match.to)) continue;
    const [least = 0, likely = 0, most = 0] = match.of.map(Number);
    const from = words[match.from]?.from ?? 0;
    const to = words[match.to - 1]?.to ?? from;
    if (found.some((one) => one.from < to && from < one.to)) continue;
    const been = words[match.from - 1]?.word === 'been' || words[match.from]?.word === 'been';
    const later = words[match.to - 1]?.word === 'later' && isOfFlaw(words, matches, match.from);
    const loose = least < MONTH && !lays && !later && !isOfFilm(words, matches, match.from);
    const told = been || speaksOfFilm(ear, words, match.from);
    const aged =
      least >= MONTH && isDoubted(words, matches, match.from, match.to, { old: false, ago: false }, manner);
    found.push({
      from,
      to: words[match.to - 1]?.to ?? from,
      least,
      likely,
      most,
      sure: aged || loose ? DOUBTED : told ? SAID : least < MONTH ? FOLLOWS : DOUBTED,
      laid: isOfLaying(words, match.from) || been,
      near: laysBeside(words, match.from),
      now:
        been ||
        words
          .slice(match.from, match.to)
          .some(({ word }) => /^(ago|yesterday|last|this|now|just|today)$/.test(word)),
    });
  }
  return found;
};

/** Where the sentence ends that holds the character at `to`. */
const sentenceEnd = (words: readonly Word[], to: number): number => {
  const at = words.findLast(({ from }) => from < to)?.sentence ?? 0;
  return words.findLast(({ sentence }) => sentence === at)?.to ?? to;
};

const beginsSentence = (words: readonly Word[], { from }: Span): boolean => {
  const at = words.findIndex((word) => word.from === from);
  return words[at - 1]?.sentence !== words[at]?.sentence;
};

const sentenceAt = (words: readonly Word[], from: number): number =>
  words.find((word) => word.from >= from)?.sentence ?? -1;

/**
 * "After thirty minutes it was uneven, after an hour it cracked": of times that are told one after the other and grow, with
 * no coat between, the last is now.
 */
const lastOfStory = (
  words: readonly Word[],
  manner: Manner,
  first: SpokenSpan,
  told: readonly SpokenSpan[],
): SpokenSpan => {
  const after = told.filter(({ from }) => from > first.from).sort((a, b) => a.from - b.from);
  const last = after.at(-1);
  const grow = [first, ...after].every((one, at, all) => at === 0 || one.likely > (all[at - 1]?.likely ?? 0));
  if (!last || !grow || last.now || last.sure < first.sure) return first;
  const [there, here] = [sentenceAt(words, first.from), sentenceAt(words, last.from)];
  // "pouted for several weeks" tells how long something was done.
  const lasts = words.some(({ from, to, word }) => word === 'for' && to <= last.to && last.from - from < 6);
  if (here - there > 1 || lasts) return first;
  const laid = laidIn(words, manner).some((at) => (words[at]?.from ?? 0) > first.to);
  return laid ? first : last;
};

const WIDE = 8;
const isWide = ({ least, most }: SpokenSpan): boolean => most > WIDE * least && least > 12;

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
  const told = toldTimes(ear, words, matches, manner).map((time) => earned(words, matches, manner, time));
  // A time before the next coat of the story is not that of the last.
  const ofLast = told.filter(
    ({ from, to, sure, now, least }) =>
      sure >= SURE &&
      (isStill(words, from, to) ||
        (now && least >= FORTNIGHT && !laidAfter(words, manner, sentenceEnd(words, to))) ||
        !(laidAfter(words, manner, to) || (!now && laidNext(words, to)))),
  );
  const kept = ofLast.length ? ofLast : told;
  // A day that was told within that week is nearer than the name of a day.
  const exact = kept.filter((one) => !isWide(one));
  const story = exact.some((one) =>
    kept.some((wide) => isWide(wide) && wide.least <= one.likely && one.likely <= wide.most),
  )
    ? exact
    : kept;
  // Told from today goes before what the story tells of the day after.
  const today = story.filter(({ now, laid, least }) => now && (laid || least >= FORTNIGHT));
  const asked = today.length ? story.filter(({ now }) => now) : story;
  const strongest = Math.max(...asked.map(({ sure }) => sure));
  const near =
    strongest === OF_THE_LAST
      ? asked.filter(({ sure }) => sure === strongest)
      : asked.filter(({ sure }) => sure >= strongest - 0.25);
  const ofLaying = near.filter(({ laid }) => laid);
  // "coated four days ago, set a lamp on it yesterday"
  const beside = ofLaying.filter((one) => one.near);
  const [first] = (beside.length ? beside : ofLaying.length ? ofLaying : near).sort(
    (a, b) => a.likely - b.likely,
  );
  if (!first) return [];
  const latest = lastOfStory(words, manner, first, near);
  const again = isStill(words, latest.from, latest.to) ? undefined : laidAfter(words, manner, latest.to);
  // Days between the coats are little beside months, unless a sentence begins with it: "Then I brushed poly on".
  const isLong = latest.now === true && latest.laid && latest.least >= MONTHS;
  const laidAgain = again && isLong && !beginsSentence(words, again) ? undefined : again;
  const others = asked.filter(
    (one) => one !== latest && (one.least > latest.most || one.most < latest.least),
  );
  const round = (value: number) => Math.round(Math.min(FACTS['hours-since-coat'].max, value) * 100) / 100;
  const doubt = others.length === 0 ? 1 : latest.laid && !others.some(({ laid }) => laid) ? 0.95 : 0.92;
  return [
    {
      fact: 'hours-since-coat',
      value: round(latest.likely),
      range: [round(latest.least), round(latest.most)],
      sure: latest.sure * doubt * (laidAgain ? 0.6 : 1),
      rests: [{ from: latest.from, to: latest.to }],
      against: [...others.map(({ from, to }) => ({ from, to })), ...(laidAgain ? [laidAgain] : [])],
    },
  ];
};
