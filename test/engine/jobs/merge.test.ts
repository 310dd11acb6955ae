import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JobCard, mergeCards, previewImport, withCoat } from '#engine/jobs.ts';
import { readCard } from '#engine/model/read-card.ts';
import { anyCard, card, coat, START } from './cards.ts';

const LISTS = ['coats', 'flaws', 'repairs', 'photos'] as const;
const shelf = fc.uniqueArray(anyCard, { selector: ({ id }) => id, maxLength: 4 });
const held = (cards: readonly JobCard[]) =>
  Object.fromEntries(
    [...cards].map((one) => [one.id, one]).sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  );

describe('two sets of cards as one', () => {
  it('loses nothing: every coat, flaw, repair and photo of both is in it', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        const merged = held(mergeCards(mine, theirs));
        for (const one of [...mine, ...theirs])
          for (const list of LISTS)
            for (const { id } of one[list])
              expect(merged[one.id]?.[list].map((item: { id: string }) => item.id)).toContain(id);
      }),
      { numRuns: 2000 },
    );
  });

  it('holds the same whichever side does it', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        expect(held(mergeCards(mine, theirs))).toEqual(held(mergeCards(theirs, mine)));
      }),
      { numRuns: 2000 },
    );
  });

  it('changes nothing when it is done again, with either side or with itself', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        const merged = mergeCards(mine, theirs);
        for (const again of [theirs, mine, merged])
          expect(held(mergeCards(merged, again))).toEqual(held(merged));
        expect(previewImport(merged, merged).every(({ kind }) => kind === 'same')).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('makes only cards that can be read back', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        for (const one of mergeCards(mine, theirs)) expect(readCard(one)).toMatchObject({ ok: true });
      }),
    );
  });

  it('takes fields and common coats from the newer card, and keeps mine first', () => {
    const older = card({ name: 'Old', changedAt: START, coats: [coat({ celsius: 10 }), coat({ id: 'x' })] });
    const newer = card({ name: 'New', changedAt: START + 1, coats: [coat({ celsius: 20 })] });
    const first = card({ id: 'z' });
    const [mine, merged] = mergeCards([first, older], [newer]);
    expect(mine).toEqual(first);
    expect(merged?.name).toBe('New');
    expect(merged?.coats.map(({ id, celsius }) => [id, celsius])).toEqual([
      ['coat-1', 20],
      ['x', 23],
    ]);
  });

  it('tells before what it would do', () => {
    const base = card();
    const plus = withCoat(base, coat({ id: 'b', laidAt: START + 5 }), START + 9);
    const other = withCoat(base, coat({ id: 'c', laidAt: START + 6 }), START + 8);
    const kindOf = (mine: JobCard[], theirs: JobCard[]) => previewImport(mine, theirs)[0];
    expect(kindOf([], [base])).toMatchObject({ kind: 'new', gains: { coats: 1 } });
    expect(kindOf([base], [{ ...base }])).toMatchObject({ kind: 'same', gains: { coats: 0 } });
    expect(kindOf([base], [plus])).toMatchObject({ kind: 'theirs-newer', gains: { coats: 1 } });
    expect(kindOf([plus], [base])).toMatchObject({ kind: 'mine-newer', gains: { coats: 0 } });
    expect(kindOf([plus], [other])).toMatchObject({ kind: 'both-changed', gains: { coats: 1 } });
  });

  it('leaves mine as it is where both together are more than a card holds', () => {
    const full = (start: string, at: number) =>
      card({
        changedAt: at,
        coats: Array.from({ length: 90 }, (_, index) =>
          coat({ id: `${start}${index}`, laidAt: START + index }),
        ),
      });
    const [mine, theirs] = [full('a', START), full('b', START + 1)];
    expect(previewImport([mine], [theirs])[0]?.kind).toBe('too-large');
    expect(mergeCards([mine], [theirs])).toEqual([mine]);
  });
});
