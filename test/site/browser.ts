/** A real Chromium: the one that the setup has unpacked, or an installed Chrome. */
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { chromium as playwright } from 'playwright-core';
import { expect, inject } from 'vitest';
import { BROWSER_ARGS } from './browser-args.ts';

let pictures = true;
/** For a file whose tests look at no picture: its pages come faster. */
export const withoutPictures = (): void => {
  pictures = false;
};

const launch = (): Promise<Browser> => {
  const path = inject('browser');
  const args = pictures ? BROWSER_ARGS : [...BROWSER_ARGS, '--blink-settings=imagesEnabled=false'];
  return playwright.launch(path ? { executablePath: path, args } : { channel: 'chrome', args });
};

/** One browser for all files of a worker, by whether it shows pictures. It ends with the worker. */
const started = new Map<boolean, Promise<Browser>>();
const browser = (): Promise<Browser> => {
  const running = started.get(pictures) ?? launch();
  started.set(pictures, running);
  return running;
};

/** What a file of tests has opened, closed; the next file begins as the first did. */
export const endOfFile = async (): Promise<void> => {
  pictures = true;
  left.clear();
  const open = await Promise.all(started.values());
  await Promise.all(open.flatMap((one) => one.contexts()).map((context) => context.close()));
};

export const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
export const NARROW = { viewport: { width: 320, height: 640 } } as const;

export type Opened = {
  readonly page: Page;
  /** Errors in the console or in scripts, so far. */
  readonly errors: readonly string[];
  /** Requests to any other host, so far. */
  readonly foreign: readonly string[];
  readonly close: () => Promise<void>;
};

type Tab = { readonly page: Page; readonly context: BrowserContext; spoiled: boolean };

/** Tabs that a test has left as they came, by the options that they were opened with. */
const left = new Map<string, Tab[]>();

/** What outlives a visit: a script of the test's own, a clock, another size or light, another tab. */
const TRACES = ['addInitScript', 'exposeFunction', 'emulateMedia', 'setViewportSize', 'context'] as const;

const newTab = async (options: BrowserContextOptions): Promise<Tab> => {
  const context = await (await browser()).newContext({
    baseURL: inject('base'),
    serviceWorkers: 'block',
    reducedMotion: 'reduce',
    ...options,
  });
  const tab: Tab = { page: await context.newPage(), context, spoiled: false };
  const spoilsBy = (owner: object, name: string) => {
    const usual: unknown = Reflect.get(owner, name);
    if (typeof usual !== 'function') throw new Error(`a page of the browser has no ${name} any more`);
    Reflect.set(owner, name, (...given: unknown[]) => {
      tab.spoiled = true;
      return usual.apply(owner, given);
    });
  };
  for (const name of TRACES) spoilsBy(tab.page, name);
  spoilsBy(tab.page.clock, 'install');
  return tab;
};

/** Empties what the site has kept, and leaves its page. */
const clear = async ({ page, context }: Tab): Promise<void> => {
  page.removeAllListeners();
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  // A tab that went nowhere has kept nothing, and may not be asked.
  if (page.url() !== 'about:blank') await page.evaluate(() => sessionStorage.clear());
  // Of the same site, so that its process is kept; nothing of it reads what is kept.
  await page.goto(new URL('/robots.txt', inject('base')).href);
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', {
    origin: new URL(inject('base')).origin,
    storageTypes: 'all',
  });
  await session.detach();
};

/**
 * A page with an empty storage, watched for errors and for requests that leave the site. One that an earlier test of
 * the file closed as it came is emptied and given again, which takes a fifth of the time of a new one.
 */
export const openPage = async (options: BrowserContextOptions = {}): Promise<Opened> => {
  const base = inject('base');
  const kind = JSON.stringify(options);
  const tab = left.get(kind)?.pop() ?? (await newTab(options));
  const { page } = tab;
  const errors: string[] = [];
  const foreign: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(base) && !url.startsWith('data:')) foreign.push(url);
  });
  const close = async () => {
    if (tab.spoiled || page.isClosed() || options.storageState) return tab.context.close();
    await clear(tab);
    left.set(kind, [...(left.get(kind) ?? []), tab]);
  };
  return { page, errors, foreign, close };
};

/** Nothing went wrong on the page, and nothing was asked of another host. */
export const expectQuiet = ({ errors, foreign }: Opened): void => {
  expect(errors).toEqual([]);
  expect(foreign).toEqual([]);
};
