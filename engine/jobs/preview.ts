import type { CardList } from '../model/card-limits.ts';
import type { JobCard, RemovedCard } from '../model/job-card.ts';
import { canonical } from './canonical.ts';
import { byId, fieldsOf, mergeTwo, type Shelf, sorted, tooLarge } from './merge.ts';
import { cardsRemoved } from './removed.ts';

type Counts = Readonly<Record<CardList, number>>;

/**
 * What an import would do to one card.
 * `too-large`: both together are more than a card holds, so mine is left as it is.
 * `gone-here`: I took it away and the file's was not changed since, so it stays away.
 * `goes`: they took it away and mine was not changed since, so it goes. `kept`: they did, but mine was changed later.
 */
export type ImportRow = {
  readonly id: string;
  readonly name: string;
  readonly kind:
    | 'new'
    | 'same'
    | 'theirs-newer'
    | 'mine-newer'
    | 'both-changed'
    | 'too-large'
    | 'gone-here'
    | 'goes'
    | 'kept';
  /** When the card was taken away, where it was. */
  readonly goneAt?: number;
  /** How many of each the card would gain. */
  readonly gains: Counts;
  /** How many would go, since they were taken off there. */
  readonly losses: Counts;
  /** How many would read otherwise than here. */
  readonly changes: Counts;
  /** How many of the file’s stay off, since they were taken off here. */
  readonly withheld: Counts;
  /** The other fields that would change, by their names. */
  readonly fields: readonly string[];
};

const NONE: Counts = { coats: 0, flaws: 0, repairs: 0, photos: 0 };
const UNTOUCHED = { gains: NONE, losses: NONE, changes: NONE, withheld: NONE, fields: [] } as const;
/** These change with every card and say nothing. */
const SILENT = ['version', 'id', 'madeAt', 'changedAt', 'plan'];

type Entry = { readonly id: string };
const countsOf = (count: (list: CardList) => number): Counts => ({
  coats: count('coats'),
  flaws: count('flaws'),
  repairs: count('repairs'),
  photos: count('photos'),
});
const idsOf = (card: JobCard | undefined, list: CardList): ReadonlySet<string> =>
  new Set(card?.[list].map(({ id }: Entry) => id));
const missing = (from: JobCard, there: JobCard | undefined, list: CardList): number => {
  const held = idsOf(there, list);
  return [...idsOf(from, list)].filter((id) => !held.has(id)).length;
};

/** An entry as she sees it: without the time of its correction. */
const seen = (entry: Entry & { readonly changedAt?: number | undefined }): string => {
  const { changedAt: _at, ...rest } = entry;
  return canonical(rest);
};
const otherwise = (mine: JobCard, merged: JobCard, list: CardList): number => {
  const held = new Map(mine[list].map((entry: Entry) => [entry.id, seen(entry)]));
  return merged[list].filter((entry: Entry) => {
    const was = held.get(entry.id);
    return was !== undefined && was !== seen(entry);
  }).length;
};

const fieldsChanged = (mine: JobCard, merged: JobCard): readonly string[] => {
  const fields = (card: JobCard) => new Map<string, unknown>(Object.entries(fieldsOf(card)));
  const [was, is] = [fields(mine), fields(merged)];
  const names = new Set([...was.keys(), ...is.keys()]);
  return [...names].filter(
    (name) => !SILENT.includes(name) && canonical(was.get(name) ?? null) !== canonical(is.get(name) ?? null),
  );
};

const textOf = (card: JobCard): string => canonical(sorted(card));
const kindOf = (mine: JobCard, theirs: JobCard, merged: JobCard): ImportRow['kind'] => {
  if (tooLarge(merged)) return 'too-large';
  const [as, to, is] = [textOf(mine), textOf(theirs), textOf(merged)];
  if (as === to) return 'same';
  if (is === to) return 'theirs-newer';
  return is === as ? 'mine-newer' : 'both-changed';
};

const rowOf = (before: JobCard | undefined, card: JobCard, gone: RemovedCard | undefined): ImportRow => {
  const { id } = card;
  if (!before && gone && gone.at > card.changedAt)
    return { ...UNTOUCHED, id, name: card.name, kind: 'gone-here', goneAt: gone.at };
  const merged = before ? mergeTwo(before, card) : card;
  const kind = before ? kindOf(before, card, merged) : 'new';
  return {
    id,
    name: merged.name,
    kind,
    gains: countsOf((list) => missing(merged, before, list)),
    losses: countsOf((list) => (before ? missing(before, merged, list) : 0)),
    changes: countsOf((list) => (before ? otherwise(before, merged, list) : 0)),
    withheld: countsOf((list) => missing(card, merged, list)),
    fields: before ? fieldsChanged(before, merged) : [],
  };
};

/** What `mergeShelves` would do: a row for each card of theirs, and for each of mine that they took away. */
export const previewShelves = (mine: Shelf, theirs: Shelf): readonly ImportRow[] => {
  const held = byId(mine.cards);
  const gone = new Map(cardsRemoved(mine.removed, theirs.removed).map((one) => [one.id, one]));
  const brought = byId(theirs.cards);
  const rows = [...brought.values()].map((card) => rowOf(held.get(card.id), card, gone.get(card.id)));
  const taken = cardsRemoved(theirs.removed).flatMap(({ id, at }): ImportRow[] => {
    const card = held.get(id);
    if (!card || brought.has(id)) return [];
    const kind = at > card.changedAt ? 'goes' : 'kept';
    return [{ ...UNTOUCHED, id, name: card.name, kind, goneAt: at }];
  });
  return [...rows, ...taken];
};

/** The same of cards alone. */
export const previewImport = (mine: readonly JobCard[], theirs: readonly JobCard[]): readonly ImportRow[] =>
  previewShelves({ cards: mine, removed: [] }, { cards: theirs, removed: [] });
