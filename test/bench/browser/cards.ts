/** The card store with 2,000 cards: save, list and find beside raw IndexedDB with the same records. */
import type { Browser } from 'playwright-core';
import type { JobCard } from '#engine/model/job-card.ts';
import { codeOf } from '../../bundle.ts';
import { manyCards } from '../../many-cards.ts';
import { median } from '../measure.ts';
import type { Row } from '../row.ts';
import { bare, served, slowTab } from './chrome.ts';

type Store = typeof import('../../../site/client/jobs/store/index.ts');

const CARDS = 2_000;
const ROUNDS = 15;

export const cardStore = async (browser: Browser): Promise<readonly Row[]> => {
  const code = await codeOf('site/client/jobs/store/index.ts', 'store');
  const cards = manyCards(CARDS);
  const found = await served(bare, (base) =>
    slowTab(browser, base, async ({ page }) => {
      await page.goto('/');
      await page.addScriptTag({ content: code });
      return page.evaluate(
        async ({ all, rounds }) => {
          const store = Reflect.get(globalThis, 'store') as Store;
          const done = <T>(asked: IDBRequest<T>): Promise<T> =>
            new Promise((resolve, reject) => {
              asked.onsuccess = () => resolve(asked.result);
              asked.onerror = () => reject(asked.error);
            });
          const ended = (change: IDBTransaction): Promise<void> =>
            new Promise((resolve, reject) => {
              change.oncomplete = () => resolve();
              change.onabort = () => reject(change.error);
            });
          const opening = indexedDB.open('raw', 1);
          opening.onupgradeneeded = () => {
            opening.result.createObjectStore('cards', { keyPath: 'id' });
            opening.result.createObjectStore('summaries', { keyPath: 'id' }).createIndex('order', 'order');
          };
          const raw = await done(opening);
          const lineOf = (card: (typeof all)[number]) => ({
            id: card.id,
            changedAt: card.changedAt,
            order: -card.changedAt,
            summary: { name: card.name, kind: card.kind, coats: card.coats.length },
          });
          const filling = raw.transaction(['cards', 'summaries'], 'readwrite');
          for (const card of all) {
            filling.objectStore('cards').put(card);
            filling.objectStore('summaries').put(lineOf(card));
          }
          await ended(filling);
          await store.putCards([...all], []);

          const later = all[0]?.changedAt ?? 0;
          const does = {
            save: {
              raw: async (round: number) => {
                const change = raw.transaction(['cards', 'summaries'], 'readwrite', { durability: 'strict' });
                const over = ended(change);
                const card: (typeof all)[number] = await done(
                  change.objectStore('cards').get(`card-${round}`),
                );
                const changed = { ...card, name: `${card.name} again`, changedAt: later + 1e6 + round };
                change.objectStore('cards').put(changed);
                change.objectStore('summaries').put(lineOf(changed));
                await over;
              },
              own: async (round: number) => {
                const saved = await store.changeCard(all[round] as JobCard, (card) => ({
                  ...card,
                  name: `${card.name} again`,
                  changedAt: later + 1e6 + round,
                }));
                if (saved.kind !== 'saved') throw new Error(`a card was ${saved.kind}`);
              },
            },
            list: {
              raw: async () => {
                const lines = await done(
                  raw.transaction('summaries').objectStore('summaries').index('order').getAll(),
                );
                if (lines.length !== all.length) throw new Error(`raw lists ${lines.length}`);
              },
              own: async () => {
                const lines = await (await store.listCards()).all();
                if (lines.length !== all.length) throw new Error(`the store lists ${lines.length}`);
              },
            },
            find: {
              raw: async () => {
                const lines: { summary: { name: string } }[] = await done(
                  raw.transaction('summaries').objectStore('summaries').index('order').getAll(),
                );
                const hits = lines.filter(({ summary }) => summary.name.toLowerCase().includes('piece 1234'));
                if (hits.length !== 1) throw new Error(`raw finds ${hits.length}`);
              },
              own: async () => {
                const lines = await (await store.listCards()).all();
                const hits = lines.filter(({ summary }) =>
                  summary?.name.toLowerCase().includes('piece 1234'),
                );
                if (hits.length !== 1) throw new Error(`the store finds ${hits.length}`);
              },
            },
          };
          const timed = async (work: () => Promise<void>): Promise<number> => {
            const began = performance.now();
            await work();
            return (performance.now() - began) * 1e6;
          };
          const times: Record<string, { raw: number; own: number }[]> = { save: [], list: [], find: [] };
          for (let round = 0; round < rounds; round++)
            for (const name of ['save', 'list', 'find'] as const)
              times[name]?.push({
                raw: await timed(() => does[name].raw(round)),
                own: await timed(() => does[name].own(round)),
              });
          return times;
        },
        { all: cards, rounds: ROUNDS },
      );
    }),
  );
  const SAYS = {
    save: 'a card saved, 2,000 there',
    list: 'the list of 2,000 cards',
    find: 'a card found by its name',
  };
  return (['save', 'list', 'find'] as const).flatMap((name): Row[] => {
    const rounds = found[name] ?? [];
    const ratios = rounds.map(({ raw, own }) => own / raw).sort((a, b) => a - b);
    return [
      { what: SAYS[name], name: 'raw IndexedDB', value: median(rounds.map(({ raw }) => raw)), unit: 'ns' },
      {
        what: '',
        name: 'card store',
        value: median(rounds.map(({ own }) => own)),
        unit: 'ns',
        ratio: [median(ratios), ratios[0] ?? 0, ratios.at(-1) ?? 0],
        goal: { most: 1.5, of: 'ratio' },
      },
    ];
  });
};
