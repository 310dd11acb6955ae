import type { Clash } from '#engine/jobs/three-way.ts';
import { newId } from '../../shared/id.ts';
import { jobsDb } from './db.ts';
import { faultOf } from './fault.ts';
import type { Change, KeptClash } from './records.ts';
import { withinTime } from './time-limit.ts';

/** Keeps clashes in the transaction that writes the card, so that no version is ever nowhere. */
export const keepClashes = async (
  change: Change,
  card: string,
  clashes: readonly Clash[],
): Promise<readonly KeptClash[]> => {
  if (!clashes.length) return [];
  // Later than all before it, so that they stay in their order.
  const last = (await clashesIn(change, card)).at(-1)?.at ?? 0;
  const at = Math.max(Date.now(), last + 1);
  const kept = clashes.map((clash) => ({ ...clash, id: newId(), card, at }));
  await Promise.all(kept.map((clash) => change.objectStore('clashes').put(clash)));
  return kept;
};

const inOrder = (clashes: readonly KeptClash[]): readonly KeptClash[] =>
  [...clashes].sort((one, two) => one.at - two.at);

export const clashesIn = async (change: Change, card: string): Promise<readonly KeptClash[]> =>
  inOrder(await change.objectStore('clashes').index('card').getAll(card));

export const dropClashes = async (change: Change, card: string): Promise<void> => {
  const store = change.objectStore('clashes');
  await Promise.all((await store.index('card').getAllKeys(card)).map((key) => store.delete(key)));
};

/** The open clashes of a card, the first of them first. Throws a `JobsFault`. */
export const readClashes = async (card: string): Promise<readonly KeptClash[]> => {
  const db = await jobsDb();
  try {
    return inOrder(await withinTime(db.getAllFromIndex('clashes', 'card', card)));
  } catch (error) {
    throw faultOf(error);
  }
};
