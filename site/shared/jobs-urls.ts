import { JOBS } from './urls.ts';

export { JOBS };

/** What the part of the address behind # asks for: the list, a new card, a card, or its care card. */
export type JobsAddress =
  | { readonly kind: 'list' }
  | { readonly kind: 'new' }
  | { readonly kind: 'card' | 'care'; readonly id: string };

export const jobCardUrl = (id: string) => `${JOBS}#card-${encodeURIComponent(id)}`;
export const careCardUrl = (id: string) => `${JOBS}#care-${encodeURIComponent(id)}`;

export const readJobsAddress = (fragment: string): JobsAddress => {
  const [, kind, id] = /^#(card|care)-(.{1,600})$/.exec(fragment) ?? [];
  if (!kind || !id) return { kind: fragment === '#new' ? 'new' : 'list' };
  try {
    return { kind: kind === 'care' ? kind : 'card', id: decodeURIComponent(id) };
  } catch {
    return { kind: 'list' };
  }
};
