/**
 * Two people write on copies of one card. What only one of them touched is kept from that one; what both touched is
 * told, as when two copies of a text are put together by hand. Invented cards.
 */
import { describe, expect, it } from 'vitest';
import { bothTexts, mergeChange, sameCard, withMine } from '#engine/jobs/three-way.ts';
import type { CardFlaw, CardPhoto, CardRepair, JobCard } from '#engine/model/job-card.ts';
import { card, coat, START } from './cards.ts';

const HOUR = 3_600_000;
const flaw = (more: Partial<CardFlaw> = {}): CardFlaw =>
  ({ id: 'flaw-1', foundAt: START, defect: 'lap-marks', note: '', ...more }) as CardFlaw;
const repair = (more: Partial<CardRepair> = {}): CardRepair =>
  ({ id: 'repair-1', doneAt: START, remedy: 'sand-and-recoat', note: '', ...more }) as CardRepair;
const photo = (more: Partial<CardPhoto> = {}): CardPhoto =>
  ({ id: 'photo-1', takenAt: START, caption: '', ...more }) as CardPhoto;

const base = card({ coats: [coat()], notes: 'as it was' });
const merge = (mine: Partial<JobCard>, theirs: Partial<JobCard>) =>
  mergeChange(base, { ...base, ...mine }, { ...base, ...theirs });

describe('a field', () => {
  it('that only I changed is as I have it', () => {
    const { card: got, clashes } = merge({ name: 'Blue dresser' }, { notes: 'theirs' });
    expect([got.name, got.notes, clashes]).toEqual(['Blue dresser', 'theirs', []]);
  });

  it('that only they changed is as they have it', () => {
    const { card: got, clashes } = merge({}, { name: 'Green dresser', sheen: 'matte' });
    expect([got.name, got.sheen, clashes]).toEqual(['Green dresser', 'matte', []]);
  });

  it('that both changed alike is no clash', () => {
    const { card: got, clashes } = merge({ name: 'Red' }, { name: 'Red' });
    expect([got.name, clashes]).toEqual(['Red', []]);
  });

  it('that both changed is theirs, and mine is handed back', () => {
    const { card: got, clashes } = merge({ name: 'Mine' }, { name: 'Theirs' });
    expect(got.name).toBe('Theirs');
    expect(clashes).toEqual([{ field: 'name', mine: 'Mine', theirs: 'Theirs' }]);
  });

  it('that only one of us wrote at all comes along', () => {
    expect(merge({ wear: 'high' } as Partial<JobCard>, {}).card).toMatchObject({ wear: 'high' });
    expect(merge({}, { wear: 'low' } as Partial<JobCard>).card).toMatchObject({ wear: 'low' });
  });

  it('that is of the card itself is nobody’s change', () => {
    const { card: got, clashes } = merge(
      { changedAt: START + 2 * HOUR, madeAt: START + 1, id: 'mine', version: 1 as never },
      { changedAt: START + HOUR, name: 'Theirs' },
    );
    expect(clashes).toEqual([]);
    expect([got.id, got.madeAt, got.version]).toEqual([base.id, base.madeAt, base.version]);
    expect(got.changedAt).toBeGreaterThanOrEqual(START + 2 * HOUR);
  });
});

