import type { EntryKind } from '../model/kinds.ts';
import type { AnyEntry, Entry } from '../model/knowledge.ts';
import type { Retired } from '../model/retired.ts';

type Plural<K extends EntryKind> = K extends 'remedy' ? 'remedies' : `${K}s`;

/** Everything, linked: made by `link` alone, so that an id found in it is always there. */
export type Knowledge = {
  readonly [K in EntryKind as Plural<K>]: readonly Entry<K>[];
} & {
  readonly get: <K extends EntryKind>(kind: K, id: string) => Entry<K>;
  readonly has: (kind: EntryKind, id: string) => boolean;
  /** What stood for something once: a table that still names it is told what to name. */
  readonly retired: Retired;
};

type AllOf<U> = (U extends unknown ? (one: U) => void : never) extends (all: infer All) => void ? All : never;

/**
 * Knowledge as far as a function reads it: the kinds of entries, each with the fields that are looked at. What several
 * functions read is joined with `&` before it comes in here. A page that was sent less does not compile.
 */
export type Knows<Reads extends { readonly [K in EntryKind]?: object }> = {
  readonly [K in keyof Reads & EntryKind as Plural<K>]: readonly (Reads[K] & { readonly id: string })[];
} & {
  readonly get: AllOf<
    {
      [K in keyof Reads & EntryKind]: (kind: K, id: string) => Reads[K] & { readonly id: string };
    }[keyof Reads & EntryKind]
  >;
  readonly has: (kind: keyof Reads & EntryKind, id: string) => boolean;
};

type Lists = { readonly [K in EntryKind as Plural<K>]?: readonly { readonly id: string }[] };
type OneOf<List> = List extends readonly (infer One extends object)[] ? One : never;
/** Knowledge of the kinds that are listed, each entry with what it was sent with. */
export type PartOf<L extends Lists> = Knows<{
  [K in EntryKind as Plural<K> extends keyof L ? K : never]: OneOf<L[Plural<K> & keyof L]>;
}>;

const lookUpIn = (lists: Lists) => {
  // Asked for all the time, so no key is put together for it.
  const byId = new Map<string, ReadonlyMap<string, unknown>>();
  for (const [plural, entries] of Object.entries(lists))
    byId.set(
      plural === 'remedies' ? 'remedy' : plural.slice(0, -1),
      new Map(entries.map((entry) => [entry.id, entry])),
    );
  return {
    get: (kind: string, id: string) => {
      const entry = byId.get(kind)?.get(id);
      if (!entry) throw new Error(`no ${kind} "${id}" in the linked knowledge`);
      return entry;
    },
    has: (kind: string, id: string) => byId.get(kind)?.has(id) ?? false,
  };
};

/**
 * A part of the knowledge, as a page was sent it. A miss in `get` is a fault of the program and throws, naming the kind
 * and the id.
 */
export function partOf<L extends Lists>(lists: L): PartOf<L>;
// An entry found under a kind is of that kind: `lookUpIn` makes it so, and no type can say it.
export function partOf(lists: Lists): object {
  return { ...lists, ...lookUpIn(lists) };
}

/** Knowledge from linked entries. */
export const knowledgeOf = (entries: readonly AnyEntry[], retired: Retired = {}): Knowledge => {
  const of = <K extends EntryKind>(kind: K) =>
    entries
      .filter((entry): entry is Extract<AnyEntry, Entry<K>> => entry.kindOf === kind)
      .sort((a, b) => (a.id < b.id ? -1 : 1));
  const lists = {
    defects: of('defect'),
    questions: of('question'),
    remedies: of('remedy'),
    rules: of('rule'),
    products: of('product'),
    lessons: of('lesson'),
    sources: of('source'),
    terms: of('term'),
    doings: of('doing'),
  };
  return { ...lists, ...lookUpIn(lists), retired } as Knowledge;
};
