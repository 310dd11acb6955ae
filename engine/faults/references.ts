import type { EntryKind } from '../model/kinds.ts';
import type { RawEntry } from '../model/knowledge.ts';
import type { Retired } from '../model/retired.ts';
import type { Grade } from '../model/source.ts';
import { nearestId } from '../plain/nearest.ts';
import type { Fault } from './issue.ts';

/** What a link may lead to, from an entry, a table or an answer alike. */
export type There = {
  readonly idsOf: (kind: EntryKind) => ReadonlySet<string>;
  /** Of a source, whose id tells nothing of it. */
  readonly titleOf: (source: string) => string | undefined;
  readonly retired: Retired;
};

const titleIn = (data: unknown): string | undefined =>
  typeof data === 'object' && data !== null && 'title' in data ? String(data.title) : undefined;

/**
 * What files lead to. One with a fault of shape still counts as existing, or each link to it would be told as dead too.
 */
export const thereIn = (
  entries: readonly Pick<RawEntry, 'kind' | 'id' | 'data'>[],
  retired: Retired,
): There => {
  const ids = new Map<EntryKind, Set<string>>();
  const titles = new Map<string, string | undefined>();
  for (const { kind, id, data } of entries) {
    ids.set(kind, (ids.get(kind) ?? new Set()).add(id));
    if (kind === 'source') titles.set(id, titleIn(data));
  }
  return {
    idsOf: (kind) => ids.get(kind) ?? new Set(),
    titleOf: (source) => titles.get(source),
    retired,
  };
};

/** A link that leads nowhere: to what was retired, with what stands for it, or to what never was, with the nearest. */
export const faultOfReference = (
  { idsOf, titleOf, retired }: There,
  kind: EntryKind,
  id: string,
): Fault | undefined => {
  const ids = idsOf(kind);
  if (ids.has(id)) return undefined;
  const now = retired[`${kind}/${id}`];
  if (now !== undefined) return { code: 'retired-link', kind, id, now };
  const near = nearestId(id, ids);
  const title = kind === 'source' && near ? titleOf(near) : undefined;
  return { code: 'dead-link', kind, id, nearest: near, title };
};

/** A statement whose grade asks for a source, and that names none. */
export const faultOfGround = (
  says: string,
  { grade, source }: { readonly grade: Grade; readonly source?: string | undefined },
): Fault | undefined =>
  (grade === 'published' || grade === 'from-memory') && !source
    ? { code: 'no-source', says, grade }
    : undefined;
