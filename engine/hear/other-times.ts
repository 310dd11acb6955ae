import { isLaying } from './laying.ts';
import type { Match } from './match.ts';
import { isNamedTop } from './place.ts';
import { TOP } from './top-words.ts';
import type { Word } from './words.ts';

/** What keeps in a can: how old it is tells nothing of a coat. */
const IN_THE_CAN = /^(can|cans|tin|tins|gallon|quart|jar|bottle|flakes|product|stuff|brush)$/;
const KEPT = /^(old|bought|got|opened|open|mixed|dissolved|kept|stored|made|used)$/;
const DAYS_ON_END = /^(every|each|between|apart|per)$/;
/** Things that stood or lay somewhere for a time. */
const STOOD =
  /^(stood|sat|sitting|standing|soak|soaked|lay|slept|watched|leave|heated|clamped|unopened|soaking|told|stirred|strained)$/;
/** What is set down on a table and forgotten there. */
const SET_DOWN =
  /^(glass|glasses|cup|cups|mug|mugs|towel|vase|plant|pot|pan|bottle|drink|beer|coffee|tea|plate|dish|bowl|pizza|kettle|iron|laptop|candle|coaster|pumpkin)$/;
/** The days over which several coats were laid. */
const OVER = /^(over|within|across|in)$/;

/** What somebody does for years, or waits for. */
const IN_LIFE =
  /^(business|experience|doing|using|working|trade|woodworking|woodworker|career|professional|hobby|retired|married|pregnant|smoked|smoker|smokers|smoking|lived|painter|finisher|usually|normally|typically|generally|guarantee|warranty)$/;
const OFTEN_DONE =
  /^(used|made|sprayed|brushed|refinished|built|sold|painted|stained|finished|done|varnished)$/;
const RAW = /^(wood|boards?|lumber|slabs?|logs?|timber|planks?)$/;
const SEASONED = /^(drying|dried|seasoned|seasoning|stored|stacked|kiln)$/;
/** Whose age may be told beside a piece. */
const PERSON =
  /^(son|daughter|boy|girl|kid|kids|toddler|child|baby|grandson|granddaughter|niece|nephew|dog|cat|he|she|im|husband|wife|mother|father|man|woman|guy)$/;
/** What has an age that tells of its finish. */
const THING =
  /^(tables?|desk|dresser|chest|cabinets?|cabinetry|chairs?|floors?|flooring|doors?|furniture|pieces?|piano|bench|house|home|finish|coats?|top|oak|cherry|maple|walnut|pine|mahogany|teak|fir|coffee|dining|kitchen|bed|crib|bookcase|shelf|shelves|deck|boat|sideboard|buffet|hutch|armoire|wardrobe|nightstand|stool|trim|wood|wooden|veneer|set|counter|countertops?|worktops?|stairs?|paneling|box|painted|varnished|hardwood|rental|building)$/;

/** "my 3 year old": an age that is no thing's. */
const isOfPerson = (words: readonly Word[], from: number, to: number): boolean => {
  const old = words.findIndex(({ word }, at) => at >= from && at <= to && word === 'old');
  const { part } = words[old] ?? {};
  const near = (start: number, end: number) =>
    words.slice(Math.max(0, start), end).filter((word) => word.part === part);
  const year = words[old - 1]?.word;
  const one = /^(a|one)$/.test(words[from]?.word ?? '');
  if (
    !one &&
    /^(year|month|week|day)$/.test(year ?? '') &&
    !near(old + 1, old + 4).some(({ word }) => THING.test(word))
  )
    return true;
  return near(from - 5, from).some(({ word }) => PERSON.test(word));
};

/** "… I put on the second coat": somebody lays in what follows in the clause. */
const layNext = (words: readonly Word[], to: number): boolean => {
  const { clause } = words[to] ?? {};
  const who = words.findIndex(
    (word, at) => at >= to && at < to + 2 && /^(i|we|he|she|they)$/.test(word.word),
  );
  return (
    who >= 0 &&
    words.slice(who, who + 5).some((word, at) => word.clause === clause && isLaying(words, who + at))
  );
};

/** What a layer does that is seen long after it was laid. */
const SEEN_OF =
  /^(came|comes|coming|peel\w*|chip\w*|flak\w*|lift\w*|bled|bleed\w*|bubbl\w*|crack\w*|smear\w*|rub\w*|wip\w*|show\w*)$/;
const LAYER_REACH = 6;

const OLD = /^(old|original|existing|previous)$/;

