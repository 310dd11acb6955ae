/** On paper nothing can be tapped: where a way leads stands there, and what serves a screen alone does not. */
import { expect, it } from 'vitest';
import { STAGE_WORDS } from '../../site/shared/stages.ts';
import { openPage } from './browser.ts';

/** US Letter within its margins, in CSS pixels. */
const LETTER = { viewport: { width: 748, height: 1009 } } as const;

it.each([
  ['/defects/cloudy-film/stage-recoatable/', 3],
  ['/defects/cloudy-film/stage-cured/', 3],
  ['/defects/brush-marks/stage-wet/', 3],
  ['/defects/blush/cause/', 3],
  ['/see/', 3],
])('prints of the question on %s each answer, its words and where it leads', async (address, count) => {
  const { page, close } = await openPage(LETTER);
  await page.goto(address);
  await page.emulateMedia({ media: 'print' });
  const answers = page.locator('.answers a').filter({ visible: true });
  const ways = await answers.evaluateAll((found) =>
    found.map((one) => {
      const { height } = one.getBoundingClientRect();
      const to = one.getAttribute('href') ?? '?';
      const { content } = getComputedStyle(one, '::after');
      return { height, words: (one.textContent ?? '').trim(), named: content.includes(to) };
    }),
  );
  expect(ways).toHaveLength(count);
  expect(ways.filter(({ named }) => !named)).toEqual([]);
  for (const word of ['Yes', 'No'])
    expect(ways.some(({ words }) => words.startsWith(word) && words.length > word.length + 5)).toBe(true);
  // What stops hands comes before the question.
  const hold = page.locator('[data-part=hold]');
  if (await hold.count()) {
    const [held, asked] = await Promise.all([hold.first().boundingBox(), page.locator('h1').boundingBox()]);
    expect(held?.y ?? Number.NaN).toBeLessThan(asked?.y ?? Number.NaN);
  }
  await close();
});

it('names on paper where the flaw that it looks like is told', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto('/defects/cloudy-film/cleans-up-with-water-yes/lines-follow-sanding-yes/');
  await page.emulateMedia({ media: 'print' });
  const ways = page.locator('.answers a').filter({ visible: true });
  const told = await ways.evaluateAll((found) =>
    found.map((one) => getComputedStyle(one, '::after').content).join(' '),
  );
  expect(told).toContain('/defects/sanding-scratches/');
  await close();
});

it.each(['/clock/', '/schedule/', '/jobs/'])('cuts no bullet of a table by hand on %s', async (address) => {
  const { page, close } = await openPage(LETTER);
  await page.goto(address);
  await page.emulateMedia({ media: 'print' });
  // What hangs out of columns is cut off at their edge: a bullet begins up to 1.4 em to the left of its item, as measured on the print.
  const cut = await page.locator('.by-hand ul').evaluateAll((lists) =>
    lists.flatMap((list) => {
      const edge = list.getBoundingClientRect().left + Number.parseFloat(getComputedStyle(list).paddingLeft);
      const columned = getComputedStyle(list).columnCount !== 'auto';
      return [...list.children]
        .filter((item) => columned && item.getBoundingClientRect().height > 0)
        .filter(
          (item) =>
            item.getBoundingClientRect().left - edge <
            1.4 * Number.parseFloat(getComputedStyle(item).fontSize),
        )
        .map((item) => item.textContent);
    }),
  );
  expect(await page.locator('.by-hand ul > li').count()).toBeGreaterThan(0);
  expect(cut).toEqual([]);
  await close();
});

it('lays no code over the words of a lesson whose address takes two lines', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto('/learn/what-to-ask-for-it/');
  await page.emulateMedia({ media: 'print' });
  const code = await page.locator('.qr').boundingBox();
  const words = await page.locator('.lesson > .both').boundingBox();
  expect(code && code.y + code.height).toBeLessThanOrEqual(words?.y ?? Number.NaN);
  await close();
});

