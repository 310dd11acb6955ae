/** The finishing schedule in a real browser: plan, link, print, files, faults, and the tables without script. */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { itAtLength } from '../thorough.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';
import { sheetsOf } from './paper.ts';
import { AGE, change, open, openWeather, PAGE, plan, verdict } from './plan-page.ts';

withoutPictures();

describe('a dresser', () => {
  it('is planned, read back from its link, and says why each number is so', async () => {
    const opened = await openPage(PHONE);
    const { page } = opened;
    await page.goto(PAGE);
    await open(page, 'piece');
    await page.getByLabel('Its name').fill('Navy dresser');
    await openWeather(page);
    await page.getByLabel('Start, if not now').fill('2027-03-08T09:00');
    await plan(page);
    await expect.poll(() => verdict(page)).toMatch(/^3 coats, hand over /);
    const told = await page.locator('.plan').innerText();
    for (const part of [
      'Area',
      'Buy',
      'quart',
      'Wet edge',
      'Coat 1 of 3',
      'Coat 3 of 3',
      'P320',
      'Light use',
      'Full use',
      'By night',
    ])
      expect(told).toContain(part);
    expect(await page.locator('svg.line:not([aria-hidden]) .coat').count()).toBe(3);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);

    const again = await openPage();
    await again.page.goto(PAGE + new URL(page.url()).hash);
    await again.page.locator('.plan .verdict').waitFor();
    await expect.poll(() => verdict(again.page)).toBe(await verdict(page));
    await expect
      .poll(() => again.page.locator('.plan .days').innerText())
      .toBe(await page.locator('.plan .days').innerText());
    await expect.poll(() => again.page.locator('.plan').innerText()).toContain('From the link');
    await expect.poll(() => again.page.getByLabel('Its name').inputValue()).toBe('Navy dresser');
    expectQuiet(opened);
    expectQuiet(again);
    await opened.close();
    await again.close();
  });

  it('marks beforehand what it needs, and opens the day that is wanted, below the dates', async () => {
    const opened = await openPage(PHONE);
    const { page } = opened;
    await page.goto(PAGE);
    const needed = page.locator('.needed');
    await expect.poll(() => needed.isVisible()).toBe(true);
    await page.getByLabel(AGE).selectOption('none');
    await expect.poll(() => needed.isVisible()).toBe(false);
    // A unit stands in its field, and a fold that is filled in is not covered by the button.
    await page.getByText('My can says…').click();
    const [field, unit] = [
      await page.getByLabel('Dry to touch').boundingBox(),
      await page.locator('label[for=plan-can-touch] > i').boundingBox(),
    ];
    if (!field || !unit) throw new Error('no field of the can, or no unit');
    expect(unit.x).toBeGreaterThan(field.x + field.width / 2);
    expect(unit.x + unit.width).toBeLessThan(field.x + field.width);
    const place = () => page.locator('.lay > .go').evaluate((button) => getComputedStyle(button).position);
    await expect.poll(() => place()).toBe('static');
    await page.getByText('My can says…').click();
    await expect.poll(() => place()).toBe('sticky');
    await openWeather(page);
    await page.getByLabel('Start, if not now').fill('2027-03-08T09:00');
    await plan(page);
    const days = page.locator('.of-day');
    expect(await days.count()).toBeGreaterThan(2);
    // All lies in the future: the first day is the next.
    await expect.poll(() => page.locator('.of-day[open]').count()).toBe(1);
    await expect.poll(() => days.first().getAttribute('open')).not.toBeNull();
    const y = async (one: string) => (await page.locator('.plan').locator(one).first().boundingBox())?.y ?? 0;
    const tops = [await y('.numbers'), await y('svg.line'), await y('.acts'), await y('.days')];
    expect(tops).toEqual(tops.toSorted((a, b) => a - b));
    await expect.poll(() => page.locator('.plan .acts').count()).toBe(1);
    await expect.poll(() => page.locator('.plan .acts button').count()).toBe(5);
    // The steps are counted through, day by day.
    const starts = await page
      .locator('.of-day ol')
      .evaluateAll((lists) =>
        lists.map((list) => [(list as HTMLOListElement).start, list.children.length] as const),
      );
    let next = 1;
    for (const [start, length] of starts) {
      expect(start).toBe(next);
      next += length;
    }
    expectQuiet(opened);
    await opened.close();
  });

  itAtLength(
    'prints on one sheet, and with a test patch, five coats and old paint below on two',
    async () => {
      const { page, close } = await openPage();
      await page.goto(PAGE);
      await plan(page);
      expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBe(1);
      expect(sheetsOf(await page.pdf({ format: 'Letter' }))).toBe(1);
      // The plan is what she came for: the form folds, and its one button does not lie over it.
      await expect.poll(() => page.getByRole('button', { name: 'Plan it' }).isVisible()).toBe(false);
      await change(page);
      await page.getByLabel('What piece is it?').selectOption('dining-table');
      await page.getByLabel('What lies below it?').selectOption('oil-paint');
      await page.getByLabel('Dry for how many hours? Empty if it is old').fill('80');
      await plan(page);
      await page.getByText('Coat 5 of 5').first().waitFor();
      expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBeLessThanOrEqual(2);
      await close();
    },
  );

  itAtLength('goes into a calendar and a table', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(PAGE);
    await page.getByLabel('Its name').fill('=SUM(1), "best"');
    await plan(page);
    const saved = async (name: string) => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name }).click(),
      ]);
      return readFileSync((await download.path()) ?? '', 'utf8');
    };
    const calendar = await saved('Calendar file');
    expect(calendar.match(/BEGIN:VEVENT/g)).toHaveLength(5);
    expect(calendar).toMatch(/SUMMARY:=SUM\(1\)\\, "best": Coat 1 of 3/);
    const table = await saved('Table file');
    expect(table.split('\r\n')[0]).toBe('"from","to","sure by","step","note"');
    expect(table).toContain('"Coat 3 of 3"');
    expectQuiet(opened);
    await opened.close();
  });
});

