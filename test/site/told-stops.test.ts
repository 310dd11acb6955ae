import { expect, it } from 'vitest';
import { known } from '../content/real/knowledge.ts';
import { itAtLength } from '../thorough.ts';
import { expectQuiet, withoutPictures } from './browser.ts';
import { builtPages } from './built.ts';
import { LEAD, opened, SANDING } from './told-page.ts';

withoutPictures();

it('puts the stop for a crib before everything, with one heading', async () => {
  const one = await opened({ piece: { value: 'crib', how: 'told' } });
  await one.page.goto('/defects/cloudy-film/stage-wet/');
  await one.page.locator('.stops [data-rule=not-a-crib]').waitFor();
  await expect.poll(() => one.page.locator('h1:visible').allInnerTexts()).toEqual(['Stop first']);
  expect(await one.page.locator('.stops').textContent()).not.toMatch(/[{}]/);
  expectQuiet(one);
  await one.close();
});

itAtLength('puts the stop for a crib before the steps of a repair that no walk has led to', async () => {
  const one = await opened({ piece: { value: 'crib', how: 'told' } });
  await one.page.goto('/remedies/sand-and-recoat/');
  await one.page.locator('section [data-rule=not-a-crib]').waitFor();
  await one.page.locator('html:not([data-fit])').waitFor();
  await expect.poll(() => one.page.locator('section > [data-rule=not-a-crib]').isVisible()).toBe(true);
  await expect.poll(() => one.page.locator('section > details[data-rule]').first().isVisible()).toBe(true);
  expect(await one.page.locator('[data-step]:visible').count()).toBe(0);
  expectQuiet(one);
  await one.close();
});

itAtLength('keeps every caution where the facts kept here make no sense', async () => {
  const one = await opened({ age: { value: '<img src=x onerror=alert(1)>', how: 'told' } });
  await one.page.goto(SANDING);
  await one.page.locator('html:not([data-fit])').waitFor();
  await expect.poll(() => one.page.locator(`.stops ${LEAD}`).isVisible()).toBe(true);
  expectQuiet(one);
  await one.close();
});

it('makes no check of a moldy piece: the mold comes first, at every question that brings a hand or an eye close', async () => {
  const asks = builtPages().find(
    ({ address, html }) =>
      address.startsWith('/defects/') && /data-question="?felt-with-eyes-shut/.test(html),
  );
  const one = await opened({ 'fuzzy-or-musty': { value: 'yes', how: 'answered' } });
  await one.page.goto(asks?.address ?? '');
  const first = one.page.locator('[data-part=at-check]');
  await first.waitFor();
  await expect.poll(() => first.innerText()).toMatch(/^Mold first/);
  await expect.poll(() => one.page.locator('[data-part=how]').isVisible()).toBe(false);
  expectQuiet(one);
  await one.close();
  const dry = await opened();
  await dry.page.goto(asks?.address ?? '');
  expect(await dry.page.locator('[data-part=how]').innerText()).toMatch(/Stroke it/);
  expect(await dry.page.locator('[data-part=at-check]').count()).toBe(0);
  await dry.close();
});

it('says what cannot wait before it asks how dry a finish with a spill on it is', async () => {
  const one = await opened();
  await one.page.goto('/defects/spirit-damage/');
  const minute = await one.page.locator('[data-part=at-once]').boundingBox();
  const asked = await one.page.locator('[data-part=stages] li').first().boundingBox();
  expect(minute?.y).toBeLessThan(asked?.y ?? 0);
  expect(await one.page.locator('[data-part=at-once]').innerText()).toMatch(/lift it straight up/);
  expect(await one.page.locator('[data-part=stages]').innerText()).toMatch(/^Cured, or years old/);
  await one.close();
});

it('shows a dark ring beside the repair of a dark ring', async () => {
  const dark = builtPages().filter(({ address }) =>
    /\/white-rings\/stage-cured\/ring-is-dark-yes\/.*stain-not-paint-below-yes\//.test(address),
  );
  expect(dark.length).toBeGreaterThan(0);
  for (const { html } of dark) expect(html).toMatch(/class="?picture[\s\S]{0,900}A black ring in oak/);
});

it('asks no touch in the search for the flaw of a coat that is known to be wetter than the touch needs', async () => {
  const asksTouch = builtPages().filter(({ html }) =>
    /data-safe-from="?(dry-to-touch|recoatable)/.test(html),
  );
  expect(asksTouch.length).toBeGreaterThan(20);
  for (const { address, html } of asksTouch) expect(html, address).toContain('Only on a coat that is');
  const shallow = asksTouch.toSorted((one, two) => one.address.length - two.address.length);
  // Where doubt is kept open there is a page behind "Can't tell"; where not, it leads down to what is left.
  const [on, end] = [true, false].map((goesOn) =>
    shallow.find(
      ({ html }) =>
        /href="?[^"> ]*"?\s+data-answer="?unsure/.test(html) && html.includes('href="#left"') !== goesOn,
    ),
  );
  if (!on || !end) throw new Error('no such pages');

  const wet = await opened({ stage: { value: 'setting', how: 'told' } });
  await wet.page.goto(on.address);
  await wet.page.waitForURL((url) => url.pathname !== on.address);
  expect(new URL(wet.page.url()).pathname).toMatch(/-unsure\/$/);
  await wet.page.goto(end.address);
  await wet.page.getByText('Your coat is setting now: do not touch it.').waitFor();
  await expect.poll(() => wet.page.locator('[data-part=how]').isVisible()).toBe(false);
  expectQuiet(wet);
  await wet.close();

  const dry = await opened({ stage: { value: 'cured', how: 'told' } });
  await dry.page.goto(on.address, { waitUntil: 'networkidle' });
  await dry.page.locator('[data-part=how]').waitFor();
  expect(new URL(dry.page.url()).pathname).toBe(on.address);
  await dry.close();
});

it('puts hands off, and what tells it without the piece, before every check of a film of which nothing is told', () => {
  const held = new Set<string>();
  const wrong: string[] = [];
  for (const { address, html } of builtPages()) {
    const id = /^\/defects\/[^/]+\/./.test(address) && /data-question="?([a-z0-9-]+)/.exec(html)?.[1];
    if (!id || address.includes('/stage-')) continue;
    const harms = known.get('question', id)['safe-from'] !== 'wet';
    const before = html.slice(0, html.indexOf('<h1'));
    if (before.includes('data-part="hold"') || before.includes('data-part=hold')) {
      held.add(address);
      if (!/Hands off while/.test(before)) wrong.push(address);
    } else if (harms) wrong.push(address);
  }
  expect(wrong).toEqual([]);
  expect(held.has('/defects/tacky-film/cause/')).toBe(true);
  expect(held.size).toBeGreaterThan(50);
});
