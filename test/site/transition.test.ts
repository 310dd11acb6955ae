/** From page to page the browser draws a transition, and leaves it out where it sees fit. */
import { expect, it } from 'vitest';
import { expectQuiet, openPage, withoutPictures } from './browser.ts';

withoutPictures();

it('takes a transition that is left out for no error', async () => {
  const opened = await openPage({ reducedMotion: 'no-preference' });
  const { page } = opened;
  // What the browser does by itself where a page is late, another one is called, or the window is hidden.
  await page.addInitScript(() => {
    for (const name of ['pageswap', 'pagereveal'] as const)
      addEventListener(name, ({ viewTransition }) => {
        if (!viewTransition || sessionStorage.getItem('skip at') !== name) return;
        viewTransition.skipTransition();
        sessionStorage.setItem(`skipped at ${name}`, 'yes');
      });
  });
  await page.goto('/about/');
  for (const event of ['pageswap', 'pagereveal']) {
    await page.evaluate((name) => sessionStorage.setItem('skip at', name), event);
    await page.getByRole('link', { name: 'Halfdry' }).first().click();
    await page.waitForURL((url) => url.pathname === '/');
    await expect
      .poll(() => page.evaluate((name) => sessionStorage.getItem(`skipped at ${name}`), event))
      .toBe('yes');
    await page.goto('/about/');
  }
  expectQuiet(opened);
  await opened.close();
});
