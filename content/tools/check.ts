/** `npm run check`: opens the store of compiled code before anything else is loaded, which halves the start. */
import { enableCompileCache } from 'node:module';
import { fileURLToPath } from 'node:url';

enableCompileCache(fileURLToPath(new URL('../../node_modules/.cache/halfdry-compiled', import.meta.url)));
await import('./check-content.ts');
