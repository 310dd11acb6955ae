import type { EntryKind } from './model/kinds.ts';
import type { AnyEntry, Entry } from './model/knowledge.ts';

type Plural<K extends EntryKind> = K extends 'remedy' ? 'remedies' : `${K}s`;

/** Everything, linked: made by `link` alone, so that an id found in it is always there. */
export type Knowledge = {
  readonly [K in EntryKind as Plural<K>]: readonly Entry<K>[];
} & {
  readonly get: <K extends EntryKind>(kind: K, id: string) => Entry<K>;
  readonly has: (kind: EntryKind, id: string) => boolean;
};

/** Knowledge from linked entries. A miss in `get` is a fault of the program and throws, naming the id. */
export const knowledgeOf = (entries: readonly AnyEntry[]): Knowledge => {
  // Asked for all the time, so no key is put together for it.
  const byId = new Map<EntryKind, Map<string, AnyEntry>>();
  for (const entry of entries) {
    const group = byId.get(entry.kindOf) ?? new Map<string, AnyEntry>();
    byId.set(entry.kindOf, group.set(entry.id, entry));
  }
  const of = <K extends EntryKind>(kind: K) =>
    entries
      .filter((entry) => entry.kindOf === kind)
      .sort((a, b) => (a.id < b.id ? -1 : 1)) as unknown as Entry<K>[];
  return {
    defects: of('defect'),
    questions: of('question'),
    remedies: of('remedy'),
    rules: of('rule'),
    products: of('product'),
    lessons: of('lesson'),
    sources: of('source'),
    terms: of('term'),
    doings: of('doing'),
    has: (kind, id) => byId.get(kind)?.has(id) ?? false,
    get: <K extends EntryKind>(kind: K, id: string) => {
      const entry = byId.get(kind)?.get(id);
      if (!entry) throw new Error(`no ${kind} "${id}" in the linked knowledge`);
      return entry as unknown as Entry<K>;
    },
  };
};
