/** Spacing, links and results of practice, without a browser. */
import fc from 'fast-check';
import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { answered, dueFlaws, EMPTY_DECK } from '../../site/client/practice/deck.ts';
import { readResults, writeResult } from '../../site/client/practice/results.ts';
import { setSize } from '../../site/client/practice/set-size.ts';
import { MOST_IN_A_SET, readLink, writeLink } from '../../site/client/practice/state.ts';
import { mergedDecks } from '../../site/client/shared/decks.ts';
import type { Deck } from '../../site/client/shared/storage.ts';

const NOW = Date.UTC(2026, 4, 2, 9);
const DAY = 86_400_000;
const BUBBLES = { level: 'look', flaw: 'bubbles' } as const;
const any = () => true;

describe('how many boards', () => {
  it('is a whole number of 1 to 40, and all else is told', () => {
    expect(setSize('10')).toEqual({ count: 10 });
    expect(setSize(String(MOST_IN_A_SET))).toEqual({ count: MOST_IN_A_SET });
    for (const text of ['0', '-5', '−5', '1000', '41'])
      expect(setSize(text)).toEqual({ says: 'A set has 1 to 40 boards.' });
    expect(setSize('1.5')).toEqual({ says: 'Give a whole number of boards.' });
    for (const text of ['', 'ten', '1e1'])
      expect(setSize(text)).toEqual({ says: 'Give the number of boards as a number.' });
  });
});

describe('the link of a set in the making', () => {
  it('holds its boards and the flaws that it is drawn from', () => {
    const boards = [{ ...BUBBLES, seed: 7 }];
    for (const making of [[], ['bubbles', 'pools']])
      expect(readLink(`#${writeLink({ title: 'Tuesday', boards, making })}`)).toMatchObject({
        title: 'Tuesday',
        boards,
        making,
      });
    expect(readLink(`#${writeLink({ boards })}`).making).toBeUndefined();
  });
});

describe('spacing', () => {
  it('is what the scheduler itself says, answer by answer', () => {
    const scheduler = fsrs({ enable_fuzz: false });
    let card = createEmptyCard(new Date(NOW));
    let deck: Deck = EMPTY_DECK;
    let now = NOW;
    for (const right of [true, true, false, true, true, true]) {
      card = scheduler.next(card, new Date(now), right ? Rating.Good : Rating.Again).card;
      deck = answered(deck, BUBBLES, right, now);
      const kept = deck.cards['look.bubbles'];
      expect([kept?.due, kept?.reps, kept?.lapses]).toEqual([card.due.getTime(), card.reps, card.lapses]);
      expect(kept?.stability).toBeCloseTo(card.stability, 9);
      now = card.due.getTime();
    }
    expect([deck.boards, deck.right]).toEqual([6, 5]);
  });

  it('brings back what was missed before what was known', () => {
    let deck = answered(EMPTY_DECK, BUBBLES, true, NOW);
    deck = answered(deck, { level: 'look', flaw: 'pools' }, false, NOW);
    const [missed, known] = [deck.cards['look.pools'], deck.cards['look.bubbles']];
    expect(missed?.due).toBeLessThan(known?.due ?? 0);
    expect(dueFlaws(deck, 'look', (missed?.due ?? 0) + 1, any)).toEqual(['pools']);
    expect(dueFlaws(deck, 'look', NOW + 30 * DAY, any)).toEqual(['pools', 'bubbles']);
    expect(dueFlaws(deck, 'look', NOW + 30 * DAY, (flaw) => flaw !== 'pools')).toEqual(['bubbles']);
    expect(dueFlaws(deck, 'case', NOW + 30 * DAY, any)).toEqual([]);
  });

  it('takes the later answer where two devices meet, whichever is brought in', () => {
    const first = answered(EMPTY_DECK, BUBBLES, false, NOW);
    const second = answered(
      answered(EMPTY_DECK, BUBBLES, true, NOW + DAY),
      { level: 'look', flaw: 'pools' },
      true,
      NOW,
    );
    const merged = mergedDecks(first, second);
    expect(merged).toEqual(mergedDecks(second, first));
    expect(merged.cards['look.bubbles']).toEqual(second.cards['look.bubbles']);
    expect(Object.keys(merged.cards).sort()).toEqual(['look.bubbles', 'look.pools']);
  });
});

describe('a class by link', () => {
  const key = fc.record({
    level: fc.constantFrom('look' as const, 'stage' as const, 'case' as const),
    flaw: fc.constantFrom('bubbles', 'cloudy-film', 'sound'),
    seed: fc.nat(2_147_483_647),
  });

  it('reads back what was written, any title', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 60 }),
        fc.array(key, { minLength: 1, maxLength: MOST_IN_A_SET }),
        (title, boards) => {
          const read = readLink(`#${writeLink({ title, boards })}`);
          expect(read.boards).toEqual(boards);
          expect(read.title).toBe(title.trim());
          expect(read.unread).toBe(0);
        },
      ),
    );
  });

  it('reads what it can of a link that was cut or made up', () => {
    expect(readLink('#boards=look.bubbles.1_look.bub')).toMatchObject({
      boards: [{ level: 'look', flaw: 'bubbles', seed: 1 }],
      unread: 1,
    });
    expect(readLink('#level=case').unread).toBe(0);
    expect(readLink('#boards=x_look.__proto__.1_look.a.9999999999&class=%').boards).toEqual([]);
    expect(readLink(`#boards=${Array(99).fill('look.bubbles.1').join('_')}`).boards).toHaveLength(
      MOST_IN_A_SET,
    );
    fc.assert(
      fc.property(fc.string(), (hash) => {
        readLink(hash);
      }),
    );
  });
});

describe('results of pupils', () => {
  it('are read from any message that holds their lines', () => {
    const ann = { name: 'Ann', wrong: [undefined, 'bubbles', undefined] };
    const bo = { name: 'no name', wrong: ['sand-now', undefined, undefined] };
    const text = `Hi! here it is:\n${writeResult('Tuesday | class', ann)}\n\n> ${writeResult('', { ...bo, name: ' ' })}\nbye`;
    expect(readResults(text, 3)).toEqual([ann, bo]);
    expect(text).toContain('2/3');
  });

  it('of another set, or made up, are passed over', () => {
    expect(readResults('Halfdry results | x | Ann | 1/1 | +', 3)).toEqual([]);
    expect(readResults('Halfdry results | x | <img> | 9/9 | + <b> +', 3)).toEqual([]);
    fc.assert(
      fc.property(fc.string(), (text) => {
        readResults(text, 3);
      }),
    );
  });
});
