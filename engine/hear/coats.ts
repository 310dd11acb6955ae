import { entryOf } from '../plain/entry-of.ts';
import {
  COAT,
  type Count,
  countBefore,
  countDone,
  countOf,
  countOn,
  countSoFar,
  isApplication,
  MOST_COATS,
  ORDINALS,
  partOf,
  timesLaid,
} from './coat-counts.ts';
import { isBegunAnew } from './coat-story.ts';
import type { HeardFact } from './heard.ts';
import { isLaying } from './laying.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import { isOfOthers } from './of-others.ts';
import { oneOf } from './one-of.ts';
import { numberAt } from './spans.ts';
import { DOUBTED, FOLLOWS, JUST } from './sure.ts';
import { isTopOrSheen } from './top-words.ts';
import type { Word } from './words.ts';

/** A layer below, which is no coat of the finish. */
const BELOW = /^(stain|stains|primer|dye|conditioner|filler)$/;
/** What a kind of finish is called, and which it may be. */
const KINDS: Readonly<Record<string, RegExp>> = {
  shellac: /^shellac$/,
  lacquer: /lacquer$/,
  oil: /^(oil|hardwax-oil|oil-based|wipe-on)$/,
  wax: /wax/,
};

/** "one coat of shellac, then lacquer": what was counted lies below. */
const isOfOtherKind = (named: string, family: string | undefined): boolean =>
  family !== undefined && entryOf(KINDS, named)?.test(family) === false;

/** Coats of paint: they count only where no clear coat is told of. */
const PAINT = /^(paint|latex|chalk|chalky|milk|color|whites?)$/;
/** Coats that are wanted and not laid. */
const WANTED = /^(wanted|planned|left|needed|recommended|more|quoted)$/;
const WANTING =
  /^(need|needs|needed|lack|lacks|want|wants|wanted|quoted|recommends?|says?|plan|planned|require|requires|meaning|intending|intend|aim|aiming)$/;
/** What is done as a rule, or asked to be enough. */
const USUALLY = /^(usually|normally|typically|generally|enough)$/;
/** What "the second" is of, where it is no coat. */
const NOT_SAID_OF =
  /^(hand|time|times|man|day|days|week|thought|thoughts|floor|half|of|color|paint|stain|text|piece|one|try|night|i|we|it|they|he|she|thing|attempt|month|year|door|side)$/;
/** What a coat that was named by its number alone does: "the third is sticky", "after the second I saw". */
const DOES =
  /^(i|we|is|was|has|have|had|went|came|dried|did|on|and|now|still|looks?|looked|gave|took|started|got|feels?|felt|turned|cracked|bubbled|wrinkled|never|wont|in|dries|drying|cures|sits|sat|lies)$/;

const asMatch = (from: number, to: number): Match => ({ sense: '', kind: '', of: [], from, to, size: 2 });

/** Whether a word opens a clause or a part between commas, "the" before it not counted. */
const beginsClause = (words: readonly Word[], at: number): boolean => {
  const opens = (index: number) =>
    words[index - 1] === undefined ||
    words[index - 1]?.clause !== words[index]?.clause ||
    words[index]?.comma === true;
  return opens(at) || (/^(the|then|in|a|my)$/.test(words[at - 1]?.word ?? '') && opens(at - 1));
};

const isPlanned = (words: readonly Word[], from: number, to: number): boolean =>
  words.slice(from, to).some((word) => word.clause === words[from]?.clause && WANTED.test(word.word));

const LABEL = oneOf('can|label|tin|directions|instructions');
const SAYS = oneOf('says|say|said|calls|recommends|recommend');

/** "the can says light sweeping coats, three coats": what the label asks for is not laid yet. */
const isOfLabel = (words: readonly Word[], at: number): boolean => {
  const { clause } = words[at] ?? {};
  for (let back = at - 1; back > 0 && words[back]?.clause === clause; back--)
    if (SAYS.test(words[back]?.word ?? '') && LABEL.test(words[back - 1]?.word ?? '')) return true;
  return false;
};

