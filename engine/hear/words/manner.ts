import type { Ear, Match } from './match.ts';
import { oneOf } from './one-of.ts';
import type { Word } from './words.ts';

/** How a stretch of text is said. */
export type Manner = {
  /** Denied: "no bubbles", "it isn't sticky". */
  readonly denied: (match: Match) => number | undefined;
  /** Asked, wished or planned: no fact. */
  readonly notYet: (match: Match) => boolean;
  /** Feared or guarded against: no sign either. */
  readonly feared: (match: Match) => boolean;
  /** Over and gone by the time of writing. */
  readonly over: (match: Match) => boolean;
};

/** Words that a denial reaches over. */
const REACH = 5;
/** A list ("no bubbles, runs or sags") is reached over further. */
const LIST_REACH = 9;

/** "Spray instead?" asks; a longer question may well tell. */
const SHORT_QUESTION = 5;

const covers = (matches: readonly Match[], at: number): boolean =>
  matches.some(({ from, to }) => from <= at && at < to);

const ANEW = oneOf('the|my|our|a|i|it|its|we|he|she|this|now|then|there');

/** "no breeze and the shellac sets": what stands behind such an "and" is told, not denied. */
const isToldAnew = (words: readonly Word[], from: number, to: number): boolean =>
  words
    .slice(from + 1, to)
    .some(({ word }, at, between) => word === 'and' && ANEW.test((between[at + 1] ?? words[to])?.word ?? ''));

/** "I have to redo doors that were lacquered last year": what stands behind such a "that" has been done. */
const isToldOfThing = (words: readonly Word[], from: number, to: number): boolean =>
  words.slice(from, to).some(
    ({ word }, at, between) =>
      (/^(that|which)$/.test(word) &&
        /^(was|were|had|got|has|have|i|we|he|she|they)$/.test((between[at + 1] ?? words[to])?.word ?? '')) ||
      // "can I sleep where the bed was lacquered"
      (word === 'where' && between.slice(at).some((one) => /^(was|were|had)$/.test(one.word))),
  );

/** "what the sun doesn't reach is sticky": what it is stands behind what is denied. */
const isToldOfRest = (words: readonly Word[], at: number, from: number): boolean =>
  at + 2 < from &&
  /^(doesnt|dont|didnt|cant|couldnt)$/.test(words[at]?.word ?? '') &&
  /^(is|are|was|were)$/.test(words[at + 2]?.word ?? '');

const isListed = (words: readonly Word[], at: number, from: number, clause: number): boolean =>
  words.slice(at, from + 4).some((word) => word.clause === clause && /^(or|nor)$/.test(word.word));

/** "the plan is to sand it and then put on wax": such a "then" goes on with what was begun. */
const isSameList = (words: readonly Word[], at: number, from: number): boolean =>
  words[at]?.sentence === words[from]?.sentence &&
  words
    .slice(at + 1, from + 1)
    .every(
      ({ word, clause }, index) =>
        clause === words[at + index]?.clause || (word === 'then' && words[at + index]?.word === 'and'),
    );

const REPAIR = oneOf('fix|remove|repair|clean|stop|hide|save|correct|lighten|dissolve|rid');
const OUT = oneOf('out|off|rid');

/** "How do I fix", "can I get it out of": what is asked is the repair; what it is done to is told. */
const isOfRepair = (words: readonly Word[], { from, to }: Match): boolean => {
  const asks = words.slice(from, to).some(({ word }) => /^(i|we|you)$/.test(word));
  const [first, ...after] = words.slice(to, to + 6).filter(({ clause }) => clause === words[from]?.clause);
  if (!asks || !first) return false;
  return (
    REPAIR.test(first.word) || (/^(get|take)$/.test(first.word) && after.some(({ word }) => OUT.test(word)))
  );
};

/** "Back in May I went round it" */
const isMonth = (words: readonly Word[], { from }: Match): boolean =>
  words[from]?.word === 'may' && /^(in|since|of|last|late|early|by|until)$/.test(words[from - 1]?.word ?? '');

