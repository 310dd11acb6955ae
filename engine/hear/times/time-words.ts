import { isLaying, tellsOfWork } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Ear, Match } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { isTop, isTopNoun } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';

/** From here on a time is told in months: a thing that was bought or moved in then is at least so old. */
export const MONTH = 700;

/** Words of work on a coat. */
const WORK = oneOf('coats?|layers?|brushed|rolled|sprayed|applied|sanded|primed|stripped|recoated|stained');
/** What was got or made then is at least so old; its coat need not be. */
const GOT = /^(built|bought|made|got|purchased|moved|inherited|found|acquired|picked|had|weve|ive|owned)$/;
/** "the poly is three weeks old" */
export const namesFilm = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 9), at + 6)
    .some((word) => word.sentence === words[at]?.sentence && isTop(word));

const BESIDE_ALONE =
  /^(its|it|been|has|now|later|on|in|ago|so|far|already|only|just|still|about|over|almost|nearly|roughly|maybe|not|even|and|or|today|waiting|drying|curing|of|total|straight|here)$/;

/** Whether the time at `at` stands alone: "Five days.", "Two weeks now." */
export const isAlone = (words: readonly Word[], at: number, to: number): boolean => {
  const { part } = words[at] ?? {};
  const beside = [...words.slice(Math.max(0, at - 4), at), ...words.slice(to, to + 4)];
  return beside.every((word) => word.part !== part || BESIDE_ALONE.test(word.word));
};

/** "48 hours later still soft": the sentence tells how the film feels. */
export const isOfFilm = (words: readonly Word[], matches: readonly Match[], at: number): boolean =>
  matches.some(
    ({ kind, of, from }) =>
      kind === 'fact' &&
      (of[0] === 'overdue' || of[1] === 'setting' || of[1] === 'wet') &&
      words[from]?.sentence === words[at]?.sentence,
  );

const OF_USE =
  /^sign (came-in-use|after-something-(hot|wet)|spirit-or-cleaner-on-it|came-after-rubbing) yes$/;

export const isOfUse = (matches: readonly Match[]): boolean =>
  matches.some(({ sense }) => OF_USE.test(sense));

/** "An hour later a streaky mess": the sentence tells what is wrong, and nothing befell the piece but its coat. */
export const isOfFlaw = (words: readonly Word[], matches: readonly Match[], at: number): boolean =>
  matches.some(({ kind, from }) => kind === 'sign' && words[from]?.sentence === words[at]?.sentence) &&
  !isOfUse(matches);

/** How far a time of months is doubted that may be that of the piece. */
export const isDoubted = (
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

/** "the second coat has been drying nine days" */
export const isDrying = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 4), at)
    .some(({ word, part }) => part === words[at]?.part && /^(drying|curing)$/.test(word));

/** "two days after the wax it got rough", and not "two days after the oil I brushed on poly" */
export const isAfterTop = (words: readonly Word[], at: number): boolean => {
  const { part } = words[at] ?? {};
  const named = words.slice(at + 1, at + 4).findIndex((word) => word.part === part && isTop(word));
  const left = words.slice(at + 2 + named).filter((word) => word.part === part);
  return named >= 0 && !left.some((_, index) => isLaying(words, at + 2 + named + index));
};

/** "dried for two days", "waited 72 hours" */
export const isOfDrying = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 4), at + 6)
    .some(
      ({ word, part }) =>
        part === words[at]?.part && /^(dry|drying|dried|cure|cured|curing|waited|waiting)$/.test(word),
    );

/** Of phrases that overlap the one with the fewest words between counts: "a few months" is no month. */
export const tightest = (matches: readonly Match[]): Match[] => {
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
  words.some(
    (word, index) =>
      (aged || word.clause !== words[at]?.clause) &&
      // "the house is old, the new varnish is tacky"
      (WORK.test(word.word) || (/^(new|fresh)$/.test(word.word) && isTopNoun(words[index + 1]))),
  );

/** Whether a word of laying stands in the clause of a time. */
export const isOfLaying = (words: readonly Word[], at: number): boolean =>
  words.some((word, index) => word.clause === words[at]?.clause && isLaying(words, index));

/** "bubbles in my clear coat this morning": that is where the flaw is, and when it was seen. */
const isWhereItIs = (words: readonly Word[], at: number): boolean =>
  words
    .slice(Math.max(0, at - 3), at)
    .some(({ word, part }) => part === words[at]?.part && /^(in|on|under|through)$/.test(word));

/** Whether a coat or its laying stands between the same commas as a time. */
export const laysBeside = (words: readonly Word[], at: number): boolean =>
  words.some(
    (word, index) =>
      word.part === words[at]?.part &&
      ((/^(coats?|layers?)$/.test(word.word) && !isWhereItIs(words, index)) || isLaying(words, index)),
  );

/** Whether the sentence of a time, or the one before, speaks of a film or of laying it. */
export const speaksOfFilm = (ear: Ear, words: readonly Word[], at: number): boolean => {
  const sentence = words[at]?.sentence ?? 0;
  return words.some(
    (word, index) =>
      (word.sentence === sentence || word.sentence === sentence - 1) &&
      (isTop(word) || isLaying(words, index) || (ear.laid.has(word.word) && word.word !== 'it')),
  );
};
