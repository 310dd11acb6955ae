import { isCan } from '../words/laying.ts';
import type { Match } from '../words/match.ts';
import { oneOf } from '../words/one-of.ts';
import type { Word } from '../words/words.ts';

/** "before it dries", "should be dry", "let it dry", "is it dry?", "the wood is dry": no film that is dry. */
const NOT_YET_DRY =
  /^(until|till|before|be|should|would|will|could|if|says|said|supposed|wait|waiting|let|letting|thought|think|assume|guess|unless|than|how|must|needs?)$/;
const DRY_BY_NATURE =
  /^(wood|lumber|timber|air|weather|brush|rag|cloth|sponge|climate|winter|room|shop|house|pad|leather|skin|mouth|can|tin|jar)$/;
/** What stands between what is dry and that it is: "the wood was all bone dry". */
const IS_SO = oneOf('is|was|are|were|feels|felt|seems|seemed|all|bone|very|fully|completely|nice|and|quite');

/** "the wood was bone dry": dry by itself, and no coat on it. */
const isDryByNature = (words: readonly Word[], from: number): boolean => {
  const { part } = words[from] ?? {};
  let at = from - 1;
  while (words[at]?.part === part && IS_SO.test(words[at]?.word ?? '')) at--;
  return words[at]?.part === part && DRY_BY_NATURE.test(words[at]?.word ?? '');
};

/** "hard to see", "hard wax": no film that is hard. */
const NO_HARD_FILM =
  /^(to|wax|waxed|wearing|work|time|times|water|enough|by|for|against|with|on|edge|edges|line|lines|wood|maple|top|part|way|job|when|surface)$/;
const NO_DRY_FILM = /^(spots?|patch|patches|brush|rag|cloth|climate|air|wood|sanding|weather|heat|enough)$/;

const DAYTIME = /^(day|night|next|whole|same|first|way|weekend|rest|time|other|morning|afternoon|week)$/;

/** "dried the brush", "washed with spirits, dried", "has to dry": no film that is dry. */
const isOfAnother = (words: readonly Word[], from: number, to: number): boolean => {
  const { part = 0, clause } = words[from] ?? {};
  const dries = words.findIndex(({ word }, at) => at >= from && at < to && /^(dry|dried)$/.test(word));
  if (dries < 0) return false;
  const [after, next] = words.slice(dries + 1, dries + 3).filter((word) => word.part === words[dries]?.part);
  const isDone =
    words[dries]?.word === 'dried' &&
    ((/^(the|my|our)$/.test(after?.word ?? '') && next !== undefined && !DAYTIME.test(next.word)) ||
      /^(it|them)$/.test(after?.word ?? ''));
  const isToCome = words[dries]?.word === 'dry' && words[dries - 1]?.word === 'to';
  const alone = words.filter((word) => word.part === part).length === 1;
  const isWashed =
    alone &&
    words.some(
      (word) =>
        word.part === part - 1 && word.clause === clause && /^(washed|rinsed|cleaned|wiped)$/.test(word.word),
    );
  return isDone || isToCome || isWashed;
};

export const isNotYetDry = (words: readonly Word[], { from, to }: Match): boolean => {
  const clause = words[from]?.clause;
  const before = words.slice(Math.max(0, from - 4), from).filter((word) => word.clause === clause);
  const after = words[to]?.clause === clause ? (words[to]?.word ?? '') : '';
  return (
    isOfAnother(words, from, to) ||
    [...before, ...words.slice(from, to)].some(({ word }) => NOT_YET_DRY.test(word)) ||
    // "fully cured, or so I thought"
    words
      .slice(to, to + 5)
      .some(
        ({ word, sentence }) =>
          sentence === words[from]?.sentence && /^(thought|supposedly|guess|assumed)$/.test(word),
      ) ||
    (isDryByNature(words, from) && !words.slice(from, to).some(({ word }) => word === 'touch')) ||
    NO_DRY_FILM.test(after) ||
    (words[to - 1]?.word === 'hard' && NO_HARD_FILM.test(after)) ||
    // "is it dry", "are they hard now"
    (words[from]?.asks === true &&
      /^(is|are|does|do|will|can|when)$/.test(before[0]?.word ?? words[from]?.word ?? '')) ||
    (/^(is|are|was)$/.test(words[from]?.word ?? '') &&
      /^(it|they|this|that)$/.test(words[from + 1]?.word ?? ''))
  );
};

/** "started to dry sand", "a thorough wet sanding", "dried so quickly": how it is sanded or dries, and no state. */
export const isHowItIsDone = (words: readonly Word[], { to }: Match): boolean => {
  const [last, next, then] = [words[to - 1], words[to], words[to + 1]];
  // "so" ends a clause, but not in "so quickly".
  if (!last || !next || (next.part !== last.part && next.word !== 'so')) return false;
  if (/^(dry|wet)$/.test(last.word) && /^(sand|sanding|sanded|sandpaper|paper)$/.test(next.word)) return true;
  return (
    /^dri/.test(last.word) &&
    (/^(quickly|fast|quicker|faster|slowly|within)$/.test(next.word) ||
      (/^(so|too|very|really|way|much|far)$/.test(next.word) &&
        /^(quick|fast|slow|too|so)/.test(then?.word ?? '')))
  );
};

const WET_THING = /^(cloth|rag|towel|wood|sponge|paper|brush|hand|hands|glass|hair|sand|lawn|grass|floor)$/;
/** "while it was still tacky", "when a cloth is wet": how it was then, or how something else is. */
export const isOfThen = (words: readonly Word[], { from, to }: Match): boolean => {
  const before = words.slice(Math.max(0, from - 4), to).filter(({ part }) => part === words[from]?.part);
  const when = before.findIndex(({ word }) => /^(while|when|before|whilst)$/.test(word));
  const then = before.slice(when + 1);
  return (
    (when >= 0 && then.some(({ word }) => /^(was|were)$/.test(word))) ||
    (words[to - 1]?.word === 'wet' && before.some(({ word }) => WET_THING.test(word)))
  );
};

/** What skinned over in the can is no film. */
export const isInCan = (words: readonly Word[], { from }: Match): boolean => {
  for (let at = from - 1; at >= 0 && words[at]?.part === words[from]?.part; at--)
    if (isCan(words, at)) return true;
  return false;
};
