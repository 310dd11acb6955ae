/** The page of the plan, as the tests work it. */
import type { Page } from 'playwright-core';

export const PAGE = '/schedule/';

export const AGE = 'Is there older paint or varnish on it?';
export const plan = async (page: Page) => {
  // Nothing is answered for her there; all else has a usual answer.
  if ((await page.getByLabel(AGE).inputValue()) === '') await page.getByLabel(AGE).selectOption('none');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.locator('.plan .verdict').waitFor();
};
/** What has a usual answer is folded on a phone. */
export const open = (page: Page, part: string) => page.locator(`summary[data-part=${part}]`).click();
export const change = (page: Page) => page.getByText('Change the plan').click();
export const openWeather = (page: Page) => page.locator('#plan-weather > summary').click();
export const verdict = (page: Page) => page.locator('.plan .verdict').innerText();
