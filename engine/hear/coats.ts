import { entryOf } from '../entry-of.ts';
import { FACTS } from '../model/facts.ts';
import { isBegunAnew } from './coat-story.ts';
import type { HeardFact } from './heard.ts';
import { isLaying } from './laying.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import { isOfOthers } from './of-others.ts';
import { numberAt } from './spans.ts';
import { FOLLOWS, JUST, PLAINLY, SAID } from './sure.ts';
import { TOP_OR_SHEEN } from './top-words.ts';
import type { Span, Word } from './words.ts';

const ORDINALS =
  /^(?:1st|2nd|3rd|\d{1,2}th|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth)$/;
const COAT = /^(coats?|layers?)$/;
/** "four applications of oil", "the third round of poly", "3 passes" */
const isApplication = (words: readonly Word[], at: number): boolean => {
  const { word = '', part } = words[at] ?? {};
  if (!/^(applications?|rounds?|go|goes|pass|passes|helpings?)$/.test(word)) return false;
  const of = words[at + 1];
  const before = words[at - 1];
  if (of?.part === part && of?.word === 'of' && words[at + 2]?.word !== 'the')
    return words.slice(at + 2, at + 4).some((next) => next.part === part && TOP_OR_SHEEN.test(next.word));
  // "3 rounds", "round 3", and no "two passes with the sander"
  const isCounted =
    /^(rounds|passes|applications)$/.test(word) &&
    before?.part === part &&
    /^(\d{1,2}|two|three|four|five|six|thin|light|several|few|many|coats)$/.test(before?.word ?? '');
  const isNumbered = /^(round|pass|application)$/.test(word) && ORDINALS.test(before?.word ?? '');
  const isNth =
    word === 'round' && of?.part === part && /^(\d{1,2}|two|three|four|five|six)$/.test(of?.word ?? '');
  const isSanding = words.some(
    (one) =>
      one.part === part && /^(sander|sanding|sanded|paper|grit|pad|plane|strokes?|first)$/.test(one.word),
  );
  return word === 'applications' || ((isCounted || isNumbered || isNth) && !isSanding);
};

/** A layer below, which is no coat of the finish. */
const BELOW = /^(stain|stains|primer|dye|conditioner|filler)$/;
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
  /^(i|we|is|was|has|have|had|went|came|dried|did|on|and|now|still|looks?|looked|gave|took|started|got|feels?|felt|turned|cracked|bubbled|wrinkled|never|wont|in)$/;

const MOST_COATS = FACTS['coat-number'].max;

/** How many a word that names no number means: least and most. */
const VAGUE: Readonly<Record<string, readonly [number, number]>> = {
  several: [3, 7],
  few: [2, 5],
  multiple: [2, 6],
  many: [4, 10],
};

type Count = {
  readonly low: number;
  readonly high: number;
  readonly sure: number;
  readonly span: Span;
  readonly ofPaint?: boolean;
};

const asMatch = (from: number, to: number): Match => ({ sense: '', kind: '', of: [], from, to, size: 2 });

/** The count that stands before a word for coats at `at`: "three thin coats", "9 or 10 coats", "second coat". */
const countBefore = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  for (let back = 1; back <= 4; back++) {
    const there = words[at - back];
    if (!here || !there || there.clause !== here.clause) return undefined;
    const span = { from: there.from, to: here.to };
    // "the second of three coats": the first is meant
    const nth = words[at - back - 2];
    if (words[at - back - 1]?.word === 'of' && nth && ORDINALS.test(nth.word) && nth.clause === here.clause) {
      const count = ear.numbers.get(nth.word) ?? 0;
      return { low: count, high: count, sure: PLAINLY, span: { from: nth.from, to: here.to } };
    }
    if (ORDINALS.test(there.word)) {
      const count = ear.numbers.get(there.word) ?? 0;
      return { low: count, high: count, sure: PLAINLY, span };
    }
    if (there.word === 'more' || ear.units.has(there.word)) return undefined;
    // "how many coats", "too many coats"
    if (/^(how|too|so)$/.test(words[at - back - 1]?.word ?? '') && there.word === 'many') return undefined;
    const vague = entryOf(VAGUE, there.word);
    if (vague) return { low: vague[0], high: vague[1], sure: JUST, span };
    if (/^(a|an|half|another|next|each|every)$/.test(there.word)) continue;
    // "4 double coats"
    if (there.word === 'double' && numberAt(ear, words[at - back - 1]) !== undefined) continue;
    const number = numberAt(ear, there);
    if (number === undefined) continue;
    const isHalf =
      there.word === 'dozen' &&
      words.slice(Math.max(0, at - back - 2), at - back).some(({ word }) => word === 'half');
    const high = isHalf ? number / 2 : number;
    const or = words[at - back - 1];
    const first = /^(or|to)$/.test(or?.word ?? '') ? numberAt(ear, words[at - back - 2]) : undefined;
    const low = first !== undefined && first < high ? first : high;
    return { low, high, sure: PLAINLY, span };
  }
  return undefined;
};

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

