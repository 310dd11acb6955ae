import { cardsRemoved, type ImportRow, mergeCards } from '#engine/jobs.ts';
import type { JobCard, RemovedCard } from '#engine/model/job-card.ts';
import { markChange } from '../store/marks.ts';
import { dropPhotos, putPhoto } from '../store/photos.ts';
import { cardReader } from '../store/reader.ts';
import type { KeptPhoto, Removed } from '../store/records.ts';
import { keepRemoved, takeOut } from '../store/removal.ts';
import { tellTabs } from '../store/tabs.ts';
import { cardIn, putCard, write } from '../store/write.ts';

/** What of a file is to come in: its cards with their photos, and the cards that go since they were taken away there. */
export type CardsToImport = {
  readonly cards: readonly JobCard[];
  readonly photos: readonly KeptPhoto[];
  readonly removed: readonly RemovedCard[];
  readonly rows: readonly ImportRow[];
};

/**
 * Brings a file in as its preview said, all or nothing, each card merged with what lies there by then. Hands back the
 * cards that went. Throws a `JobsFault` or a `CardRefused`: then nothing is changed.
 */
export const importCards = async ({
  cards,
  photos,
  removed,
  rows,
}: CardsToImport): Promise<readonly Removed[]> => {
  const read = await cardReader();
  const touched = [...cards, ...removed, ...rows].map(({ id }) => id);
  const { gone, fresh } = await write({ cards: touched, photos }, async (change) => {
    let count = 0;
    const offs = new Map<string, ReadonlySet<string>>();
    for (const card of cards) {
      const there = await cardIn(change, read, card.id);
      // A record that can not be read is not overwritten: it may be all that is left of her work.
      if (there.kind === 'unreadable') continue;
      if (there.kind === 'gone') count += 1;
      const merged = there.kind === 'card' ? (mergeCards([there.card], [card])[0] ?? there.card) : card;
      await putCard(change, read, merged);
      const off = merged.removed?.flatMap(({ list, id }) => (list === 'photos' ? id : [])) ?? [];
      offs.set(card.id, new Set(off));
    }
    for (const photo of photos)
      if (offs.has(photo.card) && !offs.get(photo.card)?.has(photo.id)) await putPhoto(change, photo);
    for (const [card, off] of offs) if (off.size) await dropPhotos(change, card, (photo) => off.has(photo));
    const taken: Removed[] = [];
    for (const { id, kind } of rows) {
      if (kind !== 'goes') continue;
      const there = await cardIn(change, read, id);
      const at = removed.find((one) => one.id === id)?.at ?? 0;
      // Changed in another tab since the preview: then it stays.
      if (there.kind !== 'card' || there.card.changedAt >= at) continue;
      const out = await takeOut(change, id);
      if (out) taken.push(out);
    }
    const left = new Set(await change.objectStore('cards').getAllKeys());
    const known = await change.objectStore('removed').getAll();
    await keepRemoved(
      change,
      cardsRemoved(known, removed).filter(({ id }) => !left.has(id)),
    );
    return { gone: taken, fresh: count };
  });
  markChange(fresh - gone.length);
  tellTabs([...cards, ...gone].map(({ id }) => id));
  return gone;
};
