import { ASKED } from '../../knowledge/known-questions.ts';
import { type HeardFact, SURE } from '../words/heard.ts';
import { isLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import type { Match } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import { namesTop } from '../words/place.ts';
import { senseOfSign } from '../words/sense.ts';
import { isTopNoun } from '../words/top-words.ts';
import type { Span, Word } from '../words/words.ts';
import { isHowItIsDone, isInCan, isOfThen } from './not-dry.ts';

/**
 * Whether a layer below is named before the words in their clause: "the stain was not dry". Where no top coat is named
 * there is none below: the paint or the stain is the coat.
 */
export const isOfLayer = (words: readonly Word[], matches: readonly Match[], { from }: Match): boolean =>
  namesTop(words, matches) &&
  matches.some(
    (one) =>
      one.sense === 'cue other-layer' &&
      one.to <= from &&
      words[one.from]?.clause === words[from]?.clause &&
      // "stained it, the second coat is tacky" tells of the coat.
      !words.slice(one.to, from).some(isTopNoun),
  );

export const spanIn = (words: readonly Word[], { from, to }: Match): Span => ({
  from: words[from]?.from ?? 0,
  to: words[to - 1]?.to ?? 0,
});

/** "my nail leaves a mark": soft below a skin that is dry. */
export const isDent = (words: readonly Word[], { from, to }: Match): boolean =>
  words
    .slice(from, to)
    .some(({ word }) => /^(nail|fingernail|finger|thumb|thumbnail|dents?|dented)$/.test(word));

const COATED = oneOf('painted|recoated');
const COATS = oneOf('coats?');

/** "a sticky top. Stripping was easy. Then the second coat": what was soft is gone. */
const isOffSince = (words: readonly Word[], manner: Manner, { to }: Match): boolean => {
  const isDone = (at: number): boolean =>
    words[at]?.asks === false &&
    !manner.notYet({ sense: '', kind: '', of: [], from: at, to: at + 1, size: 1 }) &&
    !manner.feared({ sense: '', kind: '', of: [], from: at, to: at + 1, size: 1 });
  const { clause = 0 } = words[to - 1] ?? {};
  // "it was sticky, so I painted it": how the layer below was.
  const was = words.some(
    (word, at) => at < to && word.clause === clause && /^(was|were|had)$/.test(word.word),
  );
  if (was && words.some((word, at) => word.clause > clause && COATED.test(word.word) && isDone(at)))
    return true;
  const off = words.findIndex(
    ({ word }, at) =>
      at >= to &&
      (word === 'stripped' ||
        (word === 'stripping' && /^(was|went|took)$/.test(words[at + 1]?.word ?? ''))) &&
      isDone(at),
  );
  const laid = words.findIndex(
    ({ word }, at) => at > off && (COATS.test(word) || isLaying(words, at)) && isDone(at),
  );
  return off >= 0 && laid > off;
};

/** Words of a film that is not sound, whatever its age. */
export const softWords = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
): readonly Match[] =>
  matches.filter(
    (match) =>
      ((match.kind === 'fact' && (match.of[0] === 'overdue' || match.of[1] === 'setting')) ||
        (match.kind === 'sign' && match.of[0] === ASKED.stillTacky && match.of[1] === 'yes')) &&
      !isOfLayer(words, matches, match) &&
      !isInCan(words, match) &&
      !isHowItIsDone(words, match) &&
      !isOfThen(words, match) &&
      !isOffSince(words, manner, match) &&
      manner.denied(match) === undefined &&
      !manner.over(match) &&
      !manner.feared(match),
  );

const CHANGES = oneOf(
  'getting|gets|got|become|becomes|became|becoming|turned|turning|went|gone|going|began|begun|starting|started|stickier|tackier|gummier|softer|stickiest|lately|recently',
);
/** "finished it two years ago and it is now sticky" */
const IS_NOW = /\b(is|are|feels) now\b/;
const isToldChanged = (near: readonly Word[]): boolean =>
  near.some(({ word }) => CHANGES.test(word)) || IS_NOW.test(near.map(({ word }) => word).join(' '));

/** "went gummy", "is getting sticky", "stickier than before": it was hard once. */
export const isChanged = (words: readonly Word[], matches: readonly Match[]): boolean =>
  matches.some(
    ({ kind, of, from, to }) =>
      kind === 'fact' &&
      of[1] === 'setting' &&
      isToldChanged(
        words.slice(Math.max(0, from - 5), to + 2).filter(({ clause }) => clause === words[from]?.clause),
      ),
  );

