import { isLaying } from '../words/laying.ts';
import { isTop } from '../words/top-words.ts';
import { isKind } from '../words/words.ts';
import { has, hasKind, type ToldTime } from './told-time.ts';

/** "the tape was on for two days" */
const isOfTape = ({ before }: ToldTime): boolean => has(before, /^(tape|taped|masked)$/);

/**
 * "laid a hot pan on it for a minute", but "laid it on last night"; "sat six days after the last coat", "it sat for
 * months": there the film itself was left, and "a wet glass stood on the poly for 3 hours" tells where.
 */
const isOfWhatStood = ({ words, before, from, to }: ToldTime): boolean => {
  const stood = before.some(
    (word, at) =>
      isKind(word, 'left-standing') ||
      (word.word === 'laid' && /^(a|an|the|my|our|some)$/.test(before[at + 1]?.word ?? '')),
  );
  if (!stood) return false;
  const isWhere = (at: number) => has(before.slice(Math.max(0, at - 2), at), /^(on|over|atop|against)$/);
  const ofLast =
    /^(after|since)$/.test(words[to]?.word ?? '') && has(words.slice(to + 1, to + 4), /^(last|final)$/);
  const itself =
    before.some(
      ({ word }, at) => /^(sat|stood)$/.test(word) && /^(it|they)$/.test(before[at - 1]?.word ?? ''),
    ) &&
    !words.some(
      (word) => word.sentence === words[from]?.sentence && isKind(word, 'set-down', 'can-or-brush'),
    );
  return !ofLast && !itself && !before.some((word, at) => isTop(word) && !isWhere(at));
};

/** "left a wet glass on it overnight", "set a hot mug down this morning": the time is the glass's. */
const isOfWhatWasSetDown = ({ before }: ToldTime): boolean => {
  const setDown = before.findIndex(({ word }) =>
    /^(left|set|put|forgot|forgotten|spilled|spilt|parked)$/.test(word),
  );
  return setDown >= 0 && hasKind(before.slice(setDown), 'set-down');
};

/** "just spilled vodka on the bar two minutes ago"; where something was laid as well, its time it may be. */
const isOfSpill = ({ words, own }: ToldTime): boolean =>
  hasKind(own, 'spilling') && !own.some((word) => isLaying(words, words.indexOf(word)));

/** "what I set down for ten minutes sticks" */
const isOfPuttingDown = ({ before }: ToldTime): boolean =>
  before.some(({ word }, at) => /^(put|set|pressed)$/.test(word) && before[at + 1]?.word === 'down') &&
  !before.some(isTop);

/** "the can I opened two years ago", "mixed it in a jar three weeks ago" */
const isOfTheCan = ({ own }: ToldTime): boolean =>
  hasKind(own, 'can-or-brush') && hasKind(own, 'kept-in-can');

/** "the flakes have been in a jar for a week" */
const isInVessel = ({ own, words }: ToldTime): boolean =>
  own.some(
    (word, at) =>
      (isKind(word, 'vessel') || /^(can|bottle)$/.test(word.word)) &&
      has(own.slice(Math.max(0, at - 2), at), /^in$/),
  ) && !own.some((word) => isLaying(words, words.indexOf(word)));

/** "ten year old can", "used two year old poly" */
const isOfOldStuff = ({ words, before, after, from, to }: ToldTime): boolean => {
  if (!has(words.slice(from, to + 1), /^old$/)) return false;
  const used = words.some((word) => word.clause === words[from]?.clause && /^(used|using)$/.test(word.word));
  return used || hasKind([...before, ...after.slice(0, 3)], 'can-or-brush');
};

/** "the wood had been drying in my shed for three years" */
const isOfRawWood = ({ own }: ToldTime): boolean => hasKind(own, 'raw-wood') && hasKind(own, 'seasoning');

/** "held the heat gun on it for five minutes", "twenty minutes in a pressure pot" */
const isOfTool = ({ own, words, from }: ToldTime): boolean => {
  const minutes = words.slice(from, from + 4).some(({ word }) => /^(min|mins|minutes?|seconds?)$/.test(word));
  return (
    minutes &&
    own.some(
      ({ word }, at) =>
        /^(gun|dryer|lamp|pot|oven|torch|microwave|fan|heater)$/.test(word) &&
        !/^(spray|hvlp|my|his)$/.test(own[at - 1]?.word ?? ''),
    ) &&
    !own.some((_, at) => isLaying(own, at))
  );
};

/** "the stripper took it down in fifteen minutes" */
const isOfStripper = ({ own, words, from, to }: ToldTime): boolean =>
  hasKind(own, 'dissolving') &&
  has(words.slice(from, to), /^(min|mins|minutes?|hours?|hrs?)$/) &&
  !own.some((_, at) => isLaying(own, at));

/** "62 when I put it on and 58 last night": what the thermometer read then. */
const isOfReading = ({ words, before, from }: ToldTime): boolean =>
  /^(last|this|yesterday|overnight)$/.test(words[from]?.word ?? '') &&
  /^\d{2}$/.test(before.at(-1)?.word ?? '') &&
  !/^(at|around|about|until|till|by|past|since)$/.test(before.at(-2)?.word ?? '');

export const OF_THINGS = [
  isOfTape,
  isOfWhatStood,
  isOfWhatWasSetDown,
  isOfSpill,
  isOfPuttingDown,
  isOfTheCan,
  isInVessel,
  isOfOldStuff,
  isOfRawWood,
  isOfTool,
  isOfStripper,
  isOfReading,
];
