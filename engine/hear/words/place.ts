import type { Ear, Match } from './match.ts';
import type { OneOf } from './one-of.ts';
import type { Word } from './words.ts';

/** Words looked at before a layer for its place. */
const LOOKS_BACK = 3;
/** Words more that count the coats of it: "two coats of". */
const COUNTED = 1;

/** What a kind of finish is named in, and is none: "wiped oil stain". */
const OF_BELOW =
  /^(stain|stains|dye|primer|primers|paint|paints|enamel|latex|filler|thinner|remover|stripper)$/;

export const isOfBelow = (words: readonly Word[], { from, to }: Match): boolean =>
  words[to]?.part === words[from]?.part && OF_BELOW.test(words[to]?.word ?? '');

/** Whether a match names a top coat, if only among several kinds. */
const isNamedTop = (words: readonly Word[], match: Match): boolean =>
  (match.kind === 'among' || (match.kind === 'fact' && match.of[0] === 'family')) && !isOfBelow(words, match);

const topNamed = new WeakMap<readonly Word[], boolean>();

/** Whether a text names any top coat; looked up once a text. */
export const namesTop = (words: readonly Word[], matches: readonly Match[]): boolean => {
  const known = topNamed.get(words) ?? matches.some((match) => isNamedTop(words, match));
  topNamed.set(words, known);
  return known;
};

export type Place = 'below' | 'top' | undefined;

export const placeOf = (ear: Ear, words: readonly Word[], { from, to }: Match): Place => {
  const { part = -1 } = words[from] ?? {};
  // "then two coats of lacquer" as "then lacquer"
  const isOfCoats = words[from - 1]?.word === 'of' && /^coats?$/.test(words[from - 2]?.word ?? '');
  const reach = LOOKS_BACK + (isOfCoats ? COUNTED : 0);
  for (let at = from - 1; at >= from - reach; at--) {
    const word = words[at];
    // "with primer and lacquer"
    if (!word || word.part !== part || word.word === 'and') break;
    // "the clear over it is water based": the verb ties it to what it is
    if (/^(is|are|was|were)$/.test(word.word)) break;
    // "sealer under lacquer": what lies under it is named before
    if (/^(under|underneath|beneath|below)$/.test(word.word)) return 'top';
    // "over the old varnish with poly", but "covered with lacquer"
    if (word.word === 'with' && !/^(covered|primed|sealed|coated)$/.test(words[at - 1]?.word ?? '')) break;
    // "sealed with clear"
    if (word.word === 'sealed' && words[at + 1]?.word === 'with') return 'top';
    // "a 20 year old oil chest" is no old finish below another
    const aged = word.word === 'old' && /^(years?|months?|weeks?|days?)$/.test(words[at - 1]?.word ?? '');
    if (ear.below.has(word.word) && !aged) return 'below';
    if (ear.onTop.has(word.word)) return 'top';
  }
  const after = words[to];
  // "oil under the seat" lies on its underside.
  const ofPlace = /^(the|a|my|our|its)$/.test(words[to + 1]?.word ?? '');
  if (
    after?.part === part &&
    !ofPlace &&
    /^(underneath|below|beneath|under|first|primer|sealer|base)$/.test(after.word)
  )
    return 'below';
  if (after?.part === part && /^(over|topcoat|finish|on)$/.test(after.word)) return 'top';
  return undefined;
};

const LAID_BEFORE =
  /^(\d+|two|three|four|five|six|several|coats?|coated|layers?|brushed|brush|rolled|sprayed|wiped|padded|rubbed|applied|put|laid|finished|sealed|topcoated|then|poured|recoated|used|gave|followed)$/;
const LAID_AFTER = /^(on|went|top|coats?|last|yesterday|ago)$/;

/** Whether a kind of finish is said to have been laid. */
export const isLaid = (words: readonly Word[], { from, to }: Match): boolean => {
  const part = words[from]?.part;
  const has = (start: number, end: number, what: OneOf) =>
    words.slice(Math.max(0, start), end).some((word) => word.part === part && what.test(word.word));
  return has(from - 6, to, LAID_BEFORE) || has(to, to + 2, LAID_AFTER);
};
