import { ASKED } from '../known-questions.ts';
import { FACTS } from '../model/facts.ts';
import { isStill, laidAfter, laidNext } from './coat-story.ts';
import { monthTimes, seasonTimes, weekdayTimes } from './days.ts';
import { HEDGE, isElapsed } from './elapsed.ts';
import { type HeardFact, SURE } from './heard.ts';
import { besideLabel, labelTime } from './label-time.ts';
import { isLaying, isMerely, isOfTheCan, tellsOfLaying, tellsOfWork } from './laying.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import { isElse } from './other-times.ts';
import { senseOfSign } from './sense.ts';
import { ordinalSpan, spanAt } from './spans.ts';
import type { SpokenSpan } from './spoken-span.ts';
import { DOUBTED, FOLLOWS, HALF, JUST, OF_THE_LAST, OUTRIGHT, SAID } from './sure.ts';
import { TOP } from './top-words.ts';
import type { Word } from './words.ts';

const any = (words: readonly Word[], from: number, to: number, set: ReadonlySet<string>): boolean =>
  words.slice(Math.max(0, from), to).some((word) => set.has(word.word));

/** How far a time in numbers is taken as told about: "two hours" is from 1.6 to 2.6. */
const LESS = 0.8;
const MORE = 1.3;
/** "Six weeks ago: oil, shellac, then wax": days between the coats are little beside it. */
const FORTNIGHT = 250;
/** From here on a time is told in months: a thing that was bought or moved in then is at least so old. */
const MONTH = 700;

/** Words of work on a coat. */
const WORK = /^(coats?|layers?|brushed|rolled|sprayed|applied|sanded|primed|stripped|recoated|stained)$/;
const LATER = /^(ago|later|since|on|now|back|in|still|after)$/;
const SPAN_WORD = /^(after|for|past|last|still|within|over|just|only|been|waited|waiting)$/;
/** What was got or made then is at least so old; its coat need not be. */
const GOT = /^(built|bought|made|got|purchased|moved|inherited|found|acquired|picked|had|weve|ive|owned)$/;
/** A time told from the last coat on. */
const SINCE = /^(since|after)$/;

/** "the poly is three weeks old" */
const namesFilm = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 9), at + 6)
    .some(({ word, sentence }) => sentence === words[at]?.sentence && TOP.test(word));

const BESIDE_ALONE =
  /^(its|it|been|has|now|later|on|in|ago|so|far|already|only|just|still|about|over|almost|nearly|roughly|maybe|not|even|and|or|today|waiting|drying|curing|of|total|straight|here)$/;

/** Whether the time at `at` stands alone: "Five days.", "Two weeks now." */
const isAlone = (words: readonly Word[], at: number, to: number): boolean => {
  const { part } = words[at] ?? {};
  const beside = [...words.slice(Math.max(0, at - 4), at), ...words.slice(to, to + 4)];
  return beside.every((word) => word.part !== part || BESIDE_ALONE.test(word.word));
};

/** "48 hours later still soft": the sentence tells how the film feels. */
const isOfFilm = (words: readonly Word[], matches: readonly Match[], at: number): boolean =>
  matches.some(
    ({ kind, of, from }) =>
      kind === 'fact' &&
      (of[0] === 'overdue' || of[1] === 'setting' || of[1] === 'wet') &&
      words[from]?.sentence === words[at]?.sentence,
  );

const OF_USE = [
  ASKED.cameInUse,
  ASKED.afterSomethingHot,
  ASKED.afterSomethingWet,
  ASKED.spiritOrCleanerOnIt,
  ASKED.cameAfterRubbing,
].map((question) => senseOfSign(question, 'yes'));

const isOfUse = (matches: readonly Match[]): boolean => matches.some(({ sense }) => OF_USE.includes(sense));

/** "An hour later a streaky mess": the sentence tells what is wrong, and nothing befell the piece but its coat. */
const isOfFlaw = (words: readonly Word[], matches: readonly Match[], at: number): boolean =>
  matches.some(({ kind, from }) => kind === 'sign' && words[from]?.sentence === words[at]?.sentence) &&
  !isOfUse(matches);

