import { MOST } from '../model/card-limits.ts';
import type { JobCard } from '../model/job-card.ts';
import { inOrder } from './card.ts';

const LISTS = ['coats', 'flaws', 'repairs', 'photos'] as const;
type List = (typeof LISTS)[number];

/** What an import would do to one card. `too-large`: both together are more than a card holds, so mine is left as it is. */
export type ImportRow = {
  readonly id: string;
  readonly name: string;
  readonly kind: 'new' | 'same' | 'theirs-newer' | 'mine-newer' | 'both-changed' | 'too-large';
  /** How many of each the card would gain. */
  readonly gains: Readonly<Record<List, number>>;
};

/** One text for one content, in whatever order its keys stand. */
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, inner) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([one], [two]) => (one < two ? -1 : 1)))
      : inner,
  );

const sorted = (card: JobCard): JobCard => ({
  ...card,
  coats: inOrder(card.coats),
  flaws: inOrder(card.flaws),
  repairs: inOrder(card.repairs),
  photos: inOrder(card.photos),
});
const textOf = (card: JobCard): string => canonical(sorted(card));

/** The fields beside the lists. */
const fieldsOf = ({ coats, flaws, repairs, photos, ...fields }: JobCard) => fields;

/**
 * What came later. Of things changed in the same millisecond the text decides, each thing for itself, so that both sides
 * choose alike and a second merge chooses again the same.
 */
const later = <T>(one: T, two: T, age: number): T =>
  age > 0 || (age === 0 && canonical(one) > canonical(two)) ? one : two;

const united = <T extends { id: string }>(ones: readonly T[], twos: readonly T[], age: number): T[] => {
  const held = new Map(ones.map((item) => [item.id, item]));
  for (const two of twos) {
    const one = held.get(two.id);
    held.set(two.id, one ? later(one, two, age) : two);
  }
  return [...held.values()];
};

/** Fields of the newer card; coats, flaws, repairs and photos of both, by id, the newer's version where both have one. */
const mergeTwo = (one: JobCard, two: JobCard): JobCard => {
  const age = one.changedAt - two.changedAt;
  return sorted({
    ...later(fieldsOf(one), fieldsOf(two), age),
    coats: united(one.coats, two.coats, age),
    flaws: united(one.flaws, two.flaws, age),
    repairs: united(one.repairs, two.repairs, age),
    photos: united(one.photos, two.photos, age),
  });
};

const tooLarge = (card: JobCard): boolean => LISTS.some((list) => card[list].length > MOST[list]);

const lacking = (mine: JobCard | undefined, merged: JobCard): ImportRow['gains'] => {
  const count = (list: List) => {
    const held = new Set(mine?.[list].map(({ id }) => id));
    return merged[list].filter(({ id }) => !held.has(id)).length;
  };
  return { coats: count('coats'), flaws: count('flaws'), repairs: count('repairs'), photos: count('photos') };
};

const kindOf = (mine: JobCard, theirs: JobCard, merged: JobCard): ImportRow['kind'] => {
  if (tooLarge(merged)) return 'too-large';
  const [as, to, is] = [textOf(mine), textOf(theirs), textOf(merged)];
  if (as === to) return 'same';
  if (is === to) return 'theirs-newer';
  return is === as ? 'mine-newer' : 'both-changed';
};

const byId = (cards: readonly JobCard[]): Map<string, JobCard> => {
  const held = new Map<string, JobCard>();
  for (const card of cards) {
    const before = held.get(card.id);
    const merged = before ? mergeTwo(before, card) : sorted(card);
    held.set(card.id, before && tooLarge(merged) ? before : merged);
  }
  return held;
};

/** What `mergeCards` would do, a row for each of theirs. */
export const previewImport = (mine: readonly JobCard[], theirs: readonly JobCard[]): readonly ImportRow[] => {
  const held = byId(mine);
  return [...byId(theirs).values()].map((card) => {
    const before = held.get(card.id);
    const merged = before ? mergeTwo(before, card) : card;
    return {
      id: card.id,
      name: merged.name,
      kind: before ? kindOf(before, card, merged) : 'new',
      gains: lacking(before, merged),
    };
  });
};

/**
 * Both sets of cards as one, by id, mine first. Loses no coat, flaw, repair or photo: what was taken away on one side
 * only comes back. Merging again changes nothing, and both sides get the same cards.
 */
export const mergeCards = (mine: readonly JobCard[], theirs: readonly JobCard[]): readonly JobCard[] => [
  ...byId([...byId(mine).values(), ...byId(theirs).values()]).values(),
];
