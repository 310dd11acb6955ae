import type { z } from 'zod';
import { isRecord } from '../plain/record.ts';
import { type CardFault, cardFault, sayIssue } from './card-fault.ts';
import { CARD_LISTS, CARD_VERSION } from './card-limits.ts';
import { JobCard } from './job-card.ts';
import { migrate } from './migrate.ts';
import { MIGRATIONS } from './migrations.ts';
import { readCard, refusalOfLabel, slipsOf } from './one-card.ts';

/** What of a damaged record reads as a card, and what had to be left out for it. */
export type SalvagedCard = { readonly card: JobCard; readonly leftOut: readonly CardFault[] };

/** A record with more faults than this is not put right by leaving things out. */
const MOST_ROUNDS = 100;

type Loose = Record<PropertyKey, unknown>;
const isLoose = (value: unknown): value is Loose => typeof value === 'object' && value !== null;

/**
 * What stands in place of a field that is lost. Of piece, base and tone none: to guess at them would make a wrong card.
 */
const defaultsOf = (id: string, now: number): Readonly<Record<string, unknown>> => ({
  version: CARD_VERSION,
  id,
  madeAt: now,
  changedAt: now,
  name: `Card ${id.slice(0, 12)}`,
  age: 'unknown',
  notes: '',
  ...Object.fromEntries(CARD_LISTS.map((list) => [list, []])),
});

const parentOf = (card: Loose, path: readonly PropertyKey[]): unknown =>
  path.slice(0, -1).reduce<unknown>((inner, key) => (isLoose(inner) ? inner[key] : undefined), card);

/**
 * Leaves out what an issue names: what is too long is cut, a list loses the entry, a field goes. False where it can
 * not.
 */
const leaveOut = (card: Loose, issue: z.core.$ZodIssue, defaults: Readonly<Loose>): boolean => {
  const { path } = issue;
  const key = path.at(-1);
  const parent = parentOf(card, path);
  if (issue.code === 'unrecognized_keys') {
    const holder = key === undefined ? card : isLoose(parent) ? parent[key] : undefined;
    return isLoose(holder) && issue.keys.every((name) => Reflect.deleteProperty(holder, name));
  }
  if (key === undefined || !isLoose(parent)) return false;
  const value = parent[key];
  if (issue.code === 'too_big' && (Array.isArray(value) || typeof value === 'string')) {
    parent[key] = value.slice(0, Number(issue.maximum));
    return true;
  }
  if (path.length === 1) {
    if (value !== undefined && value !== defaults[key] && Object.hasOwn(defaults, key))
      parent[key] = defaults[key];
    else if (value !== undefined) delete parent[key];
    else if (Object.hasOwn(defaults, key)) parent[key] = defaults[key];
    else return false;
    return true;
  }
  if (Array.isArray(parent)) {
    parent.splice(Number(key), 1);
    return true;
  }
  if (value !== undefined) return Reflect.deleteProperty(parent, key);
  // A part that can not be missing is: then all that it belongs to goes.
  return leaveOut(
    card,
    { ...issue, code: 'custom', path: path.slice(0, -1) } as z.core.$ZodIssueCustom,
    defaults,
  );
};

/** Of entries with one id the first. */
const firstOfEach = <T extends { readonly id: string }>(items: readonly T[]): T[] => {
  const seen = new Set<string>();
  return items.filter(({ id }) => !seen.has(id) && seen.add(id));
};

const withoutBadLabel = <T extends { label?: JobCard['label'] }>(holder: T): T => {
  if (!refusalOfLabel(holder.label)) return holder;
  const { label: _contradictsItself, ...rest } = holder;
  return rest as T;
};

/** The card without its slips: entries whose id another has, and the labels that contradict themselves. */
const withoutSlips = (card: JobCard): JobCard => ({
  ...withoutBadLabel(card),
  coats: firstOfEach(card.coats).map(withoutBadLabel),
  flaws: firstOfEach(card.flaws),
  repairs: firstOfEach(card.repairs),
  photos: firstOfEach(card.photos),
});

/**
 * As much of a damaged record as reads, with what is left out named; nothing where too little is left of it. The record
 * itself is not touched: keep it. `now` is in epoch milliseconds.
 */
export const salvageCard = (raw: unknown, id: string, now: number): SalvagedCard | undefined => {
  if (!isRecord(raw) || typeof raw['version'] !== 'number' || raw['version'] > CARD_VERSION) return undefined;
  const copied = JSON.parse(JSON.stringify(raw));
  if (!isRecord(copied)) return undefined;
  const migrated = migrate(copied, CARD_VERSION, MIGRATIONS);
  const card: Loose = { ...(migrated.ok ? migrated.value : copied), id, version: CARD_VERSION };
  const defaults = defaultsOf(id, now);
  const leftOut: CardFault[] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const parsed = JobCard.safeParse(card);
    if (parsed.success) {
      leftOut.push(...slipsOf(parsed.data, ''));
      const read = readCard(withoutSlips(parsed.data));
      return read.ok ? { card: read.value, leftOut } : undefined;
    }
    const [issue] = parsed.error.issues;
    if (!issue || !leaveOut(card, issue, defaults)) return undefined;
    const said = sayIssue(issue, '');
    const known = new Set(leftOut.map(({ field }) => field));
    leftOut.push(
      ...said.filter(({ field }) => !known.has(field)).map(({ field, says }) => cardFault('', field, says)),
    );
  }
  return undefined;
};
