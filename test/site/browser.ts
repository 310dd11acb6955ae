/** A real Chromium: the one that the setup has unpacked, or an installed Chrome. */
import type { Browser, BrowserContext, BrowserContextOptions, CDPSession, Page } from 'playwright-core';
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

type Tab = {
  readonly page: Page;
  readonly context: BrowserContext;
  /** A line to the browser, which spoils nothing once it is given back. */
  readonly line: () => Promise<CDPSession>;
  spoiled: boolean;
};

/** Tabs that a test has left as they came, by the options that they were opened with. */
const left = new Map<string, Tab[]>();

/** What outlives a visit: a script of the test's own, another size or light, rights, another tab. */
const OF_PAGE = [
  'addInitScript',
  'exposeFunction',
  'exposeBinding',
  'setViewportSize',
  'setExtraHTTPHeaders',
];
const OF_CONTEXT = [
  ...['addInitScript', 'exposeFunction', 'exposeBinding', 'setExtraHTTPHeaders', 'addCookies', 'route'],
  ...['grantPermissions', 'setGeolocation', 'setOffline', 'newPage', 'newCDPSession'],
];
const OF_CLOCK = ['install', 'setFixedTime', 'setSystemTime', 'pauseAt'];

const newTab = async (options: BrowserContextOptions): Promise<Tab> => {
  const context = await (await browser()).newContext({
    baseURL: inject('base'),
    serviceWorkers: 'block',
    reducedMotion: 'reduce',
    ...options,
  });
  const page = await context.newPage();
  const line = context.newCDPSession.bind(context, page);
  const tab: Tab = { page, context, line, spoiled: false };
  const spoilsBy = (
    owner: object,
    name: string,
    but: (given: readonly unknown[]) => boolean = () => false,
  ) => {
    const usual: unknown = Reflect.get(owner, name);
    if (typeof usual !== 'function') throw new Error(`a page of the browser has no ${name} any more`);
    Reflect.set(owner, name, (...given: unknown[]) => {
      tab.spoiled ||= !but(given);
      return usual.apply(owner, given);
    });
  };
  for (const name of OF_PAGE) spoilsBy(page, name);
  for (const name of OF_CONTEXT) spoilsBy(context, name);
  for (const name of OF_CLOCK) spoilsBy(page.clock, name);
  // Paper alone is taken back by `clear`.
  spoilsBy(page, 'emulateMedia', ([media]) => Object.keys(media ?? {}).join() === 'media');
  return tab;
};

/** Empties what the site has kept, and leaves its page. */
const clear = async ({ page, line }: Tab): Promise<void> => {
  page.removeAllListeners();
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  // A tab that went nowhere has kept nothing, and may not be asked.
  if (page.url() !== 'about:blank') await page.evaluate(() => sessionStorage.clear());
  // Of the same site, so that its process is kept; nothing of it reads what is kept.
  await page.goto(new URL('/robots.txt', inject('base')).href);
  await page.emulateMedia({ media: null });
  const session = await line();
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
    const alone = tab.context.pages().length === 1;
    if (tab.spoiled || !alone || page.isClosed() || options.storageState) return tab.context.close();
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
