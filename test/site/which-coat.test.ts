/** Which top coat to take: asked in a box, answered with its reason, and planned from there. */
import { expect, it } from 'vitest';
import { expectQuiet, openPage, withoutPictures } from './browser.ts';

withoutPictures();

it('answers a question in the box with one kind, and plans it', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/');
  await page.getByRole('combobox').fill('what finish should I put on a kitchen table');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/which-coat/**');
  const verdict = page.locator('.chosen .verdict');
  await verdict.getByText('Water-based polyurethane').waitFor();
  // The words tell the piece alone: what lies below is not hers yet, and it says so.
  const example = page.locator('.chosen .example');
  expect(await example.innerText()).toBe('For example, until you say yours: Latex paint, dark color');
  await page.getByLabel('What lies below it?').selectOption('bare-wood');
  // Bare wood shows wood, as long as nobody said what shows through.
  const tone = page.getByLabel('What shows through?');
  expect(await tone.inputValue()).toBe('wood');
  await verdict.getByText('Oil-based polyurethane').waitFor();
  await page.getByLabel('What lies below it?').selectOption('latex-paint');
  expect(await tone.inputValue()).toBe('dark');
  await tone.selectOption('light');
  await page.getByLabel('What lies below it?').selectOption('bare-wood');
  expect(await tone.inputValue()).toBe('light');
  await tone.selectOption('wood');
  await verdict.getByText('Oil-based polyurethane').waitFor();
  // Nothing is answered for her that a stop hangs on.
  const caution = page.getByText('Only where nothing older lies below.');
  await caution.waitFor();
  await page.getByLabel('Is there older paint or varnish on it?').selectOption('none');
  await caution.waitFor({ state: 'detached' });
  await expect.poll(() => page.url()).toContain('base=bare-wood');
  await expect.poll(() => example.count()).toBe(0);
  await page.getByRole('link', { name: /^Plan it/ }).click();
  await page.waitForURL('**/schedule/**');
  await page.locator('.plan .verdict').waitFor();
  expect(await page.locator('.plan').innerText()).toMatch(/oil-based polyurethane/i);
  // The sizes are those of the piece that was named.
  await expect.poll(() => page.getByLabel('Tops: how many').inputValue()).toBe('1');
  await expect.poll(() => page.getByLabel('Legs: how many').inputValue()).toBe('4');
  expectQuiet(opened);
  await opened.close();
});

it('stops before an old finish of unknown age, and without script shows a table', async () => {
  const opened = await openPage();
  await opened.page.goto('/which-coat/#base=old-finish&piece=furniture');
  await opened.page.locator('.chosen .verdict.stop').getByText('Stop first').waitFor();
  await expect.poll(() => opened.page.locator('.chosen').innerText()).toContain('lead');
  expectQuiet(opened);
  await opened.close();
  const plain = await openPage({ javaScriptEnabled: false });
  await plain.page.goto('/which-coat/');
  expect(await plain.page.getByRole('row', { name: /Dining or kitchen table/ }).innerText()).toMatch(
    /polyurethane/i,
  );
  await plain.close();
});
