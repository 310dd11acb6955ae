/** Parts that are coated on both faces, in a real browser. */
import { describe, expect, it } from 'vitest';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';
import { sheetsOf } from './paper.ts';
import { change, open, PAGE, verdict } from './plan-page.ts';

withoutPictures();

describe('both faces', () => {
  /** Fourteen doors in cm, and nothing else; where a test names no faces, as such a link was before they were asked. */
  const DOORS =
    '#units=metric&preset=cabinet&piece=Doors&top-count=0&side-count=0&leg-count=0&front-count=14&front-long=60&front-wide=40' +
    '&base=latex-paint&base-age=48&tone=dark&age=none&wear=normal&product=water-based-polyurethane&sheen=satin&tool=brush' +
    '&air=23&humidity=50&night=20&start=2027-03-08T09:00&from=09:00&to=18:00&days=0,1,2,3,4,5,6';

  it('are asked of what comes off alone, stand in the address, and are told step by step', async () => {
    const opened = await openPage(PHONE);
    const { page } = opened;
    await page.goto(PAGE + DOORS);
    await page.locator('.plan .verdict').waitFor();
    // An address from before means one face still.
    const alone = await verdict(page);
    expect(alone).toMatch(/^3 coats, hand over /);
    expect(await page.locator('.plan').innerText()).not.toMatch(/Back:|Turn it/);
    await change(page);
    await open(page, 'piece');
    const fronts = page.locator('[data-part=both]').getByLabel('Drawer fronts, doors');
    await expect.poll(() => fronts.isVisible()).toBe(true);
    await expect.poll(() => page.getByLabel('Loose tops').isVisible()).toBe(false);
    await expect.poll(() => page.getByLabel('Turn it').isVisible()).toBe(false);
    await fronts.check();
    await expect.poll(() => page.getByLabel('Turn it').isVisible()).toBe(true);
    await expect
      .poll(() => page.locator('summary[data-part=piece]').textContent())
      .toMatch(/Both faces of doors and fronts\.$/);
    await page.getByRole('button', { name: 'Plan it' }).click();
    await expect.poll(() => verdict(page)).toMatch(/^3 coats on each face, hand over /);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    const titles = await page.locator('.plan .steps li > b:first-child').allTextContents();
    const laid = titles.filter((title) => /coat \d of|^Turn it/.test(title));
    expect(laid).toEqual([
      'Back: coat 1 of 3',
      ...[1, 2].flatMap((coat) => [
        'Turn it, front up',
        `Front: coat ${coat} of 3`,
        'Turn it, back up',
        `Back: coat ${coat + 1} of 3`,
      ]),
      'Turn it, front up',
      'Front: coat 3 of 3',
    ]);
    await expect
      .poll(() => page.locator('.plan svg.line .on').allTextContents())
      .toEqual(['B', 'F', 'B', 'F', 'B', 'F']);
    await expect.poll(() => new URL(page.url()).hash).toMatch(/&both=front&.*&turned=each-coat&/);
    // What is shared is what another reads.
    const again = await openPage();
    await again.page.goto(PAGE + new URL(page.url()).hash);
    await again.page.locator('.plan .verdict').waitFor();
    await expect
      .poll(() => again.page.locator('.plan .days').textContent())
      .toBe(await page.locator('.plan .days').textContent());
    expect(sheetsOf(await again.page.pdf({ format: 'Letter' }))).toBeLessThanOrEqual(2);
    // Unticked it is the plan of one face again, and its address tells nothing of a turning.
    await change(page);
    await fronts.uncheck();
    await page.getByRole('button', { name: 'Plan it' }).click();
    await expect.poll(() => verdict(page)).toBe(alone);
    await expect.poll(() => page.url()).not.toMatch(/both=|turned=/);
    expectQuiet(opened);
    expectQuiet(again);
    await opened.close();
    await again.close();
  });

  it('turned once have all coats of the back first; a turning that nobody knows is told of', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(`${PAGE}${DOORS}&both=front&turned=each-face`);
    await page.locator('.plan .verdict').waitFor();
    const coats = await page.locator('.plan .steps li.coat > b').allTextContents();
    expect(coats.map((title) => title.slice(0, 5))).toEqual([
      'Back:',
      'Back:',
      'Back:',
      'Front',
      'Front',
      'Front',
    ]);
    expect(await page.locator('.plan .steps li.turn').count()).toBe(1);
    await page.goto('about:blank');
    await page.goto(`${PAGE}${DOORS}&both=front&turned=sideways`);
    await page.locator('#plan-turned-fault').getByText('not known').waitFor();
    expect(await page.locator('.plan').isHidden()).toBe(true);
    expectQuiet(opened);
    await opened.close();
  });

  it('go along to the card, which says of which face its coats are', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(`${PAGE}${DOORS}&both=front&turned=each-coat`);
    await page.locator('.plan .verdict').waitFor();
    await page.getByRole('button', { name: 'Make a job card' }).click();
    await page.waitForURL(/\/jobs\//);
    await expect
      .poll(() =>
        page
          .locator('main')
          .evaluate(
            (main) =>
              main.textContent + [...main.querySelectorAll('textarea')].map(({ value }) => value).join(),
          ),
      )
      .toContain('Note the coats of the front here, and not those of the back');
    expectQuiet(opened);
    await opened.close();
  });
});
