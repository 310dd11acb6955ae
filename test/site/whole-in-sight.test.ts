/** What a phone shows is whole: every letter, the film of the example, room around a button, nothing half covered. */
import { expect, it } from 'vitest';
import { expectQuiet, openPage, PHONE } from './browser.ts';

const HAND = { ...PHONE, viewport: { width: 390, height: 844 } } as const;

it('shows all letters of the glossary at once', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/glossary/');
  const letters = page.locator('.letters a');
  const boxes = await letters.evaluateAll((all) =>
    all.map((one) => {
      const { left, right, width, height } = one.getBoundingClientRect();
      return { inside: left >= 0 && right <= innerWidth, large: width >= 24 && height >= 44 };
    }),
  );
  expect(boxes.length).toBeGreaterThan(15);
  expect(boxes.every(({ inside, large }) => inside && large)).toBe(true);
  // What is jumped to lies below them.
  await letters.last().tap();
  const head = page.locator('section > h2').last();
  const nav = await page.locator('.letters').boundingBox();
  const top = await head.boundingBox();
  if (top && nav && top.y < 300) expect(top.y).toBeGreaterThanOrEqual(nav.y + nav.height - 1);
  expectQuiet(opened);
  await opened.close();
});

it('draws the film of the example in its colors while no card is there', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/jobs/');
  const film = page.locator('.example svg.film');
  await film.waitFor();
  const fills = await film.locator('rect').evaluateAll((all) => all.map((one) => getComputedStyle(one).fill));
  expect(fills).toContain('rgb(29, 43, 63)');
  expect(fills).not.toContain('rgb(0, 0, 0)');
  expectQuiet(opened);
  await opened.close();
});

it('has room between the button that forgets and what follows', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/defects/bubbles/stage-recoatable/there-while-coating-yes/');
  const button = page.getByRole('button', { name: /^Start/ });
  await button.waitFor();
  const below = page.locator('hd-told details').first();
  await below.waitFor();
  const [above, next] = [await button.boundingBox(), await below.boundingBox()];
  expect((next?.y ?? 0) - (above?.y ?? 0) - (above?.height ?? 0)).toBeGreaterThanOrEqual(8);
  expectQuiet(opened);
  await opened.close();
});

it('covers the strip below the field whole while it suggests', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/');
  await page
    .getByLabel('Say it, or paste what somebody wrote')
    .pressSequentially('milky over navy, still wet');
  const hits = page.locator('.hits:visible');
  await hits.waitFor();
  const strip = await page.getByRole('link', { name: /Walk me through it/ }).boundingBox();
  const bottom = async () => {
    const list = await hits.boundingBox();
    return (list?.y ?? 0) + (list?.height ?? 0);
  };
  await expect.poll(bottom).toBeGreaterThanOrEqual((strip?.y ?? 0) + (strip?.height ?? 0));
  expectQuiet(opened);
  await opened.close();
});

it('has the three doors of the first page in one row of equal width', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/');
  const doors = await page.locator('.doors a').evaluateAll((all) =>
    all.map((one) => {
      const { top, width } = one.getBoundingClientRect();
      return [Math.round(top), Math.round(width)];
    }),
  );
  expect(doors).toHaveLength(3);
  expect(new Set(doors.map(String)).size).toBe(1);
  await opened.close();
});

it('has no heading over nothing where nothing is answered yet', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/defects/tacky-film/cause/');
  expect((await page.locator('#trail').boundingBox())?.height ?? 0).toBeLessThan(2);
  expectQuiet(opened);
  await opened.close();
});

it('folds the question of old paint on the page of a flaw, and takes its answer', async () => {
  const opened = await openPage(HAND);
  const { page } = opened;
  await page.goto('/defects/runs-and-sags/');
  const asked = page.locator('[data-part=ask-age]');
  const yes = asked.getByRole('button', { name: 'Yes, from before 1993' });
  expect(await yes.isVisible()).toBe(false);
  await asked.getByText('Before you sand: is there old paint below?').tap();
  await yes.tap();
  await expect.poll(() => yes.getAttribute('aria-pressed')).toBe('true');
  await asked.getByRole('link', { name: 'Test them first' }).waitFor();
  expectQuiet(opened);
  await opened.close();
});
