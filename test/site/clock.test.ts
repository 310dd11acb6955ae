/** The coat clock in a real browser, with a clock that the test turns. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { HOUR_MS, MINUTE_MS } from '#engine/plain/time.ts';
import { LOCAL_KEYS } from '../../site/shared/storage-keys.ts';
import { itAtLength, someOf } from '../thorough.ts';
import { movedOn } from './at-rest.ts';
import { expectQuiet, type Opened, openPage, PHONE, withoutPictures } from './browser.ts';

withoutPictures();

const DENVER = { ...PHONE, timezoneId: 'America/Denver', locale: 'en-US' } as const;

const openAt = async (time: string, address = '/clock/'): Promise<Opened> => {
  const opened = await openPage(DENVER);
  await opened.page.clock.install({ time: new Date(time) });
  await opened.page.goto(address);
  return opened;
};

/** Lays a coat by what the can says: dry to the touch after so many minutes. */
const lay = async ({ page }: Opened, touch: readonly [string, string], piece = 'Navy dresser') => {
  await page.fill('[name=air]', '73.4');
  await unfold({ page });
  await page.fill('[name=piece]', piece);
  await page.fill('[name=label-touch]', touch[0]);
  await page.fill('[name=label-touch-to]', touch[1]);
  await page.locator('.go').tap();
};

/** Every folded part of the form, open. */
const unfold = ({ page }: Pick<Opened, 'page'>) =>
  page.locator('form.lay').evaluate((form) => {
    for (const fold of form.querySelectorAll('details')) fold.open = true;
  });

const verdict = ({ page }: Opened) => page.locator('.on-clock .verdict').first().textContent();

it('lays a coat in one tap and says first until when hands stay off', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  await opened.page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toMatch(/^Hands off until \d+:\d\d/);
  await expect.poll(() => opened.page.locator('[data-part=stage]').textContent()).toBe('Now: wet.');
  expectQuiet(opened);
  await opened.close();
});

it('speaks in the band of the first page, which has its own words while no coat runs', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.goto('/');
  const band = page.locator('.verdict.first');
  const first = (await band.innerText()).trim();
  await page.goto('/clock/');
  await lay(opened, ['40', '60']);
  await page.locator('.on-clock').waitFor();
  await page.goto('/');
  // The late end alone, in one line, and the band no higher than its lines.
  await expect
    .poll(() => band.innerText())
    .toMatch(/^Navy dresser\s+· wet\s+Hands off until \d+:\d\d [AP]M$/);
  const room = await band.evaluate((one) => {
    const { paddingTop, paddingBottom } = getComputedStyle(one);
    const words = one.querySelector('a')?.getBoundingClientRect().height ?? 0;
    return (
      one.getBoundingClientRect().height -
      Number.parseFloat(paddingTop) -
      Number.parseFloat(paddingBottom) -
      words
    );
  });
  expect(room).toBeLessThan(16);
  await expect.poll(() => band.locator('a').getAttribute('href')).toBe('/clock/');
  // Told once: no strip over the foot says the same.
  expect(await page.locator('hd-clock a').count()).toBe(0);
  const other = await openPage();
  await other.page.goto('/');
  expect((await other.page.locator('.verdict.first').innerText()).trim()).toBe(first);
  expectQuiet(opened);
  await opened.close();
  await other.close();
});

it('lives through a reload, a sleeping phone and midnight', async () => {
  const opened = await openAt('2026-11-25T06:30:00Z');
  await lay(opened, ['40', '60']);
  await expect
    .poll(() => verdict(opened))
    .toBe('Hands off until tomorrow 12:30 AM, 12:10 AM at the earliest');
  await opened.page.reload();
  await expect
    .poll(() => verdict(opened))
    .toBe('Hands off until tomorrow 12:30 AM, 12:10 AM at the earliest');
  await opened.page.clock.fastForward(45 * MINUTE_MS);
  await expect.poll(() => verdict(opened)).toBe('Hands off until 12:30 AM');
  await opened.page.clock.fastForward(20 * MINUTE_MS);
  await expect.poll(() => verdict(opened)).toContain('Leave it to dry until');
  expectQuiet(opened);
  await opened.close();
});

