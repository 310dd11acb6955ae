import { JOBS } from './urls.ts';

export { JOBS };

/** What the part of the address behind # asks for: the list, a new card, a card, or its care card. */
export type JobsPlace =
  | { readonly kind: 'list' }
  | { readonly kind: 'new' }
  | { readonly kind: 'card' | 'care'; readonly id: string };

export const cardUrl = (id: string) => `${JOBS}#card-${encodeURIComponent(id)}`;
export const careUrl = (id: string) => `${JOBS}#care-${encodeURIComponent(id)}`;

export const readJobsPlace = (fragment: string): JobsPlace => {
  const [, kind, id] = /^#(card|care)-(.{1,600})$/.exec(fragment) ?? [];
  if (!kind || !id) return { kind: fragment === '#new' ? 'new' : 'list' };
  try {
    return { kind: kind === 'care' ? kind : 'card', id: decodeURIComponent(id) };
  } catch {
    return { kind: 'list' };
  }
};
