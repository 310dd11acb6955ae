/** No test of the site begins before the site is built. */
import { inject } from 'vitest';

const first = await fetch(inject('base'));
if (!first.ok) throw new Error(`There is no site to test: ${await first.text()}`);
