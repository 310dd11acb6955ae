/** Keys go as the eye does, and what is drawn on wood is read in the dark. */
import { expect, it } from 'vitest';
import { openPage } from './browser.ts';

it('goes by keys from the mark along the rooms to the search, as they stand in the head', async () => {
  const { page, close } = await openPage({ viewport: { width: 1280, height: 900 } });
  await page.goto('/remedies/');
  const lefts = await page
    .locator('.top :is(a, input)')
    .filter({ visible: true })
    .evaluateAll((stops) => stops.map((stop) => Math.round(stop.getBoundingClientRect().left)));
  expect(lefts.length).toBeGreaterThan(5);
  expect(lefts).toEqual(lefts.toSorted((a, b) => a - b));
  await close();
});

it('reaches how dry a flaw is before the slider of its pictures, which stand above it on a phone', async () => {
  for (const width of [390, 1280]) {
    const { page, close } = await openPage({ viewport: { width, height: 900 } });
    await page.goto('/defects/runs-and-sags/');
    await page.locator('hd-turn-light input').waitFor();
    const keys = await page
      .locator('main :is(a, input)')
      .evaluateAll((stops) =>
        stops.map((stop) =>
          stop.closest('[data-part=start]') ? 'start' : stop.matches('[type=range]') ? 'light' : '',
        ),
      );
    expect(keys.indexOf('start')).toBeGreaterThanOrEqual(0);
    expect(keys.lastIndexOf('start')).toBeLessThan(keys.indexOf('light'));
    const [pair, start] = await Promise.all(
      ['.flaw > .pair', '[data-part=start]'].map((part) => page.locator(part).boundingBox()),
    );
    if (width < 960) expect((pair?.y ?? 0) + (pair?.height ?? 0)).toBeLessThanOrEqual(start?.y ?? 0);
    else expect(pair?.x).toBeGreaterThan((start?.x ?? 0) + (start?.width ?? 0) - 1);
    await close();
  }
});

it('keeps the search beside the mark on a phone, the rooms below them', async () => {
  const { page, close } = await openPage({ viewport: { width: 390, height: 844 } });
  await page.goto('/remedies/');
  const top = async (part: string) => (await page.locator(`.top ${part}`).boundingBox())?.y ?? 0;
  expect(await top('.rooms')).toBeGreaterThan((await top('.search')) + 20);
  await close();
});

/** WCAG 2.2: the contrast of two colors as a browser computes them, rgb(…). */
const contrast = (one: string, other: string): number => {
  const light = (color: string) => {
    const [r = 0, g = 0, b = 0] = (color.match(/\d+/g) ?? []).map((part) => {
      const share = Number(part) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [a, b] = [light(one), light(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
};

it.each(['light', 'dark'] as const)(
  'draws strokes and a shadow that are seen on film and wood, %s',
  async (scheme) => {
    const { page, close } = await openPage({ colorScheme: scheme });
    await page.goto('/learn/wet-edge/');
    const fill = (part: string, of = 'fill') =>
      page
        .locator(`.drawing ${part}`)
        .first()
        .evaluate((drawn, name) => getComputedStyle(drawn).getPropertyValue(name), of);
    const film = await fill('rect.laid');
    // WCAG 2.2, 1.4.3 and 1.4.11.
    expect(contrast(await fill('text.strong'), film)).toBeGreaterThan(4.5);
    expect(contrast(await fill('path.arrow', 'stroke'), film)).toBeGreaterThan(3);
    await page.goto('/learn/raking-light/');
    const [shadow, board] = await Promise.all(
      ['shadow', 'laid'].map((part) => page.locator(`.drawing rect.${part}`).first().boundingBox()),
    );
    expect(shadow?.y).toBeGreaterThanOrEqual((board?.y ?? 0) - 1);
    expect((shadow?.y ?? 0) + (shadow?.height ?? 0)).toBeLessThan((board?.y ?? 0) + (board?.height ?? 0));
    await close();
  },
);
