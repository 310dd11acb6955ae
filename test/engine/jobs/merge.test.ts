import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isRemoved } from '#engine/jobs/removed.ts';
import {
  changed,
  type JobCard,
  mergeCards,
  mergeShelves,
  previewImport,
  previewShelves,
  putBack,
  withCoat,
  withoutCoat,
  withoutFlaw,
} from '#engine/jobs.ts';
import { CARD_LISTS, MOST } from '#engine/model/card-limits.ts';
import { readCard } from '#engine/model/read-card.ts';
import { WHOLE } from '../../thorough.ts';
import { anyCard, card, coat, START } from './cards.ts';

const RUNS = { numRuns: WHOLE ? 200 : 60 };
const shelf = fc.uniqueArray(anyCard, { selector: ({ id }) => id, maxLength: 4 });
const held = (cards: readonly JobCard[]) =>
  Object.fromEntries(
    [...cards].map((one) => [one.id, one]).sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  );

describe('two sets of cards as one', () => {
  it('loses nothing but what one side took off: every other coat, flaw, repair and photo is in it', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        const merged = held(mergeCards(mine, theirs));
        const all = [...mine, ...theirs];
        for (const one of all)
          for (const list of CARD_LISTS)
            for (const { id } of one[list]) {
              const off = all.some(
                (card) =>
                  card.id === one.id && card.removed?.some((gone) => gone.list === list && gone.id === id),
              );
              const there = merged[one.id]?.[list].some((item: { id: string }) => item.id === id);
              if (!off) expect(there).toBe(true);
            }
      }),
      RUNS,
    );
  });

  it('takes off what one side took off and the other has not corrected since, whoever changed the rest later', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        const merged = held(mergeCards(mine, theirs));
        const all = [...mine, ...theirs];
        for (const [card, { id: of }] of all.map((one) => [merged[one.id], one] as const))
          for (const list of CARD_LISTS) {
            const sides = all.filter(({ id }) => id === of);
            for (const { id } of (card?.[list] ?? []) as { id: string }[]) {
              const offs = sides.flatMap(({ removed = [] }) =>
                removed.flatMap((gone) => (gone.list === list && gone.id === id ? gone.at : [])),
              );
              const corrected = sides.flatMap((one) =>
                (one[list] as { id: string; changedAt?: number }[]).flatMap((item) =>
                  item.id === id ? (item.changedAt ?? 0) : [],
                ),
              );
              expect(Math.max(0, ...corrected)).toBeGreaterThanOrEqual(Math.max(0, ...offs));
              expect(isRemoved(card as JobCard, list, id)).toBe(false);
            }
          }
      }),
      RUNS,
    );
  });

  it('holds the same whichever side does it', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        expect(held(mergeCards(mine, theirs))).toEqual(held(mergeCards(theirs, mine)));
      }),
      RUNS,
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
      RUNS,
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

  it('loses no notes, and nothing that only one side told, whichever is newer', () => {
    fc.assert(
      fc.property(shelf, shelf, (mine, theirs) => {
        const merged = held(mergeCards(mine, theirs));
        for (const one of [...mine, ...theirs])
          for (const line of one.notes.split('\n'))
            if (line.trim()) expect(merged[one.id]?.notes).toContain(line);
      }),
      RUNS,
    );
    const { product: _none, ...bare } = card({ notes: 'desktop says', changedAt: START + 5 });
    const phone = card({ product: 'shellac', label: { minutes: {} }, notes: 'phone says', changedAt: START });
    for (const merged of [mergeCards([bare], [phone])[0], mergeCards([phone], [bare])[0]])
      expect(merged).toMatchObject({
        product: 'shellac',
        label: { minutes: {} },
        notes: 'desktop says\nphone says',
      });
    // The times on a can are not those of another product.
    const other = card({ product: 'paste-wax', changedAt: START + 5 });
    expect(mergeCards([other], [phone])[0]).toMatchObject({ product: 'paste-wax' });
    expect(mergeCards([other], [phone])[0]?.label).toBe(other.label);
    expect(previewImport([bare], [phone])[0]).toMatchObject({
      kind: 'both-changed',
      fields: expect.arrayContaining(['product', 'label', 'notes']),
    });
  });

  it('keeps a coat off that was taken off here, and brings it back once it is put back', () => {
    const base = card({ coats: [coat({ id: 'a' }), coat({ id: 'b', laidAt: START + 1 })] });
    const off = withoutCoat(base, 'b', START + 10);
    const noted = changed(base, { notes: 'dust' }, START + 20);
    const [merged] = mergeCards([off], [noted]);
    expect(merged?.coats.map(({ id }) => id)).toEqual(['a']);
    expect(merged?.notes).toBe('dust');
    expect(previewImport([off], [noted])[0]).toMatchObject({ withheld: { coats: 1 }, fields: ['notes'] });
    expect(previewImport([noted], [off])[0]).toMatchObject({ losses: { coats: 1 }, fields: [] });
    const back = putBack(merged as JobCard, base, 'coats', 'b', START + 30);
    expect(mergeCards([off], [back])[0]?.coats.map(({ id }) => id)).toEqual(['a', 'b']);
    const corrected = withCoat(base, coat({ id: 'b', laidAt: START + 1, celsius: 9 }), START + 40);
    expect(mergeCards([off], [corrected])[0]?.coats.map(({ celsius }) => celsius)).toEqual([23, 9]);
    expect(previewImport([base], [corrected])[0]).toMatchObject({ changes: { coats: 1 } });
  });

  it('lets no flaw name a coat that is off, nor a repair such a flaw', () => {
    const flaw = { id: 'f', foundAt: START, defect: 'bubbles', coat: 'coat-1', answers: [] };
    const repair = { id: 'r', doneAt: START, remedy: 'shave-the-run', flaw: 'f' };
    const base = card({ flaws: [flaw], repairs: [repair] });
    const off = withoutFlaw(withoutCoat(base, 'coat-1', START + 1), 'f', START + 2);
    const [merged] = mergeCards([off], [changed(base, { notes: 'x' }, START + 9)]);
    expect(merged).toMatchObject({ coats: [], flaws: [], repairs: [{ id: 'r' }] });
    expect(merged?.repairs[0]?.flaw).toBeUndefined();
    const back = putBack(withoutCoat(base, 'coat-1', START + 1), base, 'coats', 'coat-1', START + 2);
    expect(back.flaws).toEqual([flaw]);
  });

  it('remembers so many removals as a card holds, the newest', () => {
    const many = card({ photos: [] as never });
    let one: JobCard = many;
    for (let index = 0; index < MOST.removed + 20; index++)
      one = withoutCoat(withCoat(one, coat({ id: `c${index}` }), START + index), `c${index}`, START + index);
    expect(one.removed?.length).toBe(MOST.removed);
    expect(one.removed?.[0]?.id).toBe(`c${MOST.removed + 19}`);
    expect(readCard(one).ok).toBe(true);
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

describe('cards that were taken away', () => {
  const shelfOf = (cards: readonly JobCard[], ...removed: readonly { id: string; at: number }[]) => ({
    cards,
    removed: removed.map((one) => ({ ...one, name: 'Gone' })),
  });
  const kinds = (mine: ReturnType<typeof shelfOf>, theirs: ReturnType<typeof shelfOf>) =>
    previewShelves(mine, theirs).map(({ kind }) => kind);

  it('stay away, unless they were changed later than that', () => {
    const old = card({ changedAt: START });
    const [before, after] = [
      shelfOf([], { id: 'card-1', at: START + 1 }),
      shelfOf([], { id: 'card-1', at: START - 1 }),
    ];
    expect(mergeShelves(before, shelfOf([old]))).toEqual(before);
    expect(mergeShelves(after, shelfOf([old]))).toEqual(shelfOf([old]));
    expect(kinds(before, shelfOf([old]))).toEqual(['gone-here']);
    expect(kinds(after, shelfOf([old]))).toEqual(['new']);
    expect(kinds(shelfOf([old]), before)).toEqual(['goes']);
    expect(kinds(shelfOf([old]), after)).toEqual(['kept']);
  });

  it('are the same on both sides, also when it is done again', () => {
    const removals = fc.uniqueArray(
      fc.record({
        id: fc.constantFrom('a', 'b', 'c', 'd'),
        at: fc.integer({ min: START, max: START + 1e10 }),
      }),
      { selector: ({ id }) => id, maxLength: 3 },
    );
    const side = fc.tuple(shelf, removals).map(([cards, gone]) => shelfOf(cards, ...gone));
    fc.assert(
      fc.property(side, side, (mine, theirs) => {
        const one = mergeShelves(mine, theirs);
        const two = mergeShelves(theirs, mine);
        expect([held(one.cards), one.removed]).toEqual([held(two.cards), two.removed]);
        const again = mergeShelves(one, theirs);
        expect([held(again.cards), again.removed]).toEqual([held(one.cards), one.removed]);
        const rows = previewShelves(mine, theirs);
        const gone = rows.filter(({ kind }) => kind === 'goes').map(({ id }) => id);
        for (const id of gone) expect(one.cards.some((card) => card.id === id)).toBe(false);
      }),
      RUNS,
    );
  });
});
