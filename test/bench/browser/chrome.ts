/** A slow phone: Chromium with its processor slowed, and a page of its own with no script but what is put into it. */
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { BROWSER_ARGS } from '../../site/browser-args.ts';
import { unpackPackaged } from '../../site/unpack-browser.ts';

/** Of an old phone against this machine. */
const SLOWED = 4;

/** Only a page that nobody shares a process with is told the time finer than a tenth of a millisecond. */
const ALONE = { 'Cross-Origin-Opener-Policy': 'same-origin', 'Cross-Origin-Embedder-Policy': 'require-corp' };
const BARE = '<!doctype html><meta charset="utf-8"><title>bench</title><p>Bench.</p>';

export const bare: RequestListener = (_request, response) =>
  response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8', ...ALONE }).end(BARE);

export const startBrowser = async (more: readonly string[] = []): Promise<Browser> => {
  const own = process.env['CHROME_PATH'];
  const packaged = process.platform === 'linux' && process.arch === 'x64';
  const path = own ?? (packaged ? await unpackPackaged() : undefined);
  return chromium.launch({
    args: [...BROWSER_ARGS, ...more],
    ...(path ? { executablePath: path } : { channel: 'chrome' }),
  });
};

/** A server of its own, as long as `work` takes. */
export const served = async <T>(answer: RequestListener, work: (base: string) => Promise<T>): Promise<T> => {
  const server = createServer(answer);
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  try {
    return await work(`http://127.0.0.1:${(server.address() as AddressInfo).port}`);
  } finally {
    server.closeAllConnections();
    server.close();
  }
};

export type Slowed = { readonly page: Page; readonly session: CDPSession };

/** A new tab with an empty store and the processor slowed. */
export const slowTab = async <T>(
  browser: Browser,
  base: string,
  work: (tab: Slowed) => Promise<T>,
  slowed = SLOWED,
): Promise<T> => {
  const context = await browser.newContext({ baseURL: base, viewport: { width: 360, height: 740 } });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    return await work({ page, session });
  } finally {
    await context.close();
  }
};
