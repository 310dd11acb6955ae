import { entryOf } from '../entry-of.ts';
import type { HeardFact } from './heard.ts';
import type { Manner } from './manner.ts';
import type { Ear, Match } from './match.ts';
import { numberAt } from './times.ts';
import type { Span, Word } from './words.ts';

const ORDINALS = /^(?:1st|2nd|3rd|4th|5th|6th|first|second|third|fourth|fifth|sixth)$/;
const COAT = /^(coats?|layers?)$/;
/** Another layer than the top coat. */
const ELSE = /^(stain|stains|paint|primer|latex|chalk|dye|color|whites?|conditioner)$/;
/** Coats that are wanted and not laid. */
const WANTED = /^(wanted|planned|left|needed|recommended|more|quoted)$/;
/** What "the second" is of, where it is no coat. */
const NOT_SAID_OF =
  /^(hand|time|times|man|day|days|week|thought|thoughts|floor|half|of|color|paint|stain|text|piece|one|try|night)$/;

/** How many a word that names no number means: least and most. */
const VAGUE: Readonly<Record<string, readonly [number, number]>> = {
  several: [3, 7],
  few: [2, 5],
  multiple: [2, 6],
  many: [4, 10],
};

type Count = { readonly low: number; readonly high: number; readonly sure: number; readonly span: Span };

const asMatch = (from: number, to: number): Match => ({ sense: '', kind: '', of: [], from, to, size: 2 });

/** The count that stands before a word for coats at `at`: "three thin coats", "9 or 10 coats", "second coat". */
const countBefore = (ear: Ear, words: readonly Word[], at: number): Count | undefined => {
  const here = words[at];
  for (let back = 1; back <= 4; back++) {
    const there = words[at - back];
    if (!here || !there || there.clause !== here.clause) return undefined;
    const span = { from: there.from, to: here.to };
    if (ORDINALS.test(there.word)) {
      const count = ear.numbers.get(there.word) ?? 0;
      return { low: count, high: count, sure: 0.85, span };
    }
    if (there.word === 'more' || ear.units.has(there.word)) return undefined;
    const vague = entryOf(VAGUE, there.word);
    if (vague) return { low: vague[0], high: vague[1], sure: 0.72, span };
    if (/^(a|an|half|another|next|each|every)$/.test(there.word)) continue;
    const high = numberAt(ear, there);
    if (high === undefined) continue;
    const or = words[at - back - 1];
    const first = /^(or|to)$/.test(or?.word ?? '') ? numberAt(ear, words[at - back - 2]) : undefined;
    const low = first !== undefined && first < high ? first : high;
    return { low, high, sure: 0.85, span };
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
    !/^(on|over|of|since|later|each)$/.test(after.word) &&
    after.clause === more.clause
  )
    return undefined;
  if (ear.units.has(after?.word ?? '')) return undefined;
  const count = numberAt(ear, words[at - 1]);
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 6 ? count : undefined;
};

/** "First coat …, another coat": more was laid than the number says. */
const isGoneOn = (words: readonly Word[], { high, span }: Count): boolean =>
  words.some(
    ({ word, from }, at) =>
      from >= span.to &&
      ((/^(another|new|more)$/.test(word) &&
        words.slice(at + 1, at + 3).some((next) => COAT.test(next.word))) ||
        (high === 1 && /^(second|more|another|again)$/.test(word)) ||
        (words[at + 1]?.word === 'of' && /^(one|two|three|four|five|[2-9])$/.test(word))),
  );
/** What is then left of the certainty. */
const GOES_ON = 0.75;

/** Which coat this is: the highest that is told as laid, with what was laid on it later. */
export const coatNumberOf = (ear: Ear, words: readonly Word[], manner: Manner): HeardFact[] => {
  const found: Count[] = [];
  const add = (count: Count | undefined, from: number, to: number): void => {
    if (!count || count.low < 1 || count.high > 20 || !Number.isInteger(count.high)) return;
    if (manner.notYet(asMatch(from, to)) || isPlanned(words, to, to + 2)) return;
    const before = words
      .slice(Math.max(0, from - 3), from)
      .filter((word) => word.clause === words[from]?.clause);
    if (before.some((word) => word.word === 'before')) return;
    found.push(count);
  };
  let spoken = false;
  words.forEach((word, at) => {
    const after = words[at + 1];
    if (COAT.test(word.word)) {
      const ofElse = words
        .slice(at + 1, at + 5)
        .some((next) => next.clause === word.clause && !next.comma && ELSE.test(next.word));
      if (ofElse) return;
      spoken = true;
      const before = countBefore(ear, words, at);
      // "from one coat to the next", "cover in one coat"
      const idiom = before?.high === 1 && /^(to|at)$/.test(after?.word ?? '');
      if (!idiom) add(before, at, at + 1);
      const number = after?.clause === word.clause ? numberAt(ear, after) : undefined;
      if (
        number !== undefined &&
        !/^(a|an|half)$/.test(after?.word ?? '') &&
        word.word !== 'layer' &&
        !ear.units.has(words[at + 2]?.word ?? '')
      )
        add(
          { low: number, high: number, sure: 0.75, span: { from: word.from, to: after?.to ?? word.to } },
          at,
          at + 2,
        );
      return;
    }
    if (
      spoken &&
      ORDINALS.test(word.word) &&
      beginsClause(words, at) &&
      !NOT_SAID_OF.test(after?.word ?? '')
    ) {
      const count = ear.numbers.get(word.word) ?? 0;
      add({ low: count, high: count, sure: 0.74, span: { from: word.from, to: word.to } }, at, at + 1);
    }
  });
  const [most] = found.sort((a, b) => b.high - a.high || b.sure - a.sure);
  if (!most) return [];
  const later = words.flatMap((word, at) =>
    word.from >= most.span.to && !manner.notYet(asMatch(at, at + 1)) ? (moreOf(ear, words, at) ?? []) : [],
  );
  const extra = later.reduce((sum, count) => sum + count, 0);
  const [low, high] = [most.low + extra, most.high + extra];
  const doubt = !extra && isGoneOn(words, most) ? GOES_ON : 1;
  if (high > 20) return [];
  return [
    {
      fact: 'coat-number',
      value: Math.round((low + high) / 2),
      range: [low, high],
      sure: (extra ? Math.min(most.sure, 0.75) : most.sure) * doubt,
      rests: [most.span],
      against: found.filter((one) => one.high !== most.high).map(({ span }) => span),
    },
  ];
};