itAtLength('is not moved by the night when the clock goes back', async () => {
  // Denver, 1 November 2026: at 08:00Z it goes from 2:00 AM back to 1:00 AM.
  const opened = await openAt('2026-11-01T07:40:00Z');
  await lay(opened, ['40', '59']);
  await expect.poll(() => verdict(opened)).toBe('Hands off until 1:39 AM MST, 1:20 AM MST at the earliest');
  await opened.page.clock.fastForward(45 * MINUTE_MS);
  await expect.poll(() => verdict(opened)).toBe('Hands off until 1:39 AM MST');
  await opened.close();
});

itAtLength('runs several coats at once and lets one be taken off', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  await lay(opened, ['40', '60']);
  await opened.page.clock.fastForward(6 * MINUTE_MS);
  await opened.page.locator('details.new > summary').click();
  await opened.page.fill('[name=piece]', 'Chair');
  await opened.page.locator('.go').tap();
  await expect
    .poll(() => opened.page.locator('.on-clock h2').allTextContents())
    .toEqual(['Navy dresser', 'Chair']);
  // What hands do now, then what comes next of each, the soonest on top; only the one in the questions stands open, where
  // its state is in large below.
  const lines = opened.page.locator('.one-of-many > summary');
  await expect
    .poll(() => lines.allInnerTexts())
    .toEqual([
      expect.stringMatching(/^Hands off until \d+:\d\d [AP]M\s+Navy dresser: next coat from/),
      expect.stringMatching(/^Chair: next coat from/),
    ]);
  await expect
    .poll(() => opened.page.locator('.one-of-many[open] h2').allInnerTexts())
    .toEqual([expect.stringContaining('Chair')]);
  // What holds for all is said once.
  await expect.poll(() => opened.page.locator('[data-part=nights]').count()).toBe(1);
  await opened.page.locator('.one-of-many[open] [data-act=off]').tap();
  await expect.poll(() => opened.page.locator('.on-clock h2').allTextContents()).toEqual(['Navy dresser']);
  await opened.page.getByRole('button', { name: 'Start it again' }).tap();
  await expect
    .poll(() => opened.page.locator('.on-clock h2').allTextContents())
    .toEqual(['Navy dresser', 'Chair']);
  await expect.poll(() => opened.page.getByRole('button', { name: 'Start it again' }).count()).toBe(0);
  await opened.close();
});

it.each(
  someOf(1, [
    ['air', '140', 'air'],
    ['humidity', '130', 'humidity'],
    ['air', 'warm', 'air'],
    ['label-recoat', '0', 'label-recoat'],
  ]),
)('tells beside the field that %s cannot be %s, and loses nothing', async (name, value, at) => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await unfold(opened);
  await page.fill('[name=piece]', 'Chair');
  await page.fill(`[name=${name}]`, value);
  await page.locator('.go').tap();
  // A fault stands beside its field before the tap already; that the form was read and refused is said below.
  await page.locator('#clock-form-fault').getByText('The clock has not started').waitFor();
  const field = page.locator(`#clock-${at}`);
  const told = await field.getAttribute('aria-describedby');
  await expect.poll(async () => (await page.locator(`#${told}`).textContent())?.length).toBeGreaterThan(20);
  await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
  expect(await page.locator('.on-clock').count()).toBe(0);
  await page.reload();
  await expect.poll(() => page.inputValue(`[name=${name}]`)).toBe(value);
  await expect.poll(() => page.inputValue('[name=piece]')).toBe('Chair');
  await opened.close();
});

itAtLength('tells a coat that would be laid tomorrow, and a surface below the dew point', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.locator('[name=when][value=at]').check();
  await page.fill('[name=at]', '2026-11-25T09:00');
  await page.fill('[name=humidity]', '80');
  await unfold(opened);
  await expect.poll(() => page.locator('#clock-at-fault').textContent()).toContain('tomorrow 9:00 AM');
  await page.fill('[name=at]', '2026-11-24T09:30');
  await page.locator('[name=at]').blur();
  await expect.poll(() => page.locator('#clock-at-fault').textContent()).toBe('');
  // Until a new judgement is here the words of the one before stand: these do not yet say what is waited for below.
  const weather = page.locator('.weather');
  await expect.poll(() => weather.textContent()).not.toBe('');
  expect(await weather.textContent()).not.toContain('Do not lay it');
  await page.fill('[name=surface]', '45');
  await page.locator('[name=surface]').blur();
  await expect.poll(() => page.locator('#clock-surface-fault').textContent()).toContain('dew point');
  await expect.poll(() => weather.textContent()).toContain('Do not lay it');
  await page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toBe('Hands off, and no time can be told');
  await opened.close();
});

