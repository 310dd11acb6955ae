/** What the clock keeps of a product: all that it reckons with, and nothing that only a page shows. */
import { expect, it } from 'vitest';
import { clockProduct } from '#engine/clock.ts';
import { known } from '../../content/real/knowledge.ts';

/** What a page shows of it, and what knowledge knows of its file. */
const AT_HOME = /^(id|kindOf|file|lineOf|claims|also|cleanup|what|thinner|ambering|square-meters-per-liter)$/;

it.each(known.products.map((product) => [product.id, product] as const))('%s', (_, product) => {
  const wanted = Object.fromEntries(Object.entries(product).filter(([name]) => !AT_HOME.test(name)));
  expect(clockProduct(product)).toEqual(wanted);
});
