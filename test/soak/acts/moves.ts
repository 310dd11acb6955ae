/** Going about: addresses, links, back and forward, reloads, hours that pass, and spells without a network. */
import { readdirSync } from 'node:fs';
import { HOUR_MS } from '#engine/plain/time.ts';
import { type Act, between, oneOf, tap, type User } from '../user.ts';

const PLACES = [
  '/',
  '/tell/',
  '/clock/',
  '/jobs/',
  '/schedule/',
  '/see/',
  '/search/',
  '/which-coat/',
  '/learn/',
  '/learn/practice/',
  '/first-coat/',
  '/glossary/',
  '/safety/',
  '/about/',
];
const LINKS = 'main a[href^="/"]:not([download], [target])';
const BUTTONS = 'main button:enabled';

const named = (folder: string): readonly string[] =>
  readdirSync(`dist/${folder}`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => `/${folder}/${name}/`)
    .sort();

const go = async (user: User, path: string | undefined): Promise<boolean> => {
  if (path) await user.page.goto(path);
  return path !== undefined;
};

export const moves: readonly Act[] = [
  { name: 'go', weight: 4, run: (user) => go(user, oneOf(user, PLACES)) },
  {
    name: 'read',
    weight: 3,
    run: (user) =>
      go(user, oneOf(user, named(oneOf(user, ['remedies', 'learn', 'glossary', 'safety']) ?? 'safety'))),
  },
  { name: 'link', weight: 8, run: (user) => tap(user, LINKS) },
  { name: 'button', weight: 10, run: (user) => tap(user, BUTTONS) },
  { name: 'fold', weight: 3, run: (user) => tap(user, 'main summary') },
  {
    name: 'back',
    weight: 6,
    run: async ({ page }) => {
      await page.goBack();
      // Before the first page there is none of this site.
      if (!page.url().startsWith('http')) await page.goto('/');
      return true;
    },
  },
  {
    name: 'forward',
    weight: 3,
    run: async ({ page }) => {
      await page.goForward();
      return true;
    },
  },
  {
    name: 'reload',
    weight: 3,
    run: async ({ page }) => {
      await page.reload();
      return true;
    },
  },
  {
    name: 'hours',
    weight: 8,
    run: async (user) => {
      await user.jump(Math.round(between(user, 2, 300) * 0.1 * HOUR_MS));
      return true;
    },
  },
  {
    name: 'minutes',
    weight: 3,
    run: async (user) => {
      await user.jump(between(user, 1, 40) * 60_000);
      return true;
    },
  },
  // A spell lasts until the network comes back, and that is the likelier of the two.
  {
    name: 'offline',
    weight: 1.5,
    run: async (user) => {
      await user.offline(true);
      return true;
    },
  },
  {
    name: 'online',
    weight: 4,
    run: async (user) => {
      await user.offline(false);
      return true;
    },
  },
  { name: 'units', weight: 2, run: (user) => tap(user, 'main label:has([name=units])') },
];
