/** A full disk: nothing half is written, and what she typed is kept. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import { expectQuiet, openPage } from './browser.ts';
import { cardsIn, makeCard, recordsIn, soon } from './jobs-hands.ts';

const trouble = (page: Page) => page.locator('.trouble').innerText();
const saved = (page: Page) => page.getByText(/^Saved \d/).waitFor();

/** Writes until not one more kilobyte has room. */
const fillUp = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done) => {
      const opening = indexedDB.open('halfdry');
      opening.onsuccess = () => done(opening.result);
    });
    for (let size = 200_000, count = 0; size > 500; count++) {
      const change = db.transaction('photos', 'readwrite');
      change.objectStore('photos').put({ id: `filler-${count}`, card: 'none', bytes: new Uint8Array(size) });
      const fits = await new Promise<boolean>((done) => {
        change.oncomplete = () => done(true);
        change.onabort = () => done(false);
      });
      if (!fits) size /= 2;
    }
    db.close();
  });

it('says so when the storage is full, keeps what she typed, and writes it once there is room', async () => {
  const opened = await openPage();
  const { page } = opened;
  const client = await page.context().newCDPSession(page);
  const origin = inject('base');
  // Before the first write: the browser asks for the room that is left only now and then.
  await client.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 600_000 });
  await makeCard(page);
  await fillUp(page);
  const notes = 'Left end stood in the draft. '.repeat(130);
  await page.locator('#job-notes').fill(notes);
  await soon(() => trouble(page)).toContain('storage of this browser is full');
  await soon(() => page.getByText('Not saved yet.').count()).toBe(1);
  expect((await cardsIn(page))[0]?.notes).toBe('');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this card as a file' }).click(),
  ]);
  expect(readFileSync((await download.path()) ?? '', 'utf8')).toContain(notes.trim());
  await client.send('Storage.overrideQuotaForOrigin', { origin });
  await page.getByRole('button', { name: 'Try again' }).click();
  await saved(page);
  expect((await cardsIn(page))[0]?.notes).toBe(notes);
  await soon(() => page.locator('.trouble').isVisible()).toBe(false);
  await opened.close();
});

/** A picture that no packer makes small. */
const noise = (page: Page, width: number, height: number): Promise<Buffer> =>
  page
    .evaluate(
      async ([wide, tall]) => {
        const canvas = new OffscreenCanvas(wide ?? 1, tall ?? 1);
        const context = canvas.getContext('2d');
        const pixels = new ImageData(wide ?? 1, tall ?? 1);
        let seed = 1;
        for (let at = 0; at < pixels.data.length; at++) {
          seed = (seed * 48271) % 2147483647;
          pixels.data[at] = at % 4 === 3 ? 255 : seed & 255;
        }
        context?.putImageData(pixels, 0, 0);
        const reader = new FileReader();
        reader.readAsDataURL(await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.6 }));
        await new Promise((done) => reader.addEventListener('load', done));
        return String(reader.result);
      },
      [width, height],
    )
    .then((address) => Buffer.from(address.split(',')[1] ?? '', 'base64'));

it('writes a photo with its entry, or neither where it has no room', async () => {
  const opened = await openPage();
  const { page } = opened;
  const client = await page.context().newCDPSession(page);
  const origin = inject('base');
  await client.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 400_000 });
  await makeCard(page);
  const picture = { name: 'flaw.jpg', mimeType: 'image/jpeg', buffer: await noise(page, 1800, 900) };
  await page.locator('.lists .file input').setInputFiles(picture);
  await soon(() => trouble(page)).toContain('storage of this browser is full');
  expect((await cardsIn(page))[0]?.photos).toEqual([]);
  expect(await recordsIn(page, 'photos')).toEqual([]);
  await client.send('Storage.overrideQuotaForOrigin', { origin });
  await page.locator('.lists .file input').setInputFiles(picture);
  await page.locator('.photos img').waitFor();
  expect((await cardsIn(page))[0]?.photos).toMatchObject([{ width: 1600, height: 800 }]);
  expect((await recordsIn(page, 'photos')).length).toBe(1);
  expectQuiet(opened);
  await opened.close();
});