/** "I hope you can help, it is still sticky": what is hoped ends at the comma. */
const isHopeApart = (words: readonly Word[], hope: Match, { from }: Match): boolean =>
  words[hope.from]?.word.startsWith('hop') === true && words[hope.from]?.part !== words[from]?.part;

const FILLS = oneOf(
  'it|them|him|her|you|me|us|this|that|not|also|just|really|now|still|only|even|first|maybe|is|was|going|about|thinking|like|love|want|wants|need|needs|ready|rather|able|tempted|best|how',
);

/** "need it to dry" wants something; "need a scraper to", "has been tacky to", "the can, I" do not. */
const isOneCue = (words: readonly Word[], { from, to, size }: Match): boolean => {
  if (to - from === size) return true;
  const after = words.slice(from + 1, to);
  if (after.some(({ comma }) => comma)) return false;
  return after.at(-1)?.word !== 'to' || after.slice(0, -1).every(({ word }) => FILLS.test(word));
};

/** Reads how the phrases of a text are said. */
export const mannerOf = (ear: Ear, words: readonly Word[], matches: readonly Match[]): Manner => {
  const cue = (name: string) => matches.filter(({ sense }) => sense === `cue ${name}`);
  // "not an antique, only old" denies
  const idioms = cue('not-denying').filter(
    ({ from, to }) => !words.slice(from + 1, to).some(({ comma }) => comma),
  );
  const notYet = cue('not-yet').filter(
    (one) => !isOfRepair(words, one) && !isMonth(words, one) && isOneCue(words, one),
  );
  const feared = cue('feared');
  const over = cue('is-over');
  /** Clauses of what was; looked up once a text, and only where something is over at all. */
  let ofThen: ReadonlySet<number> | undefined;
  const wasIn = (clause: number): boolean => {
    ofThen ??= new Set(words.flatMap((word) => (ear.was.has(word.word) ? [word.clause] : [])));
    return ofThen.has(clause);
  };
  const denials = words.flatMap((word, at) => (ear.not.has(word.word) && !covers(idioms, at) ? [at] : []));
  /** Words beyond it, or before it, belong to another sentence: only so many are looked at. */
  const isShortQuestion = ({ from }: Match): boolean => {
    const { sentence, asks } = words[from] ?? {};
    const near = words.slice(Math.max(0, from - SHORT_QUESTION), from + SHORT_QUESTION + 1);
    return asks === true && near.filter((word) => word.sentence === sentence).length <= SHORT_QUESTION;
  };
  const inClauseBefore = (cues: readonly Match[], { from }: Match): boolean =>
    cues.some(
      (one) =>
        one.from <= from &&
        (words[one.from]?.clause === words[from]?.clause || isSameList(words, one.from, from)) &&
        !isToldOfThing(words, one.to, from),
    );
  return {
    denied: ({ from, to }) => {
      const clause = words[from]?.clause ?? -1;
      if (words[to]?.word === 'free' && words[to]?.clause === clause) return to;
      return denials.findLast((at) => {
        if (at >= from || words[at]?.clause !== clause || from - at > LIST_REACH) return false;
        if (isToldAnew(words, at, from) || isToldOfRest(words, at, from)) return false;
        const comma = words.slice(at + 1, from + 1).some((word) => word.comma);
        if (comma) return from - at <= LIST_REACH && isListed(words, at, from, clause);
        return from - at <= REACH;
      });
    },
    notYet: (match) => inClauseBefore(notYet, match) || isShortQuestion(match),
    feared: (match) =>
      inClauseBefore(
        feared.filter((one) => !isHopeApart(words, one, match)),
        match,
      ),
    over: (match) => {
      if (!over.length) return false;
      const { sentence = -1, clause = -1 } = words[match.from] ?? {};
      return over.some((one) => {
        const there = words[one.from]?.sentence ?? -1;
        if (one.from < match.to) return false;
        return there === sentence || (there === sentence + 1 && wasIn(clause));
      });
    },
  };
};
