import { execFileSync } from 'node:child_process';
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

/** Builds the site if need be and serves it as a static host does, for all tests of this project. */
export default async function setup(project: TestProject) {
  if (stale()) execFileSync(process.execPath, ['site/tools/build.ts'], { stdio: 'inherit' });
  const server = createServer(siteHandler('dist'));
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  project.provide('base', `http://127.0.0.1:${(server.address() as AddressInfo).port}`);
  return () => {
    server.closeAllConnections();
    server.close();
  };
}
