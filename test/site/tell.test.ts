/** The page that listens: a story in, a verdict or the next question out; wrong hearing taken off; the link carries it all. */
import { expect, it } from 'vitest';
import { itAtLength, oneInSo } from '../thorough.ts';
import { expectQuiet, openPage, PHONE, withoutPictures } from './browser.ts';
import { layCoat, makeCard } from './jobs-hands.ts';

withoutPictures();

it('begins with stories to tap, which are answered as her own and go once there is an answer', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto('/tell/');
  await page.getByRole('textbox', { name: /What it is/ }).waitFor();
  await page.locator('.begin a').first().tap();
  await page.getByRole('heading', { name: 'Hands off' }).waitFor();
  await expect.poll(() => page.locator('.begin').isVisible()).toBe(false);
  expect(await page.locator('.of-others').count()).toBe(0);
  await page.goBack();
  await page.locator('.begin a').first().waitFor();
  expectQuiet(opened);
  await opened.close();
});

it('hears a story, asks one thing, and says what to do', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/');
  await page
    .getByLabel('Say it, or paste what somebody wrote')
    .fill('water based poly went milky over navy paint ten minutes ago, it is still wet');
  await page.getByRole('button', { name: 'Go' }).click();
  await page.waitForURL('**/tell/**');
  await page.getByRole('heading', { name: 'Hands off' }).waitFor();
  await page.getByRole('button', { name: /Water-based clear.*not so/ }).waitFor();
  await expect
    .poll(() => page.locator('.likely a').first().getAttribute('href'))
    .toBe('/defects/cloudy-film/stage-wet/');
  // The link carries what was said and tapped; what is taken off stays off.
  await page.getByRole('button', { name: /^Wet .*not so/ }).click();
  await page.getByRole('heading', { name: 'How dry is it?' }).waitFor();
  const link = page.url();
  expect(await page.locator('.of-others').count()).toBe(0);
  const other = await openPage();
  await other.page.goto(link);
  await other.page.getByRole('heading', { name: 'How dry is it?' }).waitFor();
  await other.page.getByRole('button', { name: /Setting/ }).click();
  await other.page.getByRole('heading', { name: 'Hands off' }).waitFor();
  await other.page.locator('.of-others').getByRole('button', { name: 'Start your own' }).click();
  await expect.poll(() => other.page.locator('.understood').innerText()).toBe('');
  await expect.poll(() => other.page.getByRole('textbox', { name: /What it is/ }).inputValue()).toBe('');
  expect(await other.page.locator('.of-others').count()).toBe(0);
  for (const one of [opened, other]) {
    expectQuiet(one);
    await one.close();
  }
});

it('says hands off before it is known how dry it is, and answers first what was asked', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  const story =
    'I brushed poly on my coffee table 2 hrs ago and it is full of bubbles, can I wipe them off??';
  await page.goto(`/tell/#say=${encodeURIComponent(story)}`);
  const verdict = page.getByRole('heading', { name: 'Hands off until you know' });
  await verdict.waitFor();
  const [above, below] = [
    await verdict.boundingBox(),
    await page.getByRole('heading', { name: 'How dry is it?' }).boundingBox(),
  ];
  expect(above?.y).toBeLessThan(below?.y ?? 0);
  // What is usual of it while it dries, in the words of its page.
  await page.getByText('While it dries: The bubbles of a stroke have mostly broken by now.').waitFor();
  // The verdict heads the page; the name of the page is only read out.
  expect((await page.locator('h1').boundingBox())?.height).toBeLessThan(2);
  // Six kinds are told as what they have in common, and each strip is only as wide as its words.
  await page.getByRole('button', { name: /^A clear coat, kind not said/ }).waitFor();
  const widths = await page
    .locator('.heard .tape')
    .evaluateAll((strips) => strips.map((strip) => Math.round(strip.getBoundingClientRect().width)));
  expect(new Set(widths).size).toBeGreaterThan(2);
  await expect
    .poll(() => page.locator('.reply .post').first().textContent())
    .toMatch(/^No, do not wipe them yet\./);
  await page.getByRole('button', { name: /^Wet/ }).tap();
  await page.getByRole('heading', { name: 'Hands off', exact: true }).waitFor();
  expectQuiet(opened);
  await opened.close();
});

