/** A real Chromium: the one that the setup has unpacked, or an installed Chrome. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { chromium as playwright } from 'playwright-core';
import { afterAll, expect, inject } from 'vitest';

const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

let pictures = true;
/** For a file whose tests look at no picture: its pages come faster. */
export const withoutPictures = (): void => {
  pictures = false;
};

const launch = (): Promise<Browser> => {
  const path = inject('browser');
  const args = pictures ? ARGS : [...ARGS, '--blink-settings=imagesEnabled=false'];
  return playwright.launch(path ? { executablePath: path, args } : { channel: 'chrome', args });
};

let started: Promise<Browser> | undefined;
afterAll(async () => {
  await (await started)?.close();
  started = undefined;
});

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

/** A page of its own, with an empty storage, watched for errors and for requests that leave the site. */
export const openPage = async (options: BrowserContextOptions = {}): Promise<Opened> => {
  started ??= launch();
  const base = inject('base');
  const context = await (await started).newContext({ baseURL: base, serviceWorkers: 'block', ...options });
  const page = await context.newPage();
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
  return { page, errors, foreign, close: () => context.close() };
};

/** Nothing went wrong on the page, and nothing was asked of another host. */
export const expectQuiet = ({ errors, foreign }: Opened): void => {
  expect(errors).toEqual([]);
  expect(foreign).toEqual([]);
};
