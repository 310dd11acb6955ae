/**
 * `npm run check`: opens the store of compiled code before anything else is loaded, which halves the start, and begins the
 * second thread, which parses the content meanwhile. It is no TypeScript, or the compiler would be loaded for this file
 * alone: what the store holds has its types taken out already.
 */
import { once } from 'node:events';
import { enableCompileCache } from 'node:module';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';

const store = fileURLToPath(new URL('../../node_modules/.cache/halfdry-compiled', import.meta.url));
enableCompileCache(store);
const beside = new Worker(new URL('beside.mjs', import.meta.url), {
  workerData: { store, root: process.cwd() },
});
const read = once(beside, 'message');
const { check } = await import('./check-content.ts');
await check(process.cwd(), beside, await read);
