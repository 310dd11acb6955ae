/**
 * `npm run check`: opens the store of compiled code before anything else is loaded, which halves the start. It is no
 * TypeScript, or the compiler would be loaded for this file alone: what the store holds has its types taken out already.
 */
import { enableCompileCache } from 'node:module';
import { fileURLToPath } from 'node:url';

enableCompileCache(fileURLToPath(new URL('../../node_modules/.cache/halfdry-compiled', import.meta.url)));
await import('./check-content.ts');
