import { spawn } from 'node:child_process';
import { existsSync, globSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { TestProject } from 'vitest/node';
import { siteHandler } from '../../site/tools/site-handler.ts';

declare module 'vitest' {
  interface ProvidedContext {
    base: string;
  }
}

const SOURCES = '{content,engine,site}/**/*.{mdx,yaml,ts,astro,css}';

/** Whether dist/ is missing or older than anything that it is made of. */
const stale = (): boolean => {
  if (!existsSync('dist/index.html')) return true;
  const built = statSync('dist/index.html').mtimeMs;
  return [...globSync(SOURCES), 'astro.config.mjs'].some((file) => statSync(file).mtimeMs > built);
};

const build = (): Promise<void> =>
  new Promise((done, failed) => {
    const builder = spawn(process.execPath, ['site/tools/build.ts'], { stdio: 'inherit' });
    builder.on('error', failed);
    builder.on('exit', (code) => (code ? failed(new Error(`the build ended with ${code}`)) : done()));
  });

/**
 * Builds the site if need be and serves it as a static host does, for all tests of this project. The build goes on
 * while the tests of the engine run: whoever asks for a page (`built-first.ts`) waits until it is there.
 */
export default function setup(project: TestProject) {
  const handler = (stale() ? build() : Promise.resolve()).then(() => siteHandler('dist'));
  handler.catch(() => undefined);
  const server = createServer((request, response) => {
    handler.then(
      (answer) => answer(request, response),
      (error: Error) => response.writeHead(500).end(error.message),
    );
  });
  return new Promise<() => void>((ready) => {
    server.listen(0, '127.0.0.1', () => {
      project.provide('base', `http://127.0.0.1:${(server.address() as AddressInfo).port}`);
      ready(() => {
        server.closeAllConnections();
        server.close();
      });
    });
  });
}
