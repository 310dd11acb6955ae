/** How much is asked for. Letters are invented; the figures are those of the products, 1 m²/L is 40.7 sq ft a US gallon (NIST SP 811). */
import { describe, expect, it } from 'vitest';
import { carriedTo, understand } from '#engine/hear.ts';
import { known } from '../../../content/real/knowledge.ts';
import { heard, hearing, understanding } from '../hearing.ts';
import { links } from '../links.ts';

const told = (text: string) => heard(text).asksFor?.answer ?? '';
const short = (text: string) => understand(understanding, { text }, links).answer.short;
/** From the product that covers least to the one that covers most, m² a liter. */
const covers = (family: string): readonly [number, number] => {
  const all = known.products
    .filter((one) => one.family === family)
    .map((one) => one['square-meters-per-liter']);
  return [Math.min(...all.map(([from]) => from)), Math.max(...all.map(([, to]) => to))];
};

describe('how much is needed', () => {
  it.each([
    ['how much shellac do I need for a bookcase 80 x 30, two coats', 'shellac'],
    ['will one quart of water based poly be enough for a dining table, 3 coats', 'water-based'],
    ['how many litres of oil based varnish for eight doors both sides', 'oil-based'],
    ['what does a round stool 14 inches across take, and how many ounces of shellac', 'shellac'],
  ])('is what a coat covers, in both units: %s', (text, family) => {
    const [from, to] = covers(family);
    expect(told(text)).toContain(`${from} to ${to} m² a liter`);
    const quart = (40.746 * from) / 4;
    expect(told(text)).toContain(`${quart < 20 ? quart.toFixed(1) : Math.round(quart)} to `);
    expect(short(text)).toContain('/page/schedule/');
    expect(short(text).length).toBeLessThanOrEqual(500);
    expect(short(text)).not.toMatch(/Most likely|Hard to say|may be/);
  });
  it('names the metric figure first where metric units are told', () => {
    expect(told('how many litres of shellac for six doors')).toMatch(/covers 10 to 20 m² a liter \(/);
    expect(told('how many quarts of shellac for six doors')).toMatch(/covers \d+ to \d+ sq ft a quart \(/);
  });
  it('carries the coats to the plan', () => {
    const text = 'how much shellac do I need for a bookcase, four coats';
    expect(carriedTo(hearing.waits, 'page/schedule', heard(text))).toMatchObject({
      product: 'shellac',
      kind: 'furniture',
      'can-coats': '4',
    });
    expect(carriedTo(hearing.waits, 'page/clock', heard(text))).not.toHaveProperty('can-coats');
  });
  it.each([
    'how much shellac flakes for a two pound cut',
    'how much thinner for the varnish',
    'I put too much poly on the table and it sags',
    'how many cans of spray lacquer for a chair, sprayed from a can',
    'bubbles in the poly, how much did I need to wait',
  ])('is not asked by: %s', (text) => expect(told(text)).not.toContain('m² a liter'));
});
