import type { JobCard } from '#engine/model/job-card.ts';
import { forget, keep, recall } from '../shared/storage.ts';

export type InHand = { readonly id: string; readonly name: string };

/** Notes from which card the walk began, so that its pages can write to it. False where the browser refuses. */
export const keepCardInHand = ({ id, name }: JobCard): boolean => keep('card-in-hand', { id, name });

/** The card that the walk began from, if any. */
export const cardInHand = (): InHand | undefined => recall('card-in-hand');

/** A new case is about another piece. */
export const dropCardInHand = (): void => {
  forget('card-in-hand');
};
