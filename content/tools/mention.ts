import { ENTRY_KINDS } from '#engine/model/kinds.ts';
import { isOneOf } from '#engine/plain/entry-of.ts';
import type { Mention } from './table.ts';

/** What is of other matters. */
export const ELSEWHERE = 'elsewhere';

/** The entry that a page's name points at; the tools, whose names the schema knows, and what is elsewhere are none. */
export const mentionOf = (name: string, path: readonly PropertyKey[]): Mention[] => {
  const [kind, id = ''] = name.includes('/') ? name.split('/') : ['defect', name];
  return name !== ELSEWHERE && isOneOf(ENTRY_KINDS, kind) ? [{ kind, id, path }] : [];
};
