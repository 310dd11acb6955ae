/** Two tabs that write to one card in any order: nothing that was told as saved is lost, and nothing untrue is told. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { changed, newCard, withCoat, withoutCoat } from '#engine/jobs/card.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { readCard } from '#engine/model/read-card.ts';
import { closeJobsDb } from '../../site/client/jobs/store/db.ts';
import { addCard, readClashes, readOne } from '../../site/client/jobs/store/index.ts';
import { CardSaver, type SaverEvent } from '../../site/client/jobs/views/saver.ts';
import { THOROUGH } from '../thorough.ts';

const NOW = Date.UTC(2026, 10, 23, 17);
const START = newCard(
  { name: 'Navy dresser', kind: 'furniture', base: 'chalk-paint', tone: 'dark', age: 'none' },
  'one',
  NOW,
);

type Step = {
  readonly tab: 0 | 1;
  readonly does: 'notes' | 'sheen' | 'coat' | 'off' | 'hear';
  /** Whether the next step waits until this one is written. */
  readonly waits: boolean;
};
const step: fc.Arbitrary<Step> = fc.record({
  tab: fc.constantFrom<0 | 1>(0, 1),
  does: fc.constantFrom<Step['does']>('notes', 'notes', 'sheen', 'coat', 'off', 'hear'),
  waits: fc.boolean(),
});

const kept = async (): Promise<JobCard> => {
  const read = await readOne('one');
  if (read.kind !== 'card') throw new Error(read.kind);
  return read.card;
};

const run = async (steps: readonly Step[]): Promise<{ clashes: number; saved: number }> => {
  await closeJobsDb();
  globalThis.indexedDB = new IDBFactory();
  await addCard(START);
  const events: SaverEvent[][] = [[], []];
  const savers = [0, 1].map((tab) => new CardSaver(START, (event) => events[tab]?.push(event)));
  /** Texts that were told as saved, and those that a tab saw on the card when it wrote over them. */
  const written = new Set<string>();
  const overwritten = new Set<string>();
  const laid = new Set<string>();
  const taken = new Set<string>();
  const going: Promise<unknown>[] = [];
  for (const [index, { tab, does, waits }] of steps.entries()) {
    const saver = savers[tab];
    if (!saver) continue;
    const work = async () => {
      if (does === 'hear') return void saver.take(await kept());
      if (does === 'coat') {
        const id = `c${index}`;
        const coat = { id, laidAt: NOW + index, product: 'shellac', celsius: 20, relativeHumidity: 0.5 };
        if (await saver.now((card) => withCoat(card, coat, NOW))) laid.add(id);
        return undefined;
      }
      if (does === 'off') {
        const id = saver.card.coats[0]?.id;
        if (id && (await saver.now((card) => withoutCoat(card, id, NOW)))) taken.add(id);
        return undefined;
      }
      const seen = saver.card.notes;
      const text = `tab ${tab}, text ${index}`;
      if (does === 'sheen') {
        await saver.now((card) => changed(card, { sheen: index % 2 ? 'gloss' : 'matte' }, NOW));
      } else if (await saver.now((card) => changed(card, { notes: text }, NOW))) {
        written.add(text);
        overwritten.add(seen);
      }
      return undefined;
    };
    const done = work();
    going.push(done);
    if (waits) await done;
  }
  await Promise.all(going);
  const card = await kept();
  expect(readCard(card).ok).toBe(true);
  const clashes = await readClashes('one');
  const found = new Set([card.notes, ...clashes.flatMap(({ mine, theirs }) => [mine, theirs])]);
  for (const text of written)
    if (!found.has(text) && !overwritten.has(text))
      throw new Error(`“${text}” was told as saved and is nowhere`);
  const ids = new Set(card.coats.map(({ id }) => id));
  for (const id of laid) if (!taken.has(id)) expect(ids.has(id), `coat ${id}`).toBe(true);
  for (const id of taken) expect(ids.has(id), `coat ${id} was taken off`).toBe(false);
  const told = events.flat();
  // A clash is told by the tab that lost it, as often as one is kept; none is told where there is none.
  const saved = told.flatMap((event) => (event.kind === 'saved' ? [event] : []));
  expect(saved.flatMap((event) => event.clashes).length).toBe(clashes.length);
  for (const event of saved) if (event.clashes.length) expect(event.merged).toBe(true);
  expect(told.filter(({ kind }) => kind !== 'saved' && kind !== 'saving')).toEqual([]);
  return { clashes: clashes.length, saved: saved.length };
};

const RUNS = THOROUGH ? 1000 : 20;

it(`loses nothing over ${RUNS} random orders of two tabs`, { timeout: 300_000 }, async () => {
  const tally = { orders: 0, saved: 0, clashes: 0 };
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 24 }), async (steps) => {
      const { clashes, saved } = await run(steps);
      tally.orders += 1;
      tally.saved += saved;
      tally.clashes += clashes;
    }),
    { numRuns: RUNS, seed: 20_261_128 },
  );
  console.log('two tabs', JSON.stringify(tally));
  expect(tally.clashes).toBeGreaterThan(RUNS / 10);
});

it('shows one and the same card for as long as nothing changes, also while a change waits', async () => {
  const saver = new CardSaver(START, () => undefined);
  let at = NOW;
  const written = saver.now((card) => changed(card, { sheen: 'matte' }, ++at));
  expect(saver.card).toBe(saver.card);
  expect(saver.card.sheen).toBe('matte');
  await written;
  expect(saver.card).toBe(saver.card);
});
