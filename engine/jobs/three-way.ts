import { CARD_LISTS, type CardList } from '../model/card-limits.ts';
import type { CardCoat, CardFlaw, CardPhoto, CardRepair, JobCard } from '../model/job-card.ts';
import { isKeyOf, keysOf } from '../plain/entry-of.ts';
import { canonical } from './canonical.ts';
import {
  type CardChange,
  changed,
  inOrder,
  withCoat,
  withFlaw,
  withoutCoat,
  withoutFlaw,
  withoutPhoto,
  withoutRepair,
  withPhoto,
  withRepair,
} from './card.ts';
import { removedOfBoth, stillRemoved } from './removed.ts';

export type CardEntry = CardCoat | CardFlaw | CardRepair | CardPhoto;
/** The fields of a card beside its lists. */
export type CardField = Exclude<keyof CardChange, CardList | 'removed'>;

/**
 * What was changed here and elsewhere: the other change (`theirs`) stands on the card, this one (`mine`) is handed back.
 * An entry that is `undefined` was taken off.
 */
export type Clash =
  | { readonly field: CardField; readonly mine: JobCard[CardField]; readonly theirs: JobCard[CardField] }
  | {
      readonly list: CardList;
      readonly entry: string;
      readonly mine: CardEntry | undefined;
      readonly theirs: CardEntry | undefined;
    };
export type ThreeWayMerge = { readonly card: JobCard; readonly clashes: readonly Clash[] };

/**
 * What of a card is no field that two tabs may change: lists are put together entry by entry, the rest changes by
 * itself.
 */
const NO_FIELDS = {
  version: true,
  id: true,
  madeAt: true,
  changedAt: true,
  removed: true,
  coats: true,
  flaws: true,
  repairs: true,
  photos: true,
} as const satisfies Record<Exclude<keyof JobCard, CardField>, true>;
const isField = (name: keyof JobCard): name is CardField => !isKeyOf(NO_FIELDS, name);

const same = (one: unknown, two: unknown): boolean => canonical(one ?? null) === canonical(two ?? null);

/** Whether two cards hold the same, whenever they were changed and in whatever order their keys stand. */
export const sameCard = (one: JobCard, two: JobCard): boolean =>
  same({ ...one, changedAt: 0 }, { ...two, changedAt: 0 });

type Sides<T> = { readonly base: readonly T[]; readonly mine: readonly T[]; readonly theirs: readonly T[] };

/** Entries by id: what either side added stays, what either side took off goes unless the other changed it. */
const mergeLists = <T extends CardEntry>(
  list: CardList,
  { base, mine, theirs }: Sides<T>,
  clashes: Clash[],
): T[] => {
  const find = (items: readonly T[], entry: string) => items.find(({ id }) => id === entry);
  const ids = new Set([...theirs, ...mine].map(({ id }) => id));
  return [...ids].flatMap((entry) => {
    const [was, here, there] = [find(base, entry), find(mine, entry), find(theirs, entry)];
    if (same(here, was) || same(here, there)) return there ? [there] : [];
    // Corrected here after it was taken off there: it stays, so that no work is lost.
    if (same(there, was) || !there) return here ? [here] : [];
    clashes.push({ list, entry, mine: here, theirs: there });
    return [there];
  });
};

const fieldChange = <K extends CardField>(
  field: K,
  base: JobCard,
  mine: JobCard,
  theirs: JobCard,
  clashes: Clash[],
): CardChange => {
  if (same(mine[field], base[field]) || same(mine[field], theirs[field])) return {};
  if (same(theirs[field], base[field])) return { [field]: mine[field] };
  clashes.push({ field, mine: mine[field], theirs: theirs[field] });
  return {};
};

/**
 * Puts the change from `base` to `mine` onto `theirs`. What only one side touched is kept from that side;
 * what both touched stays as theirs and is told as a clash, so that nothing is overwritten unseen.
 */
export const mergeChange = (base: JobCard, mine: JobCard, theirs: JobCard): ThreeWayMerge => {
  const clashes: Clash[] = [];
  const changes = keysOf({ ...theirs, ...mine })
    .filter(isField)
    .map((field) => fieldChange(field, base, mine, theirs, clashes));
  const sides = <L extends CardList>(list: L) => ({
    base: base[list],
    mine: mine[list],
    theirs: theirs[list],
  });
  const lists = {
    coats: inOrder(mergeLists<CardCoat>('coats', sides('coats'), clashes)),
    flaws: inOrder(mergeLists<CardFlaw>('flaws', sides('flaws'), clashes)),
    repairs: inOrder(mergeLists<CardRepair>('repairs', sides('repairs'), clashes)),
    photos: inOrder(mergeLists<CardPhoto>('photos', sides('photos'), clashes)),
  };
  const removed = stillRemoved(removedOfBoth(mine, theirs), [lists]);
  const change: CardChange = Object.assign({}, ...changes, lists, { removed });
  return { card: changed(theirs, change, Math.max(mine.changedAt, theirs.changedAt)), clashes };
};

const TAKE_OFF = {
  coats: withoutCoat,
  flaws: withoutFlaw,
  repairs: withoutRepair,
  photos: withoutPhoto,
} as const;

const withEntry = (card: JobCard, entry: CardEntry, now: number): JobCard => {
  if ('laidAt' in entry) return withCoat(card, entry, now);
  if ('foundAt' in entry) return withFlaw(card, entry, now);
  return 'doneAt' in entry ? withRepair(card, entry, now) : withPhoto(card, entry, now);
};

/** The card with what she had changed in place of what stands there. */
export const withMine = (card: JobCard, clash: Clash, now: number): JobCard => {
  if ('field' in clash) return changed(card, { [clash.field]: clash.mine }, now);
  const { list, entry, mine } = clash;
  return mine ? withEntry(card, mine, now) : TAKE_OFF[list](card, entry, now);
};

/** Of texts both versions, theirs first; nothing where they are no texts, or the field takes no second line. */
export const bothTexts = (clash: Clash): string | undefined =>
  'field' in clash &&
  clash.field === 'notes' &&
  typeof clash.mine === 'string' &&
  typeof clash.theirs === 'string'
    ? `${clash.theirs}\n${clash.mine}`
    : undefined;

/** So that a list that is forgotten here does not compile. */
CARD_LISTS satisfies readonly (keyof typeof TAKE_OFF)[];
