/** No test of the site begins before the site is built, however long that takes; and each file leaves no page behind. */
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, inject } from 'vitest';
import { endOfFile } from './browser.ts';
import { BUILDING } from './building.ts';

let first = await fetch(inject('base'));
while (first.status === BUILDING) {
  await wait(200);
  first = await fetch(inject('base'));
}
if (!first.ok) throw new Error(`There is no site to test: ${await first.text()}`);

afterAll(endOfFile);