it('has the reply right below the verdict, whether or not it is known how dry it is, open for a post that asks', async () => {
  const opened = await openPage({ ...PHONE, permissions: ['clipboard-read', 'clipboard-write'] });
  const { page } = opened;
  const reply = page.locator('.reply');
  /** What the reply stands below, and what comes after it. */
  const around = () =>
    reply.evaluate((one) => [
      one.previousElementSibling?.querySelector('h2')?.textContent,
      one.nextElementSibling?.className,
    ]);
  await page.goto('/tell/');
  await page.getByLabel(/^What it is, what you did/).fill('milky over navy, wet');
  await page.getByRole('button', { name: 'Tell me' }).tap();
  await page.getByRole('heading', { name: 'Hands off', exact: true }).waitFor();
  await expect.poll(() => around()).toEqual(['Hands off', 'heard']);
  expect(await reply.getAttribute('open')).toBeNull();
  const post =
    'Hi all! My water-based poly over navy looks cloudy in spots and I have no idea why. What can I do? Thank you!';
  await page.goto('/tell/');
  await page.getByLabel(/^What it is, what you did/).fill(post);
  await page.getByRole('button', { name: 'Tell me' }).tap();
  await page.getByRole('heading', { name: 'If you know: how dry is it?' }).waitFor();
  await expect.poll(() => around()).toEqual(['Hands off until you know', 'next']);
  // It is open by itself, and the button says itself that it copied, aloud as well.
  await reply.getByRole('button', { name: 'Copy it' }).tap();
  await reply.getByRole('button', { name: 'Copied ✓' }).waitFor();
  await expect.poll(() => reply.getByRole('status').first().textContent()).toBe('Copied.');
  await expect
    .poll(() => page.evaluate(() => navigator.clipboard.readText()))
    .toBe(await reply.locator('.post').first().textContent());
  await reply.getByRole('button', { name: 'Copy it' }).waitFor();
  expectQuiet(opened);
  await opened.close();
});

it('offers the coat on the clock as the answer to how dry it is, and starts no second clock for it', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/clock/');
  await page.locator('.go').click();
  await page.locator('.on-clock').waitFor();
  await page.goto('/tell/');
  await page.getByLabel(/^What it is, what you did/).fill('my satin poly went milky');
  await page.getByRole('button', { name: 'Tell me' }).click();
  await page.getByRole('button', { name: /^It is My piece, now wet/ }).click();
  await page.getByRole('heading', { name: /^Hands off/ }).waitFor();
  const clock = page.locator('.understood').getByRole('link', { name: /Until when\?/ });
  await expect.poll(() => clock.innerText()).toMatch(/My piece is on the clock\s+Hands off until/);
  // Of somebody else's piece the own clock says nothing.
  await page.getByRole('button', { name: 'Start anew' }).click();
  await page.getByLabel(/^What it is, what you did/).fill('my sister says her poly went milky');
  await page.getByRole('button', { name: 'Tell me' }).click();
  await page.getByRole('heading', { name: 'How dry is it?' }).waitFor();
  expect(await page.getByRole('button', { name: /^It is My piece/ }).count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

it('takes the piece on the clock along with its card, to the flaw that it leads on to', async () => {
  const opened = await openPage();
  const { page } = opened;
  await makeCard(page, 'Oak hall table');
  await layCoat(page);
  await page.goto('/tell/');
  await page.getByLabel(/^What it is, what you did/).fill('there are runs on the leg');
  await page.getByRole('button', { name: 'Tell me' }).click();
  await page.getByRole('button', { name: /^It is Oak hall table, now/ }).click();
  // What the card has told is not asked for again.
  for (const known of [/^Water-based clear/, /^Chalk paint/, /^Is there older paint .* No: only mine/])
    await page.getByRole('button', { name: known }).waitFor();
  await page.goto('/defects/runs-and-sags/stage-wet/');
  await page.getByRole('link', { name: 'Job card: Oak hall table' }).first().waitFor();
  expectQuiet(opened);
  await opened.close();
});

it('puts harm that is under way before any page and before the film', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto(`/tell/#say=${encodeURIComponent('my linseed rags are hot')}`);
  await page.locator('.stop-rule', { hasText: 'Everyone out' }).waitFor();
  const told = await page.locator('.understood').innerText();
  expect(told).not.toContain('This minute.');
  expect(told).not.toContain('A page for that');
  // Where nothing presses, the page stands first.
  await page.goto(`/tell/#say=${encodeURIComponent('how do I know what a finish is')}`);
  await page.getByRole('heading', { name: 'A page for that' }).waitFor();
  // And what the tables answer stands before it.
  await page.goto(`/tell/#say=${encodeURIComponent('how many coats of shellac')}`);
  await page.locator('.page-for > p', { hasText: /^Shellac: .* for everyday use/ }).waitFor();
  // Beside a stop nothing says how to sand.
  await page.goto(
    `/tell/#say=${encodeURIComponent('1890s painted trunk, what grit between coats of shellac')}`,
  );
  await page.getByText('The old finish may hold lead').first().waitFor();
  expect(await page.locator('.understood').innerText()).not.toMatch(/\bP\d{3}\b/);
  expectQuiet(opened);
  await opened.close();
});

it('shows of a coat that is still drying what it may turn out to be, and calls it nothing yet', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto(`/tell/#say=${encodeURIComponent('water based poly 20 minutes ago still sticky')}`);
  await page.getByRole('heading', { name: 'Hands off' }).waitFor();
  await page.getByRole('heading', { name: /^Where it is still so/ }).waitFor();
  expect(await page.locator('.likely').innerText()).not.toMatch(/likely|surely|may be/);
  expectQuiet(opened);
  await opened.close();
});

