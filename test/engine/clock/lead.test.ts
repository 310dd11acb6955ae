/**
 * Over old paint that may hold lead nothing says that it is sanded, however the coat stands. The rule and its sources are
 * content/rules/lead-before-sanding.mdx; the pieces are invented.
 */
import { describe, expect, it } from 'vitest';
import { clockNow, dueOf, type LaidCoat, remindersOf, sayNow } from '#engine/clock.ts';
import { adviceOf, laidCoatOf, layersOf } from '#engine/jobs.ts';
import { card, coat, DAY, HOUR, PRODUCTS, products, START } from '../jobs/cards.ts';
import { plan, productOf } from '../schedule/sheet.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'America/Denver', hour12: true };
const AGES = ['before-1993', 'unknown'] as const;
/** An order to sand: what is said not to be done is taken out first. */
const ORDERS = /\bsand\b|\bdull it\b|strokes|paper\b/i;
const without = (text: string): string =>
  text.replace(/Do not sand[^.]*\.|No sanding[^.]*|needs no sanding/g, '');

const spoken = (product: string, age: LaidCoat['age'], coats: number): string[] => {
  const all = Array.from({ length: coats }, (_, at) =>
    coat({ id: `c${at}`, product, applicator: undefined, laidAt: START + at * DAY }),
  );
  const top = all.at(-1) ?? coat();
  const on = card({ coats: all, product, age: age ?? 'unknown' });
  return [1, 6, 20, 50, 200, 900].flatMap((hours) => {
    const now = top.laidAt + hours * HOUR;
    const laid = laidCoatOf(on, top);
    const reading = clockNow(productOf(product), laid, now, products);
    const { verdict, why } = sayNow(WORDS, reading, now, STYLE);
    const rings =
      reading.kind === 'running'
        ? remindersOf(WORDS, reading, laid, now).flatMap(({ title, detail }) => [title, detail])
        : [];
    return [verdict, why, dueOf(WORDS, reading, now, STYLE).says, ...rings];
  });
};

it('allows no further coat where one holds on a dulled film alone', () => {
  const laid = { ...laidCoatOf(card(), coat()), age: 'unknown' as const };
  const now = START + 3 * DAY;
  const reading = clockNow(productOf('water-based-polyurethane'), laid, now, products);
  expect(sayNow(WORDS, reading, now, STYLE).verdict).toContain('no further coat');
  expect(dueOf(WORDS, reading, now, STYLE).says).toContain('no further coat');
});

describe('old paint that may hold lead', () => {
  it.each(AGES)('%s: neither clock nor reminder says that a coat over it is sanded', (age) => {
    for (const product of PRODUCTS)
      for (const coats of [1, 3])
        for (const text of spoken(product, age, coats))
          expect(without(text), `${product}, ${coats} coats`).not.toMatch(ORDERS);
  });

  it('is what makes the difference', () => {
    expect(
      spoken('water-based-polyurethane', 'since-1993', 1).some((text) => ORDERS.test(without(text))),
    ).toBe(true);
  });

  it.each(AGES)('%s: the film of a card is not sanded, thin or thick', (age) => {
    for (const count of [0, 1, 3, 9]) {
      const coats = Array.from({ length: count }, (_, at) =>
        coat({ id: `c${at}`, laidAt: START + at * DAY }),
      );
      const on = card({ coats, age });
      const { says } = adviceOf(plan.sanding, WORDS, layersOf(on, products), on.age);
      expect(without(says)).not.toMatch(ORDERS);
      expect(says).toContain('may hold lead');
    }
  });
});
