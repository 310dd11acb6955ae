/** The job cards in a real browser: what is written, shown, taken away and brought back. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { itAtLength, THOROUGH } from '../thorough.ts';
import { AXE, axeFaults } from './axe.ts';
import { expectQuiet, NARROW, openPage, PHONE } from './browser.ts';
import {
  answer,
  cardsIn,
  JOBS,
  layCoat,
  makeCard,
  openFiles,
  openPiece,
  sayPiece,
  soon,
} from './jobs-hands.ts';

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

const large = async (page: Page, name: string): Promise<void> => {
  const box = await page.getByRole('button', { name }).boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(64);
};

it.runIf(THOROUGH).each(['light', 'dark'] as const)(
  'has no fault that axe can see in any view, %s',
  async (colorScheme) => {
    const { page, close } = await openPage({ ...NARROW, bypassCSP: true, colorScheme });
    const found: string[] = [];
    const look = async () => {
      await page.evaluate(AXE);
      found.push(...(await axeFaults(page)));
      expect(await sideways(page)).toBeLessThanOrEqual(0);
    };
    await page.goto(`${JOBS}#new`);
    await page.getByRole('button', { name: 'Make the card' }).click();
    await soon(() => page.locator('#plan-name-fault').innerText()).toContain('Give the piece a name');
    await look();
    await makeCard(page);
    await page.getByRole('button', { name: 'Lay a coat' }).click();
    await look();
    await layCoat(page);
    await large(page, 'Lay a coat');
    await large(page, 'Something looks wrong');
    await openPiece(page);
    await look();
    await page.getByRole('button', { name: 'Correct coat 1' }).click();
    await look();
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'Care card for the buyer' }).click();
    await page.locator('.care').waitFor();
    await look();
    await page.goto(JOBS);
    await page.reload();
    await page.locator('.cards a').waitFor();
    await look();
    expect(found).toEqual([]);
    await close();
  },
);

/** Corrects the one coat by keys: what is typed and left is not kept, what is saved is on the card and on the clock. */
const correctCoat = async (page: Page): Promise<void> => {
  const [before] = await cardsIn(page);
  const correct = page.getByRole('button', { name: 'Correct coat 1' });
  const air = page.locator('.lay-coat [name=air]');
  const laidIn = () =>
    page.evaluate(
      () =>
        new Promise<unknown>((done) => {
          const opening = indexedDB.open('halfdry-clock');
          opening.onsuccess = () => {
            const reading = opening.result.transaction('clock').objectStore('clock').get('now');
            reading.onsuccess = () => {
              opening.result.close();
              done(reading.result?.coats?.[0]?.celsius);
            };
          };
        }),
    );
  await correct.press('Enter');
  await page.getByRole('heading', { name: 'Correct coat 1' }).waitFor();
  await soon(() =>
    page.locator('.lay-coat [name=product]').evaluate((field) => field === document.activeElement),
  ).toBe(true);
  await page.keyboard.press('Escape');
  await soon(() => correct.evaluate((one) => one === document.activeElement)).toBe(true);
  expect(await cardsIn(page)).toEqual([before]);
  await correct.press('Enter');
  await air.fill('50');
  await page.keyboard.press('Escape');
  await answer(page, 'Go on correcting');
  await soon(() => air.inputValue()).toBe('50');
  await page.locator('.lay-coat [name=humidity]').fill('500');
  await page.keyboard.press('Enter');
  await soon(() => page.locator('#clock-humidity-fault').innerText()).not.toBe('');
  await page.locator('.lay-coat [name=humidity]').fill('50');
  await page.keyboard.press('Enter');
  await page.locator('.told', { hasText: 'Coat 1 is corrected.' }).waitFor();
  await soon(() => correct.evaluate((one) => one === document.activeElement)).toBe(true);
  const { celsius: _air, ...coat } = before?.coats[0] ?? {};
  await soon(async () => (await cardsIn(page))[0]?.coats).toMatchObject([{ ...coat, celsius: 10 }]);
  await soon(() => laidIn()).toBe(10);
  await page.getByRole('button', { name: 'Put it as it was' }).click();
  await page.locator('.told', { hasText: 'The coat is as it was.' }).waitFor();
  await soon(async () => (await cardsIn(page))[0]?.coats).toMatchObject(before?.coats ?? []);
  // What stands in the form for the next coat was not touched by it.
  await page.getByRole('button', { name: 'Lay a coat' }).click();
  await soon(() => air.inputValue()).toBe('70');
};

