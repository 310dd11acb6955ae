import { stillRemoved } from '#engine/jobs/removed.ts';
import type { JobCard } from '#engine/model/job-card.ts';

/** A field that was changed here and elsewhere: the other change stands on the card, this one is handed back. */
export type Clash = { readonly field: string; readonly mine: unknown; readonly theirs: unknown };
export type Merged = { readonly card: JobCard; readonly clashes: readonly Clash[] };

type Entry = { readonly id: string };
type Raw = Readonly<Record<string, unknown>>;

const same = (one: unknown, two: unknown): boolean => JSON.stringify(one) === JSON.stringify(two);
const isList = (value: unknown): value is readonly Entry[] => Array.isArray(value);

/** Entries by id: what either side added stays, what either side took away goes unless the other changed it. */
const mergeLists = (
  field: string,
  [base, mine, theirs]: readonly (readonly Entry[])[],
  clashes: Clash[],
): readonly Entry[] => {
  const find = (list: readonly Entry[] = [], id: string) => list.find((entry) => entry.id === id);
  const ids = new Set([...(theirs ?? []), ...(mine ?? [])].map(({ id }) => id));
  return [...ids].flatMap((id) => {
    const [was, here, there] = [find(base, id), find(mine, id), find(theirs, id)];
    if (same(here, was)) return there ? [there] : [];
    if (same(there, was) || same(there, here)) return here ? [here] : [];
    clashes.push({ field: `${field} ${id}`, mine: here, theirs: there });
    return there ? [there] : here ? [here] : [];
  });
};

/**
 * Puts the change from `base` to `mine` onto `theirs`. What only one side touched is kept from that side;
 * what both touched stays as theirs and is told as a clash, so that nothing is overwritten unseen.
 */
export const mergeChange = (base: JobCard, mine: JobCard, theirs: JobCard): Merged => {
  const clashes: Clash[] = [];
  const [was, here, there] = [base, mine, theirs] as unknown as readonly [Raw, Raw, Raw];
  const card: Record<string, unknown> = { ...there };
  for (const field of new Set([...Object.keys(was), ...Object.keys(here), ...Object.keys(there)])) {
    if (field === 'changedAt' || same(here[field], was[field]) || same(here[field], there[field])) continue;
    if (isList(here[field])) {
      const sides = [was[field], here[field], there[field]] as (readonly Entry[])[];
      card[field] = mergeLists(field, sides, clashes);
    } else if (!same(there[field], was[field]))
      clashes.push({ field, mine: here[field], theirs: there[field] });
    else if (here[field] === undefined) delete card[field];
    else card[field] = here[field];
  }
  const merged = card as unknown as JobCard;
  const removed = merged.removed && stillRemoved(merged.removed, [merged]);
  const { removed: _both, ...rest } = merged;
  return { card: removed ? { ...rest, removed } : rest, clashes };
};
