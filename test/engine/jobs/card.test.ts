import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changed,
  newCard,
  withCoat,
  withFlaw,
  withoutCoat,
  withoutFlaw,
  withoutPhoto,
  withoutRepair,
  withPhoto,
  withRepair,
} from '#engine/jobs.ts';
import { readCard } from '#engine/model/read-card.ts';
import { anyCard, anyCoat, card, coat, START } from './cards.ts';

const now = fc.integer({ min: 0, max: START + 2e10 });
const flaw = { id: 'f', foundAt: START, defect: 'bubbles', coat: 'coat-1', answers: [] };
const repair = { id: 'r', doneAt: START, remedy: 'shave-the-run', flaw: 'f' };
const photo = { id: 'p', takenAt: START, width: 800, height: 600 };

describe('a job card', () => {
  it('begins with what is given and the time it is made', () => {
    const made = newCard(
      { name: 'Chair', kind: 'furniture', base: 'stain', tone: 'wood', age: 'none' },
      'x',
      5,
    );
    expect(made).toMatchObject({ id: 'x', madeAt: 5, changedAt: 5, coats: [], notes: '' });
    expect(readCard(made)).toEqual({ ok: true, value: made });
  });

  it('raises changedAt with every change, even where the clock went back, and leaves the old card as it was', () => {
    fc.assert(
      fc.property(anyCard, anyCoat, now, (one, laid, at) => {
        const before = structuredClone(one);
        for (const next of [
          changed(one, { notes: 'dust' }, at),
          withCoat(one, laid, at),
          withFlaw(one, flaw, at),
          withRepair(one, repair, at),
          withPhoto(one, photo, at),
          withoutCoat(one, laid.id, at),
          withoutFlaw(one, 'f', at),
          withoutRepair(one, 'r', at),
          withoutPhoto(one, 'p', at),
        ]) {
          expect(next.changedAt).toBeGreaterThan(one.changedAt);
          expect(next.changedAt).toBeGreaterThanOrEqual(at);
          expect([next.id, next.madeAt]).toEqual([one.id, one.madeAt]);
          expect(readCard(next).ok).toBe(true);
        }
        expect(one).toEqual(before);
      }),
    );
  });

  it('keeps its coats in the order in which they were laid, whatever the order of the notes', () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyCoat, { selector: ({ id }) => id, maxLength: 8 }), (coats) => {
        const end = coats.reduce((on, one) => withCoat(on, one, 0), card({ coats: [] }));
        const times = end.coats.map(({ laidAt }) => laidAt);
        expect(times).toEqual([...times].sort((one, two) => one - two));
        expect(new Set(end.coats.map(({ id }) => id))).toEqual(new Set(coats.map(({ id }) => id)));
      }),
    );
  });

  it('corrects a coat of the same id in place of adding one', () => {
    const cold = withCoat(card(), coat({ celsius: 12 }), 1);
    expect(cold.coats).toEqual([coat({ celsius: 12, changedAt: cold.changedAt })]);
  });

  it('takes a field away with undefined, and never its id', () => {
    const bare = changed(card(), { sheen: undefined }, 1);
    expect('sheen' in bare).toBe(false);
    expect(changed(card(), { id: 'other' } as never, 1).id).toBe('card-1');
  });

  it('lets flaws and repairs forget what is taken away', () => {
    const full = card({ flaws: [flaw], repairs: [repair] } as never);
    const bare = withoutFlaw(withoutCoat(full, 'coat-1', 1), 'f', 2);
    expect(withoutCoat(full, 'coat-1', 1).flaws).toEqual([
      { id: 'f', foundAt: START, defect: 'bubbles', answers: [] },
    ]);
    expect(bare.repairs).toEqual([{ id: 'r', doneAt: START, remedy: 'shave-the-run' }]);
  });
});