describe('a no', () => {
  it('says so in words, with the reason and what to do instead', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(PAGE);
    await page.getByLabel('What piece is it?').selectOption('dining-table');
    await page.getByLabel('Top coat', { exact: true }).selectOption('soft-wax');
    await page.getByLabel('Laid with').selectOption('cloth');
    await plan(page);
    expect(await verdict(page)).toBe('No');
    const told = await page.locator('.plan').innerText();
    expect(told).toMatch(/rings[\s\S]*Instead:/);
    // What will not be laid is not bought.
    expect(told).not.toMatch(/Buy|Coats/);
    await page.getByRole('button', { name: 'Plan with water-based polyurethane' }).click();
    await expect.poll(() => verdict(page)).toMatch(/coats, hand over/);
    await expect.poll(() => page.getByLabel('Laid with').inputValue()).toBe('brush');
    expectQuiet(opened);
    await opened.close();
  });

  it('over paint that may hold lead it leads on: to the test, and past it once no layer holds any', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(PAGE);
    await page.getByLabel('What lies below it?').selectOption('old-finish');
    await page.getByLabel(AGE).selectOption('unknown');
    await plan(page);
    expect(await verdict(page)).toBe('No');
    const told = await page.locator('.plan').innerText();
    expect(told.match(/may hold lead/g)).toHaveLength(1);
    const way = page.locator('.plan').getByRole('link', { name: 'How to test it' });
    expect(await way.getAttribute('href')).toBe('/safety/lead-before-sanding/');
    await page.getByRole('button', { name: 'Every layer is tested, no lead: plan on' }).click();
    await expect.poll(() => verdict(page)).toMatch(/coats, hand over/);
    expectQuiet(opened);
    await opened.close();
  });

  itAtLength('over a fresh oil stain it offers the day from which it is a yes', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(PAGE);
    await page.getByLabel('What lies below it?').selectOption('stain');
    await plan(page);
    expect(await verdict(page)).toBe('No, not now');
    await page.getByRole('button', { name: /^Plan from/ }).click();
    await page.getByText('Coat 1 of 3').first().waitFor();
    // 72 h at 20 °C; day and night are 1.4 °C colder on average, and 10 °C double it.
    await expect
      .poll(() => page.getByLabel('Dry for how many hours? Empty if it is old').inputValue())
      .toBe('79');
    expectQuiet(opened);
    await opened.close();
  });
});

