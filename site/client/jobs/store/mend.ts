import type { JobCard } from '#engine/model/job-card.ts';
import { jobsDb } from './db.ts';
import { faultOf } from './fault.ts';
import { type Listed, listedOf } from './listed.ts';
import { asOnlyWriter } from './tabs.ts';

/**
 * Makes the list anew from the cards, each read by itself: after a change of version, and wherever list and cards
 * have come apart. Where it can not be written, it still stands for this page. Throws a `JobsFault`.
 */
export const mendList = (): Promise<readonly Listed[]> =>
  asOnlyWriter(async () => {
    const db = await jobsDb();
    const list: Listed[] = [];
    try {
      for (const id of await db.getAllKeys('cards')) {
        const record = await db.get('cards', id).catch(() => undefined);
        list.push(listedOf(id, record as JobCard));
      }
    } catch (error) {
      throw faultOf(error);
    }
    try {
      const change = db.transaction('summaries', 'readwrite');
      await change.store.clear();
      for (const listed of list) await change.store.put(listed);
      await change.done;
    } catch {
      // The next visit tries again.
    }
    return list.sort((one, two) => one.order - two.order);
  });
