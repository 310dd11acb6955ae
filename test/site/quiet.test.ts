/** Every layout loads without an error, a blocked style or script, or a request to another host. */
import { it } from 'vitest';
import { expectQuiet, openPage } from './browser.ts';
import { onePerShape } from './built.ts';

it('is quiet on every layout', async () => {
  const opened = await openPage();
  for (const { address } of onePerShape()) if (address !== '/404.html') await opened.page.goto(address);
  expectQuiet(opened);
  await opened.close();
});