it('says of each piece in the list what may be done now, as its card does', async () => {
  const { page, close } = await openPage(PHONE);
  await makeCard(page);
  await layCoat(page);
  await page.goto(JOBS);
  await page.locator('.cards .may', { hasText: /Hands off|Leave it/i }).waitFor();
  await makeCard(page, 'Bare stool');
  await page.goto(JOBS);
  const bare = page.locator('.cards a', { hasText: 'Bare stool' });
  await bare.waitFor();
  // What may be done comes after the names, card by card from the newest on: this one is older.
  await page.locator('.cards .may', { hasText: /Hands off|Leave it/i }).waitFor();
  expect(await bare.locator('.may').count()).toBe(0);
  await close();
});

itAtLength('tells every stop before a coat, one caution, and folds the others', async () => {
  const { page, close } = await openPage(PHONE);
  await page.goto(`${JOBS}#new`);
  await page.getByLabel('Name of the piece').fill('Old dresser');
  await sayPiece(page);
  await page.locator('.about [name=age][value=unknown]').check();
  await page.getByRole('button', { name: 'Make the card' }).click();
  await page.getByRole('button', { name: 'Lay a coat' }).click();
  const said = page.locator('.lay-coat .weather');
  await said.locator('details.cautions').waitFor();
  await soon(() => said.locator('.caution.stop').count()).toBeGreaterThan(0);
  expect(await said.locator('details .stop').count()).toBe(0);
  await soon(() => said.locator(':scope > .caution:not(.stop)').count()).toBe(1);
  await soon(() => said.locator('details .caution').count()).toBeGreaterThan(1);
  await close();
});

it('lays a coat on the card, starts its clock, and draws the film with what it allows', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await makeCard(page);
  await soon(() => page.locator('.verdict').first().innerText()).toBe('No coat yet');
  await layCoat(page);
  await soon(() => page.locator('.verdict').first().innerText()).toMatch(/^Hands off until/);
  // The early end stands small, as on the clock; the strip of the clock does not say it again.
  await soon(() => page.locator('.verdict small').innerText()).toMatch(/at the earliest$/);
  // The form is gone: who goes by keys stands at the head of the card, not at the beginning of the page.
  await soon(() => page.evaluate(() => document.activeElement?.id)).toBe('jobs-title');
  await page.reload();
  await page.locator('hd-clock .tape').waitFor({ state: 'attached' });
  await soon(() => page.locator('hd-clock .tape').isVisible()).toBe(false);
  await soon(() => page.locator('svg.film').getAttribute('aria-label')).toContain('1 coat');
  await soon(() => page.locator('.film text').allTextContents()).toEqual(
    expect.arrayContaining([expect.stringMatching(/^Coat 1, [\d.]+(–[\d.]+)? mil dry$/)]),
  );
  await soon(() => page.locator('.advice').innerText()).toContain('Sand-through risk');
  await correctCoat(page);
  // A second card of the same name has its own place on the clock.
  await makeCard(page);
  await layCoat(page);
  // What is off the card is off the clock; what is put back runs again.
  const off = page.locator('.laid').getByRole('button', { name: 'Take it off the card' });
  const told = page.locator('.told');
  await off.click();
  await told.getByText('The coat is off the card, and its clock is stopped.').waitFor();
  await told.getByRole('button', { name: 'Put it back' }).click();
  await told.getByText('It is back on the card, and its clock runs.').waitFor();
  await page.goto('/clock/');
  await soon(() => page.locator('.on-clock h2').allTextContents()).toEqual(['Navy dresser', 'Navy dresser']);
  await soon(() => page.locator('.on-clock a', { hasText: 'Its job card' }).count()).toBe(2);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('begins a walk with all that the card knows', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  const id = await makeCard(page);
  await layCoat(page);
  await page.getByRole('button', { name: 'Something looks wrong' }).click();
  await page.waitForURL('**/see/**');
  const kept = await page.evaluate(() =>
    ['halfdry.case', 'halfdry.card'].map((key) => localStorage.getItem(key)),
  );
  const [on, card] = kept.map((text) => JSON.parse(text ?? 'null'));
  expect(card).toEqual({ id, name: 'Navy dresser' });
  expect(on.facts).toMatchObject({
    piece: { value: 'furniture' },
    base: { value: 'chalk-paint' },
    family: { value: 'water-based' },
    applicator: { value: 'brush' },
    'coat-number': { value: 1 },
  });
  // The clock goes on; a stage that was written down would stand still.
  expect(on.facts.stage).toBeUndefined();
  expectQuiet(opened);
  await opened.close();
});

