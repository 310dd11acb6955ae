/** One piece from plan to hand-over: schedule, card, coat, milky, hold, dry, lap mark, repair, two more coats, cure, care card. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { DAY_MS, HOUR_MS } from '#engine/plain/time.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';
import { cardsIn, layCoat, soon } from './jobs-hands.ts';
import { sheetsOf } from './paper.ts';

withoutPictures();

const DENVER = { ...PHONE, timezoneId: 'America/Denver', locale: 'en-US' } as const;
const verdict = (page: Page) => page.locator('.verdict').first().innerText();

it('goes from the plan to the care card', async () => {
  const opened = await openPage(DENVER);
  const { page } = opened;
  await page.clock.install({ time: new Date('2027-03-08T15:00:00Z') });
  await page.goto('/schedule/');
  await page.locator('summary[data-part=piece]').click();
  await page.getByLabel('Its name').fill('Navy dresser');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await soon(() => page.locator('#plan-age-fault').innerText()).toBe('Choose one of these.');
  await page.getByLabel('Is there older paint or varnish on it?').selectOption('none');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.locator('.plan .verdict').waitFor();
  expect(await page.locator('.plan .verdict').innerText()).toMatch(/^3 coats/);
  await page.getByRole('button', { name: 'Make a job card' }).click();
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  const address = page.url();
  // Until it is asked for, no form stands there that nobody listens to.
  expect(await page.locator('[data-part=lay-coat]').isVisible()).toBe(false);
  expect((await cardsIn(page))[0]).toMatchObject({ name: 'Navy dresser', base: 'latex-paint', tone: 'dark' });
  await page.getByText('Paper and files').click();
  await soon(() => page.getByRole('link', { name: 'The plan of this piece' }).getAttribute('href')).toContain(
    'piece=Navy',
  );

  await layCoat(page);
  await soon(() => verdict(page)).toMatch(/^Hands off until/);
  await page.getByRole('button', { name: 'Something looks wrong' }).click();
  await page.waitForURL('**/see/**');
  await page.goto('/defects/cloudy-film/#how-dry');
  await page.locator('.by-clock').click();
  await page.locator('#verdict').waitFor();
  await soon(() => verdict(page)).toMatch(/^Hands off/);
  expect(new URL(page.url()).pathname).toContain('stage-wet');
  await page.getByRole('button', { name: 'Note this flaw on the card' }).click();
  await page.getByText('It stands on the card.').waitFor();

  await page.clock.fastForward(6 * HOUR_MS);
  await page.goto(address);
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  // An open flaw comes before the coat that the clock is ready for, and leads to its page for the film of now.
  await soon(() => verdict(page)).toBe('First the flaw: milky, foggy or cloudy coat');
  await soon(() => page.locator('.why').first().innerText()).toMatch(/By the clock: Ready for the next coat/);
  const again = page.locator('.found').getByRole('link', { name: 'Milky, foggy or cloudy coat' });
  await soon(() => again.getAttribute('href')).toContain('/defects/cloudy-film/stage-recoatable/');
  await page
    .locator('.found', { hasText: 'open' })
    .getByRole('button', { name: /^Settled/ })
    .click();
  await page.locator('.found', { hasText: 'settled' }).waitFor();
  await soon(() => verdict(page)).toMatch(/^Ready for the next coat/);
  await page.getByRole('button', { name: 'Something looks wrong' }).click();
  await page.waitForURL('**/see/**');
  await page.goto('/defects/lap-marks/#how-dry');
  await soon(() => page.locator('.by-clock').innerText()).toContain('ready for a coat');
  await page.locator('.by-clock').click();
  await page.waitForURL('**/defects/lap-marks/stage-*/**');
  while (await page.locator('[data-answer=yes]').count()) {
    const before = page.url();
    await page.locator('[data-answer=yes]').click();
    await page.waitForURL((url) => url.href !== before);
  }
  for (const name of ['Note this flaw on the card', 'I did this repair: note it']) {
    await page.getByRole('button', { name }).click();
    await page.getByText('It stands on the card.').waitFor();
  }

  // The repair laid a coat: the card does not go on with the clock of the old one.
  await page.getByRole('button', { name: 'The flaw is gone: settle it' }).click();
  await page.getByText('The flaw is settled.').waitFor();
  await page.getByRole('link', { name: 'Put its coat on the clock, on the card' }).click();
  await page.getByRole('button', { name: 'Put its coat on the clock' }).waitFor();
  await soon(() => verdict(page)).toBe('Hands off the coat of the repair');

  for (const coat of [2, 3]) {
    await page.goto(address);
    await layCoat(page, 'brush', undefined, coat === 2 ? 'Put its coat on the clock' : 'Lay a coat');
    expect(await page.locator('.laid > li').count()).toBe(coat);
    await soon(() => verdict(page)).toMatch(/^Hands off until/);
    await page.clock.fastForward(26 * HOUR_MS);
  }
  await page.getByRole('button', { name: 'That was the last coat' }).click();
  await page.getByRole('button', { name: 'One more coat after all' }).waitFor();
  await soon(() => verdict(page)).toBe('Leave it to cure');
  const told = await page.locator('main').innerText();
  for (const part of [
    'Lap marks',
    'Milky, foggy or cloudy coat',
    'for lap marks',
    'Coat 3, water-based polyurethane',
  ])
    expect(told).toContain(part);
  await page.clock.fastForward(45 * DAY_MS);
  await page.reload();
  await page.getByRole('button', { name: 'One more coat', exact: true }).waitFor();
  await soon(() => verdict(page)).toMatch(/cured/i);

  await page.getByRole('link', { name: 'Care card for the buyer' }).click();
  await page.locator('.care').waitFor();
  const care = await page.locator('.care').innerText();
  // The forms of the view before go with it.
  expect(await page.locator('form.lay').filter({ visible: true }).count()).toBe(0);
  for (const part of ['Sealed with a clear water-based finish', 'Full use from', '2027', 'Cleaning'])
    expect(care).toContain(part);
  for (const format of ['A4', 'Letter']) expect(sheetsOf(await page.pdf({ format })), format).toBe(1);
  await page.getByRole('link', { name: 'Back to the job card' }).click();
  await page.getByRole('button', { name: 'Handed over today' }).click();
  await soon(() => verdict(page)).toBe('Handed over');
  await soon(async () => (await cardsIn(page))[0]).toMatchObject({
    coats: [{}, {}, {}],
    flaws: [{}, {}],
    repairs: [{}],
  });
  expectQuiet(opened);
  await opened.close();
});
