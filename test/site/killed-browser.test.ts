/** The whole browser killed at random moments, while it writes job cards and coats on the clock: what was told as kept is there. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type Browser, type Page, chromium as playwright } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import type { ClockProduct, LaidCoat } from '#engine/clock.ts';
import type { JobCard } from '#engine/model/job-card.ts';
import { readCard } from '#engine/model/read-card.ts';
import { codeOf } from '../bundle.ts';
import { card, products, START } from '../engine/jobs/cards.ts';
import { BROWSER_ARGS } from './browser-args.ts';

const KILLS = 200;
/** A page of the site that weighs next to nothing. */
const BARE = '/data/jobs.schema.json';
/** Coats that stay on the clock; a new one pushes the oldest off. */
const KEPT = 5;
const PRODUCT = 'shellac';

type Store = typeof import('../../site/client/jobs/store/index.ts');
type Clock = typeof import('../../site/client/clock/store.ts');
type OnPage = {
  readonly store: Store;
  readonly clock: Clock;
  readonly acked: (what: 'card' | 'coat', count: number) => void;
};
type Begin = {
  readonly id: string;
  readonly from: { readonly card: number; readonly coat: number };
  readonly coat: LaidCoat;
  readonly product: ClockProduct;
  readonly kept: number;
};

/** Writes cards and coats without end; tells each once the store has said that it is on the disk. */
const WRITE = ({ id, from, coat, product, kept }: Begin) => {
  const { store, clock, acked } = window as unknown as OnPage;
  const cards = async () => {
    const read = await store.readOne(id);
    let seen = read.kind === 'card' ? read.card : undefined;
    for (let count = from.card + 1; seen; count++) {
      const notes = `${count} `.repeat(700).slice(0, 4000);
      const outcome = await store.changeCard(seen, (one) => ({ ...one, name: `Piece ${count}`, notes }));
      seen = outcome.kind === 'saved' ? outcome.card : undefined;
      if (seen) acked('card', count);
    }
  };
  const coats = async () => {
    for (let count = from.coat + 1; ; count++) {
      const laid = { ...coat, id: `coat-${count}`, piece: `Piece ${count}` };
      const { onDisk } = await clock.changeClock((there) => ({
        ...there,
        coats: [laid, ...there.coats].slice(0, kept),
        products: { [laid.product]: product },
        current: laid.id,
        seenAt: laid.laidAt,
      }));
      if (!onDisk) return;
      acked('coat', count);
    }
  };
  void cards();
  void coats();
};

const READ = async (id: string) => {
  const { store, clock } = window as unknown as OnPage;
  // A browser that finds its databases torn fails here, or has none; what is read then comes from the second copies.
  const names = await indexedDB.databases().catch(() => []);
  const wiped = !names.some(({ name }) => name === 'halfdry');
  const [read, on] = [await store.readOne(id), await clock.loadClock()];
  return {
    wiped,
    card: read.kind === 'card' ? read.card : undefined,
    coats: on.store.coats.map((coat) => coat.id),
    current: on.store.current,
    aside: on.aside.length,
  };
};

const countIn = (text: string | undefined): number => Number(/(\d+)$/.exec(text ?? '')?.[1] ?? Number.NaN);

type Running = { readonly process: ChildProcess; readonly browser: Browser; readonly page: Page };

/** The browser with this profile, at a page that has both stores' own code and nothing else. */
const start = async (profile: string, code: string, acked: OnPage['acked']): Promise<Running> => {
  const port = join(profile, 'DevToolsActivePort');
  rmSync(port, { force: true });
  const own = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'];
  // A group of its own, so that all of its processes are killed at once.
  const process = spawn(inject('browser'), [...BROWSER_ARGS, ...own], { detached: true, stdio: 'ignore' });
  for (let tries = 0; !existsSync(port) || !readFileSync(port, 'utf8').includes('\n'); tries++) {
    if (tries > 600) throw new Error('the browser did not start');
    await wait(50);
  }
  const [number] = readFileSync(port, 'utf8').split('\n');
  const browser = await playwright.connectOverCDP(`http://127.0.0.1:${number}`);
  const [context] = browser.contexts();
  if (!context) throw new Error('a browser without a profile');
  const page = await context.newPage();
  await page.exposeFunction('acked', acked);
  await page.goto(inject('base') + BARE);
  await page.evaluate(code);
  return { process, browser, page };
};