/** "A fresh coat, and it bubbled. I laid that old finish 15 years ago": the time of what lies below. */
const isOfOldFilm = (words: readonly Word[], from: number): boolean => {
  const before = words.slice(Math.max(0, from - 8), from).filter(({ part }) => part === words[from]?.part);
  const old = before.some(({ word }, at) => OLD.test(word) && TOP.test(before[at + 1]?.word ?? ''));
  return (
    old &&
    words.some(
      ({ word }, at) =>
        /^(fresh|new|another)$/.test(word) && /^(coat|coats|layer)$/.test(words[at + 1]?.word ?? ''),
    )
  );
};

/** "The one at our old house was different": what is told next in that sentence is of another piece. */
const isElsewhere = (words: readonly Word[], from: number): boolean => {
  const before = words.slice(0, from).filter(({ sentence }) => sentence === words[from]?.sentence);
  const said = before.map(({ word }) => word).join(' ');
  return /\b(at|in) (our|my|their|the) (old|last|previous|former|other) (house|home|place|apartment|flat|kitchen) (was|were|had|did|looked)\b/.test(
    said,
  );
};
const NEAR = 5;

/** Whether the time at word `from` is of something else: the can's own time, a time between coats, or another layer's. */
export const isElse = (
  words: readonly Word[],
  matches: readonly Match[],
  from: number,
  to: number,
): boolean => {
  const { clause, sentence, part } = words[from] ?? {};
  const isOfPart = (word: Word | undefined) => word?.part === part;
  // "two weeks of waiting, as they recommend": what the can says was done.
  const isDone =
    /^(waiting|drying|curing)$/.test(words[to + 1]?.word ?? '') &&
    words.some(({ word }, at) => isOfPart(words[at]) && at > to && word === 'as');
  if (!isDone && matches.some((one) => one.sense === 'cue other-time' && isOfPart(words[one.from])))
    return true;
  const beside = words.slice(Math.max(0, from - 2), to + 2).filter(isOfPart);
  if (beside.some((word) => DAYS_ON_END.test(word.word))) return true;
  const before = words.slice(Math.max(0, from - 12), from).filter(isOfPart);
  if (before.some(({ word }) => /^(tape|taped|masked)$/.test(word))) return true;
  // "laid a hot pan on it for a minute", but "laid it on last night"
  const stood = before.some(
    ({ word }, at) =>
      STOOD.test(word) || (word === 'laid' && /^(a|an|the|my|our|some)$/.test(before[at + 1]?.word ?? '')),
  );
  // "a wet glass stood on the poly for 3 hours": the film is where it stood.
  const isWhere = (at: number) =>
    before.slice(Math.max(0, at - 2), at).some(({ word }) => /^(on|over|atop|against)$/.test(word));
  // "sat six days after the last coat", "it sat for months": the film itself was left.
  const ofLast =
    /^(after|since)$/.test(words[to]?.word ?? '') &&
    words.slice(to + 1, to + 4).some(({ word }) => /^(last|final)$/.test(word));
  const itself =
    before.some(
      ({ word }, at) => /^(sat|stood)$/.test(word) && /^(it|they)$/.test(before[at - 1]?.word ?? ''),
    ) && !words.some(({ word }) => SET_DOWN.test(word) || IN_THE_CAN.test(word));
  if (stood && !ofLast && !itself && !before.some((word, at) => TOP.test(word.word) && !isWhere(at)))
    return true;
  // "left a wet glass on it overnight", "set a hot mug down this morning": the time is the glass's.
  const setDown = before.findIndex(({ word }) =>
    /^(left|set|put|forgot|forgotten|spilled|spilt|parked)$/.test(word),
  );
  if (setDown >= 0 && before.slice(setDown).some(({ word }) => SET_DOWN.test(word))) return true;
  // "what I set down for ten minutes sticks"
  if (before.some(({ word }, at) => /^(put|set|pressed)$/.test(word) && before[at + 1]?.word === 'down'))
    return true;
  if (OVER.test(before.at(-1)?.word ?? '') && before.some(({ word }) => /^coats?$/.test(word))) return true;
  const after = words.slice(to, to + NEAR).filter((word) => word.clause === clause);
  const [next] = after;
  if (isOfOldFilm(words, from) || isElsewhere(words, from)) return true;
  // "4 hours after the first"
  if (
    next?.word === 'after' &&
    after.slice(1, 4).some(({ word }) => /^(first|previous|stain|primer|staining|priming)$/.test(word))
  )
    return true;
  // "24 hours till the next coat", "an hour between"; but "a week before we used it" was waited
  const isUsed = after.slice(1, 4).some(({ word }) => /^(used|use|moved|loaded|touched|ate)$/.test(word));
  if (/^(till|until|before|between)$/.test(next?.word ?? '') && !isUsed) return true;
  // "one coat a day"
  const [last] = words.slice(from - 1, from);
  if (
    words[from]?.word === 'a' &&
    /^(one|two|three|once|twice|coats?|\d+)$/.test(last?.word ?? '') &&
    last?.part === part
  )
    return true;
  // "after 12 hours I put on the second", "dried in 4 hours"
  if (before.at(-1)?.word === 'after' && layNext(words, to)) return true;
  // "wiped off after fifteen minutes"
  const wiped = before.some(({ word }) => /^(wiped|wiping|buffed|buffing|rubbed)$/.test(word));
  if (before.at(-1)?.word === 'after' && wiped && /^min/.test(words[to - 1]?.word ?? '')) return true;
  const dries =
    before.slice(-4).some(({ word }) => /^(dried|dry|dries|hard|sets?)$/.test(word)) &&
    !before.some(({ word }) => /^(not|never|hasnt|havent|didnt|wont)$/.test(word));
  if (before.at(-1)?.word === 'in' && dries) return true;
  // "20 years of poly" is what somebody knows; "ten year old can" is what the can is.
  if (
    next?.word === 'of' &&
    !/^(use|drying|dry|hard|waiting|curing|cure|brushing|rolling|spraying|wiping|applying|coating|pouring|laying|rest|resting)$/.test(
      after[1]?.word ?? '',
    )
  )
    return true;
  const can = [...before, ...after.slice(0, 3)].some((word) => IN_THE_CAN.test(word.word));
  const aged = words.slice(from, to + 1).some((word) => word.word === 'old');
  const used = words.some((word) => word.clause === clause && /^(used|using)$/.test(word.word));
  if (aged && (can || used || isOfPerson(words, from, to))) return true;
  const own = words.slice(Math.max(0, from - 25), to + 25).filter(isOfPart);
  if (own.some(({ word }) => IN_THE_CAN.test(word)) && own.some(({ word }) => KEPT.test(word))) return true;
  // "is 24 hours enough", "needs a week", "another two days"
  if (next?.word === 'enough' && next.part === part) return true;
  // "let it cure a month" was waited for
  const isLeft = before.some(({ word }) => /^(let|left|gave)$/.test(word));
  if (
    !isLeft &&
    /^(needs?|takes?|took|another|wait|give|cures?|requires?|lasts?|next)$/.test(before.at(-1)?.word ?? '')
  )
    return true;
  // "I have used it for years" is what somebody knows.
  const long = words.slice(from, to).some(({ word }) => /^(years?|yrs?|decades?)$/.test(word));
  if (
    long &&
    own.some(({ word }) => /^(ive|weve|i|we)$/.test(word)) &&
    own.some(({ word }) => OFTEN_DONE.test(word)) &&
    own.some(({ word }) => word === 'for')
  )
    return true;
  // "the wood had been drying in my shed for three years"
  if (own.some(({ word }) => RAW.test(word)) && own.some(({ word }) => SEASONED.test(word))) return true;
  if (own.some((word) => IN_LIFE.test(word.word))) return true;
  // "never had this in 20 years"
  if (
    own.some(({ word }) => word === 'never') &&
    own.some(({ word }) => /^(had|seen|did|happened|saw|heard)$/.test(word))
  )
    return true;
  const isTopNamed = matches.some((match) => isNamedTop(words, match));
  // Where no top coat is named the paint is it, and "primed and painted two years ago" is of the paint.
  const isPainted = words.some((word) => word.sentence === sentence && /^(painted|paint)$/.test(word.word));
  const isSoft = matches.some(
    ({ kind, of, from: at }) =>
      kind === 'fact' && (of[0] === 'overdue' || of[1] === 'setting') && words[at]?.sentence === sentence,
  );
  const isTheCoat = ({ word }: Word): boolean =>
    !isTopNamed && (isSoft || /^paint/.test(word) || (isPainted && /^prim/.test(word)));
  const layers = matches.filter((one) => {
    const layer = words[one.from];
    return (
      one.sense === 'cue other-layer' &&
      layer !== undefined &&
      layer.sentence === sentence &&
      one.from !== from &&
      !isTheCoat(layer) &&
      // "an hour ago it went milky over the brown paint" tells where
      !(one.from > to && words.slice(to, one.from).some(({ word }) => /^(over|under|beneath)$/.test(word))) &&
      // "next morning the paint came off" tells of no laying
      !SEEN_OF.test(words[one.to]?.word ?? '')
    );
  });
  if (!layers.length) return false;
  // "over the glaze, which had dried a day"
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
        TOP.test(word.word) &&
        !layers.some((one) => at >= one.from - 1 && at <= one.to),
    );
  return (
    afterLayer ||
    (layers.some((one) => isOfPart(words[one.from])) && !hasTop(isOfPart)) ||
    (layers.some((one) => one.from < from) && !hasTop((word) => word.sentence === sentence))
  );
};
