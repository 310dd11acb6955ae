import { expect, it } from 'vitest';
import { ADVICE_DATA } from '../../site/shared/data-files.ts';
import { someOf } from '../thorough.ts';
import { expectQuiet, openPage, withoutPictures } from './browser.ts';
import { choices, LEAD, opened, SANDING } from './told-page.ts';

withoutPictures();

const SANDED = '.behind ol > [data-kind=sand]';

it.each(someOf(1, [true, false]))(
  'closes what sands behind the stop for old paint until it is settled, and prints it after the stop; script %s',
  async (javaScriptEnabled) => {
    const { page, close } = await openPage({ javaScriptEnabled });
    await page.goto('/remedies/sand-and-recoat/');
    const sanding = page.locator(SANDED);
    const stop = page.locator(`.behind ${LEAD}`).first();
    await stop.waitFor();
    const seen = async () =>
      new Set(await Promise.all((await sanding.all()).map((step) => step.isVisible())));
    await expect.poll(seen).toEqual(new Set([false]));
    await page.emulateMedia({ media: 'print' });
    await expect.poll(seen).toEqual(new Set([true]));
    const boxes = [await stop.boundingBox(), await sanding.first().boundingBox()];
    expect((boxes[0]?.y ?? 0) + (boxes[0]?.height ?? 0)).toBeLessThan(boxes[1]?.y ?? 0);
    expect(
      await page.evaluate(
        () => getComputedStyle(document.querySelector('[data-open]') as Element, '::before').content,
      ),
    ).toMatch(/stop here/);
    await page.emulateMedia({ media: 'screen' });
    // With script the answer opens them; she says of her own layers that none is old.
    if (javaScriptEnabled)
      await page
        .locator('[data-gate]')
        .getByRole('button', { name: /only mine/ })
        .click();
    else await page.locator('.behind > details:not([open]) > summary').first().click();
    await sanding.first().waitFor();
    await expect.poll(() => seen()).toEqual(new Set([true]));
    await close();
  },
);

it('opens the steps at her answer, keeps one line of the stop, and takes the answer back from there', async () => {
  const one = await opened();
  const { page } = one;
  await page.goto(SANDING);
  await page.getByRole('button', { name: /only mine/ }).tap();
  await page.locator(SANDED).first().waitFor();
  const line = page.locator('[data-part=settled-line]');
  await line.waitFor();
  await expect.poll(() => line.innerText()).toContain(choices.age['as-told']?.['since-1993'] ?? 'the answer');
  await expect.poll(async () => (await line.boundingBox())?.height).toBeLessThan(130);
  await line.getByRole('button', { name: 'Change' }).tap();
  await page.locator(`.stops ${LEAD}`).waitFor();
  await expect.poll(() => line.isVisible()).toBe(false);
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('[data-part=stops]') !== null))
    .toBe(true);
  expectQuiet(one);
  await one.close();
});

it('asks one question before the steps of a repair, and is one line above them once it is answered', async () => {
  const one = await opened();
  const { page } = one;
  await page.goto('/remedies/sand-and-recoat/');
  const gate = page.locator('[data-gate]');
  const heading = page.locator('.procedure > h2');
  await expect.poll(() => heading.innerText()).toMatch(/^First a question, then \d+ steps$/);
  // The reason of the lock is as large as the text round it.
  const sizeOf = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((one) => getComputedStyle(one).fontSize);
  expect(await sizeOf('[data-open]')).toBe(await sizeOf('body'));
  // While it is asked, its answers are the only way on.
  const closed = page.locator('.behind > details:not([open]) > summary').first();
  await gate.locator('button.tape').first().waitFor();
  await expect.poll(() => closed.isVisible()).toBe(false);
  expect(await page.getByRole('link', { name: 'Test it first' }).count()).toBe(0);
  await gate.getByRole('button', { name: choices.age.values.unknown }).tap();
  await closed.waitFor();
  await expect.poll(() => heading.innerText()).toMatch(/^First a test, then \d+ steps$/);
  await expect
    .poll(() => gate.getByRole('link', { name: 'Test it first' }).getAttribute('href'))
    .toBe('/safety/lead-test-limits/');
  await gate.getByRole('button', { name: 'Change' }).tap();
  await gate.getByRole('button', { name: /only mine/ }).tap();
  await page.locator(SANDED).first().waitFor();
  const numbered = () =>
    page
      .locator('.steps > li:visible')
      .evaluateAll(
        (steps) => steps.filter((step) => getComputedStyle(step, '::before').content !== 'none').length,
      );
  await expect.poll(() => heading.innerText()).toMatch(/^\d+ steps$/);
  await expect.poll(async () => `${await numbered()} steps`).toBe(await heading.innerText());
  await expect.poll(() => page.locator(`.behind ${LEAD}:visible`).count()).toBe(0);
  await expect.poll(() => gate.innerText()).toContain(choices.age['as-told']?.['since-1993'] ?? 'the answer');
  await expect.poll(async () => (await gate.boundingBox())?.height).toBeLessThan(110);
  // Of the pages of a repair the longest took 8,067 px so; what a thumb scrolls is less than nine screens.
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(4500);
  await gate.getByRole('button', { name: 'Change' }).tap();
  await page.locator(`.behind ${LEAD}`).waitFor();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('[data-gate]') !== null))
    .toBe(true);
  expectQuiet(one);
  await one.close();
});

