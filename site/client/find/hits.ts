import { stem } from '#engine/find/stem.ts';
import { type FindIndex, find, type Hit, isNamedInSight } from '#engine/find.ts';

/** Hits looked through for pages: those that have none must not push others out. */
const LOOKED_AT = 30;

/** So little chance has the first of pages that speak of a word but are not about it, such as a shop's name. */
const WEAK = 0.08;
/** Of those as many are worth a look. */
const WEAK_SHOWN = 3;

/** "What is shellac": what is explained is meant, not what goes wrong with it. */
const WHAT_IS = /^\s*what(?:['’]?s|\s+(?:is|are))\s+(?:an?\s+|the\s+)?/i;

const stems = (words: string): readonly string[] =>
  words
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter(Boolean)
    .map(stem);

/** Whether a word that was typed stands in the name of a flaw. */
const isNamed = ({ kind, title, matched }: Hit): boolean => {
  const name = stems(title);
  return kind === 'defect' && matched.flatMap(stems).some((one) => name.includes(one));
};

/** The pages that explain what a question asks for by its name. */
const explained = (index: FindIndex, words: string): readonly Hit[] => {
  if (!WHAT_IS.test(words)) return [];
  const name = words.replace(WHAT_IS, '').replace(/[?\s]+$/, '');
  return find(index, name, { limit: LOOKED_AT })
    .filter(({ kind, id }) => ['product', 'glossary'].includes(kind) && isNamedInSight(index, name, kind, id))
    .slice(0, 1);
};

/**
 * What the search finds, as a page lists it: what is asked for by its name first; a flaw that is named by a word is no
 * guess, whatever else was said; all kinds of finish share a page, so that they are listed only where they come first.
 */
export const hitsFor = (index: FindIndex, words: string, typing = false): readonly Hit[] => {
  const first = explained(index, words);
  const isFirst = (hit: Hit) => first.some(({ kind, id }) => kind === hit.kind && id === hit.id);
  const found = find(index, words, { limit: LOOKED_AT, typing }).filter((hit) => !isFirst(hit));
  const isWeak = !first.length && !typing && (found[0]?.score ?? 1) < WEAK;
  return [
    ...first.map((hit) => ({ ...hit, perhaps: false })),
    ...(isWeak ? found.slice(0, WEAK_SHOWN).map((hit) => ({ ...hit, perhaps: true })) : found),
  ]
    .filter(({ kind }, at) => at === 0 || kind !== 'product')
    .map((hit, at) => (at === 0 && hit.perhaps && isNamed(hit) ? { ...hit, perhaps: false } : hit));
};
