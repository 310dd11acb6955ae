/**
 * The service worker. It answers every page from one version, kept whole on the device, and never from two.
 * A new version is fetched beside the old one and waits until it is asked to take over.
 */
import { comesLater, packKey } from './pack-key.ts';
import type { PackList, Surroundings } from './scope.ts';
import { Store } from './store.ts';

/** Written in front of this file by the build. */
declare const VERSION: string;
declare const PACKS: PackList;
declare const HEADERS: Readonly<Record<string, string>>;

declare const self: Surroundings;
const folder = new URL(self.registration.scope).pathname;
const family = `halfdry ${folder} `;
const store = new Store(family, folder, VERSION, PACKS);

const words = Object.keys(PACKS).filter((key) => !comesLater(key));
const later = Object.keys(PACKS).filter(comesLater);

const answerWith = async (path: string, status = 200): Promise<Response | undefined> => {
  const found = (await store.open(packKey(path)))?.(path);
  return (
    found &&
    new Response(new Blob([...found.parts]), { status, headers: { ...HEADERS, 'Content-Type': found.type } })
  );
};

/** Files that no pack holds, such as card images, have a dot in their name and come from the host. */
const isFile = (path: string): boolean => path.slice(path.lastIndexOf('/') + 1).includes('.');

const answer = async (request: Request, url: URL): Promise<Response> => {
  const path = url.pathname.slice(folder.length).replace(/(^|\/)index\.html$/, '$1');
  const found = await answerWith(path).catch(() => fetch(request));
  if (found) return found;
  if (isFile(path)) return fetch(request);
  if (path && !path.endsWith('/') && (await answerWith(`${path}/`)))
    return Response.redirect(`${url.origin}${folder}${path}/${url.search}`, 301);
  return (await answerWith('404.html', 404)) ?? fetch(request);
};

self.addEventListener('install', (event) => {
  event.waitUntil(store.keepAll(words).then(() => store.keepAll(later, false)));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(store.alone(family).then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== location.origin || !url.pathname.startsWith(folder)) return;
  if (/^(offline\/|sw\.js$)/.test(url.pathname.slice(folder.length))) return;
  event.respondWith(answer(request, url));
});

/** Fetches what comes later and tells the page how far it is: shares of all packs, the last one being 1. */
const fill = async (tell: (data: unknown) => void): Promise<void> => {
  const all = Object.keys(PACKS).length;
  for (let left = await store.missing(); left.length; left = await store.missing()) {
    tell({ saved: 1 - left.length / all });
    await store.keepAll(left.slice(0, 6));
  }
  tell({ saved: 1 });
};

self.addEventListener('message', (event) => {
  const { source } = event;
  if (event.data === 'take over') event.waitUntil(self.skipWaiting());
  if (event.data === 'fill')
    event.waitUntil(
      fill((data) => source.postMessage(data)).catch(() => source.postMessage({ saved: 'failed' })),
    );
});
