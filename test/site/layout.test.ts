/** What holds on a narrow screen, by keyboard alone, and with colors forced by the system. */
import { expect, it } from 'vitest';
import { itAtLength, someOf, THOROUGH } from '../thorough.ts';
import { atRest } from './at-rest.ts';
import { openPage, PHONE } from './browser.ts';
import { builtPages } from './built.ts';
import { onePerKind } from './kinds.ts';
import { sheetsOf } from './paper.ts';

/** WCAG 2.2, 1.4.10: no scrolling sideways at 320 px, which is also 1280 px at 400 %. */
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

/** The short run looks at one kind of page in so many. */
const ONE_IN = THOROUGH ? 1 : 12;

/** As far as a thumb in a glove needs, and what WCAG 2.2, 2.5.5 asks: 44 px; links within a text are excepted there. */
const THUMB = 44;

it('has room for a thumb on every control, and no page wider than the screen', async () => {
  const { page, close } = await openPage({ ...PHONE, viewport: { width: 390, height: 844 } });
  const found: string[] = [];
  let controls = 0;
  const kinds = onePerKind().filter((_, index) => index % ONE_IN === 0);
  for (const { kind, address } of kinds) {
    await page.goto(address);
    await atRest(page);
    const { small, wide, all } = await page.evaluate((least) => {
      const inText = (control: Element) => {
        const block = control.closest('p, li, dd, dt, td, th, figcaption');
        const words = (block?.textContent ?? '').trim().length - (control.textContent ?? '').trim().length;
        return words > 1 && getComputedStyle(control).display === 'inline';
      };
      const tapped = [
        ...document.querySelectorAll('a[href], button, input, select, textarea, summary'),
      ].filter(
        (control) =>
          control.checkVisibility({ visibilityProperty: true }) &&
          !control.matches('.skip, .unseen, .pick input') &&
          !inText(control),
      );
      const box = (control: Element) => {
        const { width, height } = (control.closest('label') ?? control).getBoundingClientRect();
        return { width, height };
      };
      return {
        all: tapped.length,
        wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        // Half a pixel is lost where the type is set in rem.
        small: tapped
          .filter((control) => box(control).height < least - 0.5)
          .map((control) => `${Math.round(box(control).height)} px: ${control.outerHTML.slice(0, 90)}`),
      };
    }, THUMB);
    controls += all;
    found.push(...small.map((one) => `${kind}, ${address}: ${one}`));
    if (wide > 0) found.push(`${kind}, ${address}: ${wide} px too wide`);
  }
  await close();
  expect(controls).toBeGreaterThan(400 / ONE_IN);
  expect(found).toEqual([]);
});

it('shows in each answer to a question of looks what it looks like, both in the first view', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto('/see/');
  const seen = await page.locator('a[data-answer] img').evaluateAll((pictures) =>
    pictures.map((picture) => {
      const { bottom, width } = picture.getBoundingClientRect();
      return { answer: picture.closest('a')?.dataset['answer'], bottom, width };
    }),
  );
  expect(seen.map(({ answer }) => answer)).toEqual(['yes', 'no']);
  for (const { bottom, width } of seen) {
    expect(bottom).toBeLessThan(PHONE.viewport.height);
    expect(width).toBeGreaterThan(120);
  }
  await close();
});

itAtLength('draws the edge of a tape where colors are forced', async () => {
  const { page, close } = await openPage({ ...PHONE, forcedColors: 'active' });
  await page.goto('/defects/lap-marks/cause/');
  const border = await page
    .locator('[data-answer=yes]')
    .evaluate((strip) => getComputedStyle(strip).borderTopWidth);
  expect(Number.parseFloat(border)).toBeGreaterThan(0);
  await close();
});

it('names the verdict first, then the reason, what not to do, and the way to when it is dry', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto('/defects/runs-and-sags/stage-setting/');
  const order = await page.locator('main').evaluate((main) => {
    const parts = [
      ...main.querySelectorAll('.verdict, .calm, .why, .not, .tape.strip, .again, .causes, .trail'),
    ];
    return parts.map((part) => part.className.split(' ')[0]);
  });
  expect(order).toEqual(['verdict', 'calm', 'not', 'tape', 'again', 'causes', 'trail']);
  // All that hands hang on is in the first view of a phone.
  const clock = await page.locator('.now .strip').boundingBox();
  expect((clock?.y ?? 0) + (clock?.height ?? 0)).toBeLessThan(PHONE.viewport.height);
  await close();
});

itAtLength(
  'prints a repair on two sheets at most once its stop is settled and the part is told',
  async () => {
    const { page, close } = await openPage();
    // With the part untold it holds the ways for every part.
    const facts = { age: { value: 'since-1993', how: 'told' }, part: { value: 'flat', how: 'told' } };
    await page.addInitScript(
      (kept) => localStorage.setItem('halfdry.case', kept),
      JSON.stringify({ version: 1, facts }),
    );
    await page.goto('/remedies/shave-the-run/');
    await page.locator('html:not([data-fit])').waitFor();
    await page.locator('[data-rule=is-there-old-paint-below]').first().waitFor({ state: 'hidden' });
    const margin = { top: '8mm', bottom: '8mm', left: '8mm', right: '8mm' };
    expect(sheetsOf(await page.pdf({ format: 'A4', margin }))).toBeLessThanOrEqual(2);
    await close();
  },
);

