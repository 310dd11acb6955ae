/** Sheets of paper, in a real browser: nothing lies over anything else, and what belongs together is on one sheet. */
import { expect, it } from 'vitest';
import { qrPath } from '../../site/shared/qr.ts';
import { someOf } from '../thorough.ts';
import { openPage } from './browser.ts';
import { builtPages } from './built.ts';
import { sheetsOf } from './paper.ts';

const addressesOf = (shape: RegExp): readonly string[] =>
  builtPages()
    .map(({ address }) => address)
    .filter((address) => shape.test(address));

/** US Letter within the margins of a repair, in CSS pixels. */
const LETTER = { viewport: { width: 748, height: 1009 } } as const;

/** Words that a picture, or the code, lies over: no word of its own. */
const coveredWords = (main: Element): readonly string[] => {
  const pictures = [...main.querySelectorAll('figure')].filter(
    (figure) => figure.getBoundingClientRect().height > 0,
  );
  const covered = new Set<string>();
  const texts = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode;
    const range = document.createRange();
    range.selectNodeContents(text);
    for (const line of range.getClientRects())
      for (const figure of pictures) {
        const box = figure.getBoundingClientRect();
        const over =
          line.width > 0 &&
          line.left < box.right - 2 &&
          line.right > box.left + 2 &&
          line.top < box.bottom - 2 &&
          line.bottom > box.top + 2;
        if (over && !figure.contains(text)) covered.add((text.textContent ?? '').trim());
      }
  }
  return [...covered];
};

it('lays no picture over the words of a repair on paper', async () => {
  const { page, close } = await openPage(LETTER);
  await page.emulateMedia({ media: 'print' });
  const covered: string[] = [];
  // The short run has one with a single picture, which was the tallest, and a few of all.
  const all = addressesOf(/^\/remedies\/[^/]+\/$/);
  expect(all.length).toBeGreaterThan(100);
  for (const address of new Set(['/remedies/let-it-flow-out/', ...someOf(6, all)])) {
    await page.goto(address);
    const words = await page.locator('main').evaluate(coveredWords);
    covered.push(...words.map((word) => `${address}: ${word}`));
  }
  await close();
  expect(covered).toEqual([]);
});

it('prints what a coat of this stage needs, picture and all, on one sheet', async () => {
  const { page, close } = await openPage();
  const long: string[] = [];
  // These have the most to say.
  const all = addressesOf(/^\/defects\/[^/]+\/stage-(wet|dry-to-touch)\/$/);
  const told = [
    ...['tannin-bleed', 'sticky-oil', 'blush'].map((id) => `/defects/${id}/stage-wet/`),
    '/defects/old-shellac/stage-dry-to-touch/',
  ];
  for (const address of new Set([...told, ...someOf(2, all)])) {
    await page.goto(address);
    if (await page.locator('.procedure').count()) continue;
    const sheets = sheetsOf(await page.pdf({ format: 'Letter' }));
    if (sheets !== 1) long.push(`${address}: ${sheets}`);
  }
  await close();
  expect(long).toEqual([]);
});

it('names the sheet of boards where a page draws its boards for a screen, and prints nothing else of it', async () => {
  const { page, close } = await openPage(LETTER);
  for (const address of ['/learn/practice/', '/learn/show/']) {
    await page.goto(address);
    await page.locator('[data-part=before-script]').waitFor({ state: 'detached' });
    await page.emulateMedia({ media: 'print' });
    const words = (await page.locator('main').innerText()).replaceAll(/\s+/g, ' ');
    expect(words).toMatch(/ there is a sheet of nine boards, .*\/learn\/practice\/sheet/);
    expect(await page.locator('main :is(input, select, button, canvas):visible').count()).toBe(0);
    await page.locator('main .qr').waitFor();
    await page.emulateMedia({ media: 'screen' });
    expect(await page.locator('main .qr').isVisible()).toBe(false);
  }
  await close();
});

it('prints a set for a class itself, once each of its boards is drawn, and not where a sheet of boards is', async () => {
  const { page, close } = await openPage();
  await page.addInitScript(() => {
    window.print = () => {
      const boards = document.querySelectorAll('.paper canvas');
      const drawn = document.querySelectorAll('.paper canvas[data-drawn]');
      document.documentElement.dataset['printed'] = `${drawn.length} of ${boards.length}`;
    };
  });
  await page.goto('/learn/practice/');
  await page.getByText('For a class: make a set by link').click();
  await page.getByLabel('How many boards').fill('3');
  await page.getByRole('button', { name: 'Make the set' }).click();
  await page.getByRole('link', { name: 'Open the set' }).click();
  await page.getByRole('button', { name: 'Print the set' }).click();
  await page.locator('html[data-printed]').waitFor();
  expect(await page.locator('html').getAttribute('data-printed')).toBe('6 of 6');
  await page.emulateMedia({ media: 'print' });
  // Each once with its choices, and once with its answer.
  for (const list of ['.on-paper', '.of-answers'])
    expect(await page.locator(`${list} canvas`).filter({ visible: true }).count()).toBe(3);
  expect(await page.locator('main > .for-paper').isVisible()).toBe(false);
  expect(await page.getByRole('heading', { name: 'the answers' }).isVisible()).toBe(true);
  // The code on it leads back to this very set, on the host that the site was built for.
  const code = page.locator('[data-part=leads-back] svg path');
  const { hash } = new URL(page.url());
  expect(hash).toContain('boards=');
  expect(await code.getAttribute('d')).toBe(qrPath(`https://halfdry.example/learn/practice/${hash}`).path);
  await close();
});

it('prints of a story her words once, and what was understood of them', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto('/tell/#say=milky+poly+over+navy%2C+still+wet');
  await page.locator('.understood .verdict').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.told-line').filter({ visible: true }).count()).toBe(1);
  const understood = page.locator('.heard li').filter({ visible: true });
  expect(await understood.count()).toBeGreaterThan(2);
  const says = (await understood.allInnerTexts()).join(' ');
  expect(says).toContain('navy');
  expect(says).not.toContain('not so');
  await close();
});

it('prints of a check what each of its answers would mean', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto('/defects/tannin-bleed/stage-wet/');
  await page.emulateMedia({ media: 'print' });
  const answers = page.locator('.sure > .strips > li').filter({ visible: true });
  expect((await answers.allInnerTexts()).map((text) => text.slice(0, 3))).toEqual(['Yes', 'No.']);
  await close();
});

it('prints of a rule what to do and why, and of the list of rules what to do', async () => {
  const { page, close } = await openPage(LETTER);
  await page.emulateMedia({ media: 'print' });
  await page.goto('/safety/sanding-dust/');
  const links = page.locator('.grounds .links, .rule ~ .links');
  expect(await links.filter({ visible: true }).count()).toBe(0);
  await page.goto('/safety/');
  const rule = page.locator('.index dd').first();
  expect(await rule.locator('b').isVisible()).toBe(true);
  expect(await rule.locator('span').isVisible()).toBe(false);
  await close();
});
