import { cardsRemoved, type ImportRow, mergeCards } from '#engine/jobs.ts';
import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import type { KeptPhoto } from '../store/db.ts';
import { markChange } from '../store/marks.ts';
import { cardReader } from '../store/read.ts';
import { tellTabs } from '../store/tabs.ts';
import { keepRemoved, put, type Removed, takeOut, write } from '../store/write.ts';

/** What of a file is to come in: its cards with their photos, and the cards that go since they were taken away there. */
export type Wanted = {
  readonly cards: readonly JobCard[];
  readonly photos: readonly KeptPhoto[];
  readonly removed: readonly RemovedCard[];
  readonly rows: readonly ImportRow[];
};

/**
 * Brings a file in as its preview said, all or nothing, each card merged with what lies there by then. Hands back the
 * cards that went. Throws a `JobsFault`.
 */
export const bringIn = async ({ cards, photos, removed, rows }: Wanted): Promise<readonly Removed[]> => {
  const read = await cardReader();
  let fresh = 0;
  const gone = await write(async (change): Promise<readonly Removed[]> => {
    fresh = 0;
    const store = change.objectStore('photos');
    const offs = new Map<string, ReadonlySet<string>>();
    for (const card of cards) {
      const raw: unknown = await change.objectStore('cards').get(card.id);
      const there = raw === undefined ? undefined : read(raw);
      // A record that can not be read is not overwritten: it may be all that is left of her work.
      if (raw !== undefined && !there) continue;
      if (!there) fresh += 1;
      const merged = there ? (mergeCards([there], [card])[0] ?? there) : card;
      await put(change, merged);
      const off = merged.removed?.flatMap(({ list, id }) => (list === 'photos' ? id : [])) ?? [];
      offs.set(card.id, new Set(off));
    }
    for (const photo of photos) if (!offs.get(photo.card)?.has(photo.id)) await store.put(photo);
    for (const [card, off] of offs)
      for (const key of await store.index('card').getAllKeys(card)) if (off.has(key)) await store.delete(key);
    const taken: Removed[] = [];
    for (const { id, kind } of rows) {
      const raw: unknown = kind === 'goes' ? await change.objectStore('cards').get(id) : undefined;
      const card = raw === undefined ? undefined : read(raw);
      const at = removed.find((one) => one.id === id)?.at ?? 0;
      // Changed in another tab since the preview: then it stays.
      if (!card || card.changedAt >= at) continue;
      const out = await takeOut(change, id);
      if (out) taken.push(out);
    }
    const there = new Set(await change.objectStore('cards').getAllKeys());
    const known = await change.objectStore('removed').getAll();
    await keepRemoved(
      change,
      cardsRemoved(known, removed).filter(({ id }) => !there.has(id)),
    );
    return taken;
  });
  markChange(fresh - gone.length);
  tellTabs([...cards.map(({ id }) => id), ...gone.map(({ card }) => card.id)]);
  return gone;
};
