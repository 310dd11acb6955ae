import { type Card, createEmptyCard, fsrs, Rating, type State } from 'ts-fsrs';
import type { PracticeKey, PracticeLevel } from '#engine/practice.ts';
import type { Deck } from '../shared/storage.ts';

type Kept = Deck['cards'][string];

/** No chance of its own: what was answered alike comes back alike. */
const scheduler = fsrs({ enable_fuzz: false });

export const EMPTY_DECK: Deck = { kind: 'halfdry-practice', version: 1, boards: 0, right: 0, cards: {} };

/** What comes back is the flaw at its level, each time on another board. */
const cardName = ({ level, flaw }: Pick<PracticeKey, 'level' | 'flaw'>): string => `${level}.${flaw}`;

const cardOf = (kept: Kept): Card => ({
  due: new Date(kept.due),
  stability: kept.stability,
  difficulty: kept.difficulty,
  elapsed_days: 0,
  scheduled_days: kept.scheduledDays,
  learning_steps: kept.learningSteps,
  reps: kept.reps,
  lapses: kept.lapses,
  state: kept.state as State,
  ...(kept.lastReview === undefined ? {} : { last_review: new Date(kept.lastReview) }),
});

const keptOf = (card: Card): Kept => ({
  due: card.due.getTime(),
  stability: card.stability,
  difficulty: card.difficulty,
  scheduledDays: card.scheduled_days,
  learningSteps: card.learning_steps,
  reps: card.reps,
  lapses: card.lapses,
  state: card.state as 0 | 1 | 2 | 3,
  ...(card.last_review ? { lastReview: card.last_review.getTime() } : {}),
});

/** The deck after a board was answered; right is right at the first tap in all that was asked. `now` in epoch milliseconds. */
export const answered = (
  deck: Deck,
  key: Pick<PracticeKey, 'level' | 'flaw'>,
  right: boolean,
  now: number,
): Deck => {
  const name = cardName(key);
  const kept = deck.cards[name];
  const before = kept ? cardOf(kept) : createEmptyCard(new Date(now));
  const { card } = scheduler.next(before, new Date(now), right ? Rating.Good : Rating.Again);
  return {
    ...deck,
    boards: deck.boards + 1,
    right: deck.right + Number(right),
    cards: { ...deck.cards, [name]: keptOf(card) },
  };
};

/** Flaws of a level that are due, the longest first; those that `may` not be dealt any more are passed over. */
export const dueFlaws = (
  deck: Deck,
  level: PracticeLevel,
  now: number,
  may: (flaw: string) => boolean,
): readonly string[] =>
  Object.entries(deck.cards)
    .filter(([name, { due }]) => name.startsWith(`${level}.`) && due <= now)
    .sort(([, one], [, two]) => one.due - two.due)
    .map(([name]) => name.slice(level.length + 1))
    .filter(may);
