import { oneOf } from '../words/one-of.ts';
import { namesTop } from '../words/place.ts';
import { isTop, isTopNoun } from '../words/top-words.ts';
import type { Word } from '../words/words.ts';
import { has, type ToldTime } from './told-time.ts';

/** What a layer does that is seen long after it was laid. */
const SEEN_OF =
  /^(came|comes|coming|peel\w*|chip\w*|flak\w*|lift\w*|bled|bleed\w*|bubbl\w*|crack\w*|smear\w*|rub\w*|wip\w*|show\w*)$/;
const IS = oneOf('is|was|keeps|kept|has|started|began|starts');
const LAYER_REACH = 6;
const OLD = oneOf('old|original|existing|previous');

/** "A fresh coat, and it bubbled. I laid that old finish 15 years ago": the time of what lies below. */
const isOfOldFilm = ({ words, from }: ToldTime): boolean => {
  const before = words.slice(Math.max(0, from - 8), from).filter(({ part }) => part === words[from]?.part);
  const old = before.some(({ word }, at) => OLD.test(word) && isTop(before[at + 1]));
  return (
    old &&
    words.some(
      ({ word }, at) =>
        /^(fresh|new|another)$/.test(word) && /^(coat|coats|layer)$/.test(words[at + 1]?.word ?? ''),
    )
  );
};

/** "The one at our old house was different": what is told next in that sentence is of another piece. */
const isElsewhere = ({ words, from }: ToldTime): boolean => {
  const { sentence } = words[from] ?? {};
  let first = from;
  while (words[first - 1]?.sentence === sentence) first--;
  const said = words
    .slice(first, from)
    .map(({ word }) => word)
    .join(' ');
  return /\b(at|in) (our|my|their|the) (old|last|previous|former|other) (house|home|place|apartment|flat|kitchen) (was|were|had|did|looked)\b/.test(
    said,
  );
};

/** Layers below that the sentence of the time names. */
const layersBeside = ({ words, matches, from, to }: ToldTime) => {
  const { sentence } = words[from] ?? {};
  const named = matches.filter(
    (one) => one.sense === 'cue other-layer' && words[one.from]?.sentence === sentence && one.from !== from,
  );
  if (!named.length) return named;
  const isTopNamed = namesTop(words, matches);
  // Where no top coat is named the paint is it, and "primed and painted two years ago" is of the paint.
  const isPainted = words.some((word) => word.sentence === sentence && /^(painted|paint)$/.test(word.word));
  const isSoft = matches.some(
    ({ kind, of, from: at }) =>
      kind === 'fact' && (of[0] === 'overdue' || of[1] === 'setting') && words[at]?.sentence === sentence,
  );
  const isTheCoat = ({ word }: Word): boolean =>
    !isTopNamed && (isSoft || /^paint/.test(word) || (isPainted && /^prim/.test(word)));
  return named.filter((one) => {
    const layer = words[one.from];
    return (
      layer !== undefined &&
      !isTheCoat(layer) &&
      // "when I painted it on"
      !(words[one.to]?.word === 'it' && words[one.to + 1]?.word === 'on') &&
      // "an hour ago it went milky over the brown paint" tells where
      !(one.from > to && has(words.slice(to, one.from), /^(over|under|beneath)$/)) &&
      // "next morning the paint came off", "the paint is coming off" tell of no laying
      !SEEN_OF.test(words[IS.test(words[one.to]?.word ?? '') ? one.to + 1 : one.to]?.word ?? '')
    );
  });
};

/** "the stain dried for three days, then poly", "poly 3 days after the stain", "over the glaze, which had dried a day" */
const isOfLayerBelow = (time: ToldTime): boolean => {
  const layers = layersBeside(time);
  if (!layers.length) return false;
  const { words, from, to, isOfPart } = time;
  const { sentence } = words[from] ?? {};
  const begins = words.findIndex(isOfPart);
  if (words[begins]?.word === 'which' && layers.some((one) => one.to === begins)) return true;
  const afterLayer =
    words[to]?.word === 'after' && layers.some((one) => one.from > to && one.from <= to + LAYER_REACH);
  // "primed it two days ago and now brush poly": what is done now has no part in that time.
  const now = words.findIndex(
    (word, at) =>
      at >= to && word.sentence === sentence && word.word === 'now' && words[at - 1]?.word === 'and',
  );
  const hasTop = (isNear: (word: Word) => boolean) =>
    words.some(
      (word, at) =>
        isNear(word) &&
        !(now >= 0 && at > now && word.sentence === sentence) &&
        isTop(word) &&
        !layers.some((one) => at >= one.from - 1 && at <= one.to),
    );
  return (
    afterLayer ||
    (layers.some((one) => isOfPart(words[one.from])) && !hasTop(isOfPart)) ||
    (layers.some((one) => one.from < from) && !hasTop((word) => word.sentence === sentence))
  );
};

const LIES_ON = /^(over|on|onto|atop|above)$/;
/** Between the layer and its age: "stain that was only 3 hours old". */
const OF_ITS_AGE = /^(a|an|after|only|just|barely|about|around|maybe|that|which|was|is|at|thats|still)$/;
const ENDS_THERE = /^(and|but|so|old)$/;

/**
 * "lacquer over oil stain after 3 hours, it wrinkles", "shellac over stain 3 hours old", "over 2 hour old stain": how old
 * the layer was that the coat went on, and not the coat.
 */
const isAgeOfGround = ({ words, matches, from, to, isOfPart }: ToldTime): boolean => {
  const isLayer = (at: number) =>
    isOfPart(words[at]) && matches.some((one) => one.sense === 'cue other-layer' && one.from === at);
  const liesOn = (at: number) =>
    words.slice(Math.max(0, at - 4), at).some((word) => isOfPart(word) && LIES_ON.test(word.word));
  const behind = isOfPart(words[to]) ? words[to]?.word : undefined;
  const next = words[to - 1]?.word === 'old' ? 'old' : behind;
  // "wax over oil that was a month old"
  const isFilm = (at: number) => isOfPart(words[at]) && isTopNoun(words[at]);
  if (next === 'old' && liesOn(from) && [to + 1, to + 2, to + 3].some(isLayer)) return true;
  let back = from - 1;
  while (back > 0 && OF_ITS_AGE.test(words[back]?.word ?? '') && isOfPart(words[back])) back--;
  if (next === 'old' && isFilm(back) && LIES_ON.test(words[back - 1]?.word ?? '')) return true;
  if (!isLayer(back) || !liesOn(back)) return false;
  return next === 'old' || (words[from - 1]?.word === 'after' && ENDS_THERE.test(next ?? 'and'));
};

export const OF_LAYERS = [isOfOldFilm, isElsewhere, isOfLayerBelow, isAgeOfGround];