itAtLength('prints a flaw on one sheet, and gives the longest tree a sheet of its own', async () => {
  const { page, close } = await openPage();
  const sheets = async (address: string) => {
    await page.goto(address);
    return sheetsOf(await page.pdf({ format: 'Letter' }));
  };
  expect(await sheets('/defects/runs-and-sags/')).toBe(1);
  expect(await sheets('/defects/sanding-scratches/')).toBe(1);
  expect(await sheets('/defects/white-rings/')).toBe(1);
  expect(await sheets('/defects/cloudy-film/')).toBe(2);
  // Front and back: on one sheet its cautions were set in 7.5 pt.
  expect(await sheets('/safety/')).toBe(2);
  expect(await sheets('/learn/')).toBe(1);
  await close();
});

/** No page takes more stops than that; a field for a date takes several. */
const MOST_STOPS = 400;

/** WCAG 2.2, 2.1.1, 2.4.7 and 2.4.11: each control is reached by Tab, seen, and shown to be the one. */
it.runIf(THOROUGH)('reaches every control by Tab, and shows where it is', async () => {
  const { page, close } = await openPage({ viewport: { width: 390, height: 844 } });
  const found: string[] = [];
  for (const { kind, address } of onePerKind()) {
    await page.goto(address);
    await atRest(page);
    const all = await page.evaluate(() => {
      const w = window as unknown as { stops: Set<Element>; faults: string[]; round: boolean };
      w.stops = new Set();
      w.faults = [];
      w.round = false;
      const look = (element: Element) => {
        const { outlineStyle, outlineWidth, boxShadow, borderColor, backgroundColor } =
          getComputedStyle(element);
        return [outlineStyle === 'none' ? '' : outlineWidth, boxShadow, borderColor, backgroundColor].join();
      };
      /** A choice is drawn by the words beside its button. */
      const drawn = (element: Element) =>
        (element.matches('.pick input') && element.nextElementSibling) || element;
      const name = (element: Element) => element.outerHTML.slice(0, 90);
      const tabbable = [
        ...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]'),
      ].filter(
        (element) =>
          element.checkVisibility({ visibilityProperty: true }) &&
          !element.matches(':disabled, [tabindex="-1"]') &&
          !(element.matches('[type=radio]:not(:checked)') && element.closest('form, fieldset')),
      );
      const before = new Map(tabbable.map((element) => [element, look(drawn(element))]));
      addEventListener('focusin', ({ target }) => {
        const element = target as Element;
        if (w.stops.has(element)) w.round = true;
        if (w.round) return;
        w.stops.add(element);
        const shown = drawn(element);
        if (before.get(element) === look(shown)) w.faults.push(`looks the same in focus: ${name(element)}`);
        // The browser may still be scrolling to it.
        requestAnimationFrame(() => {
          if (document.activeElement !== element) return;
          const box = shown.getClientRects()[0] ?? shown.getBoundingClientRect();
          const x = Math.min(innerWidth - 1, Math.max(0, box.x + box.width / 2));
          const top = document.elementFromPoint(x, box.y + box.height / 2);
          if (box.bottom < 0 || box.top > innerHeight) w.faults.push(`out of view: ${name(element)}`);
          else if (top && !shown.contains(top) && !top.contains(shown) && top !== element)
            w.faults.push(`covered by ${name(top)}: ${name(element)}`);
        });
      });
      (window as unknown as { tabbable: Element[] }).tabbable = tabbable;
      return tabbable.length;
    });
    expect(all, kind).toBeGreaterThan(3);
    const round = () => page.evaluate(() => (window as unknown as { round: boolean }).round);
    for (let stop = 0; stop < MOST_STOPS && !(stop > all && (await round())); stop++)
      await page.keyboard.press('Tab');
    const faults = await page.evaluate(() => {
      const w = window as unknown as { stops: Set<Element>; faults: string[]; tabbable: Element[] };
      const missed = w.tabbable.filter((element) => !w.stops.has(element));
      return [...w.faults, ...missed.map((element) => `not reached: ${element.outerHTML.slice(0, 90)}`)];
    });
    found.push(...faults.map((fault) => `${kind}: ${fault}`));
  }
  await close();
  expect(found).toEqual([]);
});

/** The largest trees there are. */
const widest = () =>
  builtPages()
    .filter(({ address, html }) => /^\/defects\/[^/]+\/$/.test(address) && html.includes('<hd-tree'))
    .map(({ address, html }) => ({ address, branches: html.split('data-said=').length }))
    .sort((one, two) => two.branches - one.branches)
    .slice(0, 2);

it.each(someOf(1, [320, 1280]))('draws every branch of a tree within the page, at %i px', async (width) => {
  const { page, close } = await openPage({ viewport: { width, height: 900 } });
  for (const { address } of widest()) {
    await page.goto(address);
    await page.locator('.tree > summary').click();
    const branches = page.locator('hd-tree li');
    await expect.poll(() => branches.count()).toBeGreaterThan(20);
    const outside = () =>
      branches.evaluateAll((all) =>
        all
          .filter((one) => {
            const { left, right, width: wide } = one.getBoundingClientRect();
            return left < 0 || right > innerWidth || wide < 100;
          })
          .map((one) => one.textContent),
      );
    await expect.poll(outside, { message: address }).toEqual([]);
  }
  await close();
});

itAtLength('marks on the tree the way that her answers took', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto('/defects/lap-marks/cause/');
  const asked = await page.locator('[data-question]').getAttribute('data-question');
  await page.locator('[data-answer=no]').tap();
  await page.waitForURL((url) => url.pathname !== '/defects/lap-marks/cause/');
  await page.goto('/defects/lap-marks/');
  const taken = page.locator('hd-tree li.taken');
  await expect.poll(() => taken.evaluateAll((all) => all.map((one) => one.dataset['said']))).toEqual(['no']);
  await expect.poll(() => page.locator('hd-tree ul').first().getAttribute('data-ask')).toBe(asked);
  await close();
});