it('tears no step of a repair that takes two sheets, and leaves each number with its step', async () => {
  const { page, close } = await openPage(LETTER);
  await page.emulateMedia({ media: 'print' });
  for (const address of ['/remedies/flatten-and-respray/', '/remedies/strip-and-start-again/']) {
    await page.goto(address);
    const breaks = await page
      .locator('.all-steps .steps > li:not([hidden])')
      .evaluateAll((steps) => steps.map((step) => getComputedStyle(step).breakInside));
    expect(breaks.length).toBeGreaterThan(5);
    expect(new Set(breaks)).toEqual(new Set(['avoid']));
  }
  // A number that is laid over its step could begin the next column alone; one that floats before it can not.
  await page.goto('/remedies/cool-and-recoat/');
  const numbers = await page.locator('.all-steps ol.steps > li[data-step]').evaluateAll((steps) =>
    steps
      .map((step) => getComputedStyle(step, '::before'))
      .filter(({ content }) => content !== 'none')
      .map(({ position, cssFloat }) => `${position} ${cssFloat}`),
  );
  expect(numbers.length).toBeGreaterThan(5);
  expect(new Set(numbers)).toEqual(new Set(['static left']));
  await close();
});

it.each([
  ['/about/', '.onward'],
  ['/glossary/haze/', 'main > .links'],
  ['/sources/kind/standard/', 'main > .links'],
])('prints nothing of %s that serves to tap alone', async (address, selector) => {
  const { page, close } = await openPage(LETTER);
  await page.goto(address);
  await page.emulateMedia({ media: 'print' });
  const found = page.locator(selector);
  expect(await found.count()).toBeGreaterThan(0);
  expect(await found.filter({ visible: true }).count()).toBe(0);
  await close();
});

it('prints which coat with what was told, and a plan from a link without what serves a screen', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto('/which-coat/');
  await page.locator('.chosen .verdict').waitFor();
  const told = page.locator('.chosen > .for-paper');
  expect(await told.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  expect(await told.isVisible()).toBe(true);
  expect((await told.innerText()).toLowerCase()).toContain('kitchen table');
  await page.emulateMedia({ media: null });
  await page.goto('/schedule/');
  await page.getByLabel('Is there older paint or varnish on it?').selectOption('none');
  await page.getByRole('button', { name: 'Plan it' }).click();
  await page.locator('.plan .verdict').waitFor();
  await page.reload();
  await page.locator('.plan .verdict').waitFor();
  const of = page.locator('.plan > .of');
  expect(await of.innerText()).toContain('Change anything above.');
  await page.emulateMedia({ media: 'print' });
  const words = await of.innerText();
  expect(words).toContain('by day');
  expect(words).not.toMatch(/From the link|Change anything above/);
  await close();
});

it('prints below a verdict how each stage is told, and what it may turn out to be', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto('/defects/cloudy-film/stage-wet/', { waitUntil: 'networkidle' });
  await page.emulateMedia({ media: 'print' });
  // The part that tells it comes late: then who asks asks again.
  const below = () =>
    page.locator('.outcome').evaluate((outcome) => {
      dispatchEvent(new Event('beforeprint'));
      return getComputedStyle(outcome, '::after').content;
    });
  for (const { name, tell } of Object.values(STAGE_WORDS))
    await expect.poll(below).toContain(`${name}: ${tell}`);
  expect(await page.locator('.causes li').filter({ visible: true }).count()).toBeGreaterThan(3);
  await close();
});

it('prints the name of a reply in one line', async () => {
  const { page, close } = await openPage(LETTER);
  await page.goto(
    `/tell/#${new URLSearchParams({ say: 'Customer here: I bought a white dresser from you, yellow stains come through' })}`,
  );
  await page.locator('.understood .reply[open]').waitFor();
  await page.emulateMedia({ media: 'print' });
  const name = await page.locator('.reply > summary').boundingBox();
  expect(name?.height).toBeGreaterThan(10);
  expect(name?.height).toBeLessThan(50);
  await close();
});
