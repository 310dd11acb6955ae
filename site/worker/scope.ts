/** The little of a service worker's surroundings that is used; the compiler's own list excludes that of pages. */
type Lasting = Event & { waitUntil(work: Promise<unknown>): void };
type Fetching = Lasting & { readonly request: Request; respondWith(answer: Promise<Response>): void };
type Messaging = Lasting & {
  readonly data: unknown;
  readonly source: { postMessage(data: unknown): void };
};

export type Surroundings = {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', hear: (event: Lasting) => void): void;
  addEventListener(type: 'fetch', hear: (event: Fetching) => void): void;
  addEventListener(type: 'message', hear: (event: Messaging) => void): void;
};

/** What the build writes in front of the worker: the packs of this version, each with the hash of its bytes. */
export type PackList = Readonly<Record<string, string>>;