describe('what is typed', () => {
  it('a fault stands beside its field and nothing is lost', async () => {
    const opened = await openPage(PHONE);
    const { page } = opened;
    await page.goto(PAGE);
    await open(page, 'piece');
    await page.getByLabel('Its name').fill('Old desk');
    await open(page, 'piece');
    await expect
      .poll(() => page.locator('summary[data-part=piece]').innerText())
      .toBe('Old desk: a dark color, dry for 24 hours, lies below.');
    await expect.poll(() => page.locator('#plan-weather > summary').innerText()).toMatch(/^70 °F, 50 %/);
    await openWeather(page);
    await page.getByLabel(AGE).selectOption('none');
    await page.getByLabel('Air by day').fill('warm');
    await page.locator('[name=humidity]').fill('500');
    await openWeather(page);
    await expect.poll(() => page.getByLabel('Air by day').isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Plan it' }).click();
    await expect.poll(() => page.locator('#plan-air-fault').innerText()).toMatch(/number/);
    await expect.poll(() => page.locator('#plan-humidity-fault').innerText()).not.toBe('');
    await expect.poll(() => page.locator('.plan').isHidden()).toBe(true);
    await expect.poll(() => page.getByLabel('Its name').inputValue()).toBe('Old desk');
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('air');
    await page.getByLabel('Air by day').fill('70');
    await page.locator('[name=humidity]').fill('50');
    await plan(page);
    await expect.poll(() => page.locator('#plan-air-fault').innerText()).toBe('');
    expectQuiet(opened);
    await opened.close();
  });

  itAtLength('turns units over and plans the same', async () => {
    const opened = await openPage();
    const { page } = opened;
    await page.goto(PAGE);
    await page.getByLabel('Start, if not now').fill('2027-03-08T09:00');
    await plan(page);
    const coats = await verdict(page);
    await change(page);
    await page.getByLabel('°C, cm').check();
    await expect.poll(() => page.getByLabel('Air by day').inputValue()).toBe('21.1');
    await plan(page);
    // The plan before stands until the new one does.
    await page.locator('.plan').getByText(/\d mL/).waitFor();
    await expect.poll(() => verdict(page)).toBe(coats);
    await expect.poll(() => page.locator('.plan').innerText()).toMatch(/mL[\s\S]*m²/);
    expectQuiet(opened);
    await opened.close();
  });

  it('begins in the units of her place, and leaves a link in its own', async () => {
    const opened = await openPage({ locale: 'en-CA' });
    const { page } = opened;
    await page.goto(PAGE);
    await expect.poll(() => page.getByLabel('°C, cm').isChecked()).toBe(true);
    await expect.poll(() => page.getByLabel('Air by day').inputValue()).toBe('21');
    // A standard dresser, as its file has it.
    await expect
      .poll(async () => Number(await page.locator('[name=top-long]').inputValue()))
      .toBeGreaterThan(90);
    await plan(page);
    expect(await page.locator('.plan').innerText()).toMatch(/mL|\d L[\s\S]*m²/);
    await page.goto(`${PAGE}#product=oil-based-polyurethane&base=bare-wood&air=70&units=us`);
    await expect.poll(() => page.getByLabel('Air by day').inputValue()).toBe('70');
    await expect.poll(() => page.getByLabel('°F, inches').isChecked()).toBe(true);
    expectQuiet(opened);
    await opened.close();
  });

  it('takes wood to show through bare wood, and what she chose to stay', async () => {
    const opened = await openPage(PHONE);
    const { page } = opened;
    await page.goto(PAGE);
    const tone = () => page.locator('[name=tone]:checked').inputValue();
    await expect.poll(() => tone()).toBe('dark');
    await page.getByLabel('What lies below it?').selectOption('bare-wood');
    await expect.poll(() => tone()).toBe('wood');
    await page.getByLabel('What lies below it?').selectOption('milk-paint');
    await expect.poll(() => tone()).toBe('dark');
    await open(page, 'piece');
    await page.getByLabel('Light color').check();
    await page.getByLabel('What lies below it?').selectOption('bare-wood');
    await expect.poll(() => tone()).toBe('light');
    expectQuiet(opened);
    await opened.close();
  });

  itAtLength('a link that is no plan changes nothing', async () => {
    const opened = await openPage();
    await opened.page.goto(`${PAGE}#x=1&product=<b>`);
    await plan(opened.page);
    expect(await verdict(opened.page)).toMatch(/coats/);
    expectQuiet(opened);
    await opened.close();
  });
});

it('without script the tables and rules stand there, and no dead form', async () => {
  const { page, close } = await openPage({ javaScriptEnabled: false });
  await page.goto(PAGE);
  expect(await page.locator('form.lay').isVisible()).toBe(false);
  const text = await page.locator('main').innerText();
  for (const part of [
    'Coats by wear',
    'Water-based polyurethane',
    'What not to combine',
    'Between coats',
    'Both faces: the back, then the front with its edges.',
    '3 days',
  ])
    expect(text).toContain(part);
  await close();
});

it('is one flight', () => {
  expect(gzipSync(readFileSync('dist/schedule/index.html'), { level: 6 }).length).toBeLessThanOrEqual(13_000);
});

describe('a link from elsewhere', () => {
  const LINK = '#product=oil-based-polyurethane&base=bare-wood&air=70&humidity=50&night=62&units=us';

  itAtLength(
    'that lacks choices is planned with the usual ones, but for older paint, which is asked',
    async () => {
      const opened = await openPage();
      const { page } = opened;
      await page.goto(PAGE + LINK);
      await page.locator('#plan-age-fault').getByText('Choose one of these.').waitFor();
      await plan(page);
      expect(await page.locator('#plan-form-fault').innerText()).not.toMatch(/signal/);
      expect(await page.getByLabel('Top coat', { exact: true }).inputValue()).toBe('oil-based-polyurethane');
      expectQuiet(opened);
      await opened.close();
    },
  );

  itAtLength('blames the network where it is the network, and plans once it is back', async () => {
    const { page, close } = await openPage();
    await page.route('**/schedule/data.json', (route) => route.abort());
    await page.goto(PAGE);
    await page.getByLabel(AGE).selectOption('none');
    await page.getByRole('button', { name: 'Plan it' }).click();
    await page.locator('#plan-form-fault').getByText('no signal?').waitFor();
    await page.unroute('**/schedule/data.json');
    await plan(page);
    expect(await verdict(page)).toMatch(/coats/);
    await close();
  });

  itAtLength('lets a bug be one', async () => {
    const { page, errors, close } = await openPage();
    await page.route('**/schedule/data.json', (route) => route.fulfill({ json: { products: [] } }));
    await page.goto(PAGE);
    await page.getByLabel(AGE).selectOption('none');
    await page.getByRole('button', { name: 'Plan it' }).click();
    await expect.poll(() => errors.length).toBeGreaterThan(0);
    expect(await page.locator('#plan-form-fault').innerText()).not.toMatch(/signal/);
    await close();
  });
});
