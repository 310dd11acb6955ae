import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { sha256 } from '../build/hash.ts';
import { HEADERS } from './headers.ts';
import { writePacks } from './packs.ts';

/** The worker and what it imports as one plain script: not every browser takes modules as workers. */
const script = async (): Promise<string> => {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: 'es2022',
      lib: { entry: 'site/worker/worker.ts', formats: ['iife'], name: 'worker' },
    },
  });
  const [bundle] = Array.isArray(built) ? built : [built];
  if (!bundle || !('output' in bundle)) throw new Error('site/worker/worker.ts: nothing was built of it');
  return bundle.output[0].code;
};

/**
 * Writes the packs and `sw.js`, last of all steps: it rests on the final bytes of every page.
 * Gives the version, which is a hash of all that is kept.
 */
export const writeWorker = async (dist: string): Promise<string> => {
  const [packs, body] = await Promise.all([writePacks(dist), script()]);
  const version = sha256(JSON.stringify(packs) + body).slice(0, 12);
  const known = { VERSION: version, PACKS: packs, HEADERS };
  const constants = Object.entries(known).map(([name, value]) => `const ${name} = ${JSON.stringify(value)};`);
  writeFileSync(join(dist, 'sw.js'), `${constants.join('\n')}\n${body}`);
  return version;
};
