import type { HeardFact, HeardSign } from '../words/heard.ts';
import { SURE } from '../words/heard.ts';
import type { AskedFor } from '../words/lexicon.ts';
import { type Match, spanOf } from '../words/match.ts';
import type { Span, Word } from '../words/words.ts';

const overlaps = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/**
 * A sign that rests on no words but those of a fact, as "80 % humidity", or on the name of a coat alone, tells of nothing
 * that is seen.
 */
export const isSeen = (sign: HeardSign, told: readonly Span[], named: readonly Span[]): boolean =>
  sign.rests.some(
    (rest) =>
      !named.some(({ from, to }) => from === rest.from && to === rest.to) &&
      !told.some((span) => overlaps(rest, span)),
  );

/** What is asked for, and the words that ask. */
export type Asked = { readonly asked: AskedFor; readonly asking: readonly Span[] };

/**
 * All that a text asks for that has an answer of its own: a day to be ready by, how to clean it, how to strip it. Not where
 * it tells of anything that is seen, or of a coat that is drying.
 */
export const asksFor = (
  list: readonly AskedFor[],
  words: readonly Word[],
  matches: readonly Match[],
  facts: readonly HeardFact[],
  among: readonly Span[],
  signs: readonly HeardSign[],
  named: readonly Span[],
): readonly Asked[] => {
  const isTold = (fact: string) => facts.some((one) => one.fact === fact && one.sure >= SURE);
  const isLaid = isTold('hours-since-coat');
  return list.flatMap((asked, at) => {
    const { thoughTold, beside = '' } = asked;
    if (isLaid && !thoughTold) return [];
    const asks = matches.filter(({ sense }) => sense === `cue asks-for ${at}`);
    if (!asks.length || matches.some(({ sense }) => sense === `cue not-for ${at}`)) return [];
    // "can I put hot plates on the waxed table": what is asked about is not seen.
    const own = asks.map((match) => spanOf(words, match));
    const told = [...facts.flatMap(({ rests }) => rests), ...among, ...own];
    const mayBeTold = beside.split(',');
    // What is not there stands in the way of no answer: "the whole family", heard as "not in one or two spots".
    const sees = signs.some(
      (sign) => sign.answer !== 'no' && !mayBeTold.includes(sign.question) && isSeen(sign, told, named),
    );
    return sees ? [] : [{ asked, asking: own }];
  });
};