itAtLength('saves everything as a file and brings it all back into an empty browser', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  await layCoat(page);
  await page.locator('#job-notes').fill('By the window.');
  await page.locator('.lists .file input').setInputFiles({
    name: 'flaw.png',
    mimeType: 'image/png',
    // One gray pixel.
    buffer: Buffer.from(
      'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==',
      'base64',
    ),
  });
  await page.locator('.photos img').waitFor();
  const [card] = await cardsIn(page);
  // What was learned at practice goes along, and comes back.
  const card1 = {
    due: 1_790_000_000_000,
    stability: 2,
    difficulty: 5,
    scheduledDays: 1,
    learningSteps: 0,
    reps: 1,
    lapses: 0,
    state: 2,
    lastReview: 1_780_000_000_000,
  };
  const deck = {
    kind: 'halfdry-practice',
    version: 1,
    boards: 7,
    right: 5,
    cards: { 'look.bubbles': card1 },
  };
  await page.evaluate((kept) => localStorage.setItem('halfdry.practice', kept), JSON.stringify(deck));
  await page.goto(JOBS);
  await page.reload();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all as a file, with photos' }).click(),
  ]);
  const file = (await download.path()) ?? '';
  const other = await openPage();
  await other.page.goto(JOBS);
  await other.page.locator('.file input').setInputFiles({
    name: 'cards.json',
    mimeType: 'application/json',
    buffer: readFileSync(file),
  });
  await other.page.getByRole('button', { name: 'Bring in 1 card' }).click();
  await soon(() => other.page.locator('.told').innerText()).toContain('1 card brought in.');
  expect(await cardsIn(other.page)).toEqual([card]);
  await soon(async () =>
    JSON.parse((await other.page.evaluate(() => localStorage.getItem('halfdry.practice'))) ?? '{}'),
  ).toEqual(deck);
  await other.page.getByRole('link', { name: 'Navy dresser' }).click();
  await soon(() =>
    other.page.locator('.photos img').evaluate((img) => (img as HTMLImageElement).naturalWidth),
  ).toBe(1);
  expectQuiet(opened);
  expectQuiet(other);
  await opened.close();
  await other.close();
});

itAtLength('takes a card away when told twice, and puts it back', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  const [card] = await cardsIn(page);
  await openFiles(page);
  await page.getByRole('button', { name: 'Delete this card' }).click();
  await answer(page, 'Keep it');
  expect((await cardsIn(page)).length).toBe(1);
  await openFiles(page);
  await page.getByRole('button', { name: 'Delete this card' }).click();
  await answer(page, 'Delete it');
  await page.locator('.told', { hasText: 'is taken away' }).waitFor();
  expect(await cardsIn(page)).toEqual([]);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  await soon(() => cardsIn(page)).toEqual([card]);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('reminds of a file after ten changes', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  await openPiece(page);
  for (const sheen of ['gloss', 'satin', 'matte', 'gloss', 'satin', 'matte', 'gloss', 'satin', 'matte']) {
    await page.locator('.about [name=sheen]').selectOption(sheen);
    await page.getByText(/^Saved \d/).waitFor();
    await soon(async () => (await cardsIn(page))[0]?.sheen).toBe(sheen);
  }
  await page.goto(JOBS);
  await page.reload();
  await soon(() => page.locator('.told').innerText()).toContain('10 changes are in no file yet');
  expectQuiet(opened);
  await opened.close();
});