itAtLength('tells a clock of the phone that went back', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  await lay(opened, ['40', '60']);
  await expect.poll(() => verdict(opened)).toContain('Hands off until');
  await opened.page.clock.setFixedTime(new Date('2026-11-24T14:00:00Z'));
  await opened.page.reload();
  await opened.page.locator('.trouble').getByText('gone back').waitFor();
  await expect.poll(() => verdict(opened)).toBe('Hands off, and no time can be told');
  await opened.close();
});

itAtLength('tells a product that it does not know', async () => {
  const opened = await openPage(DENVER);
  await opened.page.addInitScript(() => {
    const coat = {
      id: 'a',
      piece: 'Chair',
      product: 'moon-dust',
      laidAt: Date.now(),
      celsius: 20,
      relativeHumidity: 0.5,
      coatNumber: 1,
    };
    localStorage.setItem(
      'halfdry.clock',
      JSON.stringify({ version: 1, coats: [coat], products: {}, seenAt: 0 }),
    );
  });
  await opened.page.goto('/clock/');
  await opened.page.getByText('moon-dust').waitFor();
  await opened.page.goto('/');
  await opened.page.locator('.first .in-band').getByText('Open the clock').waitFor();
  expectQuiet(opened);
  await opened.close();
});

it.each(
  someOf(1, [
    [
      'denied',
      () => {
        const refuse = () => {
          throw new DOMException('denied', 'SecurityError');
        };
        Object.defineProperty(window, 'localStorage', { get: refuse });
        IDBFactory.prototype.open = refuse;
      },
    ],
    [
      'full',
      () => {
        const refuse = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
        Storage.prototype.setItem = refuse;
        IDBObjectStore.prototype.put = refuse;
      },
    ],
  ]),
)('still runs in the page where storage is %s, and says so', async (_name, refuse) => {
  const opened = await openPage(DENVER);
  await opened.page.addInitScript(refuse);
  await opened.page.goto('/clock/');
  await opened.page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toContain('Hands off until');
  await opened.page.locator('.trouble').getByText('keeps nothing').waitFor();
  expectQuiet(opened);
  await opened.close();
});

itAtLength('leads from the first page to hands off until … in two taps at most', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.fill('[name=air]', '64.4');
  await page.fill('[name=humidity]', '65');
  await page.locator('.go').tap();
  await page.locator('.on-clock').waitFor();
  await page.clock.fastForward(12 * MINUTE_MS);
  await page.goto('/');
  await page.locator('.first .in-band').getByText('setting').waitFor();
  await page.locator('.sights summary').getByText('White, milky or foggy').tap();
  await page.locator('.sights a[href="/defects/cloudy-film/"]').tap();
  await page.waitForURL('**/stage-setting/**');
  await expect.poll(() => page.locator('#verdict').textContent()).toMatch(/^Hands off until \d+:\d\d/);
  // Told once: neither the line below it nor a strip over the foot has the time again.
  expect(await page.locator('.again').textContent()).not.toMatch(/\d+:\d\d/);
  await page.locator('hd-clock a').waitFor({ state: 'attached' });
  expect(await page.locator('hd-clock a').isVisible()).toBe(false);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('lets her word win over the clock until she takes it back', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.locator('.go').tap();
  await page.locator('.on-clock').waitFor();
  await page.clock.fastForward(12 * MINUTE_MS);
  await page.goto('/defects/cloudy-film/#how-dry');
  await page.locator('.by-clock').getByText('The clock says: setting').waitFor();
  // In its own place: the question about old paint stays.
  await expect.poll(() => page.locator('.ask-age hd-told').count()).toBe(1);
  await page.locator('.stages a[href*=stage-dry-to-touch]').tap();
  await page.waitForURL('**/stage-dry-to-touch/**');
  await page.getByText('You said: dry to the touch. The clock says: setting').waitFor();
  expect(await page.locator('#verdict').textContent()).not.toContain('until');
  await page.goto('/defects/bubbles/#how-dry');
  await page.getByRole('button', { name: 'Go by the clock again' }).tap();
  await page.waitForURL('**/defects/bubbles/stage-setting/**');
  await opened.close();
});