describe('an entry of a list', () => {
  const lists = [
    ['coats', coat(), { ...coat(), celsius: 30 }, { ...coat(), celsius: 12 }],
    ['flaws', flaw(), flaw({ note: 'mine' } as never), flaw({ note: 'theirs' } as never)],
    ['repairs', repair(), repair({ note: 'mine' } as never), repair({ note: 'theirs' } as never)],
    ['photos', photo(), photo({ caption: 'mine' } as never), photo({ caption: 'theirs' } as never)],
  ] as const;

  it.each(lists)(
    'of %s: added by either stays, changed by one is as that one has it',
    (list, was, mine, theirs) => {
      const from = { ...base, [list]: [] };
      const other = { ...theirs, id: 'other' };
      const added = mergeChange(from, { ...from, [list]: [was] }, { ...from, [list]: [other] });
      expect(added.card[list].map(({ id }) => id).sort()).toEqual([was.id, 'other'].sort());
      expect(added.clashes).toEqual([]);
      const had = { ...base, [list]: [was] };
      expect(mergeChange(had, { ...had, [list]: [mine] }, had).card[list]).toEqual([mine]);
      expect(mergeChange(had, had, { ...had, [list]: [theirs] }).card[list]).toEqual([theirs]);
      expect(mergeChange(had, { ...had, [list]: [mine] }, { ...had, [list]: [mine] })).toMatchObject({
        card: { [list]: [mine] },
        clashes: [],
      });
    },
  );

  it.each(lists)('of %s: changed by both is theirs and told', (list, was, mine, theirs) => {
    const had = { ...base, [list]: [was] };
    const got = mergeChange(had, { ...had, [list]: [mine] }, { ...had, [list]: [theirs] });
    expect(got.card[list]).toEqual([theirs]);
    expect(got.clashes).toEqual([{ list, entry: was.id, mine, theirs }]);
  });

  it.each(lists)('of %s: taken off goes, unless the other changed it', (list, was, mine, theirs) => {
    const had = { ...base, [list]: [was] };
    const none = { ...had, [list]: [] };
    expect(mergeChange(had, none, had).card[list]).toEqual([]);
    expect(mergeChange(had, had, none).card[list]).toEqual([]);
    expect(mergeChange(had, none, none)).toMatchObject({ card: { [list]: [] }, clashes: [] });
    // Corrected here after it was taken off there.
    expect(mergeChange(had, { ...had, [list]: [mine] }, none)).toMatchObject({
      card: { [list]: [mine] },
      clashes: [],
    });
    // Taken off here, corrected there: theirs stands, and that it was taken off here is told.
    const got = mergeChange(had, none, { ...had, [list]: [theirs] });
    expect(got.card[list]).toEqual([theirs]);
    expect(got.clashes).toEqual([{ list, entry: was.id, mine: undefined, theirs }]);
  });

  it.each(lists)('of %s: mine after all stands in its place, or is taken off', (list, was, mine, theirs) => {
    const now = START + 9 * HOUR;
    const had = { ...base, [list]: [theirs] };
    const back = withMine(had, { list, entry: was.id, mine, theirs }, now);
    expect(back[list]).toHaveLength(1);
    expect(back[list][0]).toMatchObject({ ...mine });
    const gone = withMine(had, { list, entry: was.id, mine: undefined, theirs }, now);
    expect(gone[list]).toEqual([]);
    expect(gone.removed).toEqual([expect.objectContaining({ list, id: was.id })]);
  });
});

describe('what was taken off', () => {
  const removal = { list: 'coats', id: 'gone', at: START } as const;

  it('on either side stays known, and no longer once it is back', () => {
    expect(merge({ removed: [removal] }, {}).card.removed).toEqual([removal]);
    expect(merge({}, { removed: [removal] }).card.removed).toEqual([removal]);
    const back = merge({ removed: [removal] }, { coats: [coat(), coat({ id: 'gone' })] });
    expect(back.card.coats.map(({ id }) => id)).toContain('gone');
    expect(back.card.removed).toBeUndefined();
  });
});

it('puts a field back as I had it, and both texts one under the other', () => {
  const clash = { field: 'notes', mine: 'mine', theirs: 'theirs' } as const;
  expect(withMine(base, clash, START + 1).notes).toBe('mine');
  expect(bothTexts(clash)).toBe('theirs\nmine');
  expect(bothTexts({ field: 'name', mine: 'a', theirs: 'b' })).toBeUndefined();
  expect(bothTexts({ field: 'notes', mine: undefined, theirs: 'b' } as never)).toBeUndefined();
  expect(bothTexts({ field: 'notes', mine: 'a', theirs: undefined } as never)).toBeUndefined();
  expect(bothTexts({ list: 'coats', entry: 'x', mine: undefined, theirs: undefined })).toBeUndefined();
});

it('two cards are the same whenever they were changed and however their keys stand', () => {
  const turned = Object.fromEntries(Object.entries(base).reverse()) as JobCard;
  expect(sameCard(base, { ...turned, changedAt: START + HOUR })).toBe(true);
  expect(sameCard(base, { ...base, name: 'Another' })).toBe(false);
  expect(sameCard(base, { ...base, madeAt: START + 1 })).toBe(false);
});