const killWhole = async ({ process: child, browser }: Running): Promise<void> => {
  const ended = once(child, 'exit');
  const group = -(child.pid ?? Number.NaN);
  process.kill(group, 'SIGKILL');
  await ended;
  // The process that writes may end after its parent; a new browser must not open the files beside it.
  for (let there = true; there; await wait(5))
    try {
      process.kill(group, 0);
    } catch {
      there = false;
    }
  await browser.close().catch(() => undefined);
};

it.skipIf(!inject('browser'))(
  `keeps every change and every coat that was told as kept, over ${KILLS} kills of the browser`,
  { timeout: 3_000_000 },
  async () => {
    const profile = mkdtempSync(join(tmpdir(), 'halfdry-kill-'));
    const code = `${await codeOf('site/client/jobs/store/index.ts', 'store')};${await codeOf('site/client/clock/store.ts', 'clock')}`;
    const product = products[PRODUCT];
    if (!product) throw new Error(`no product ${PRODUCT}`);
    const first: JobCard = card({ id: 'killed', name: 'Piece 0' });
    const coat: LaidCoat = {
      id: 'coat-0',
      piece: 'Piece 0',
      product: PRODUCT,
      laidAt: START,
      celsius: 20,
      relativeHumidity: 0.5,
      coatNumber: 1,
    };
    const told = { card: 0, coat: 0 };
    const tally = { kills: 0, cards: 0, coats: 0, wiped: 0, cardsLost: 0, coatsLost: 0, unreadable: 0 };
    let heard = () => {};
    const acked: OnPage['acked'] = (what, count) => {
      told[what] = Math.max(told[what], count);
      heard();
    };
    // Moments by a fixed row of numbers (a linear congruence), so that a run can be had again.
    let dice = 20_261_128;
    const moment = () => {
      dice = (dice * 1_103_515_245 + 12_345) % 2 ** 31;
      return (dice / 2 ** 31) * 250;
    };
    let running: Running | undefined;
    try {
      running = await start(profile, code, acked);
      await running.page.evaluate(
        (one) => (window as unknown as OnPage).store.addCard(one as never),
        first as unknown,
      );
      for (let kill = 0; kill < KILLS; kill++) {
        const before = { ...told };
        const begun = new Promise<void>((done) => {
          heard = done;
        });
        const begin: Begin = { id: first.id, from: before, coat, product, kept: KEPT };
        running.page.evaluate(WRITE, begin).catch(() => undefined);
        await begun;
        await wait(moment());
        await killWhole(running);
        running = await start(profile, code, acked);
        const found = await running.page.evaluate(READ, first.id);
        tally.kills += 1;
        if (found.wiped) tally.wiped += 1;
        tally.cards += told.card - before.card;
        tally.coats += told.coat - before.coat;
        if (!readCard(found.card).ok || found.aside) tally.unreadable += 1;
        if (!(countIn(found.card?.name) >= told.card)) tally.cardsLost += 1;
        // The newest coat is the one told last, or one that was written while it was told; the older ones lie below it.
        const newest = countIn(found.coats[0]);
        const whole = found.coats.every((id, index) => countIn(id) === newest - index);
        if (!(newest >= told.coat) || !whole || found.current !== found.coats[0]) tally.coatsLost += 1;
        told.card = countIn(found.card?.name);
        told.coat = newest;
      }
    } finally {
      if (running) await killWhole(running);
      rmSync(profile, { recursive: true, force: true });
    }
    console.log('browser kills', JSON.stringify(tally));
    expect(tally).toMatchObject({ kills: KILLS, cardsLost: 0, coatsLost: 0, unreadable: 0 });
    expect(Math.min(tally.cards, tally.coats)).toBeGreaterThan(KILLS / 2);
  },
);
