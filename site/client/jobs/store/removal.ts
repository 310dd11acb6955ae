import { cardsRemoved } from '#engine/jobs/removed.ts';
import { LATEST_INSTANT } from '#engine/jobs.ts';
import type { RemovedCard } from '#engine/model/job-card.ts';
import { clashesIn, dropClashes } from './clashes.ts';
import { unreadableListed } from './listed.ts';
import { markChange } from './marks.ts';
import { dropPhotos, photosIn, putPhoto } from './photos.ts';
import { changedOn, nameOn } from './raw-card.ts';
import { cardReader } from './reader.ts';
import type { Change, Removed } from './records.ts';
import { tellTabs } from './tabs.ts';
import { putCard, stamped, write } from './write.ts';

/** Takes a card with its photos and clashes out of the store. */
export const takeOut = async (change: Change, id: string): Promise<Removed | undefined> => {
  const raw = await change.objectStore('cards').get(id);
  const photos = photosIn(await change.objectStore('photos').index('card').getAll(id));
  const clashes = await clashesIn(change, id);
  await Promise.all([
    change.objectStore('cards').delete(id),
    change.objectStore('summaries').delete(id),
    dropPhotos(change, id),
    dropClashes(change, id),
  ]);
  return raw === undefined ? undefined : { id, name: nameOn(raw, id), raw, photos, clashes };
};

/** Notes which cards are taken away, in place of what was noted: so many as are remembered. */
export const keepRemoved = async (change: Change, removed: readonly RemovedCard[]): Promise<void> => {
  const store = change.objectStore('removed');
  await store.clear();
  await Promise.all(cardsRemoved(removed).map((one) => store.put(one)));
};

/** Takes a card and its photos away, notes when, and hands them back, so that it can be undone. */
export const removeCard = async (id: string): Promise<Removed | undefined> => {
  const removed = await write({ cards: [id] }, async (change) => {
    const out = await takeOut(change, id);
    const known = await change.objectStore('removed').getAll();
    if (out) {
      const at = Math.min(LATEST_INSTANT, Math.max(Date.now(), changedOn(out.raw) + 1));
      await keepRemoved(change, [{ id, name: out.name, at }, ...known]);
    }
    return out;
  });
  if (removed) markChange(-1);
  tellTabs([id]);
  return removed;
};

/**
 * Puts back what was taken out, as it was; one that could not be read is again one that can not be read. With `later` a
 * card counts as changed now, so that it stands against the note of its removal. One that is there meanwhile is left.
 */
export const restoreCards = async (removed: readonly Removed[], later = false): Promise<void> => {
  const read = await cardReader();
  const cards = removed.map(({ id }) => id);
  const back = await write({ cards, photos: removed.flatMap(({ photos }) => photos) }, async (change) => {
    let count = 0;
    for (const { id, raw, photos, clashes } of removed) {
      if ((await change.objectStore('cards').get(id)) !== undefined) continue;
      const card = read(raw);
      if (card.ok) await putCard(change, read, later ? stamped(card.value) : card.value);
      else {
        await change.objectStore('cards').put(raw);
        await change.objectStore('summaries').put(unreadableListed(id));
        await change.objectStore('removed').delete(id);
      }
      for (const photo of photos) await putPhoto(change, photo);
      for (const clash of clashes) await change.objectStore('clashes').put(clash);
      count += 1;
    }
    return count;
  });
  markChange(back);
  tellTabs(cards);
};
