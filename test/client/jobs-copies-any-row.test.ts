/** After any row of changes the second copies alone give back what the database held. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { importCards } from '../../site/client/jobs/files/import-cards.ts';
import { closeJobsDb, jobsDb } from '../../site/client/jobs/store/db.ts';
import {
  addCard,
  changeCard,
  dropAside,
  mendCard,
  putAsideBack,
  putCards,
  type Removed,
  readAside,
  readClashes,
  readOne,
  removeCard,
  removePhoto,
  restoreCards,
  setCardAside,
  settleClash,
} from '../../site/client/jobs/store/index.ts';
import { compareCopies } from '../../site/client/jobs/store/whole.ts';
import { THOROUGH } from '../thorough.ts';

eachInAFreshBrowser();

import {
  all,
  cardOf,
  eachInAFreshBrowser,
  entryOf,
  freshBrowser,
  NOW,
  photograph,
  photoOf,
  startAgain,
} from './browser-with-copies.ts';

const IDS = ['one', 'two', 'three'];
const step = fc.record({
  id: fc.constantFrom(...IDS),
  does: fc.constantFrom(
    'add',
    'edit',
    'clash',
    'settle',
    'photo',
    'photo-off',
    'remove',
    'restore',
    'aside',
    'aside-back',
    'aside-drop',
    'damage-and-mend',
    'file',
    'file-removes',
    'again',
  ),
  photo: fc.constantFrom('p1', 'p2'),
  byte: fc.nat({ max: 255 }),
});
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

const takenOut = new Map<string, Removed>();
const acts: Readonly<Record<Step['does'], (step: Step) => Promise<unknown>>> = {
  add: async ({ id }) => (await readOne(id)).kind === 'gone' && addCard(cardOf(id)),
  edit: async ({ id, byte }) => {
    const read = await readOne(id);
    return read.kind === 'card' && changeCard(read.card, (card) => ({ ...card, notes: `${byte}` }));
  },
  clash: async ({ id, byte }) => {
    const read = await readOne(id);
    if (read.kind !== 'card') return;
    await changeCard(read.card, (card) => ({ ...card, notes: `there ${byte}` }));
    await changeCard(read.card, (card) => ({ ...card, notes: `here ${byte}` }));
  },
  settle: async ({ id }) => {
    const [clash] = await readClashes(id);
    return clash && settleClash(clash);
  },
  photo: async ({ id, photo, byte }) => {
    const read = await readOne(id);
    if (read.kind === 'card' && !read.card.photos.some((one) => one.id === photo))
      await photograph(id, photo, byte);
  },
  'photo-off': async ({ id, photo }) => (await readOne(id)).kind === 'card' && removePhoto(id, photo),
  remove: async ({ id }) => {
    const removed = await removeCard(id);
    if (removed) takenOut.set(id, removed);
  },
  restore: async ({ id, byte }) => {
    const removed = takenOut.get(id);
    return removed && restoreCards([removed], byte % 2 > 0);
  },
  aside: ({ id }) => setCardAside(id),
  'aside-back': async ({ id }) => {
    const one = (await readAside()).find((aside) => aside.id === id);
    return one && putAsideBack(one);
  },
  'aside-drop': ({ id }) => dropAside(id),
  'damage-and-mend': async ({ id, photo, byte }) => {
    const read = await readOne(id);
    if (read.kind !== 'card') return;
    await (await jobsDb()).put('cards', { ...read.card, coats: 'gone' });
    await mendCard({ ...cardOf(id, 'Mended'), photos: [entryOf(photo)] }, [photoOf(photo, id, byte)]);
  },
  file: async ({ id, photo, byte }) => {
    const card = { ...cardOf(id, `From a file ${byte}`), changedAt: NOW + byte, photos: [entryOf(photo)] };
    return byte % 2
      ? putCards([card], [photoOf(photo, id, byte)])
      : importCards({ cards: [card], photos: [photoOf(photo, id, byte)], removed: [], rows: [] });
  },
  'file-removes': async ({ id }) => {
    const removed = [{ id, name: 'Taken away there', at: Date.now() + 1e6 }];
    const row = { id, name: 'x', kind: 'goes', at: removed[0]?.at ?? 0 };
    const gone = await importCards({ cards: [], photos: [], removed, rows: [row as never] });
    for (const one of gone) takenOut.set(one.id, one);
  },
  again: async () => {
    await startAgain();
    await compareCopies(await jobsDb());
  },
};

const RUNS = THOROUGH ? 1000 : 60;

it(`holds the same after ${RUNS} rows of changes, whether the database is there or its copies alone`, {
  timeout: 600_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 3, maxLength: 24 }), async (steps) => {
      await closeJobsDb();
      takenOut.clear();
      freshBrowser();
      for (const one of steps) await acts[one.does](one);
      const before = await all();
      await startAgain(true);
      expect(await all()).toEqual(before);
      await compareCopies(await jobsDb());
      expect(await all()).toEqual(before);
    }),
    { numRuns: RUNS },
  );
});