/** Coats told together: "two coats …, then two more on" are four. */
const moreOf = (ear: Ear, words: readonly Word[], at: number): number | undefined => {
  const more = words[at];
  if (more?.word !== 'more') return undefined;
  const after = words[at + 1];
  if (
    after &&
    !COAT.test(after.word) &&
    !/^(on|over|of|since|later|each|whites?|the|next|that|today|yesterday|this|after|with)$/.test(
      after.word,
    ) &&
    after.part === more.part
  )
    return undefined;
  if (ear.units.has(after?.word ?? '')) return undefined;
  const count = numberAt(ear, words[at - 1]);
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 6 ? count : undefined;
};

const LAYING = /^(brushed|rolled|sprayed|wiped|applied|put|added|laid)$/;

/** What is done to a coat. */
const WORKED = /^(thinned|sanded|scuffed|brushed|rolled|sprayed|wiped|applied|laid)$/;

/** "I put on another this morning": a coat, though it is not named. */
const isOneMoreOn = (words: readonly Word[], at: number): boolean => {
  const [here, after] = [words[at], words[at + 1]];
  if (here?.word !== 'another' || !LAYING.test(words[at - 2]?.word ?? '') || words[at - 1]?.word !== 'on')
    return false;
  return (
    after?.part !== here.part || /^(this|last|yesterday|today|after|over|and|the|then|on)$/.test(after.word)
  );
};

const ONE_MORE = oneOf('another|new|a');

/** "another coat", "a new coat", "brushed a coat": one more was laid, if it is neither asked nor planned. */
const isAnother = (words: readonly Word[], manner: Manner, at: number): boolean => {
  const here = words[at];
  if (!here || here.asks || !ONE_MORE.test(here.word)) return false;
  const before = words[at - 1];
  if (isOneMoreOn(words, at)) return !manner.notYet(asMatch(at, at + 1));
  if (here.word === 'a' && !(before?.part === here.part && LAYING.test(before.word))) return false;
  if (before?.part === here.part && /^(before|add|need|needs|than|for|every|after)$/.test(before.word))
    return false;
  return (
    words.slice(at + 1, at + 3).some((next) => /^(coat|layer)$/.test(next.word) && next.part === here.part) &&
    !manner.notYet(asMatch(at, at + 1)) &&
    manner.denied(asMatch(at, at + 1)) === undefined
  );
};

/** Whether an ordinal stands for a coat: it begins a clause, or does what a coat does. */
const isCoat = (words: readonly Word[], at: number): boolean => {
  const [before, here, after] = [words[at - 1], words[at], words[at + 1]];
  // "after the second one there are patches"
  if (after?.word === 'one')
    return (
      words[at + 2]?.part !== here?.part ||
      DOES.test(words[at + 2]?.word ?? '') ||
      /^(this|last|yesterday|around|at|about|by|with|before|after)$/.test(words[at + 2]?.word ?? '')
    );
  if (NOT_SAID_OF.test(after?.word ?? '') && !(after?.word === 'i' && before?.part === here?.part))
    return false;
  // "a second coat the next day, buffed on the third"
  if (
    before?.word === 'the' &&
    words[at - 2]?.word === 'on' &&
    words.some(({ word, from }) => word === 'day' && from < (here?.from ?? 0))
  )
    return false;
  if (beginsClause(words, at)) return true;
  // "put a third on", "laid a seventh last night"
  if (before?.word === 'a' && LAYING.test(words[at - 2]?.word ?? '')) return true;
  // "thinned the second a little"
  if (before?.word === 'the' && WORKED.test(words[at - 2]?.word ?? '')) return true;
  // "waiting for the fourth to harden"
  const isToDry = after?.word === 'to' && /^(dry|harden|cure|set)$/.test(words[at + 2]?.word ?? '');
  return (
    before?.part === here?.part &&
    /^(the|my)$/.test(before?.word ?? '') &&
    (after?.part !== here?.part || isToDry || DOES.test(after?.word ?? ''))
  );
};

