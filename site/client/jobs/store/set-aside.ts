import type { JobCard } from '#engine/model/job-card.ts';
import { jobsDb } from './db.ts';
import { faultOf } from './fault.ts';
import { markChange } from './marks.ts';
import { putPhoto } from './photos.ts';
import { nameOn } from './raw-card.ts';
import { cardReader } from './reader.ts';
import type { KeptPhoto, SetAside } from './records.ts';
import { restoreCards, takeOut } from './removal.ts';
import { tellTabs } from './tabs.ts';
import { withinTime } from './time-limit.ts';
import { putCard, write } from './write.ts';

/** Takes a card out of the list and keeps it beside, as it is. Throws a `JobsFault`. */
export const setCardAside = async (id: string): Promise<void> => {
  await write({ cards: [id] }, async (change) => {
    const out = await takeOut(change, id);
    if (out) await change.objectStore('aside').put({ ...out, at: Date.now() });
  });
  markChange(-1);
  tellTabs([id]);
};

/**
 * Puts a sound card in the place of one that could not be read, which is set aside as it was. The photos that lie there
 * stay, and `photos` come to them. Throws a `CardRefused` or a `JobsFault`: then all is as before.
 */
export const mendCard = async (card: JobCard, photos: readonly KeptPhoto[] = []): Promise<void> => {
  const read = await cardReader();
  const { id } = card;
  await write({ cards: [id], photos }, async (change) => {
    const raw = await change.objectStore('cards').get(id);
    if (raw !== undefined && !read(raw).ok) {
      const before: SetAside = { id, name: nameOn(raw, id), raw, photos: [], clashes: [], at: Date.now() };
      await change.objectStore('aside').put(before);
    }
    await putCard(change, read, card);
    for (const photo of photos) await putPhoto(change, photo);
  });
  markChange();
  tellTabs([id]);
};

export const readAside = async (): Promise<readonly SetAside[]> => {
  const db = await jobsDb();
  try {
    return await withinTime(db.getAll('aside'));
  } catch (error) {
    throw faultOf(error);
  }
};

/** Puts one that was set aside back into the list; false where a card of its id stands there by now. */
export const putAsideBack = async (one: SetAside): Promise<boolean> => {
  const db = await jobsDb();
  if ((await withinTime(db.count('cards', one.id))) > 0) return false;
  await restoreCards([one]);
  await dropAside(one.id);
  return true;
};

/** Takes one that was set aside away for good. */
export const dropAside = async (id: string): Promise<void> => {
  await write({ cards: [id] }, (change) => change.objectStore('aside').delete(id));
  tellTabs([id]);
};
