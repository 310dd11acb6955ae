/** Files that are brought in: spoiled ones, and one as its preview said. */
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { JobCard } from '#engine/model/job-card.ts';
import { expectQuiet, openPage } from './browser.ts';
import { answer, cardsIn, JOBS, makeCard, openFiles, soon } from './jobs-hands.ts';

const NOW = Date.UTC(2026, 10, 23, 17);

const file = (cards: readonly unknown[], removed?: readonly unknown[]) => ({
  format: 'halfdry-jobs',
  version: 1,
  writtenAt: NOW,
  cards,
  removed,
});
const bringIn = async (page: Page, text: string): Promise<string> => {
  await page.locator('.file input').setInputFiles({
    name: 'cards.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.locator('.told', { hasText: 'cards.json' }).waitFor();
  return page.locator('.told').innerText();
};

it('says of each of 40 spoiled files what is wrong, and shows no wrong card', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  const [mine] = await cardsIn(page);
  if (!mine) throw new Error('no card');
  await page.goto(JOBS);
  await page.locator('.cards a').waitFor();
  const text = JSON.stringify(file([mine, { ...mine, id: 'other', name: 'Chair' }]));
  const spoiled = fc
    .tuple(fc.nat({ max: text.length - 1 }), fc.constantFrom('"', '{', '9', '', 'null', '<b>', '\u0000', '-'))
    .map(([at, sign]) => text.slice(0, at) + sign + text.slice(at + 1));
  const dialogs: string[] = [];
  page.on('dialog', (dialog) => dialogs.push(dialog.message()));
  let refused = 0;
  for (const one of fc.sample(spoiled, { numRuns: 40, seed: 7 })) {
    const said = await bringIn(page, one);
    if (said.startsWith('Nothing was brought in')) refused += 1;
    await page.evaluate(() => document.querySelector('.told')?.replaceChildren());
  }
  console.log('spoiled files', JSON.stringify({ files: 40, refused, previewed: 40 - refused }));
  expect(refused).toBeGreaterThan(0);
  expect(await cardsIn(page)).toEqual([mine]);
  expect(dialogs).toEqual([]);
  expectQuiet(opened);
  await opened.close();
});

/** The other side has taken both cards away: the one that was not changed here since goes, and comes back when told to. */
const takenAway = async (page: Page, mine: JobCard): Promise<void> => {
  const gone = [
    { id: mine.id, name: mine.name, at: mine.changedAt - 1 },
    { id: 'other', name: 'Chair', at: Date.now() + 1e6 },
  ];
  await page.evaluate(() => document.querySelector('.told')?.replaceChildren());
  const said = await bringIn(page, JSON.stringify(file([], gone)));
  expect(said).toMatch(/Navy dresser: taken away there, .+, but you changed it here since; stays/);
  expect(said).toMatch(/Chair: taken away there, .+; goes here too/);
  await page.getByRole('button', { name: 'Take 1 card away' }).click();
  await soon(() => page.locator('.told').innerText()).toContain('1 card taken away.');
  expect((await cardsIn(page)).map(({ name }) => name)).toEqual(['Navy dresser']);
  await page.getByRole('button', { name: 'Put back what went' }).click();
  await soon(() => page.locator('.told').innerText()).toBe('It is back.');
  expect((await cardsIn(page)).length).toBe(2);
  // Taken away here: a file that still has it does not bring it back, unless she says so.
  const chair = (await cardsIn(page)).find(({ id }) => id === 'other');
  await page.getByRole('link', { name: 'Chair' }).click();
  await openFiles(page);
  await page.getByRole('button', { name: 'Delete this card' }).click();
  await answer(page, 'Delete it');
  await page.locator('.told', { hasText: 'is taken away' }).waitFor();
  expect(await bringIn(page, JSON.stringify(file([chair])))).toMatch(
    /Chair: you took it away here, .+; stays away/,
  );
  await page.getByRole('button', { name: 'Bring it back all the same' }).click();
  await page.getByText('It is back.').waitFor();
  expect((await cardsIn(page)).length).toBe(2);
};

it('brings in a file as its preview said', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page);
  const [mine] = await cardsIn(page);
  if (!mine) throw new Error('no card');
  await page.goto(JOBS);
  await page.locator('.cards a').waitFor();
  const newer = { ...mine, notes: 'from the tablet', changedAt: mine.changedAt + 1000 };
  const said = await bringIn(page, JSON.stringify(file([newer, { ...mine, id: 'other', name: 'Chair' }])));
  expect(said).toContain('Navy dresser: newer in the file (changed: notes)');
  expect(said).toContain('Chair: new here');
  expect((await cardsIn(page)).length).toBe(1);
  await page.getByRole('button', { name: 'Bring in 2 cards' }).click();
  await soon(() => page.locator('.told').innerText()).toContain('2 cards brought in.');
  expect((await cardsIn(page)).map(({ name, notes }) => [name, notes]).sort()).toEqual([
    ['Chair', ''],
    ['Navy dresser', 'from the tablet'],
  ]);
  expect(await bringIn(page, JSON.stringify(file([newer])))).toContain('the same as here');
  await takenAway(page, newer);
  expectQuiet(opened);
  await opened.close();
});
