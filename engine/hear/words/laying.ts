import type { Manner } from './manner.ts';
import type { Match } from './match.ts';
import { oneOf } from './one-of.ts';
import { isKind, type Word } from './words.ts';

const BEFORE_A_NAME = oneOf('the|a|an|my|our|his|her|their|your|this|that|these|old|on|is|was');
const AFTER_DOING =
  /^(the|a|an|my|our|his|her|it|them|this|that|these|on|over|in|with|by|at|all|last|yesterday|today|and|sunday|monday|tuesday|wednesday|thursday|friday|saturday|about|over|just|two|three|four|five|six|several|some|few|\d+)$/;

const COAT_NAMED = oneOf(
  'coats?|layers?|clear|poly|polyurethane|urethane|varnish|lacquer|shellac|topcoat|sealer|oil|wax|finish|satin|gloss|matte|on|thin|thick|heavy',
);
const AWAY = oneOf('off|down|away|up|out|clean|cup|mug|glass|plate|pan|vase|iron');

const isOfCoat = (words: readonly Word[], at: number): boolean => {
  const after = words.slice(at + 1, at + 7).filter(({ part }) => part === words[at]?.part);
  const named = after.findIndex(({ word }) => COAT_NAMED.test(word));
  // "put a hot dish on the varnished table"
  return (
    named >= 0 && !after.slice(0, named + 1).some((one) => AWAY.test(one.word) || isKind(one, 'set-down'))
  );
};

/** Whether the word at `at` tells that a coat was laid, and is no name of what the piece is like. */
export const isLaying = (words: readonly Word[], at: number): boolean => {
  const [before, here, after] = [words[at - 1], words[at], words[at + 1]];
  if (!here || !isKind(here, 'laying')) return false;
  const denied = words
    .slice(Math.max(0, at - 3), at)
    .some(({ word, part }) => part === here.part && /^(never|not|wasnt|didnt|havent|hasnt)$/.test(word));
  if (denied) return false;
  // "a hand rubbed finish"
  if (before?.word === 'hand') return false;
  // "poured it last night"
  if (here.word === 'poured' && /^(it|them|epoxy|resin)$/.test(after?.word ?? '')) return true;
  if (isKind(here, 'laying-what-is-named')) return isOfCoat(words, at);
  if (!isKind(here, 'laying-or-look') || after?.part !== here.part || AFTER_DOING.test(after.word))
    return true;
  return before?.part === here.part && !BEFORE_A_NAME.test(before.word);
};

/** "I just put the doors back on": nothing was laid. */
const isPutBack = (words: readonly Word[], at: number): boolean =>
  words[at + 1]?.word === 'put' &&
  words
    .slice(at + 2, at + 7)
    .some(
      ({ word, part }) =>
        part === words[at]?.part && /^(back|away|together|outside|outdoors|aside)$/.test(word),
    );

/** "so I just put another coat on": no more than that, and not this moment. */
export const isMerely = (words: readonly Word[], at: number): boolean =>
  words[at]?.word === 'just' &&
  (isPutBack(words, at) ||
    words
      .slice(Math.max(0, at - 3), at)
      .some(
        ({ word, clause }) => clause === words[at]?.clause && /^(so|then|instead|would|id|could)$/.test(word),
      ));

const COATS = oneOf('coats?|layers?');

/** Words before the name of a coat that was there already: "through the varnish". */
const THERE = oneOf('my|our|his|her|their|through|into|off|old|existing');

const NAMED = oneOf('clear|poly|polyurethane|varnish|lacquer|shellac|finish|topcoat|wax|oil|paint');

const isThere = (words: readonly Word[], { from }: Match): boolean =>
  words
    .slice(Math.max(0, from - 2), from)
    .some(({ word, part }) => part === words[from]?.part && THERE.test(word));

/** Whether a text tells of any coat being laid, or names one as new: "brown wax on the drawers". */
export const tellsOfLaying = (words: readonly Word[], matches: readonly Match[]): boolean =>
  words.some(
    ({ word }, at) =>
      COATS.test(word) ||
      isLaying(words, at) ||
      /^(brushing|rolling|spraying|waxing|oiling|varnishing|coating|applying|recoating|finishing|refinishing)$/.test(
        word,
      ) ||
      (word === 'clear' && /^(over|on|last|yesterday|this)$/.test(words[at + 1]?.word ?? '')),
  ) ||
  matches.some(
    (match) =>
      (match.kind === 'among' || (match.kind === 'fact' && match.of[0] === 'family')) &&
      !isThere(words, match),
  );

/** Whether the word at `at` is a vessel of finish, and no "can I". */
export const isCan = (words: readonly Word[], at: number): boolean => {
  const [before, here] = [words[at - 1], words[at]];
  if (isKind(here, 'vessel')) return true;
  if (here?.word !== 'can' || before?.part !== here.part) return false;
  return /^(the|a|this|that|old|new|my|in|of|quart|spray|full|opened|canned)$/.test(before.word);
};

/** Whether a text is of what is in a can, and of no coat of it. */
export const isOfTheCan = (words: readonly Word[]): boolean =>
  words.some((_, at) => isCan(words, at)) &&
  words.some((word) => isKind(word, 'state-in-can')) &&
  !words.some(({ word }, at) => /^(coats|coated)$/.test(word) || isLaying(words, at));

const isFamily = ({ kind, of }: Match): boolean =>
  kind === 'among' || (kind === 'fact' && of[0] === 'family');
const USED = oneOf(
  'used|using|tried|trying|use|went|i|ive|we|weve|gave|lay|laying|got|hit|treated|spilled|apply|added',
);
const MINDED = oneOf('thinking|considering|want|wanted|wonder|wondering|guess|think|assume|believe|suppose');

const isUsed = (words: readonly Word[], { from }: Match): boolean => {
  const before = words.slice(Math.max(0, from - 4), from).filter(({ part }) => part === words[from]?.part);
  return before.some(({ word }) => USED.test(word)) && !before.some(({ word }) => MINDED.test(word));
};

/** "plan B is a new coat": only planned or asked. */
const isPlanned = (manner: Manner, at: number): boolean =>
  manner.notYet({ sense: '', kind: '', of: [], from: at, to: at + 1, size: 1 });

const isWorkTold = (words: readonly Word[], matches: readonly Match[], manner: Manner): boolean =>
  words.some(
    ({ word }, at) =>
      (COATS.test(word) && !isPlanned(manner, at)) ||
      isKind(words[at], 'work-on-finish', 'laying-now', 'flaw-of-laying') ||
      isLaying(words, at) ||
      (word === 'clear' && words[at - 1]?.word === 'a') ||
      (word === 'new' && NAMED.test(words[at + 1]?.word ?? '')),
  ) ||
  // "she used hemp oil on it", "after I went with water based"
  matches.some((match) => isFamily(match) && isUsed(words, match)) ||
  matches.some(
    (match) =>
      match.kind === 'fact' &&
      /^(chalk|milk|latex|oil)-paint$/.test(match.of[1] ?? '') &&
      !isThere(words, match),
  );

const told = new WeakMap<readonly Word[], boolean>();

/** Whether any work on the finish is told, or a coat is named as new; looked up once a text. */
export const tellsOfWork = (words: readonly Word[], matches: readonly Match[], manner: Manner): boolean => {
  const known = told.get(words) ?? isWorkTold(words, matches, manner);
  told.set(words, known);
  return known;
};
