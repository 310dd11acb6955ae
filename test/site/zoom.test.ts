/** Nothing is lost on 320 px, at 200 % zoom, and with type twice as large; with script and without. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { atRest } from './at-rest.ts';
import { openPage, withoutPictures } from './browser.ts';
import { onePerKind } from './kinds.ts';

withoutPictures();

/** What is out of reach or cut off on the page, and the names of its controls that can be seen. */
const look = (page: Page) =>
  page.evaluate(() => {
    const lost: string[] = [];
    const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    if (wide > 0) lost.push(`${wide} px too wide`);
    const seen = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
      !element.closest('.unseen, .skip, [aria-hidden=true]');
    const scrolls = (element: Element): boolean => {
      for (let at: Element | null = element; at && at !== document.body; at = at.parentElement)
        if (/auto|scroll/.test(getComputedStyle(at).overflowX)) return true;
      return false;
    };
    const name = (element: Element) =>
      `${element.tagName} ${(element.getAttribute('aria-label') ?? element.getAttribute('name') ?? element.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 40)}`;
    const outside = ({ left, right }: DOMRect) =>
      left < -1 || right > document.documentElement.clientWidth + 1;
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const owner = text.parentElement;
      if (!owner || !text.textContent?.trim() || !seen(owner) || scrolls(owner)) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      if ([...range.getClientRects()].some(outside)) lost.push(`off the page: ${name(owner)}`);
    }
    for (const element of document.body.querySelectorAll('*')) {
      const { overflowX, overflowY } = getComputedStyle(element);
      if (!/hidden|clip/.test(overflowX + overflowY) || !seen(element) || element.closest('svg')) continue;
      if (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1)
        lost.push(`cut off: ${name(element)}`);
    }
    const CONTROLS = 'a[href], button, input, select, textarea, summary';
    // What is folded where room is short is a tap away, as long as the line that opens it is shown.
    const folded = [...document.querySelectorAll('details:not([open])')]
      .filter((details) => [...details.children].some((one) => one.matches('summary') && seen(one)))
      .flatMap((details) => [...details.querySelectorAll(CONTROLS)].map(name));
    const controls = [...document.querySelectorAll(CONTROLS)]
      .filter((control) => (control.matches('.pick input') ? control.checkVisibility() : seen(control)))
      .map((control) => {
        const box = control.getBoundingClientRect();
        if ((box.width === 0 || box.height === 0 || outside(box)) && !scrolls(control))
          lost.push(`out of reach: ${name(control)}`);
        return name(control);
      });
    return { lost, controls: [...controls, ...folded] };
  });

const NARROW = { viewport: { width: 320, height: 512 }, deviceScaleFactor: 2 };
const PHONE = { viewport: { width: 320, height: 844 } };
const DESK = { viewport: { width: 1280, height: 900 } };
/** Pixels, of the type that a browser sets by itself. */
const LARGE_TYPE = 32;

it.each([
  ['with script', true],
  ['without script', false],
] as const)('loses nothing %s', async (_what, javaScriptEnabled) => {
  const [desk, narrow, large, phone] = await Promise.all(
    [DESK, NARROW, DESK, PHONE].map((size) => openPage({ ...size, javaScriptEnabled })),
  );
  if (!desk || !narrow || !large || !phone) throw new Error('four pages were asked for');
  for (const { page } of [large, phone]) {
    const session = await page.context().newCDPSession(page);
    await session.send('Page.setFontSizes', { fontSizes: { standard: LARGE_TYPE } });
  }
  const found: string[] = [];
  for (const { kind, address } of onePerKind()) {
    const [all, ...views] = await Promise.all(
      [desk, narrow, large, phone].map(async ({ page }) => {
        await page.goto(address);
        if (javaScriptEnabled) await atRest(page);
        return look(page);
      }),
    );
    for (const [n, { lost, controls }] of views.entries()) {
      const view = ['320 px', 'large type, desk', 'large type, phone'][n];
      const gone = all?.controls.filter((control) => !controls.includes(control)) ?? [];
      found.push(
        ...[...lost, ...gone.map((one) => `not shown: ${one}`)].map((one) => `${kind}, ${view}: ${one}`),
      );
    }
  }
  await Promise.all([desk, narrow, large, phone].map(({ close }) => close()));
  expect(found).toEqual([]);
});
