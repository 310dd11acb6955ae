/**
 * A second copy of what the databases hold. A browser that was killed while it wrote may find its database torn at a
 * later start, and then it empties the databases of the whole site. The Cache API lies in other files, and has room for
 * photos, which `localStorage` has not.
 */
import { type CopyKind, copyName } from '../../shared/storage-keys.ts';
import { refusalOf } from './storage-refusal.ts';

/** Only a name for an entry: nothing is ever fetched from it. */
const BASE = 'https://copy.invalid/';
const addressOf = (id: string, at: number): string =>
  `${BASE}?${new URLSearchParams({ id, at: String(at) })}`;

/** The versions that stand under each id, the newest first. */
export type Versions = ReadonlyMap<string, readonly number[]>;

/** The newest, and the one before it in case that the browser was killed while it wrote the newest. */
export const KEPT = 2;

const newestFirst = (versions: Iterable<number>): readonly number[] =>
  [...new Set(versions)].sort((one, two) => two - one);

/** Where copies of one kind stand. Its methods fail as the browser does; `tryCopy` is for those who must not. */
export class Shelf {
  readonly #name: string;
  /** What this page has put there: to know the rest, all would have to be listed at each change. */
  readonly #mine = new Map<string, readonly number[]>();

  constructor(kind: CopyKind) {
    this.#name = copyName(kind);
  }

  /** Opened anew each time: one that was deleted meanwhile would take copies and keep none. */
  #open(): Promise<Cache> {
    return caches.open(this.#name);
  }

  /** All that stands here. */
  async all(): Promise<Versions> {
    const found = new Map<string, number[]>();
    if (!(await caches.has(this.#name))) return found;
    for (const { url } of await (await this.#open()).keys()) {
      const { searchParams } = new URL(url);
      const [id, at] = [searchParams.get('id') ?? '', Number(searchParams.get('at'))];
      found.set(id, [...(found.get(id) ?? []), at]);
    }
    return new Map([...found].map(([id, versions]) => [id, newestFirst(versions)]));
  }

  async read(id: string, at: number): Promise<Response | undefined> {
    return (await this.#open()).match(addressOf(id, at));
  }

  /**
   * Puts a version here whole before an older one is taken away. `others` are those that stand here; where they are not
   * told, those that this page has put here, all of which are older.
   */
  async put(
    id: string,
    at: number,
    body: ArrayBuffer | string,
    type: string,
    others?: readonly number[],
    keep = KEPT,
  ): Promise<void> {
    const cache = await this.#open();
    await cache.put(addressOf(id, at), new Response(body, { headers: { 'Content-Type': type } }));
    const all = newestFirst([at, ...(others ?? this.#mine.get(id) ?? [])]);
    const kept = all.filter((one) => one <= at).slice(0, keep);
    await this.#take(
      cache,
      id,
      all.filter((one) => !kept.includes(one)),
    );
    this.#mine.set(id, kept);
  }

  async drop(id: string, versions: readonly number[]): Promise<void> {
    this.#mine.delete(id);
    if (versions.length) await this.#take(await this.#open(), id, versions);
  }

  async #take(cache: Cache, id: string, versions: readonly number[]): Promise<void> {
    await Promise.all(versions.map((at) => cache.delete(addressOf(id, at))));
  }

  /** Takes the whole shelf down; false where there was none. */
  clear(): Promise<boolean> {
    this.#mine.clear();
    return caches.delete(this.#name);
  }
}

/** Older browsers, and pages without a secure connection, have no such place. */
export const canCopy = (): boolean => typeof caches !== 'undefined';

/** A browser that has not answered in so many milliseconds is not asked again by this page. */
const LIMIT = 10_000;
let silent = false;
let short = false;

/** Whether a copy of this page found no room. */
export const copiesLackRoom = (): boolean => short;

const within = <T>(work: Promise<T>): Promise<T> =>
  new Promise((done, failed) => {
    const timer = setTimeout(() => {
      silent = true;
      failed(new DOMException('no answer', 'TimeoutError'));
    }, LIMIT);
    work.then(done, failed).finally(() => clearTimeout(timer));
  });

/** A cache that was deleted while it was at work, as another tab may do. */
const isGone = (error: unknown): boolean => error instanceof DOMException && error.name === 'NotFoundError';

/**
 * Runs what is about a copy. What the browser refuses is no more than a copy that is missing: nothing comes back then,
 * and what was saved is saved. A bug is reported, and stops no save either.
 */
export const tryCopy = async <T>(work: () => Promise<T>): Promise<T | undefined> => {
  if (!canCopy() || silent) return undefined;
  try {
    return await within(work());
  } catch (error) {
    const refusal = refusalOf(error);
    if (refusal === 'full') short = true;
    if (!refusal && !isGone(error)) reportError(error);
    return undefined;
  }
};

/** How much has to be free for each byte of a copy, so that copies leave the room to what they are copies of. */
const MARGIN = 4;

/** Whether there is room for a large copy. A browser that does not say is tried. */
export const hasRoomFor = async (bytes: number): Promise<boolean> => {
  const { quota, usage } = (await globalThis.navigator?.storage?.estimate?.()) ?? {};
  const room = quota === undefined || usage === undefined || quota - usage > MARGIN * bytes;
  if (!room) short = true;
  return room;
};

/** The text of a version as data; nothing where it is gone or torn, or the browser does not answer. */
export const readData = async (shelf: Shelf, id: string, at: number): Promise<unknown> => {
  if (silent) return undefined;
  try {
    const text = await within(shelf.read(id, at).then((found) => found?.text()));
    return text === undefined ? undefined : JSON.parse(text);
  } catch (error) {
    // A torn entry fails as the network does.
    if (error instanceof SyntaxError || error instanceof TypeError || isGone(error) || refusalOf(error))
      return undefined;
    throw error;
  }
};
