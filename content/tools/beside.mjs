/** Opens the store of compiled code for the second thread, as `check.mjs` does for the first. */
import { enableCompileCache } from 'node:module';
import { workerData } from 'node:worker_threads';

enableCompileCache(workerData.store);
await import('./beside.ts');
