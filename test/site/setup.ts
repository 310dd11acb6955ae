import { spawn } from 'node:child_process';
import { existsSync, globSync, statSync } from 'node:fs';
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import type { TestProject } from 'vitest/node';
import { siteHandler } from '../../site/tools/site-handler.ts';
import { BUILDING } from './building.ts';
import { expectRoomIn, unpackPackaged } from './unpack-browser.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The address of the built site. */
    base: string;
    /** The path of the browser; empty for the Chrome that is installed where Chrome usually is. */
    browser: string;
  }
}

const SOURCES = '{content,engine,site}/**/*.{mdx,yaml,ts,tsx,astro,css}';

/** Whether dist/ is missing or older than anything that it is made of. */
const stale = (): boolean => {
  if (!existsSync('dist/index.html')) return true;
  const built = statSync('dist/index.html').mtimeMs;
  return [...globSync(SOURCES), 'astro.config.mjs'].some((file) => statSync(file).mtimeMs > built);
};

const build = (signal: AbortSignal): Promise<void> =>
  new Promise((done, failed) => {
    const builder = spawn(process.execPath, ['site/tools/build.ts'], { stdio: 'inherit', signal });
    builder.on('error', failed);
    builder.on('exit', (code) => (code ? failed(new Error(`the build ended with ${code}`)) : done()));
  });

const browser = (): Promise<string> | string => {
  const own = process.env['CHROME_PATH'];
  if (own) return own;
  return process.platform === 'linux' && process.arch === 'x64' ? unpackPackaged() : '';
};

/** Bytes for profiles of the browser and copies of the site. */
const TEMPORARY = 400_000_000;

/**
 * Unpacks the browser before any test begins, builds the site if need be, and serves it as a static host does, for all
 * tests of this project. The build goes on while the tests of the engine run: whoever asks for a page
 * (`built-first.ts`) waits until it is there.
 */
export default async function setup(project: TestProject): Promise<() => void> {
  expectRoomIn(tmpdir(), TEMPORARY);
  const ended = new AbortController();
  let answer: RequestListener = (_request, response) => response.writeHead(BUILDING).end();
  (stale() ? build(ended.signal) : Promise.resolve()).then(
    () => {
      answer = siteHandler('dist');
    },
    (error: Error) => {
      answer = (_request, response) => response.writeHead(500).end(error.message);
    },
  );
  const server = createServer((request, response) => answer(request, response));
  const end = () => {
    ended.abort();
    server.closeAllConnections();
    server.close();
  };
  try {
    project.provide('browser', await browser());
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    project.provide('base', `http://127.0.0.1:${(server.address() as AddressInfo).port}`);
    return end;
  } catch (error) {
    end();
    throw error;
  }
}