/** "another coat", "a new coat", "brushed a coat": one more was laid, if it is neither asked nor planned. */
const isAnother = (words: readonly Word[], manner: Manner, at: number): boolean => {
  const here = words[at];
  if (!here || here.asks || !/^(another|new|a)$/.test(here.word)) return false;
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

const partOf = (words: readonly Word[], at: number, from: number, to: number): readonly Word[] =>
  words.slice(Math.max(0, from), to).filter(({ part }) => part === words[at]?.part);

/** "three of clear", "one of poly": the count of a top coat, where coats are spoken of. */
const countOf = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  // "poly x2"
  const times = here?.word === 'x' ? numberAt(ear, words[at + 1]) : undefined;
  if (
    here &&
    times !== undefined &&
    partOf(words, at, at - 3, at).some(({ word }) => TOP_OR_SHEEN.test(word) || /^poly/.test(word))
  )
    return {
      low: times,
      high: times,
      sure: FOLLOWS,
      span: { from: here.from, to: words[at + 1]?.to ?? here.to },
    };
  if (!here || words[at + 1]?.word !== 'of' || ORDINALS.test(here.word)) return undefined;
  const count = numberAt(ear, here);
  if (count === undefined || !Number.isInteger(count) || count > 12 || /^an?$/.test(here.word))
    return undefined;
  const named = partOf(words, at, at + 2, at + 5).find(
    ({ word }) => TOP_OR_SHEEN.test(word) || word === 'paint',
  );
  return (
    named && {
      low: count,
      high: count,
      sure: SAID,
      span: { from: here.from, to: named.to },
      ofPaint: named.word === 'paint',
    }
  );
};

/** "I have brushed on three so far", "eight or nine in all" */
const countSoFar = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  const last = words[at + 2];
  const after = `${words[at + 1]?.word} ${last?.word}`;
  if (!here || !last || !/^(so far|in all|in total|all told)$/.test(after) || ORDINALS.test(here.word))
    return undefined;
  const count = /^an?$/.test(here.word) ? undefined : numberAt(ear, here);
  const laid = words.some((word, index) => word.part === here.part && index < at && isLaying(words, index));
  return count !== undefined && (laid || after !== 'so far') && count <= MOST_COATS
    ? { low: count, high: count, sure: FOLLOWS, span: { from: here.from, to: last.to } }
    : undefined;
};

/** "three coats wanted, two on" */
const countOn = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const [here, on] = [words[at], words[at + 1]];
  if (!here || on?.part !== here.part) return undefined;
  // "two coats on the legs and four on the top"
  const and = words[at - 1]?.word === 'and' && on.word === 'on';
  if (!and && words[at + 2]?.part === here.part && !/^(now|so|already)$/.test(words[at + 2]?.word ?? ''))
    return undefined;
  if (!/^(on|down|done)$/.test(on.word) || ORDINALS.test(here.word)) return undefined;
  const count = numberAt(ear, here);
  return count === undefined || /^an?$/.test(here.word)
    ? undefined
    : { low: count, high: count, sure: SAID, span: { from: here.from, to: on.to } };
};

/** What a bare count is of: coats, though none is named: "I did two", "Six down", "mine has 4". */
const LAID_SO_MANY = /^(did|laid|on|have|has|got|count|counted|at|brushed|rolled|sprayed|wiped|used|put)$/;
const THIN_ONES = /^(thin|light|heavy|full|wet|thick|ones|now|so|already|down|by|and)$/;