itAtLength('covers no answer and moves nothing where the strip appears', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.locator('.go').tap();
  await page.locator('.on-clock').waitFor();
  await page.goto('/defects/lap-marks/cause/', { waitUntil: 'networkidle' });
  await page.locator('hd-clock a').waitFor();
  for (const answer of ['yes', 'no', 'unsure'])
    await page.locator(`[data-answer=${answer}]`).tap({ trial: true });
  await page.goto('/', { waitUntil: 'networkidle' });
  await page.locator('.first .in-band').waitFor();
  expect((await movedOn(page)).score).toBe(0);
  await opened.close();
});

itAtLength('writes the reminders as a calendar file', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  await lay(opened, ['40', '60']);
  const [download] = await Promise.all([
    opened.page.waitForEvent('download'),
    opened.page.locator('[data-act=remind]').tap(),
  ]);
  const file = readFileSync((await download.path()) ?? '', 'utf8');
  expect(download.suggestedFilename()).toMatch(/\.ics$/);
  expect(file).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*END:VCALENDAR\r?\n?$/);
  expect(file).toContain('DTSTART:20261124T180000Z');
  expect(file).toContain('Navy dresser: dry to the touch');
  expect(file.match(/BEGIN:VALARM/g)).toHaveLength(5);
  for (const line of file.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  expectQuiet(opened);
  await opened.close();
});

itAtLength('turns the units over and remembers them', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.fill('[name=air]', '68');
  await page.locator('[name=units][value=metric]').check();
  await expect.poll(() => page.inputValue('[name=air]')).toBe('20');
  await page.reload();
  await expect.poll(() => page.locator('[name=units][value=metric]').isChecked()).toBe(true);
  await expect.poll(() => page.locator('label[for=clock-air]').textContent()).toContain('°C');
  await opened.close();
});

it('shows the times to reckon by hand where no script runs', async () => {
  const { page, close } = await openPage({ ...DENVER, javaScriptEnabled: false });
  await page.goto('/clock/');
  expect(await page.locator('.by-hand tbody').first().locator('tr').count()).toBeGreaterThanOrEqual(16);
  expect(await page.locator('.by-hand').isVisible()).toBe(true);
  expect(await page.locator('.lay').isVisible()).toBe(false);
  await close();
});

itAtLength('has steps for gloves', async () => {
  const { page, close } = await openPage(DENVER);
  await page.goto('/clock/');
  // Before it all is hidden, and none would be looked at.
  await page.locator('.lay .go').waitFor();
  for (const target of await page.locator('.stepper button:visible, .pick span:visible, .go, select').all())
    expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(56);
  await close();
});

it('tells a coat in a cold night to rest, and counts it anew where it is in the warm', async () => {
  const opened = await openAt('2026-11-29T23:00:00Z');
  const { page } = opened;
  await page.selectOption('[name=product]', 'oil-based-polyurethane');
  await page.fill('[name=air]', '65');
  await unfold(opened);
  await page.fill('[name=night]', '40');
  await page.locator('[name=coat]').focus();
  await expect.poll(() => page.locator('.weather').innerText()).toContain('the night spoils it');
  await page.locator('.go').tap();
  await page.locator('[data-answer=lies]').tap();
  await expect.poll(() => verdict(opened)).toBe('Hands off, and no time can be told');
  await page.clock.fastForward(16 * HOUR_MS);
  await expect.poll(() => page.locator('.on-clock .why').innerText()).toContain('it rests until morning');
  expect(await page.locator('.on-clock').innerText()).not.toContain('Dry to the touch');
  await page.getByRole('button', { name: 'It is in the warm now' }).tap();
  await page.fill('[name=air]', '70');
  await page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toContain('Hands off until');
  expect(await page.locator('.on-clock').count()).toBe(1);
  expectQuiet(opened);
  await opened.close();
});

it('asks a measured surface anew for the next coat, and shows one that was typed before', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await unfold(opened);
  await page.fill('[name=surface]', '44');
  await page.locator('[name=coat]').focus();
  await page.reload();
  await expect.poll(() => page.locator('[name=surface]').isVisible()).toBe(true);
  expect(await page.inputValue('[name=surface]')).toBe('44');
  await page.fill('[name=piece]', 'Another chair');
  await page.locator('[name=coat]').focus();
  await expect.poll(() => page.inputValue('[name=surface]')).toBe('');
  await opened.close();
});