it('asks of the piece and of old paint without an answer of its own', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto(`${JOBS}#new`);
  await page.getByLabel('Name of the piece').fill('Old dresser');
  await page.getByRole('button', { name: 'Make the card' }).click();
  for (const field of ['kind', 'base', 'tone', 'age'])
    await soon(() => page.locator(`#plan-${field}-fault`).innerText()).toBe('Choose one of these.');
  await sayPiece(page);
  expect(await page.locator('.about [name=age]:checked').count()).toBe(0);
  await page.getByLabel('Yes, from before 1993').check();
  await page.getByRole('button', { name: 'Make the card' }).click();
  await page.getByRole('button', { name: 'Lay a coat' }).waitFor();
  await soon(() => page.locator('.facts').innerText()).toContain('Yes, from before 1993');
  expectQuiet(opened);
  await opened.close();
});

it('stops over old paint that may hold lead, at the head of its card', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await makeCard(page);
  await openPiece(page);
  await page.locator('.about [name=age][value=before-1993]').check();
  const stop = page.locator('.caution.stop').first();
  await soon(() => stop.innerText()).toContain('may hold lead');
  const [above, below] = await Promise.all([stop.boundingBox(), page.locator('.sheet').boundingBox()]);
  expect(above?.y).toBeLessThan(below?.y ?? 0);
  await soon(() => page.locator('.advice').innerText()).not.toContain('strokes');
  await page.locator('.about [name=age][value=none]').check();
  await soon(() => page.locator('.caution.stop').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

it('makes another card like one that is there', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await makeCard(page, 'Chair 1');
  await layCoat(page);
  await page.getByRole('button', { name: 'Make a card like this one' }).click();
  await soon(() => page.locator('#jobs-title').innerText()).toBe('Chair 2');
  expect(await page.locator('.laid > li').count()).toBe(0);
  const [second, first] = (await cardsIn(page)).toSorted((one, two) => two.madeAt - one.madeAt);
  expect(second).toMatchObject({ base: first?.base, product: first?.product, age: first?.age, coats: [] });
  expectQuiet(opened);
  await opened.close();
});

it('does not call for a coat over one that is wet, says why before its form, and answers beside the button', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await makeCard(page);
  await layCoat(page);
  const lay = page.getByRole('button', { name: 'Lay a coat: not yet' });
  await soon(() => lay.getAttribute('class')).toBe('go later');
  await lay.tap();
  const form = page.locator('.lay-coat');
  await soon(() => form.locator('h2 + .caution').innerText()).toMatch(
    /^Not yet: hands off until (?:tomorrow )?\d+:\d\d [AP]M/,
  );
  await form.getByText('Do not lay it').waitFor();
  await form.getByText('The coat below is not ready for another').waitFor();
  expect(await form.getByText('Fine for this coat').count()).toBe(0);
  // What a tap does is told where it was tapped, far below the head of the card.
  const near = async (button: string, words: RegExp) => {
    const tapped = page.getByRole('button', { name: button });
    await tapped.tap();
    const said = page.locator('.card-acts .told');
    await soon(() => said.innerText()).toMatch(words);
    const [one, other] = [
      await page.locator('.card-acts .acts').first().boundingBox(),
      await said.boundingBox(),
    ];
    expect((other?.y ?? 0) - (one?.y ?? 0) - (one?.height ?? 0)).toBeLessThan(24);
  };
  // What may not be touched is not carried away: it says why, and offers no button for it.
  expect(await page.getByRole('button', { name: 'Handed over today' }).count()).toBe(0);
  await soon(() => page.locator('[data-part=early]').innerText()).toMatch(
    /^Not to be handed over yet: hands off until/,
  );
  await near('That was the last coat', /^Noted: the last coat/);
  // A line that belongs to the head comes along to where she is.
  await page.getByRole('button', { name: 'Take it off the card' }).last().tap();
  const told = page.locator('.told.afar', { hasText: 'The coat is off the card' });
  await told.waitFor();
  const top = async () => (await told.boundingBox())?.y;
  await soon(top).toBeLessThan(100);
  expect(await top()).toBeGreaterThanOrEqual(0);
  expectQuiet(opened);
  await opened.close();
});
