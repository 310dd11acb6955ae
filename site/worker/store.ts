import { type Pack, readPack } from './pack.ts';
import type { PackList } from './scope.ts';

/** Packs kept unpacked in memory: a walk stays in one, its pictures and the first page are the others. */
const OPEN = 4;
/** Fetched at the same time. */
const LANES = 6;

const hex = (bytes: ArrayBuffer): string =>
  [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/** One version of the site, kept in a cache of its own. No other version is ever read through it. */
export class Store {
  readonly name: string;
  #folder: string;
  #packs: PackList;
  #open = new Map<string, Promise<Pack>>();

  /** `family` is common to all versions of this site on this host; `folder` ends in a slash. */
  constructor(family: string, folder: string, version: string, packs: PackList) {
    this.name = family + version;
    this.#folder = folder;
    this.#packs = packs;
  }

  #file(key: string): string {
    return `${this.#folder}offline/${key}.${this.#packs[key]}.bin`;
  }

  /** Fetches a pack and checks every byte. Throws where the host has another version, or nothing. */
  async #fetch(key: string): Promise<Response> {
    const response = await fetch(this.#file(key), { cache: 'no-cache', redirect: 'error' });
    if (!response.ok) throw new Error(`${this.#file(key)}: ${response.status}`);
    const bytes = await response.arrayBuffer();
    const hash = hex(await crypto.subtle.digest('SHA-256', bytes));
    if (!hash.startsWith(this.#packs[key] ?? '-')) throw new Error(`${this.#file(key)}: other bytes`);
    return new Response(bytes);
  }

  /** Keeps a pack: from an older version where it is the same, else from the host. */
  async #keep(key: string, fromHost: boolean): Promise<void> {
    const cache = await caches.open(this.name);
    if (await cache.match(this.#file(key))) return;
    const kept = await caches.match(this.#file(key));
    if (kept) await cache.put(this.#file(key), kept);
    else if (fromHost) await cache.put(this.#file(key), await this.#fetch(key));
  }

  /** Keeps all these packs. Rejects with the first failure; what is kept by then stays for the next try. */
  async keepAll(keys: readonly string[], fromHost = true): Promise<void> {
    const left = [...keys];
    const lane = async () => {
      for (let key = left.pop(); key !== undefined; key = left.pop()) await this.#keep(key, fromHost);
    };
    await Promise.all(Array.from({ length: LANES }, lane));
  }

  /** The packs of this version that are not on this device yet. */
  async missing(): Promise<string[]> {
    const kept = new Set(
      (await (await caches.open(this.name)).keys()).map(({ url }) => new URL(url).pathname),
    );
    return Object.keys(this.#packs).filter((key) => !kept.has(this.#file(key)));
  }

  async #unpack(key: string): Promise<Pack> {
    await this.#keep(key, true);
    const packed = await (await caches.open(this.name)).match(this.#file(key));
    if (!packed?.body) throw new Error(`${this.#file(key)} is gone`);
    return readPack(
      await new Response(packed.body.pipeThrough(new DecompressionStream('gzip'))).arrayBuffer(),
    );
  }

  /** What lies in a pack; undefined for a pack that this version does not have. */
  open(key: string): Promise<Pack> | undefined {
    if (!Object.hasOwn(this.#packs, key)) return undefined;
    const pack = this.#open.get(key) ?? this.#unpack(key);
    pack.catch(() => this.#open.delete(key));
    this.#open.delete(key);
    this.#open.set(key, pack);
    const [oldest] = this.#open.keys();
    if (this.#open.size > OPEN && oldest !== undefined) this.#open.delete(oldest);
    return pack;
  }

  /** Removes the other versions. */
  async alone(family: string): Promise<void> {
    const others = (await caches.keys()).filter((name) => name.startsWith(family) && name !== this.name);
    await Promise.all(others.map((name) => caches.delete(name)));
  }
}