it('folds how a step goes off the flat face until the part is told, then shows its own way alone', async () => {
  const one = await opened({ age: { value: 'since-1993', how: 'told' } });
  const { page } = one;
  await page.goto('/remedies/sand-and-recoat/');
  await page.locator('html:not([data-fit])').waitFor();
  const row = page.locator('[data-part=by-part]').first();
  const ways = row.locator('[data-step]');
  const onAnEdge = ways.filter({ hasText: choices.part.values.edge });
  await expect.poll(() => row.locator('summary').first().innerText()).toMatch(/On an edge, inside corner/);
  await expect.poll(() => ways.count()).toBe(4);
  expect(await onAnEdge.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  await expect.poll(() => onAnEdge.innerText()).toMatch(/one light pass along it/);
  await page.emulateMedia({ media: 'screen' });
  await row.locator('summary').first().tap();
  await expect.poll(() => onAnEdge.isVisible()).toBe(true);

  await page.locator('[data-facts] summary').tap();
  await page.locator('[data-facts]').getByLabel(choices.part.ask).selectOption('leg');
  await onAnEdge.waitFor({ state: 'hidden' });
  await expect.poll(() => row.locator('summary').first().isVisible()).toBe(false);
  await expect.poll(() => row.locator('[data-step]:visible').innerText()).toMatch(/as a shoe is shined/);
  // It is a step of the order now, with its number.
  const number = () =>
    row.locator('[data-step]:visible').evaluate((step) => getComputedStyle(step, '::before').content);
  await expect.poll(number).toMatch(/counter/);
  expectQuiet(one);
  await one.close();
});

it('says a stop once: the steps behind it are closed without its words', async () => {
  const one = await opened();
  await one.page.goto(SANDING);
  await one.page.locator('.stops button').first().waitFor();
  const behind = one.page.locator('.behind[data-told] > details > summary').first();
  await expect.poll(() => behind.innerText()).toMatch(/^\s*Show the steps\s*$/);
  expectQuiet(one);
  await one.close();
});

it('opens the steps of a walk when she says that its stop is settled', async () => {
  const one = await opened();
  await one.page.goto(SANDING);
  await one.page.locator('.stops button').first().waitFor();
  expect(await one.page.locator(SANDED).first().isVisible()).toBe(false);
  // Not before it is answered.
  const on = one.page.getByRole('link', { name: 'That is settled: go on' });
  expect(await on.isVisible()).toBe(false);
  await one.page.locator('.stops button', { hasText: choices.age.values['before-1993'] }).tap();
  await on.tap();
  await one.page.locator(SANDED).first().waitFor();
  expectQuiet(one);
  await one.close();
});

it('leads past no stop before the stops are those of what she told', async () => {
  const one = await opened();
  const { page } = one;
  const heldBack: (() => void)[] = [];
  await page.route(`**${ADVICE_DATA.url}*`, async (route) => {
    await new Promise<void>((resolve) => heldBack.push(resolve));
    await route.continue();
  });
  await page.goto(SANDING);
  await page.locator('.stops button', { hasText: choices.age.values['before-1993'] }).tap();
  await page.getByRole('link', { name: 'Test it first' }).first().waitFor();
  await expect.poll(() => heldBack.length).toBe(1);
  const on = page.getByRole('link', { name: 'That is settled: go on' });
  expect(await on.isVisible()).toBe(false);
  for (const send of heldBack) send();
  await on.tap();
  await page.locator(SANDED).first().waitFor();
  expect(await page.locator('.stops [data-rule=lead-before-sanding]').isVisible()).toBe(true);
  expectQuiet(one);
  await one.close();
});

it('folds the cautions of a step to a line each with one fold for all, asks above the steps what it hangs on, and prints all of it', async () => {
  const one = await opened({ age: { value: 'since-1993', how: 'told' } });
  const { page } = one;
  await page.goto('/remedies/sand-and-recoat/');
  await page.locator('html:not([data-fit])').waitFor();
  const dust = page.locator('[data-step] [data-rule=sanding-dust]');
  const whole = dust.locator('p');
  expect(await whole.isVisible()).toBe(false);
  expect((await dust.boundingBox())?.height).toBeLessThan(100);
  // On a phone they are one line, so that the first step stands in sight.
  await page.locator('[data-facts] summary').tap();
  const asked = page.locator('[data-facts] select');
  await expect.poll(() => asked.count()).toBeGreaterThan(1);
  expect((await asked.last().boundingBox())?.y).toBeLessThan(
    (await page.locator('[data-step]:visible').first().boundingBox())?.y ?? 0,
  );
  // One fold a step, however many cautions it has.
  const folds = await page
    .locator('[data-step]:visible [data-part=cares]')
    .evaluateAll((all) => all.map((cares) => cares.querySelectorAll('details').length));
  expect(new Set(folds)).toEqual(new Set([1]));
  await expect
    .poll(() => page.locator('[data-step]:visible [data-part=cares] > [data-rule]').count())
    .toBeGreaterThan(folds.length);
  const fold = page
    .locator('[data-part=cares]', { has: page.locator('[data-rule=sanding-dust]') })
    .first()
    .locator('summary');
  await fold.tap();
  await expect.poll(() => whole.innerText()).toMatch(/never for paint that may hold lead/);
  await fold.tap();
  await page.emulateMedia({ media: 'print' });
  await expect.poll(() => dust.innerText()).toMatch(/never for paint that may hold lead/);
  expectQuiet(one);
  await one.close();
});