it('says how much of a long post was read, and leads to help where the rest tells of harm', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto('/tell/');
  const field = page.getByRole('textbox', { name: /What it is/ });
  const long = 'The varnish on my table is cloudy and I like it not. '.repeat(80);
  expect(long.length).toBeGreaterThan(4000);
  await field.fill(`${long} And then my son swallowed some thinner.`);
  await page.getByRole('button', { name: 'Tell me' }).tap();
  const note = page.getByText('Only the first 4,000 letters were read.');
  await note.waitFor();
  expect(await note.getByRole('link').getAttribute('href')).toBe('/safety/emergency/');
  await page.goto(`/tell/#say=${encodeURIComponent(long)}`);
  await note.waitFor();
  await expect.poll(() => note.getByRole('link').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

it('leads on to the flaw where only its cause tells what to do', async () => {
  const opened = await openPage();
  const { page } = opened;
  const story = 'water based poly on a navy dresser last week, there are bubbles in it, it sands to powder';
  await page.goto(`/tell/#say=${encodeURIComponent(story)}`);
  await page.getByRole('heading', { name: 'Most likely: Bubbles in the coat' }).waitFor();
  await expect
    .poll(() => page.getByRole('link', { name: /^What to do about it/ }).getAttribute('href'))
    .toBe('/defects/bubbles/stage-recoatable/');
  expectQuiet(opened);
  await opened.close();
});

it('says what saves in her case before the numbers, and folds what else may have happened', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto('/tell/#say=thinner+splashed+in+my+eye');
  const calm = page.locator('.stop-rule .calm').first();
  await expect.poll(() => calm.innerText()).toMatch(/rinse the eye/);
  const top = async (of: string) => (await page.locator(of).first().boundingBox())?.y ?? 0;
  expect(await top('.stop-rule .calm')).toBeLessThan(await top('.stop-rule .calls'));
  expect(await page.locator('.orders').isVisible()).toBe(false);
  await page.getByText('Something else has happened').click();
  await expect.poll(() => page.locator('.orders').innerText()).toMatch(/Swallowed:/);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('lets a caution that words called for be taken off, and keeps it off in the link', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.goto(`/tell/#say=${encodeURIComponent('my oily rags are dry, the wax smears')}`);
  const stop = page.locator('.stop-rule', { hasText: 'Oily rags catch fire by themselves' });
  await stop.waitFor();
  await page.getByRole('button', { name: /^“oily rags.*not so/ }).click();
  await stop.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Wax .*not so/ }).waitFor();
  expect(page.url()).toContain('off=rule-oily-rags');
  await page.reload();
  await page.getByRole('button', { name: /^Wax .*not so/ }).waitFor();
  await expect.poll(() => stop.count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('answers for every flaw that is named, and drops one only when told to', async () => {
  const opened = await openPage();
  const { page } = opened;
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/tell/#say=my+dresser+looks+milky+and+bubbly%2C+still+wet');
  await page.getByText('The same for both that you name.').waitFor();
  // On a phone the story is a line, and the verdict stands in the first view.
  await expect.poll(() => page.getByRole('textbox', { name: /What it is/ }).isVisible()).toBe(false);
  const verdict = page.getByRole('heading', { name: 'Hands off' });
  await expect.poll(async () => (await verdict.boundingBox())?.y).toBeLessThan(400);
  const flaws = () =>
    page.locator('.likely a').evaluateAll((links) => links.map((a) => a.getAttribute('href')));
  await expect
    .poll(flaws)
    .toEqual(expect.arrayContaining(['/defects/cloudy-film/stage-wet/', '/defects/bubbles/stage-wet/']));
  await page.getByRole('button', { name: /^Bubbles.*not so/ }).click();
  await page.getByText('The same for both that you name.').waitFor({ state: 'detached' });
  await expect.poll(flaws).not.toContain('/defects/bubbles/stage-wet/');
  await page.getByRole('button', { name: 'Change' }).click();
  await expect.poll(() => page.getByRole('textbox', { name: /What it is/ }).isVisible()).toBe(true);
  expectQuiet(opened);
  await opened.close();
});

it('shows hostile words as text, and without script leads on', async () => {
  const opened = await openPage();
  await opened.page.goto(`/tell/#say=${encodeURIComponent('<img src=x onerror=alert(1)> milky')}`);
  await opened.page.getByRole('heading', { name: 'What it looks like to me' }).waitFor();
  expect(await opened.page.locator('img[src="x"], img[onerror]').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
  const plain = await openPage({ javaScriptEnabled: false });
  await plain.page.goto('/tell/');
  await plain.page.getByRole('link', { name: /Walk me through it/ }).click();
  await plain.page.waitForURL('**/see/');
  await plain.close();
});

itAtLength('answers what is asked of a coat yet to be laid with its page', async () => {
  const opened = await openPage();
  await opened.page.goto('/tell/#say=what+coat+on+a+kitchen+table');
  const strip = opened.page.locator('.page-for a');
  await strip.waitFor();
  await expect.poll(() => strip.getAttribute('href')).toBe('/which-coat/#piece=tabletop');
  expect(await opened.page.locator('.next, .likely').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

itAtLength(
  'says of answers in a link that they are somebody else’s, and of her own that they are hers',
  async () => {
    const own = await openPage();
    await own.page.goto('/see/');
    await own.page.locator('[data-answer=no]').click();
    await own.page.waitForURL(/\/see\/.+/);
    await expect.poll(() => own.page.locator('#trail').innerText()).toBe('So far');
    const other = await openPage();
    await other.page.goto(own.page.url());
    await expect.poll(() => other.page.locator('#trail').innerText()).toBe('From the link');
    await other.page.getByRole('button', { name: 'Start your own' }).click();
    await other.page.waitForURL('**/see/');
    for (const one of [own, other]) {
      expectQuiet(one);
      await one.close();
    }
  },
);

it('goes back an answer at a time, and loses neither words nor the other answers', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto('/tell/');
  await page.getByRole('textbox', { name: /What it is/ }).fill('there is something wrong with my finish');
  await page.getByRole('button', { name: 'Tell me' }).tap();
  await page.getByRole('heading', { name: 'How dry is it?' }).waitFor();
  await page.getByRole('button', { name: /^Cured/ }).tap();
  const next = page.locator('.next h2');
  await expect.poll(() => next.innerText()).not.toBe('How dry is it?');
  const second = await next.innerText();
  await page.locator('.next').getByRole('button', { name: 'No', exact: true }).tap();
  await expect.poll(() => next.innerText()).not.toBe(second);
  await page.goBack();
  await expect.poll(() => next.innerText()).toBe(second);
  await expect
    .poll(() => page.locator('.told-line q').innerText())
    .toBe('there is something wrong with my finish');
  await page.getByRole('button', { name: /^Cured.*not so/ }).waitFor();
  await page.goForward();
  await expect.poll(() => next.innerText()).not.toBe(second);
  expectQuiet(opened);
  await opened.close();
});

it('guesses no flaw where none is told: the groups of pictures ask what looks wrong', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto('/tell/');
  const field = page.getByRole('textbox', { name: /What it is/ });
  await field.fill('hello everyone love this group, my grandma left me a chair');
  await page.getByRole('button', { name: 'Tell me' }).tap();
  await page.getByRole('heading', { name: 'What looks wrong with it?' }).waitFor();
  expect(await page.locator('.likely').count()).toBe(0);
  await page.getByText('Spots, bubbles and craters').tap();
  await page.getByRole('link', { name: 'Bubbles in the coat' }).waitFor();
  expect(await page.locator('.stories').isVisible()).toBe(false);
  // What looks wrong is told: the groups go.
  await page.getByRole('button', { name: 'Change' }).tap();
  await field.fill('my grandma left me a chair, and the varnish is full of bubbles');
  await page.getByRole('button', { name: 'Tell me' }).tap();
  await page.locator('.likely a').first().waitFor();
  expect(await page.locator('.begin').isVisible()).toBe(false);
  expectQuiet(opened);
  await opened.close();
});

it('does not ask on the page of the flaw what was told here', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  const story = 'My spray can sputtered and left raised blobs on a door. They have dried hard.';
  await page.goto('/');
  await page.getByLabel('Say it, or paste what somebody wrote').fill(story);
  await page.getByRole('button', { name: 'Go' }).tap();
  await page.waitForURL('**/tell/**');
  await page.locator('.likely a').first().tap();
  // Both questions of that tree are passed over: was it sprayed, and does it stand up.
  await page.waitForURL('**/defects/spatter/**/was-sprayed-yes/stands-up-yes/');
  expectQuiet(opened);
  await opened.close();
});

it.each(
  oneInSo(3, [
    ['Wet', /^Hands off/],
    ['Setting', /^Hands off/],
    ['Dry to the touch', /^Leave it to dry/],
    ['Ready for a coat', /^Find the cause first/],
    ['Cured', /^Find the cause first/],
  ] as const),
)('has the verdict in sight after a tap on how dry it is: %s', async (stage, verdict) => {
  const opened = await openPage({ ...PHONE, viewport: { width: 390, height: 844 } });
  const { page } = opened;
  const story = 'little bubbles all over the dresser this morning, I coated it last night';
  await page.goto('/tell/');
  await page.getByRole('textbox', { name: /What it is/ }).fill(story);
  await page.getByRole('button', { name: 'Tell me' }).tap();
  await page.getByRole('button', { name: new RegExp(`^${stage}`) }).tap();
  const heading = page.locator('.understood h2.verdict');
  await expect.poll(() => heading.first().innerText()).toMatch(verdict);
  const top = async () => (await heading.first().boundingBox())?.y;
  await expect.poll(top).toBeLessThan(200);
  expect(await top()).toBeGreaterThanOrEqual(0);
  // While anything is asked, that comes before an answer to send.
  const next = page.locator('.understood .next');
  if (await next.count())
    expect((await next.boundingBox())?.y).toBeLessThan((await page.locator('.reply').boundingBox())?.y ?? 0);
  expectQuiet(opened);
  await opened.close();
});

it.each([
  ['there are runs on the door, poly still wet', 'lift', /nearly dry brush/],
  ['a pool in the corner, still wet', 'leave', /hangs on one more answer/],
])('says of a wet coat what the page of the flaw says, on its band: %s', async (story, band, says) => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  await page.goto(`/tell/#say=${encodeURIComponent(story)}`);
  const verdict = page.locator('.understood h2.verdict');
  await verdict.waitFor();
  await expect.poll(() => verdict.getAttribute('class')).toBe(`verdict ${band}`);
  const first = page.locator('.understood section').first();
  await expect.poll(() => first.innerText()).toMatch(says);
  expect(await first.innerText()).not.toMatch(/tweezers|No brush/);
  expectQuiet(opened);
  await opened.close();
});

it('says nothing of blotting a ring that nobody spilled now', async () => {
  const opened = await openPage(PHONE);
  const { page } = opened;
  const story = 'My client called, the table I did two years ago has a white ring from a hot cup';
  await page.goto(`/tell/#say=${encodeURIComponent(story)}`);
  await page.getByRole('heading', { name: 'Find the cause first' }).waitFor();
  const told = await page.locator('.understood').innerText();
  expect(told).not.toMatch(/This minute|Blot/);
  expect(told).not.toContain('375 days');
  expectQuiet(opened);
  await opened.close();
});