/** Something stood or lay on it, or it was cleaned: what is soft there was hard. */
export const isUsedSoft = (matches: readonly Match[]): boolean =>
  [senseOfSign(ASKED.cameInUse, 'yes'), senseOfSign(ASKED.spiritOrCleanerOnIt, 'yes')].some((said) =>
    matches.some(({ sense }) => sense === said),
  );

/** "Fine for a month, then a wet glass stood on it": it was hard before that. */
export const isFineTillUsed = (matches: readonly Match[]): boolean =>
  matches.some(({ sense }) => sense === senseOfSign(ASKED.fineWhenFirstDry, 'yes')) &&
  matches.some(({ sense }) => IN_USE.includes(sense));

const HAS_IT = /^(customers?|clients?|buyers?)$/;

/** "my kitchen cabinets", "a customer cleaned it": somebody lives with it. */
export const isTheirs = (words: readonly Word[], matches: readonly Match[]): boolean =>
  words.some(({ word }) => HAS_IT.test(word)) ||
  matches.some(
    ({ kind, of, from }) =>
      kind === 'fact' &&
      of[0] === 'piece' &&
      words
        .slice(Math.max(0, from - 3), from + 1)
        .some(({ word, part }) => part === words[from]?.part && /^(my|our|her|his|their|the)$/.test(word)),
  );

/** "cabinets 19 years old", in use: not the coat but the piece is so old, and what is soft on it now was hard. */
export const isPieceOld = (
  words: readonly Word[],
  time: HeardFact,
  matches: readonly Match[],
  heard: readonly HeardFact[],
): boolean => {
  const rests = time.rests[0];
  const next = words.find(({ from }) => rests && from >= rests.to);
  const used = matches.some(({ sense }) => sense === senseOfSign(ASKED.cameInUse, 'yes'));
  return !isUnknown(heard) && (next?.word === 'old' || used);
};

/** Nobody knows what it is: nobody can tell then that it was hard once. */
const isUnknown = (heard: readonly HeardFact[]): boolean =>
  heard.some(({ fact, value }) => fact === 'age' && value === 'unknown');

/** Said outright: it never got hard, or still is not. */
export const neverHard = (matches: readonly Match[], manner: Manner): boolean =>
  matches.some(
    (match) => match.kind === 'fact' && match.of[0] === 'overdue' && manner.denied(match) === undefined,
  );

/** "never hardened", "permanently sticky", "tacky for weeks": overdue by its words alone. */
export const saidOverdue = (words: readonly Word[], matches: readonly Match[], manner: Manner): boolean =>
  matches.some(
    (match) =>
      match.kind === 'fact' &&
      match.of[0] === 'overdue' &&
      manner.denied(match) === undefined &&
      !manner.feared(match) &&
      words
        .slice(match.from, match.to)
        .some(({ word }) =>
          /^(never|permanently|always|forever|constantly|perpetually|weeks|months)$/.test(word),
        ),
  );

/** What happens to a piece that is lived with. */
const IN_USE = [
  senseOfSign(ASKED.cameInUse, 'yes'),
  senseOfSign(ASKED.afterSomethingHot, 'yes'),
  senseOfSign(ASKED.afterSomethingWet, 'yes'),
  senseOfSign(ASKED.plasticOrRubberStoodThere, 'yes'),
];

/** A mark of use, where nothing tells that a coat was laid of late: a film long since cured. */
const isInUse = (words: readonly Word[], matches: readonly Match[], manner: Manner): Match | undefined =>
  matches.find(
    (match) =>
      (match.sense === 'cue owned' ||
        IN_USE.includes(match.sense) ||
        (match.sense === senseOfSign(ASKED.spiritOrCleanerOnIt, 'yes') && isTheirs(words, matches))) &&
      manner.denied(match) === undefined &&
      !manner.feared(match) &&
      !manner.notYet(match),
  );

/** What tells that the piece is old or in use. */
export const restsOfUse = (
  words: readonly Word[],
  matches: readonly Match[],
  manner: Manner,
  heard: readonly HeardFact[],
): readonly Span[] | undefined => {
  const used = isInUse(words, matches, manner);
  if (used) return [spanIn(words, used)];
  return heard.find(({ fact, value, sure }) => fact === 'age' && value === 'before-1993' && sure >= SURE)
    ?.rests;
};
