/** A thousand spoiled files: whatever is read, no card of hers is lost or made wrong by it. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { beforeEach, expect, it } from 'vitest';
import { newCard } from '#engine/jobs/card.ts';
import { previewShelves } from '#engine/jobs/preview.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { jobFileOf, readCard, readJobFile } from '#engine/model/read-card.ts';
import { importCards } from '../../site/client/jobs/files/import-cards.ts';
import { closeJobsDb } from '../../site/client/jobs/store/db.ts';
import { addCard, readRaw } from '../../site/client/jobs/store/index.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const MINE: JobCard = {
  ...newCard(
    { name: 'Navy dresser', kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' },
    'one',
    NOW,
  ),
  coats: ['c1', 'c2'].map((id, index) => ({
    id,
    laidAt: NOW + index,
    product: 'water-based-polyurethane',
    celsius: 21,
    relativeHumidity: 0.5,
  })),
  notes: 'By the window.',
};
const THEIRS = { ...MINE, changedAt: NOW + 9, notes: 'From the tablet.' };
const GONE = { id: 'three', name: 'Chair', at: NOW };
const THEIR_TWO = { ...MINE, id: 'two', removed: [{ list: 'coats' as const, id: 'c0', at: NOW }] };
const TEXT = JSON.stringify(jobFileOf([THEIRS, THEIR_TWO], {}, NOW, [GONE]));

/** A file with signs put in, taken out or cut off, or a value of another kind in place of one. */
const spoiled = fc.oneof(
  fc
    .array(fc.tuple(fc.nat({ max: TEXT.length }), fc.string({ maxLength: 4 }), fc.nat({ max: 6 })), {
      minLength: 1,
      maxLength: 3,
    })
    .map((cuts) =>
      cuts.reduce((text, [at, put, take]) => text.slice(0, at) + put + text.slice(at + take), TEXT),
    ),
  fc.nat({ max: TEXT.length }).map((at) => TEXT.slice(0, at)),
  fc
    .tuple(fc.nat(), fc.constantFrom('null', '-1', '1e99', '""', '[]', '{}', '"<b>"', 'true'))
    .map(([which, value]) => {
      const values = [...TEXT.matchAll(/:("[^"]*"|-?[\d.]+)/g)];
      const found = values[which % values.length];
      const at = (found?.index ?? 0) + 1;
      return TEXT.slice(0, at) + value + TEXT.slice(at + (found?.[1]?.length ?? 0));
    }),
  fc.json(),
);

beforeEach(async () => {
  await closeJobsDb();
  globalThis.indexedDB = new IDBFactory();
});

it('reads whole cards or none, and keeps all coats of hers', async () => {
  await addCard(MINE);
  const tally = { files: 0, refused: 0, leftOut: 0, broughtIn: 0 };
  const property = fc.asyncProperty(spoiled, async (text) => {
    tally.files += 1;
    const read = readJobFile(text);
    if (!read.ok) {
      tally.refused += 1;
      expect(read.faults[0].says).not.toBe('');
      return;
    }
    tally.leftOut += read.leftOut;
    tally.broughtIn += read.value.cards.length;
    for (const card of read.value.cards) expect(readCard(card).ok).toBe(true);
    const { cards, removed = [] } = read.value;
    const rows = previewShelves({ cards: [MINE], removed: [] }, { cards, removed });
    expect(rows.length).toBeGreaterThanOrEqual(cards.length);
    const going = rows.filter(({ kind }) => kind === 'goes');
    await importCards({ cards, photos: [], removed, rows: going });
    const kept = await readRaw();
    for (const raw of kept) expect(readCard(raw).ok).toBe(true);
    const mine = (kept as JobCard[]).find(({ id }) => id === 'one');
    const named = new Set(cards.flatMap(({ removed: off = [] }) => off.map(({ id }) => id)));
    const due = ['c1', 'c2'].filter((id) => !named.has(id));
    expect(mine?.coats.map(({ id }) => id)).toEqual(expect.arrayContaining(due));
  });
  await fc.assert(property, { numRuns: 1000, seed: 20_261_125 });
  console.log('spoiled files', JSON.stringify(tally));
  expect(tally.files).toBe(1000);
  expect(tally.refused).toBeGreaterThan(300);
  expect(tally.broughtIn).toBeGreaterThan(100);
});
