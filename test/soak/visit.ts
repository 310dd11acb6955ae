/** One browser with an empty profile, on the built site, with all of it on the device. */
import type { CDPSession, Page } from 'playwright-core';
import { siteHandler } from '../../site/tools/site-handler.ts';
import { served, startBrowser } from '../bench/browser/chrome.ts';
import { dice } from '../dice.ts';
import { actNamed, type Done } from './acts/index.ts';
import type { User } from './user.ts';
import { type Watch, watch } from './watch.ts';

const BEGIN = Date.UTC(2026, 10, 24, 17);
const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } as const;
const ABROAD = { timezoneId: 'America/Denver', locale: 'en-US' } as const;

/** What is tapped often is compiled, and machine code lies in the heap, too: measured, it was most of what grew there. */
const NO_MACHINE_CODE = ['--js-flags=--no-opt --no-maglev --no-sparkplug'];

export type Visit = {
  readonly page: Page;
  readonly session: CDPSession;
  readonly watch: Watch;
  /** Does one act and tells what went wrong, or how it was not done. */
  readonly act: (done: Done) => Promise<{ readonly how: How; readonly faults: readonly string[] }>;
  readonly jump: (milliseconds: number) => Promise<void>;
  /** Hours that have passed on the clock of the tab. */
  readonly hours: () => number;
  /** Gives the network back. */
  readonly online: () => Promise<void>;
};
/** `nothing`: there was nothing to do it with; `missed`: what was to be tapped went away, or lay under something. */
export type How = 'done' | 'nothing' | 'missed';

const MISSED =
  /Timeout \d+ms exceeded|context was destroyed|not attached|detached|ERR_ABORTED|interrupted by another navigation|Cannot find context|frame got detached/;

/**
 * The clock of the tab, moved on by any time. Playwright notes each move for the pages that come later, and would read
 * all of them at the beginning of each: after a thousand moves that would be what is measured. Here one note has the sum.
 */
const jumping = async (page: Page) => {
  await page.clock.install({ time: BEGIN });
  let total = 0;
  let note: { dispose(): Promise<void> } | undefined;
  const jump = async (milliseconds: number) => {
    total += milliseconds;
    const says = `globalThis.__pwClock.controller.log('fastForward', ${Date.now()}, ${total})`;
    const next = await page.context().addInitScript(says);
    await note?.dispose();
    note = next;
    await page.evaluate(`globalThis.__pwClock.controller.fastForward(${milliseconds})`);
  };
  return { jump, hours: () => total / 3_600_000 };
};

/** Opens the tab, lets it take everything onto the device, and gives it to `work`. */
export const visit = <T>(work: (visit: Visit) => Promise<T>, plant?: () => void): Promise<T> =>
  served(siteHandler('dist'), async (base) => {
    const browser = await startBrowser(NO_MACHINE_CODE);
    try {
      const context = await browser.newContext({
        baseURL: base,
        ...PHONE,
        ...ABROAD,
        reducedMotion: 'reduce',
      });
      const page = await context.newPage();
      page.setDefaultTimeout(10_000);
      page.setDefaultNavigationTimeout(30_000);
      // Paper would wait for a hand; a page that asks before it is left is left.
      await context.addInitScript(() => {
        window.print = () => undefined;
      });
      if (plant) await context.addInitScript(plant);
      page.on('dialog', (dialog) => void dialog.accept().catch(() => undefined));
      const { jump, hours } = await jumping(page);
      const session = await context.newCDPSession(page);
      await session.send('Performance.enable');
      const watching = watch(page);
      await page.goto('/');
      await page.getByText('Everything is on this device.').waitFor({ timeout: 120_000 });
      const kept = {};
      const offline = async (is: boolean) => {
        if (is) watching.offline(true);
        await context.setOffline(is);
        if (is) return;
        // What was asked without a network is answered by now.
        await page.waitForTimeout(200);
        watching.offline(false);
      };
      const act: Visit['act'] = async ([name, seed]) => {
        const user: User = { page, dice: dice(seed), jump, offline, kept };
        let how: How = 'done';
        try {
          if (!(await actNamed(name).run(user))) how = 'nothing';
        } catch (error) {
          if (!MISSED.test(String(error))) throw error;
          how = 'missed';
        }
        return { how, faults: how === 'nothing' ? [] : await watching.faults() };
      };
      return await work({ page, session, watch: watching, act, jump, hours, online: () => offline(false) });
    } finally {
      await browser.close();
    }
  });
