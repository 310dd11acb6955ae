import { isLaying } from '../words/laying.ts';
import type { Manner } from '../words/manner.ts';
import { oneOf } from '../words/one-of.ts';
import { isTop } from '../words/top-words.ts';
import type { Span, Word } from '../words/words.ts';

const TAKEN =
  /\b(sanded|took|scraped|stripped|wiped|washed) (it|them|all|everything|it all|the whole thing)\b/;

const UNDONE = oneOf('stripped|redid|bare|raw|over|off');
/** "back to bare wood, two coats of oil": all before was taken off. */
export const isBegunAnew = (words: readonly Word[], at: number): boolean => {
  const { word } = words[at] ?? { word: '' };
  if (!UNDONE.test(word)) return false;
  const before = words.slice(Math.max(0, at - 2), at).map((one) => one.word);
  const off =
    word === 'stripped' ||
    word === 'redid' ||
    (/^(bare|raw)$/.test(word) && before.includes('back')) ||
    (word === 'off' &&
      TAKEN.test(
        words
          .slice(Math.max(0, at - 4), at)
          .map((one) => one.word)
          .join(' '),
      )) ||
    (word === 'over' && /^start/.test(before.at(-1) ?? ''));
  return off && words.some((one, index) => index > at && (one.word === 'coats' || isLaying(words, index)));
};

/** "then two coats of clear", "then the poly went on", "wax on top": the next coat of the story. */
const NEXT = oneOf('coats?|poly|clear|varnish|lacquer|shellac|wax|sealer|topcoat');

const isNextCoat = (words: readonly Word[], at: number, afterTime: boolean): boolean => {
  const here = words[at];
  if (!here || !(here.word === 'a' || here.word === 'then' || here.comma)) return false;
  const part = words.slice(at, at + 8).filter((word) => word.part === here.part);
  if (here.word === 'a') return afterTime && part.slice(1, 4).some(({ word }) => word === 'coat');
  if (here.word === 'then') return part.some(({ word }) => NEXT.test(word));
  return isTop(here) && part[1]?.word === 'on' && (part[2]?.word ?? 'top') === 'top';
};

const LAID = oneOf('brushed|rolled|sprayed|applied|recoated|poured');

/** A coat told as laid after the time that was heard: that time is then of an earlier one. */
export const laidAfter = (words: readonly Word[], manner: Manner, from: number): Span | undefined => {
  const at = words.findIndex((word) => word.from >= from);
  if (at < 0) return undefined;
  const there = words.findIndex(
    (word, index) =>
      index >= at &&
      ((word.clause > (words[at - 1]?.clause ?? 0) && LAID.test(word.word)) ||
        isNextCoat(words, index, index === at) ||
        isBegunAnew(words, index)) &&
      !manner.notYet({ sense: '', kind: '', of: [], from: index, to: index + 1, size: 1 }),
  );
  const found = words[there];
  return found && { from: found.from, to: found.to };
};

const LAID_ON = oneOf('brushed|rolled|sprayed|applied|recoated|poured|wiped|laid|put');

/** "waited two days and brushed on a coat": in the clause of the time, right behind it, the next coat was laid. */
export const laidNext = (words: readonly Word[], to: number): boolean => {
  const at = words.findIndex((word) => word.from >= to);
  const { clause } = words[at - 1] ?? {};
  return words.some(
    (word, index) =>
      index > at &&
      word.clause === clause &&
      LAID_ON.test(word.word) &&
      /^(and|then|i|we)$/.test(words[index - 1]?.word ?? '') &&
      (word.word !== 'put' || words[index + 1]?.word === 'on'),
  );
};

const NOW = oneOf('still|now');

/** "five days and still tacky": told of now, whatever was laid in what is told after it. */
export const isStill = (words: readonly Word[], from: number, to: number): boolean => {
  const first = words.findIndex((word) => word.from >= from);
  const near = words
    .slice(Math.max(0, first - 4), first + 12)
    .filter(({ clause }) => clause === words[first]?.clause);
  const last = near.findLastIndex((word) => word.to <= to);
  return near.slice(0, last + 5).some(({ word }) => NOW.test(word));
};
