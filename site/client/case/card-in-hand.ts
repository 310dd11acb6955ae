import type { JobCard } from '#engine/model/job-card.ts';

const KEY = 'halfdry.card';
export type InHand = { readonly id: string; readonly name: string };

/** Notes from which card the walk began, so that its pages can write to it. False where the browser refuses. */
export const keepCardInHand = ({ id, name }: JobCard): boolean => {
  try {
    localStorage.setItem(KEY, JSON.stringify({ id, name } satisfies InHand));
    return true;
  } catch {
    return false;
  }
};

/** The card that the walk began from, if any. */
export const cardInHand = (): InHand | undefined => {
  try {
    const { id, name } = (JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<InHand> | null) ?? {};
    return typeof id === 'string' && typeof name === 'string' ? { id, name: name.slice(0, 80) } : undefined;
  } catch {
    return undefined;
  }
};

/** A new case is about another piece. */
export const dropCardInHand = (): void => {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Where nothing is kept there is nothing to drop.
  }
};
