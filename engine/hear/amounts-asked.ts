import { toSquareFeetPerGallon } from '../calc/units.ts';
import type { Family } from '../model/family.ts';
import { entryOf } from '../plain/entry-of.ts';
import { filled } from '../plain/filled.ts';
import { WITHOUT_KIND } from './hours-asked.ts';
import { each, layersOf, sentencesOf, type TableAnswer } from './layers-asked.ts';
import type { Ear, Match } from './match.ts';
import { countAt } from './spans.ts';
import type { Waits } from './waits.ts';
import type { Word } from './words.ts';

/** So many kinds are told of at most. */
const MOST_KINDS = 3;
/** The plan takes so many coats at most. */
const MOST_COATS = 12;
const QUARTS_PER_GALLON = 4;

/** "Three coats": how many are to be laid. */
const coatsIn = (ear: Ear, words: readonly Word[]): number | undefined => {
  for (let at = 0; at < words.length; at++) {
    const count = countAt(ear, words, at);
    const behind = count && words[count.to]?.word;
    if (behind && ear.laid.has(behind) && behind.startsWith('coat') && count.value <= MOST_COATS)
      return count.value;
  }
  return undefined;
};

const sayEnds = ([from, to]: readonly [number, number], times: number): string =>
  [from, to].map((end) => String(Number((end * times).toFixed(end * times < 20 ? 1 : 0)))).join(' to ');

/**
 * How much is needed, where that is asked before the work: what a coat of the kind covers, from the products, and the
 * plan, which reckons it for the sizes of the piece.
 */
export const amountAsked = (
  ear: Ear,
  { kinds: table }: Waits,
  text: string,
  words: readonly Word[],
  matches: readonly Match[],
): TableAnswer | undefined => {
  const asking = sentencesOf(text).filter(({ from, to }) => ear.says('amount', text.slice(from, to)));
  if (!asking.length || ear.says('not-amount', text) || ear.says('from-cans', text)) return undefined;
  const { tops } = layersOf(ear, words, matches);
  const told = (tops.length ? tops : WITHOUT_KIND)
    .slice(0, MOST_KINDS)
    .flatMap((kind) => entryOf(table, kind as Family) ?? []);
  if (!told.length) return undefined;
  const { covers, rest, lead, page } = ear.lexicon.tables.amount;
  const isMetric = ear.says('metric', text);
  const says = each(told, 'covers', ({ covers: ends }) => {
    const metric = `${sayEnds(ends, 1)} m² a liter`;
    const us = `${sayEnds(ends, toSquareFeetPerGallon(1) / QUARTS_PER_GALLON)} sq ft a quart`;
    return isMetric ? `${metric} (${us})` : `${us} (${metric})`;
  });
  const coats = coatsIn(ear, words);
  return {
    asked: {
      answer: `${filled(covers, { kinds: says })} ${rest}`,
      lead,
      page,
      ...(coats !== undefined && { carries: { 'can-coats': String(coats) } }),
    },
    isWait: true,
    asking,
  };
};
