import { refusalOf } from '../../shared/storage-refusal.ts';
import { jobsDb } from './db.ts';
import { faultOf } from './fault.ts';
import { type Listed, listedOf, unreadableListed } from './listed.ts';
import { readOne } from './read.ts';
import { asOnlyWriter } from './tabs.ts';
import { withinTime } from './time-limit.ts';

/**
 * Makes the list anew from the cards, each read by itself: after a change of version, and wherever list and cards
 * have come apart. Where it can not be written, it still stands for this page. Throws a `JobsFault`.
 */
export const rebuildList = (): Promise<readonly Listed[]> =>
  asOnlyWriter(async () => {
    const db = await jobsDb();
    const list: Listed[] = [];
    try {
      for (const id of await withinTime(db.getAllKeys('cards'))) {
        const read = await readOne(id);
        if (read.kind !== 'gone')
          list.push(read.kind === 'card' ? listedOf(read.card) : unreadableListed(id));
      }
    } catch (error) {
      throw faultOf(error);
    }
    try {
      const change = db.transaction('summaries', 'readwrite');
      await change.store.clear();
      for (const listed of list) await change.store.put(listed);
      await change.done;
    } catch (error) {
      // The next visit tries again.
      if (!refusalOf(error)) throw error;
    }
    return list.sort((one, two) => one.order - two.order);
  });
