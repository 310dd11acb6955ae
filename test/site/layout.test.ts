/** What holds on a narrow screen, with large type, and with colors forced by the system. */
import { expect, it } from 'vitest';
import { NARROW, openPage, PHONE } from './browser.ts';
import { onePerShape } from './built.ts';

/** WCAG 2.2, 1.4.10: no scrolling sideways at 320 px, which is also 1280 px at 400 %. */
it('never scrolls sideways at 320 px', async () => {
  const { page, close } = await openPage(NARROW);
  const wide: string[] = [];
  for (const { address } of onePerShape()) {
    await page.goto(address);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (over > 0) wide.push(`${address}: ${over} px too wide`);
  }
  await close();
  expect(wide).toEqual([]);
});

it('has answers as wide as the page, at least 64 px tall, and in view at once', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto('/defects/lap-marks/cause/');
  for (const answer of ['yes', 'no']) {
    const box = await page.locator(`[data-answer=${answer}]`).boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(64);
    expect(box?.width).toBeGreaterThanOrEqual(300);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(740);
  }
  await close();
});

it('draws the edge of a tape where colors are forced', async () => {
  const { page, close } = await openPage({ ...PHONE, forcedColors: 'active' });
  await page.goto('/defects/lap-marks/cause/');
  const border = await page
    .locator('[data-answer=yes]')
    .evaluate((strip) => getComputedStyle(strip).borderTopWidth);
  expect(Number.parseFloat(border)).toBeGreaterThan(0);
  await close();
});

it('names the verdict first, then the reason, then what not to do', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto('/defects/runs-and-sags/stage-setting/');
  const order = await page.locator('main').evaluate((main) => {
    const parts = [...main.querySelectorAll('.verdict, .why, .not, .again, .causes, .trail')];
    return parts.map((part) => part.className.split(' ')[0]);
  });
  expect(order).toEqual(['verdict', 'why', 'not', 'again', 'causes', 'trail']);
  await close();
});

it('prints a repair on one sheet', async () => {
  const { page, close } = await openPage();
  await page.goto('/remedies/shave-the-run/');
  const sheet = (
    await page.pdf({ format: 'A4', margin: { top: '8mm', bottom: '8mm', left: '8mm', right: '8mm' } })
  ).toString('latin1');
  expect(sheet.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  await close();
});
