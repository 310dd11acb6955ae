import { MOST_LETTERS } from '../model/card-limits.ts';
import type { CardCoat, JobCard } from '../model/job-card.ts';
import { newCard } from './card.ts';

/** The name of the next of a set: `Chair` is followed by `Chair 2`, and that by `Chair 3`. */
const nextName = (name: string): string => {
  const [, stem = name, number = '1'] = /^(.*\S)\s+(\d{1,3})$/.exec(name) ?? [];
  const end = ` ${Number(number) + 1}`;
  return `${stem.slice(0, MOST_LETTERS.name - end.length).trim()}${end}`;
};

type Like = {
  readonly id: string;
  readonly now: number;
  /** With the coats that lie on it, laid at the same times. */
  readonly coats?: boolean;
  /** Names that other cards have. */
  readonly taken?: readonly string[];
};

/** A coat of another piece has an id of its own: on the clock coats are told apart by it. */
const asOf =
  (card: string) =>
  (coat: CardCoat, index: number): CardCoat => ({ ...coat, id: `${card.slice(0, 56)}-${index + 1}` });

/** Another piece of the same set: what it is and what is planned for it. Flaws, repairs, photos and notes are the first one's. */
export const anotherLike = (card: JobCard, { id, now, coats = false, taken = [] }: Like): JobCard => {
  const { name, kind, base, baseLaidAt, tone, age, sheen, product, label, parts, trials, plan, night } = card;
  let called = nextName(name);
  while (taken.includes(called)) called = nextName(called);
  const told = { baseLaidAt, sheen, product, label, parts, trials, plan, night };
  const known = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined));
  return newCard(
    { name: called, kind, base, tone, age, ...known, ...(coats && { coats: card.coats.map(asOf(id)) }) },
    id,
    now,
  );
};