const countDone = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const [before, here, after] = [words[at - 1], words[at], words[at + 1]];
  if (!here || ORDINALS.test(here.word) || /^(an?|half|one)$/.test(here.word)) return undefined;
  const count = numberAt(ear, here);
  if (count === undefined || !Number.isInteger(count) || count < 2 || count > MOST_COATS) return undefined;
  const found = { low: count, high: count, sure: JUST, span: { from: here.from, to: here.to } };
  const begins = before?.part !== here.part;
  // "Six down, and I can see brush marks"
  if (begins && after?.part === here.part && /^(down|done|on)$/.test(after.word))
    return after.word !== 'on' ||
      /^(|already|now|so)$/.test(words[at + 2]?.part === here.part ? (words[at + 2]?.word ?? '') : '')
      ? found
      : undefined;
  const ends = after?.part !== here.part;
  const ones = words.slice(at + 1, at + 3).some(({ word, part }) => part === here.part && word === 'ones');
  if (begins || !(LAID_SO_MANY.test(before?.word ?? '') || /^(it|them|mine)$/.test(before?.word ?? '')))
    return undefined;
  if (/^(did|count|counted|stopped)$/.test(before?.word ?? '') && (ends || THIN_ONES.test(after?.word ?? '')))
    return found;
  // "gave it two", "have put on 3"
  const gave =
    /^(gave|given)$/.test(words[at - 2]?.word ?? '') && /^(it|them|mine)$/.test(before?.word ?? '');
  const putOn = before?.word === 'on' && /^(put|laid|brushed|rolled|wiped)$/.test(words[at - 2]?.word ?? '');
  if (
    (gave || putOn) &&
    (ends || THIN_ONES.test(after?.word ?? '') || /^(wipes|goes|coats|more)$/.test(after?.word ?? ''))
  )
    return found;
  if (ones && isLaying(words, before?.word === 'on' ? at - 2 : at - 1)) return found;
  // "mine has 4"
  const mine = /^(mine|this|it)$/.test(words[at - 2]?.word ?? '');
  return mine && /^(has|got|have)$/.test(before?.word ?? '') && ends ? found : undefined;
};

/** "rubbed in oil four times", "oiled it twice" */
const timesLaid = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  // "brushed it a second time"
  if (here && ORDINALS.test(here.word) && words[at + 1]?.word === 'time' && words[at - 1]?.word === 'a') {
    const count = ear.numbers.get(here.word) ?? 0;
    const lays = partOf(words, at, at - 8, at).some((_, index, part) => isLaying(part, index));
    return lays && count > 1
      ? {
          low: count,
          high: count,
          sure: FOLLOWS,
          span: { from: here.from, to: words[at + 1]?.to ?? here.to },
        }
      : undefined;
  }
  const twice = here?.word === 'twice';
  if (!here || (!twice && words[at + 1]?.word !== 'times')) return undefined;
  const count = twice ? 2 : numberAt(ear, here);
  const before = Array.from({ length: 7 }, (_, back) => at - back - 1);
  const laid = before.some((index) => words[index]?.part === here.part && isLaying(words, index));
  return count !== undefined && laid
    ? {
        low: count,
        high: count,
        sure: FOLLOWS,
        span: { from: here.from, to: words[at + (twice ? 0 : 1)]?.to ?? here.to },
      }
    : undefined;
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
  return (
    before?.part === here?.part &&
    /^(the|my)$/.test(before?.word ?? '') &&
    (after?.part !== here?.part || DOES.test(after?.word ?? ''))
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
): HeardFact[] => {
  const found: Count[] = [];
  const add = (count: Count | undefined, from: number, to: number): boolean => {
    if (!count || count.low < 1 || count.high > MOST_COATS || !Number.isInteger(count.high)) return false;
    if (manner.notYet(asMatch(from, to)) || isPlanned(words, to, to + 2)) return false;
    if (isOfOthers(words, from, to)) return false;
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
      const all = [...counted, ...said].map((one) => one.word);
      // "coats of paint and two of clear" tells of paint, "coats of clear over the stain" of none.
      // "two coats of oil stain" are of stain
      const named = all.findIndex((one) => BELOW.test(one) || PAINT.test(one) || TOP_OR_SHEEN.test(one));
      const first = (BELOW.test(all[named + 1] ?? '') ? all[named + 1] : all[named]) ?? '';
      if (BELOW.test(first)) return;
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
          { low: high, high, sure: FOLLOWS, span: { from: word.from, to: told?.to ?? word.to }, ofPaint },
          at,
          at + 2,
        );
      // "a coat of clear", the only one told of
      const a = words[at - 1]?.word === 'a' || words[at - 2]?.word === 'a';
      if (laid.length === 1 && a && !before && after?.word === 'of' && (TOP_OR_SHEEN.test(first) || ofPaint))
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
    const sum = found.at(-1);
    if (of && sum && words[at - 1]?.word === 'and' && !of.ofPaint === !sum.ofPaint) {
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
        sure: JUST,
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