/** How far a time of months is doubted that may be that of the piece. */
const isDoubted = (
  words: readonly Word[],
  matches: readonly Match[],
  at: number,
  to: number,
  told: { old: boolean; ago: boolean },
  manner: Manner,
): boolean => {
  const before = words.slice(Math.max(0, at - 5), at).filter(({ clause }) => clause === words[at]?.clause);
  const got = before.some(({ word }) => GOT.test(word));
  // What was made then got its coat then, if its coat is told of in the same breath.
  if (got) {
    const { sentence } = words[at] ?? {};
    const own = before.some(({ word }) => /^(built|made)$/.test(word));
    // "we had the doors painted last year"
    if (before.some(({ word }) => word === 'had') && isOfLaying(words, at)) return false;
    if (!own) return tellsOfWork(words, matches, manner);
    return words.some((word, index) => WORK.test(word.word) && !(index > to && word.sentence === sentence));
  }
  if (told.ago && isOfLaying(words, at)) return false;
  if (told.old || told.ago) return isWorkedOn(words, at, told.old);
  return words.some(
    ({ word, clause }, index) => index >= to && clause !== words[at]?.clause && WORK.test(word),
  );
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
      laid: ofLast || alone || soFar || isOfLaying(words, at) || isDrying(words, at),
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

/** "the second coat has been drying nine days" */
const isDrying = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 4), at)
    .some(({ word, part }) => part === words[at]?.part && /^(drying|curing)$/.test(word));

/** "two days after the wax it got rough", and not "two days after the oil I brushed on poly" */
const isAfterTop = (words: readonly Word[], at: number): boolean => {
  const { part } = words[at] ?? {};
  const named = words.slice(at + 1, at + 4).findIndex((word) => word.part === part && TOP.test(word.word));
  const left = words.slice(at + 2 + named).filter((word) => word.part === part);
  return named >= 0 && !left.some((_, index) => isLaying(words, at + 2 + named + index));
};

/** "dried for two days", "waited 72 hours" */
const isOfDrying = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 4), at + 6)
    .some(
      ({ word, part }) =>
        part === words[at]?.part && /^(dry|drying|dried|cure|cured|curing|waited|waiting)$/.test(word),
    );

/** Of phrases that overlap the one with the fewest words between counts: "a few months" is no month. */
const tightest = (matches: readonly Match[]): Match[] => {
  const loose = ({ from, to, size }: Match) => to - from - size;
  return matches.filter(
    (match) =>
      !matches.some(
        (other) =>
          other !== match &&
          other.from < match.to &&
          match.from < other.to &&
          (loose(other) < loose(match) || (loose(other) === loose(match) && other.size > match.size)),
      ),
  );
};

/** Whether a coat was worked on in another clause than that of a time, or anywhere where the age of a thing is told: the age of a piece is then not that of its coat. */
const isWorkedOn = (words: readonly Word[], at: number, aged: boolean): boolean =>
  words.some((word) => (aged || word.clause !== words[at]?.clause) && WORK.test(word.word));

/** Whether a word of laying stands in the clause of a time. */
const isOfLaying = (words: readonly Word[], at: number): boolean =>
  words.some((word, index) => word.clause === words[at]?.clause && isLaying(words, index));

/** "bubbles in my clear coat this morning": that is where the flaw is, and when it was seen. */
const isWhereItIs = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 3), at)
    .some(({ word, part }) => part === words[at]?.part && /^(in|on|under|through)$/.test(word));

/** Whether a coat or its laying stands between the same commas as a time. */
const laysBeside = (words: readonly Word[], at: number): boolean =>
  words.some(
    (word, index) =>
      word.part === words[at]?.part &&
      ((/^(coats?|layers?)$/.test(word.word) && !isWhereItIs(words, index)) || isLaying(words, index)),
  );

/** Whether the sentence of a time, or the one before, speaks of a film or of laying it. */
const speaksOfFilm = (ear: Ear, words: readonly Word[], at: number): boolean => {
  const sentence = words[at]?.sentence ?? 0;
  return words.some(
    (word, index) =>
      (word.sentence === sentence || word.sentence === sentence - 1) &&
      (TOP.test(word.word) || isLaying(words, index) || (ear.laid.has(word.word) && word.word !== 'it')),
  );
};

/** Where the sentence ends that holds the character at `to`. */
const sentenceEnd = (words: readonly Word[], to: number): number => {
  const at = words.findLast(({ from }) => from < to)?.sentence ?? 0;
  return words.findLast(({ sentence }) => sentence === at)?.to ?? to;
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
  const told = toldTimes(ear, words, matches, manner);
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
  const [latest] = (beside.length ? beside : ofLaying.length ? ofLaying : near).sort(
    (a, b) => a.likely - b.likely,
  );
  if (!latest) return [];
  const laidAgain = isStill(words, latest.from, latest.to) ? undefined : laidAfter(words, manner, latest.to);
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
