import { type Label, outsideLabel } from '../calc/drying/label.ts';
import type { Refused } from '../calc/quantity.ts';
import { sayProblem } from '../calc/say-problem.ts';
import { isRecord, type JsonRecord } from '../plain/record.ts';
import { type CardFault, cardFault, sayIssue } from './card-fault.ts';
import { CARD_VERSION } from './card-limits.ts';
import { JobCard } from './job-card.ts';
import { type Migrated, migrate } from './migrate.ts';
import { MIGRATIONS } from './migrations.ts';

export type CardRead<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly [CardFault, ...CardFault[]] };

/** Values and nestings in one card, before anything else looks at it: above what the fullest real card needs. */
const MOST_VALUES = 200_000;
const MOST_DEPTH = 10;
export const MOST_FAULTS = 20;
export const NEWER = 'was written by a newer Halfdry: reload the page, then try again.';

const UNREADABLE: Readonly<Record<Extract<Migrated, { ok: false }>['why'], string>> = {
  newer: NEWER,
  'no-version': 'has no version: it is no job card of Halfdry; leave it out.',
  'no-way': 'has a version that was never in use; leave it out.',
};

/** True where a value holds more, or nests deeper, than any card. Looks at no more than it must. */
const tooLarge = (value: unknown): boolean => {
  let level: unknown[] = [value];
  let left = MOST_VALUES;
  for (let depth = 0; level.length; depth++) {
    left -= level.length;
    if (depth > MOST_DEPTH || left < 0) return true;
    const next: unknown[] = [];
    for (const one of level) {
      if (typeof one !== 'object' || one === null) continue;
      const inner = Array.isArray(one) ? one : Object.values(one);
      if (next.length + inner.length > left) return true;
      for (const item of inner) next.push(item);
    }
    level = next;
  }
  return false;
};

/** Why a label can not be what a can says; nothing where it can. */
export const refusalOfLabel = (label: JobCard['label']): Refused | undefined =>
  label && outsideLabel(label as Label);

/** What the shape alone does not show: ids that stand twice, and labels whose times are out of order. */
export const slipsOf = (card: JobCard, name: string): CardFault[] => {
  const lists = { coats: card.coats, flaws: card.flaws, repairs: card.repairs, photos: card.photos };
  const twice = Object.entries(lists).flatMap(([field, items]) => {
    const ids = items.map(({ id }: { id: string }) => id);
    return new Set(ids).size === ids.length
      ? []
      : [cardFault(name, field, 'has two entries with one id; give each its own.')];
  });
  const labels = [
    { field: 'label', label: card.label },
    ...card.coats.map(({ label }, index) => ({ field: `coats, entry ${index + 1}, label`, label })),
  ].flatMap(({ field, label }) => {
    const refused = refusalOfLabel(label);
    return refused ? [cardFault(name, field, `does not fit. ${sayProblem(refused.problem)}`)] : [];
  });
  return [...twice, ...labels];
};

const refused = (faults: readonly CardFault[]): CardRead<never> => ({
  ok: false,
  faults: faults.slice(0, MOST_FAULTS) as [CardFault, ...CardFault[]],
});

const LONGEST_NAME = 60;
const nameOf = ({ name }: JsonRecord, fallback: string): string =>
  typeof name === 'string' && name.trim() ? `“${name.trim().slice(0, LONGEST_NAME)}”` : fallback;

const readPlain = (raw: unknown, fallback: string): CardRead<JobCard> => {
  if (!isRecord(raw)) return refused([cardFault(fallback, '', 'is no card at all; leave it out.')]);
  const name = nameOf(raw, fallback);
  if (tooLarge(raw)) return refused([cardFault(name, '', 'is larger than a card can be; leave it out.')]);
  const card = migrate(raw, CARD_VERSION, MIGRATIONS);
  if (!card.ok) return refused([cardFault(name, '', UNREADABLE[card.why])]);
  const read = JobCard.safeParse(card.value);
  if (!read.success) return refused(read.error.issues.flatMap((issue) => sayIssue(issue, name)));
  const found = slipsOf(read.data, name);
  return found.length ? refused(found) : { ok: true, value: read.data };
};

/**
 * A card from anywhere: storage, a file, another tab. Never throws; whatever is not wholly right is refused, with why.
 */
export const readCard = (raw: unknown, fallback = 'This card'): CardRead<JobCard> => {
  try {
    return readPlain(raw, fallback);
  } catch {
    return refused([cardFault(fallback, '', 'cannot be read; leave it out.')]);
  }
};