it('lets a coat from a spray can have the next one within the hour, then none for two days', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.selectOption('[name=product]', 'aerosol-lacquer');
  const before = page.locator('output[name=weather] > .label').first();
  // Until she has said what is mixed into it, the verdict hangs on that.
  await expect.poll(() => before.innerText()).toBe('Fine for this coat, if nothing is mixed into it');
  await page.selectOption('[name=hardener]', 'none');
  await expect.poll(() => before.innerText()).toBe('Fine for this coat');
  await page.fill('[name=air]', '73.4');
  await page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toMatch(/^Hands off until/);
  await page.clock.fastForward('45:00');
  await expect.poll(() => verdict(opened)).toBe('Ready for the next coat until 11:00 AM');
  await page.clock.fastForward('20:00');
  await expect.poll(() => verdict(opened)).toBe('No coat on it until Thu, Nov 26, 10:00 AM');
  await expect
    .poll(() => page.locator('[data-part=stage]').textContent())
    .toBe('Now: dry, and takes no coat for now.');
  await expect
    .poll(() => page.locator('[data-moment=recoat]').innerText())
    .toMatch(/from\s+Thu, Nov 26, 10:00 AM/);
  // One end alone is asked for, beside its field.
  await page.locator('[data-act=next]').tap();
  await unfold(opened);
  await page.fill('[name=label-no-coat]', '8');
  await page.locator('.go').tap();
  await expect.poll(() => page.locator('#clock-label-no-coat-fault').innerText()).toMatch(/^Give both/);
  expectQuiet(opened);
  await opened.close();
});

it('keeps a can by its name, on top of the top coats, in the plan too', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.selectOption('[name=product]', 'shellac');
  await unfold(opened);
  await page.fill('[name=label-recoat]', '3');
  await page.getByLabel('Name of this can').fill('Blue can');
  await page.getByRole('button', { name: 'Keep this can' }).click();
  await page.selectOption('[name=product]', 'paste-wax');
  await expect.poll(() => page.inputValue('[name=label-recoat]')).toBe('');
  await page.selectOption('[name=product]', { label: 'Blue can' });
  await expect.poll(() => page.inputValue('[name=product]')).toBe('shellac');
  await expect.poll(() => page.inputValue('[name=label-recoat]')).toBe('3');
  await page.goto('/schedule/');
  await page.selectOption('[name=product]', { label: 'Blue can' });
  await expect.poll(() => page.inputValue('[name=product]')).toBe('shellac');
  await expect.poll(() => page.inputValue('[name=can-recoat]')).toBe('3');
  await page.locator('#plan-can > summary').click();
  await page.getByRole('button', { name: 'Delete it' }).click();
  await expect.poll(() => page.locator('optgroup').count()).toBe(0);
  expectQuiet(opened);
  await opened.close();
});

it('takes a number with its unit, and says beside the field what was reckoned from another unit', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.fill('[name=air]', '21 °C');
  await page.fill('[name=humidity]', '50 %');
  await page.locator('[name=humidity]').blur();
  await expect.poll(() => page.inputValue('[name=air]')).toBe('70');
  await expect.poll(() => page.inputValue('[name=humidity]')).toBe('50');
  await expect.poll(() => page.locator('#clock-air-fault').textContent()).toBe('21 °C is 70 °F.');
  await expect.poll(() => page.locator('#clock-humidity-fault').textContent()).toBe('');
  await expect.poll(() => page.locator('[aria-invalid]').count()).toBe(0);
  await page.fill('[name=air]', '60-70');
  await page.locator('[name=air]').blur();
  await expect
    .poll(() => page.locator('#clock-air-fault').textContent())
    .toBe('Give one number for the air temperature, not a range.');
  await page.fill('[name=air]', '70F');
  await page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toMatch(/^Hands off until \d+:\d\d/);
  expectQuiet(opened);
  await opened.close();
});