/**
 * Which coat this is: the highest that is told as laid, with what was laid on it later. Where no top coat is named at
 * all, the coats of paint are meant.
 */
export const coatNumberOf = (
  ear: Ear,
  words: readonly Word[],
  manner: Manner,
  isTopNamed: boolean,
  /** The kind of finish that is taken as told. */
  family: string | undefined,
): HeardFact[] => {
  const found: Count[] = [];
  const add = (count: Count | undefined, from: number, to: number): boolean => {
    if (!count || count.low < 1 || count.high > MOST_COATS || !Number.isInteger(count.high)) return false;
    if (manner.notYet(asMatch(from, to)) || isPlanned(words, to, to + 2)) return false;
    if (isOfOthers(words, from, to) || isOfLabel(words, from)) return false;
    const before = partOf(words, from, from - 4, from);
    if (before.slice(-3).some((word) => word.word === 'before')) return false;
    if (before.some((word) => WANTING.test(word.word))) return false;
    const own = partOf(words, from, from - 15, from + 15);
    if (own.some(({ word }) => USUALLY.test(word))) return false;
    found.push(count);
    return true;
  };
  const coats = words.flatMap(({ word }, at) => (COAT.test(word) || isApplication(words, at) ? [at] : []));
  const laid = coats.filter((at) => words[at - 1]?.word !== 'more');
  const [firstCoat = Number.POSITIVE_INFINITY] = coats;
  words.forEach((word, at) => {
    const after = words[at + 1];
    if (COAT.test(word.word) || isApplication(words, at)) {
      const said = words
        .slice(at + 1, at + 5)
        .filter((next) => next.clause === word.clause && next.part === word.part);
      const before = countBefore(ear, words, at);
      const counted = partOf(words, at, at - 4, at).filter(({ from }) => before && from >= before.span.from);
      const all = [...counted, ...said];
      // "coats of paint and two of clear" tells of paint, "coats of clear over the stain" of none.
      // "two coats of oil stain" are of stain
      const named = all.findIndex((one) => BELOW.test(one.word) || PAINT.test(one.word) || isTopOrSheen(one));
      const kind = BELOW.test(all[named + 1]?.word ?? '') ? all[named + 1] : all[named];
      const first = kind?.word ?? '';
      const isSealer = kind && first === 'sealer' && all[all.indexOf(kind) - 1]?.word === 'sanding';
      if (BELOW.test(first) || isSealer || isOfOtherKind(first, family)) return;
      const ofPaint = PAINT.test(first);
      // "from one coat to the next", "cover in one coat"
      const idiom = before?.high === 1 && /^(to|at)$/.test(after?.word ?? '');
      // "three coats a day" goes on for days
      const eachDay =
        (before?.high ?? 0) > 1 &&
        !ORDINALS.test(words[at - 1]?.word ?? '') &&
        after?.part === word.part &&
        /^(a|per|each|every) (day|night|week|session)$/.test(`${after?.word} ${words[at + 2]?.word}`);
      if (before && !idiom && !eachDay) add({ ...before, ofPaint }, at, at + 1);
      // "coat number four"
      const told = after?.word === 'number' ? words[at + 2] : after;
      const number = told?.clause === word.clause ? numberAt(ear, told) : undefined;
      const and = words[at + 2]?.word === 'and' ? numberAt(ear, words[at + 3]) : undefined;
      const high = Math.max(number ?? 0, and ?? 0);
      if (
        number !== undefined &&
        !/^(a|an|half)$/.test(told?.word ?? '') &&
        word.word !== 'layer' &&
        (told !== after || !ear.units.has(words[at + 2]?.word ?? ''))
      )
        add(
          {
            low: high,
            high,
            sure: FOLLOWS,
            span: { from: word.from, to: (and ? words[at + 3] : told)?.to ?? word.to },
            ofPaint,
          },
          at,
          at + 2,
        );
      // "a coat of clear", the only one told of
      const one = words[at - 1]?.word ?? '';
      const a = one === 'a' || (words[at - 2]?.word === 'a' && !/^(final|last|new|fresh|next)$/.test(one));
      if (laid.length === 1 && a && !before && after?.word === 'of' && (isTopOrSheen(kind) || ofPaint))
        add({ low: 1, high: 1, sure: JUST, span: { from: word.from, to: after.to }, ofPaint }, at, at + 1);
      return;
    }
    if (at < firstCoat && word.word !== 'x') {
      add(countSoFar(ear, words, at) ?? countDone(ear, words, at), at, at + 1);
      // "I am on my fourth and it is dull"
      const onMine = words[at - 1]?.word === 'my' && words[at - 2]?.word === 'on';
      if (ORDINALS.test(word.word) && onMine && isCoat(words, at)) {
        const count = ear.numbers.get(word.word) ?? 0;
        add({ low: count, high: count, sure: JUST, span: { from: word.from, to: word.to } }, at, at + 1);
      }
      return;
    }
    const of = countOf(ear, words, at);
    // "several of shellac, then one coat of lacquer"
    const kind = of && words.findLast(({ to }) => to === of.span.to);
    if (kind && isOfOtherKind(kind.word, family)) return;
    const sum = found.at(-1);
    // "coats two and three of poly" are three, and not five
    const isApart = of && sum && of.span.from >= sum.span.to;
    if (isApart && words[at - 1]?.word === 'and' && !of.ofPaint === !sum.ofPaint) {
      found.push({ ...of, low: sum.low + of.low, high: sum.high + of.high });
      return;
    }
    add(of ?? countOn(ear, words, at) ?? countSoFar(ear, words, at) ?? countDone(ear, words, at), at, at + 1);
    if (ORDINALS.test(word.word) && isCoat(words, at)) {
      const count = ear.numbers.get(word.word) ?? 0;
      add({ low: count, high: count, sure: FOLLOWS, span: { from: word.from, to: word.to } }, at, at + 1);
    }
  });
  words.forEach((_, at) => {
    add(timesLaid(ear, words, at), at, at + 1);
  });
  // What was laid before all was taken off counts no more.
  const anew = words.findLast((_, at) => isBegunAnew(words, at));
  const since = found.filter(({ span }) => anew && span.from > anew.from);
  if (since.length) found.splice(0, found.length, ...since);
  const clear = found.filter(({ ofPaint }) => !ofPaint);
  const some = words.filter((_, at) => isAnother(words, manner, at));
  // "I put the gloss on, then another coat": two, though no number is told.
  const [again] = found.length ? [] : some.filter(({ word }) => word === 'another');
  if (again && isTopNamed)
    return [
      {
        fact: 'coat-number',
        value: 2,
        range: [2, 2 + some.length],
        // "I put the gloss on, then another coat"
        sure: words.some((word, at) => word.from < again.from && isLaying(words, at)) ? JUST : DOUBTED,
        rests: [{ from: again.from, to: again.to }],
        against: [],
      },
    ];
  const [most] = (clear.length || isTopNamed ? clear : found).sort(
    (a, b) => b.high - a.high || b.sure - a.sure,
  );
  if (!most) return [];
  const later = words.flatMap((word, at) =>
    word.from >= most.span.to && !manner.notYet(asMatch(at, at + 1)) ? (moreOf(ear, words, at) ?? []) : [],
  );
  const extra = later.reduce((sum, count) => sum + count, 0);
  const others = some.filter(({ from }) => from >= most.span.to).length;
  const [low, high] = [most.low + extra, most.high + extra + others];
  if (high > MOST_COATS) return [];
  return [
    {
      fact: 'coat-number',
      value: others ? high : Math.round((low + high) / 2),
      range: [low, Math.min(MOST_COATS, high + (others > 0 ? 1 : 0))],
      sure: extra || others ? Math.min(most.sure, FOLLOWS) : most.sure,
      rests: [most.span],
      against: found.filter((one) => one.high !== most.high).map(({ span }) => span),
    },
  ];
};
