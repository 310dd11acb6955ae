/** Practice on a phone: one tap answers, keys alone, nothing told by a picture too early; a class by link; paper without script. */
import { expect, it } from 'vitest';
import { readPractice } from '../../content/tools/practice.ts';
import { renderBoard } from '../../engine/board/render.ts';
import { dealPractice } from '../../engine/practice.ts';
import { known } from '../content/real/knowledge.ts';
import { itAtLength } from '../thorough.ts';
import { expectQuiet, openPage, PHONE } from './browser.ts';
import { sheetsOf } from './paper.ts';

const words = readPractice(known, process.cwd());
const SET = [
  { level: 'case', flaw: 'cloudy-film', seed: 4711 },
  { level: 'look', flaw: 'bubbles', seed: 12 },
] as const;
const LINK = `/learn/practice/#class=Tuesday&boards=${SET.map(({ level, flaw, seed }) => `${level}.${flaw}.${seed}`).join('_')}`;

it('has the next board above the strip of a running coat, and first for keys', async () => {
  const { page, close } = await openPage({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' });
  await page.goto('/clock/');
  await page.getByRole('button', { name: 'Coat laid' }).click();
  await page.locator('.on-clock').first().waitFor();
  await page.goto('/learn/practice/');
  await page.locator('hd-clock .tape').waitFor();
  await page.locator('.asked button').first().click();
  const next = page.getByRole('button', { name: 'Next board' });
  await next.waitFor();
  const onTop = () =>
    next.evaluate((button) => {
      const { left, top, width, height } = button.getBoundingClientRect();
      return [0.1, 0.9].every((share) =>
        button.contains(document.elementFromPoint(left + width / 2, top + height * share)),
      );
    });
  await expect.poll(onTop).toBe(true);
  // From what is said of the answer, which has the focus.
  await page.locator('.judged').focus();
  await page.keyboard.press('Tab');
  await expect.poll(() => next.evaluate((button) => button === document.activeElement)).toBe(true);
  await close();
});

it('judges at once, shows what decides, and keeps what was missed', async () => {
  const opened = await openPage({ ...PHONE, reducedMotion: 'reduce' });
  const { page } = opened;
  await page.goto('/learn/practice/');
  const first = page.locator('.asked').first();
  await first.getByRole('button').first().waitFor();
  const name = (await page.locator('.item canvas').first().getAttribute('aria-label')) ?? '';
  expect(name).toMatch(/^(Wet|Dry) board over .*mm wide, in low light/);
  expect(known.defects.some((flaw) => name.includes(flaw.name))).toBe(false);
  // By keys alone: the answers are buttons, and what is said of one has the focus after it.
  await first.getByRole('button').first().focus();
  await page.keyboard.press('Enter');
  await page.locator('.judged').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('judged');
  await page.getByRole('heading', { name: 'What decides' }).waitFor();
  await expect.poll(() => page.locator('.beside canvas').count()).toBe(2);
  // What decides is read with the next board under the thumb.
  await page.locator('.decides').evaluate((part) => part.scrollIntoView());
  const onward = await page.getByRole('button', { name: 'Next board' }).boundingBox();
  expect((onward?.y ?? 0) + (onward?.height ?? 0)).toBeLessThanOrEqual(PHONE.viewport.height);
  // The board is dealt at random: where little is said of it, the page ends above the thumb.
  expect(onward?.y).toBeGreaterThan(PHONE.viewport.height / 3);
  await page.getByRole('button', { name: 'Next board' }).press('Enter');
  await page.getByText(/^1 boards? so far/).waitFor();
  // The button is gone: who hears the page or works by keys goes on at the new board, which is in view.
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
    .toBe('A new board');
  await expect
    .poll(() =>
      page
        .locator('.item canvas')
        .first()
        .evaluate((board) => board.getBoundingClientRect().top),
    )
    .toBeGreaterThanOrEqual(0);
  // By keys the light turns: another picture, said in words, and still no word of what is on it.
  const lit = page.locator('.item canvas').first();
  const said = await lit.getAttribute('aria-label');
  await page.keyboard.press('Tab');
  await page.keyboard.press('End');
  await expect
    .poll(() => lit.getAttribute('aria-label'))
    .toBe(said?.replace('low light from the side', 'light facing you'));
  const kept = () => page.evaluate(() => localStorage.getItem('halfdry.practice'));
  await expect
    .poll(async () => JSON.parse((await kept()) ?? '{}'))
    .toMatchObject({ kind: 'halfdry-practice', version: 1, boards: 1 });
  // A link of which nothing is left says so, and does not pass for practice alone.
  await page.evaluate(() => {
    location.hash = 'class=Tuesday&boards=look.bub';
  });
  await page.getByText('This link holds no board that can be shown.').waitFor();
  expectQuiet(opened);
  await opened.close();
});

itAtLength(
  'gives everybody of a class the same boards, as reckoned here, and a line to send back',
  async () => {
    const opened = await openPage(PHONE);
    const { page } = opened;
    await page.goto(LINK);
    await page.getByRole('heading', { name: 'Tuesday' }).waitFor();
    for (const key of SET) {
      const item = dealPractice(known, words, key);
      for (const [index, { ask, choices }] of item.asks.entries()) {
        const asked = page.locator('.asked').nth(index);
        await asked.getByRole('heading', { name: ask }).waitFor();
        await expect
          .poll(() => asked.locator('button b').allTextContents())
          .toEqual(choices.map(({ says }) => says));
        if (index === 0) {
          // The very pixels: drawn there and here by the same renderer.
          const there = await page
            .locator('.item .look canvas[data-drawn]')
            .evaluate((canvas: HTMLCanvasElement) => {
              const data =
                canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
              return { width: canvas.width, height: canvas.height, data: Array.from(data) };
            });
          const here = renderBoard(item.board, {
            light: 'raking',
            width: there.width,
            height: there.height,
            scaleBar: true,
          });
          const off = there.data.filter((value, at) => Math.abs(value - (here.data[at] ?? -9)) > 1).length;
          expect(off / there.data.length, item.id).toBeLessThan(0.001);
        }
        const right = choices.find((one) => one.right)?.says ?? '';
        await asked.getByRole('button', { name: right, exact: true }).click();
      }
      await page.locator('.onward .go').click();
      // The board before has gone with it.
      await page.locator('.onward .go').waitFor({ state: 'detached' });
    }
    await page.getByRole('heading', { name: '2 of 2 right at once' }).waitFor();
    const line = 'Halfdry results | Tuesday | Ann | 2/2 | + +';
    await page.getByLabel(/Your name/).fill('Ann');
    await page.getByText(line, { exact: true }).waitFor();
    await page.getByText('For the teacher').click();
    await page.getByLabel(/Paste them/).fill(`${line}\nHalfdry results | Tuesday | Bo | 1/2 | pools +`);
    await page.getByRole('cell', { name: '1 of 2' }).waitFor();
    expectQuiet(opened);
    await opened.close();
  },
);

it('is a sheet on paper without script, with the answers behind', async () => {
  const plain = await openPage({ javaScriptEnabled: false });
  await plain.page.goto('/learn/practice/');
  await plain.page.getByRole('link', { name: /sheet of boards/ }).click();
  await plain.page.waitForURL('**/learn/practice/sheet/');
  expect(await plain.page.locator('.tiles > li').count()).toBe(9);
  const alts = await plain.page
    .locator('.tiles img')
    .evaluateAll((all) => all.map((one) => one.getAttribute('alt')));
  expect(alts.every((alt) => /^Practice board \d/.test(alt ?? ''))).toBe(true);
  await plain.page.getByRole('heading', { name: 'The answers' }).waitFor();
  await plain.close();
});

itAtLength.each([
  ['its own letters', false],
  ['the letters of the machine', true],
])('prints the card for the wall, the key and the boards on one page each, in %s', async (_, without) => {
  const { page, close } = await openPage();
  if (without) await page.route(/\.woff2$/, (route) => route.abort());
  for (const name of ['wall-card', 'sign-key', 'board-sheet']) {
    await page.goto(`/learn/${name}/`);
    for (const format of ['A4', 'Letter'])
      expect(sheetsOf(await page.pdf({ format })), `${name} ${format}`).toBe(1);
  }
  await close();
});

it('says what is wrong with a number of boards, and keeps the set in the address', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto('/learn/practice/');
  await page.getByText('For a class: make a set by link').click();
  const size = page.getByLabel('How many boards');
  for (const [typed, says] of [
    ['0', 'A set has 1 to 40 boards.'],
    // After another fault, so that what is said is of this number and not of the one before.
    ['1.5', 'Give a whole number of boards.'],
    ['1000', 'A set has 1 to 40 boards.'],
  ] as const) {
    await size.fill(typed);
    await page.getByRole('button', { name: 'Make the set' }).click();
    await expect.poll(() => page.locator('#set-size-fault').textContent()).toBe(says);
    await expect.poll(() => size.inputValue()).toBe(typed);
    expect(await page.locator('.made').count()).toBe(0);
  }
  await size.fill('6');
  await page.getByLabel('Title').fill('Tuesday');
  await page.getByLabel('Level').selectOption('stage');
  await page.getByText('Of which flaws?').click();
  for (const flaw of ['Bubbles in the coat', 'Runs and sags'])
    await page.getByLabel(flaw, { exact: true }).check();
  await page.getByRole('button', { name: 'Make the set' }).click();
  const link = (await page.locator('.made .post').textContent()) ?? '';
  expect(link.match(/stage\.(bubbles|runs-and-sags)\.\d+/g)?.length).toBe(6);
  await page.getByRole('link', { name: 'Show it on a big screen' }).click();
  await page.locator('.stage .acts').waitFor();
  await page.goBack();
  await expect.poll(() => page.locator('.made .post').textContent()).toBe(link);
  await expect.poll(() => page.getByLabel('Title').inputValue()).toBe('Tuesday');
  await expect.poll(() => page.getByLabel('Level').inputValue()).toBe('stage');
  await expect.poll(() => size.inputValue()).toBe('6');
  await expect.poll(() => page.locator('.which-flaws summary').textContent()).toContain('Of 2 flaws alone');
  for (const flaw of ['Bubbles in the coat', 'Runs and sags'])
    expect(await page.getByLabel(flaw, { exact: true }).isChecked()).toBe(true);
  expectQuiet(opened);
  await opened.close();
});

it('has all of the big screen within 320 px, with type twice as large', async () => {
  const { page, close } = await openPage({ viewport: { width: 320, height: 640 } });
  await page.goto('/learn/show/#flaw=bubbles');
  await page.locator('.stage .acts').waitFor();
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await page.getByRole('button', { name: 'Show the answer' }).click();
  await page.getByRole('button', { name: 'Hide the answer' }).waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  await close();
});