it.each([
  ['en-US', /^Hands off until \d+:\d\d [AP]M/, '24', /^Hands off until \d\d:\d\d(?! [AP]M)/],
  ['en-GB', /^Hands off until \d\d:\d\d(?! [AP]M)/, '12', /^Hands off until \d+:\d\d [AP]M/],
  ['de-DE', /^Hands off until \d\d:\d\d(?! [AP]M)/, '12', /^Hands off until \d+:\d\d [AP]M/],
] as const)('prints times as %s has them, unless she chooses', async (locale, says, other, then) => {
  const opened = await openPage({ ...DENVER, locale });
  const { page } = opened;
  await page.clock.install({ time: new Date('2026-11-24T20:00:00Z') });
  await page.goto('/clock/');
  await page.locator('.go').tap();
  await expect.poll(() => verdict(opened)).toMatch(says);
  await page.locator('[data-part=new]').evaluate((fold: HTMLDetailsElement) => {
    fold.open = true;
  });
  await unfold({ page });
  await page.locator(`label:has([name=hours][value="${other}"])`).tap();
  await expect.poll(() => verdict(opened)).toMatch(then);
  // On every page, and the next day too.
  await page.goto('/');
  await expect
    .poll(() => page.locator('.verdict.first').innerText())
    .toMatch(other === '12' ? /[AP]M/ : /until \d\d:\d\d$/);
  expectQuiet(opened);
  await opened.close();
});

it('says where what could not be read can not be let go, and where that is a fault of its own', async () => {
  const opened = await openAt('2026-11-24T17:00:00Z');
  const { page } = opened;
  await page.evaluate((key) => localStorage.setItem(key, '{"version":1,"coa'), LOCAL_KEYS['old-clock']);
  await page.reload();
  const letGo = page.getByRole('button', { name: 'Let it go' });
  const says = page.locator('[data-part=troubles]');
  const refuse = (name: string) =>
    page.evaluate((by) => {
      const { put } = IDBObjectStore.prototype;
      Object.assign(window, { put });
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('refused by the test', by);
      };
    }, name);
  const allow = () =>
    page.evaluate(() => Object.assign(IDBObjectStore.prototype, { put: (window as never)['put'] }));
  await letGo.waitFor();
  await refuse('DataCloneError');
  await letGo.tap();
  await page.getByText('This page has a fault of its own').waitFor();
  // It is no word about the storage, and reaches whoever looks after the site.
  await expect
    .poll(() => opened.errors.filter((error) => error.includes('refused by the test')))
    .toHaveLength(1);
  await allow();
  await refuse('QuotaExceededError');
  await letGo.tap();
  await expect.poll(() => says.innerText()).toContain('This browser keeps nothing');
  expect(await says.innerText()).not.toContain('fault of its own');
  await allow();
  await page.reload();
  await letGo.tap();
  await expect.poll(() => says.innerText()).toBe('');
  await opened.close();
});

it('goes by the wettest of two coats, says whose time it is, and lets her choose the other', async () => {
  const opened = await openAt('2026-11-25T01:00:00Z');
  const { page } = opened;
  await lay(opened, ['40', '60'], 'Wet chair');
  await page.locator('.on-clock').waitFor();
  await page.locator('details.new > summary').click();
  await page.fill('[name=piece]', 'Side table');
  await page.selectOption('[name=product]', 'shellac');
  await page.fill('[name=label-touch]', '');
  await page.fill('[name=label-touch-to]', '');
  await page.locator('.go').tap();
  await expect.poll(() => page.locator('.on-clock').count()).toBe(2);
  await page.clock.fastForward(35 * MINUTE_MS);
  await page.goto('/');
  // Of those that bear no other coat yet the wettest: it has the room of one.
  await expect.poll(() => page.locator('.in-band b').allTextContents()).toEqual(['Wet chair']);
  await page.goto('/defects/bubbles/');
  await page.waitForURL(/stage-(wet|setting)/);
  const whose = page.locator('[data-part=whose]');
  await whose.getByText('By the clock of Wet chair.').waitFor();
  await whose.getByRole('button', { name: 'It is Side table' }).tap();
  await page.waitForURL('**/stage-dry-to-touch/**');
  await whose.getByText('By the clock of Side table.').waitFor();
  // The clock knows a time, so nobody is told tomorrow.
  await page.goto('/defects/bubbles/stage-dry-to-touch/');
  await expect
    .poll(() => page.locator('[data-part=again]').innerText())
    .toMatch(/^Look again from [\w ]*\d+:\d\d [AP]M on, and try a hidden spot/);
  expectQuiet(opened);
  await opened.close();
});
