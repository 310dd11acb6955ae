import { knowledge } from './knowledge.ts';

/** The kinds of top coat that may come with a hardener to mix in, by their ids: of these a form asks for it. */
export const hardened: readonly string[] = knowledge.products.flatMap(({ id, hardeners }) =>
  hardeners ? [id] : [],
);
