/**
 * What pictures may cost: few bytes above the fold, nothing that moves under the thumb, and no word on them that is
 * hard to read.
 */
import { statSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import type { BrowserContextOptions, Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { atRest, movedOn } from './at-rest.ts';
import { openPage } from './browser.ts';
import { builtPages } from './built.ts';
import { onePerKind } from './kinds.ts';

const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 900 };
const MOST_BYTES = 60_000;
/** What lies below the fold may come with them. */
const MOST_AHEAD = 90_000;
const MOST_SHIFT = 0.01;
/** A phone shows two pictures side by side, and at most two such pairs at once. */
const IN_VIEW = 4;
/** So many of the heaviest pages are also weighed in the browser. */
const HEAVIEST = 4;

const sheets = builtPages().filter(({ address }) => /^\/defects\/[^/]+\/$/.test(address));
const bytesOf = (image: string) => statSync(`dist${image}`).size;

const weigh = ({ address, html }: (typeof sheets)[number]) => {
  const images = [...html.matchAll(/<img[^>]*\ssrc="([^"]+)"/g)].map(([, src = '']) => bytesOf(src));
  const sum = (some: readonly number[]) => some.reduce((total, bytes) => total + bytes, 0);
  return { address, count: images.length, first: sum(images.slice(0, IN_VIEW)), all: sum(images) };
};

it('has light pictures on every flaw', () => {
  const weights = sheets.map(weigh);
  expect(weights.length).toBeGreaterThanOrEqual(60);
  expect(weights.filter(({ count }) => count < 2)).toEqual([]);
  expect(weights.filter(({ first }) => first > MOST_BYTES)).toEqual([]);
});

it('loads few pictures before she scrolls', async () => {
  const { page, close } = await openPage({ viewport: PHONE, isMobile: true });
  const heaviest = sheets.map(weigh).sort((one, two) => two.all - one.all);
  for (const { address } of heaviest.slice(0, HEAVIEST)) {
    await page.goto(address, { waitUntil: 'networkidle' });
    const { shown, loaded } = await page.evaluate(() => {
      const weight = new Map(
        (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
          .filter(({ name }) => name.endsWith('.webp'))
          .map(({ name, encodedBodySize }) => [name, encodedBodySize]),
      );
      const sum = (some: Iterable<number>) => [...some].reduce((total, bytes) => total + bytes, 0);
      const inView = [...document.images].filter((image) => image.getBoundingClientRect().top < innerHeight);
      return { shown: sum(inView.map(({ src }) => weight.get(src) ?? 0)), loaded: sum(weight.values()) };
    });
    expect(loaded, address).toBeGreaterThan(0);
    expect(shown, address).toBeLessThanOrEqual(MOST_BYTES);
    expect(loaded, address).toBeLessThanOrEqual(MOST_AHEAD);
  }
  await close();
});

/** Lays a coat, so that its strip is on every page; what the browser then keeps. */
const withCoat = async () => {
  const { page, close } = await openPage({ viewport: PHONE });
  await page.goto('/clock/');
  await page.locator('.go').click();
  await page.locator('.on-clock .verdict').first().waitFor();
  const state = await page.context().storageState({ indexedDB: true });
  await close();
  return state;
};

/** A link of which only a part still leads anywhere: what it still carries is offered late, by script. */
const STALE = '/defects/lap-marks/gone-question-yes/';

/** A verdict to which a wet coat on the clock adds its time. */
const WET = '/defects/cloudy-film/stage-wet/';

/** A walk of four answers that came by a link: whose they are, and a button to start anew, come by script. */
const SENT =
  '/defects/blush/lines-follow-sanding-no/dry-over-a-day-yes/after-something-wet-no/feels-like-sandpaper-yes/';

const shifts = async (options: BrowserContextOptions): Promise<string[]> => {
  const { page, close } = await openPage(options);
  const found: string[] = [];
  const pages = [
    ...onePerKind(),
    { kind: 'stale', address: STALE },
    { kind: 'by the clock', address: WET },
    { kind: 'sent', address: SENT },
  ];
  for (const { kind, address } of pages) {
    // With a coat on the clock the page before may just be going on by itself, and this one then as well.
    const go = () => page.goto(address);
    await go().catch(go).catch(go);
    // On a wide page of the clock itself the strip is there, and hidden.
    if (options.storageState)
      await page.locator('hd-clock .tape, .first .in-band').waitFor({ state: 'attached' });
    if (kind === 'stale') await page.locator('hd-lost a').waitFor();
    const measure = async () => {
      await atRest(page);
      return movedOn(page);
    };
    // A coat on the clock knows the stage, so that some pages lead on at once: then the next one is measured.
    const moved = await measure().catch(measure).catch(measure);
    if (moved.score > MOST_SHIFT) found.push(`${kind} ${address} ${moved.score.toFixed(3)} ${moved.what}`);
  }
  await close();
  return found;
};

it.each([
  ['a phone', PHONE],
  ['a desk', DESK],
] as const)('moves nothing after it is shown, on %s', async (_what, viewport) => {
  const storageState = await withCoat();
  expect(await Promise.all([shifts({ viewport }), shifts({ viewport, storageState })])).toEqual([[], []]);
});

type Written = { words: string; rgb: number[]; boxes: { x: number; y: number; w: number; h: number }[] };

/** Every piece of text with its color, of which the fourth part is its opacity; then hides it. */
const takeText = (page: Page): Promise<Written[]> =>
  page.evaluate(async () => {
    const images = [...document.images].slice(0, 8);
    for (const image of images) image.loading = 'eager';
    await Promise.all(images.map((image) => image.decode().catch(() => undefined)));
    const rules = new CSSStyleSheet();
    rules.replaceSync('hd-question, hd-seen, .lay > .go { position: static !important }');
    document.adoptedStyleSheets = [rules];
    const written: Written[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const owner = text.parentElement;
      if (!text.textContent?.trim() || !owner?.checkVisibility({ visibilityProperty: true })) continue;
      if (owner.closest('.unseen, .skip, select, script, style')) continue;
      const style = getComputedStyle(owner);
      const color = owner.closest('svg') ? style.fill : style.color;
      const [r = 0, g = 0, b = 0, a = 1] = (color.match(/[\d.]+/g) ?? []).map(Number);
      let opacity = a;
      for (let at: Element | null = owner; at; at = at.parentElement)
        opacity *= Number(getComputedStyle(at).opacity);
      const range = document.createRange();
      range.selectNodeContents(text);
      const boxes = [...range.getClientRects()].map((box) => ({
        x: Math.ceil(box.x + scrollX),
        y: Math.ceil(box.y + scrollY),
        w: Math.floor(box.width),
        h: Math.floor(box.height),
      }));
      written.push({ words: text.textContent.trim().slice(0, 40), rgb: [r, g, b, opacity], boxes });
    }
    rules.replaceSync(`
      hd-question, hd-seen, .lay > .go { position: static !important }
      *, ::before, ::after, ::placeholder, svg text {
        color: transparent !important; fill: transparent !important; text-decoration: none !important;
      }
    `);
    return written;
  });

/** sRGB byte to linear light (WCAG 2.2, relative luminance). */
const LINEAR = Array.from({ length: 256 }, (_, byte) => {
  const share = byte / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
});
const linear = (byte: number): number => LINEAR[Math.round(byte)] ?? 0;
const luminance = (r: number, g: number, b: number): number =>
  0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);

const LEAST_CONTRAST = 4.5;
/** A line or the edge of a tape may run through the box of a word; that share of it does not count. */
const EDGES = 0.05;
/** Every third pixel is enough to find it. */
const STEP = 3;

/** So often a page may still change while it is looked at. */
const MOST_LOOKS = 5;

/** The text of a page and its picture without it, both of one moment: what comes late or moves is looked at anew. */
const unchanged = async (page: Page): Promise<{ written: Written[]; shot: Buffer }> => {
  let written = await takeText(page);
  for (let looks = 0; looks < MOST_LOOKS; looks++) {
    const shot = await page.screenshot({ fullPage: true, animations: 'disabled' });
    const after = await takeText(page);
    if (isDeepStrictEqual(written, after)) return { written, shot };
    written = after;
  }
  throw new Error(`${page.url()} does not come to rest`);
};

const poor = async (page: Page): Promise<string[]> => {
  const { written, shot } = await unchanged(page);
  const { data, info } = await sharp(shot).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return written.flatMap(({ words, rgb: [r = 0, g = 0, b = 0, opacity = 1], boxes }) => {
    const contrasts: number[] = [];
    for (const { x, y, w, h } of boxes)
      for (let row = Math.max(0, y); row < Math.min(info.height, y + h); row += STEP)
        for (let column = Math.max(0, x); column < Math.min(info.width, x + w); column += STEP) {
          const at = (row * info.width + column) * 3;
          const [under = 0, green = 0, blue = 0] = data.subarray(at, at + 3);
          const mix = (ink: number, paper: number) => ink * opacity + paper * (1 - opacity);
          const ink = luminance(mix(r, under), mix(g, green), mix(b, blue));
          const paper = luminance(under, green, blue);
          contrasts.push((Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05));
        }
    const worst = contrasts.sort((one, two) => one - two)[Math.floor(contrasts.length * EDGES)] ?? 21;
    return worst < LEAST_CONTRAST ? [`“${words}” ${worst.toFixed(2)}`] : [];
  });
};

it('writes so that it can be read on boards, tape and paper, in light and in dark', async () => {
  const found = await Promise.all(
    (['light', 'dark'] as const).map(async (colorScheme) => {
      const { page, close } = await openPage({ viewport: PHONE, colorScheme });
      const poorly: string[] = [];
      for (const { kind, address } of onePerKind()) {
        await page.goto(address);
        poorly.push(...(await poor(page)).map((one) => `${kind}, ${colorScheme}: ${one}`));
      }
      await close();
      return poorly;
    }),
  );
  expect(found.flat()).toEqual([]);
});
