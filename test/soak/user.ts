/** The user of a soak: a tab, a hand that follows dice, and a clock that jumps. */
import type { Locator, Page } from 'playwright-core';

export type User = {
  readonly page: Page;
  /** From 0 up to 1, another row of numbers for each act. */
  readonly dice: () => number;
  /** So many milliseconds pass at once, on this page and on all that follow. */
  readonly jump: (milliseconds: number) => Promise<void>;
  /** Takes the network away or gives it back. */
  readonly offline: (is: boolean) => Promise<void>;
  /** The last file of cards that was saved, to be brought in again. */
  readonly kept: { file?: string | undefined };
};

/** Done, or false where there was nothing to do it with. */
export type Act = {
  readonly name: string;
  /** How often it is done, beside the others. */
  readonly weight: number;
  /** The page that it stays on; nothing where it may lead anywhere. */
  readonly on?: string;
  readonly run: (user: User) => Promise<boolean>;
};

/** Milliseconds that a tap may wait for its thing to hold still. */
const PATIENCE = 4000;

export const oneOf = <T>({ dice }: Pick<User, 'dice'>, all: readonly T[]): T | undefined =>
  all[Math.floor(dice() * all.length)];

/** A whole number from the least to the most. */
export const between = ({ dice }: Pick<User, 'dice'>, least: number, most: number): number =>
  least + Math.floor(dice() * (most - least + 1));

/** One of all that is seen of them; nothing where none is. */
const seen = async (user: User, all: Locator): Promise<Locator | undefined> => {
  const visible = all.filter({ visible: true });
  const count = await visible.count();
  return count ? visible.nth(between(user, 0, count - 1)) : undefined;
};

/** Taps one that is seen of these, if there is any. */
export const tap = async (user: User, selector: string, text?: RegExp): Promise<boolean> => {
  const all = user.page.locator(selector);
  const one = await seen(user, text ? all.filter({ hasText: text }) : all);
  await one?.click({ timeout: PATIENCE });
  return one !== undefined;
};

/** Goes to an address unless the tab is there already, whatever stands behind #. */
export const be = async ({ page }: User, path: string): Promise<void> => {
  if (new URL(page.url(), 'http://nowhere').pathname !== path) await page.goto(path);
};

/** Chooses one value of a field at random: a list, radios or ticks. False where it is not seen. */
export const choose = async (user: User, form: string, name: string): Promise<boolean> => {
  const list = user.page.locator(`${form} select[name="${name}"]`).filter({ visible: true });
  if (await list.count()) {
    const count = await list.first().locator('option').count();
    await list.first().selectOption({ index: between(user, 0, count - 1) }, { timeout: PATIENCE });
    return true;
  }
  const label = user.page.locator(`${form} label:has([name="${name}"])`);
  const one = await seen(user, label);
  await one?.click({ timeout: PATIENCE });
  return one !== undefined;
};

/** Types into a field that is seen, and leaves it. */
export const type = async (user: User, form: string, name: string, text: string): Promise<boolean> => {
  const field = user.page.locator(`${form} :is(input, textarea)[name="${name}"]`).filter({ visible: true });
  if (!(await field.count())) return false;
  await field.first().fill(text, { timeout: PATIENCE });
  await field.first().blur();
  return true;
};

/** Opens all that is folded away below. */
export const unfold = (user: User, selector: string): Promise<void> =>
  user.page.locator(selector).evaluateAll((all) => {
    for (const fold of all) fold.setAttribute('open', '');
  });
