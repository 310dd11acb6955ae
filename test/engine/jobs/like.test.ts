/** Another card like this one, for a set of chairs. Invented pieces, and cards at random. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { anotherLike } from '#engine/jobs.ts';
import { readCard } from '#engine/model/read-card.ts';
import { anyCard, card, coat, START } from './cards.ts';

const NEW = { id: 'new', now: START + 5 };

it('copies what the piece is and what is planned, and nothing that happened to it', () => {
  const first = card({
    name: 'Chair',
    night: { celsius: 8 },
    plan: 'product=shellac',
    coats: [coat()],
    flaws: [{ id: 'f', foundAt: START, defect: 'bubbles', answers: [] }],
    notes: 'wobbles',
    finishedAt: START,
  });
  const second = anotherLike(first, NEW);
  expect(second).toMatchObject({ id: 'new', name: 'Chair 2', base: first.base, night: { celsius: 8 } });
  expect(second).toMatchObject({ plan: 'product=shellac', coats: [], flaws: [], notes: '' });
  expect(second).not.toHaveProperty('finishedAt');
  const { coats } = anotherLike(first, { ...NEW, coats: true });
  expect(coats).toEqual([{ ...coat(), id: 'new-1' }]);
});

it('counts on, past the names that are taken', () => {
  const named = (name: string, taken: string[] = []) => anotherLike(card({ name }), { ...NEW, taken }).name;
  expect(named('Chair 3')).toBe('Chair 4');
  expect(named('Chair', ['Chair 2', 'Chair 3'])).toBe('Chair 4');
  expect(named('1960')).toBe('1960 2');
  expect(named('n'.repeat(80))).toHaveLength(80);
});

it('is a card that its reader takes, whatever it was made of', () => {
  fc.assert(
    fc.property(anyCard, fc.boolean(), (one, coats) => {
      const read = readCard(anotherLike(one, { ...NEW, coats }));
      expect(read.ok, read.ok ? '' : JSON.stringify(read.faults)).toBe(true);
    }),
    { numRuns: 50 },
  );
});
