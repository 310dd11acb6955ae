/** Until when hands stay off a coat that is still wet: said on every such page, and never sooner than a can says. */
import { expect, it } from 'vitest';
import { readChoices } from '../../content/tools/choices.ts';
import { known } from '../content/real/knowledge.ts';
import { builtPages } from './built.ts';

const HANDS_OFF = /^\/defects\/[^/]+\/stage-(wet|setting)\//;
/** `Shellac, lacquer: mostly within the hour.`, and the like for days. */
const SOON = /([^.]*): mostly within the hour\./;
const LATE = /([^.]*): in up to (a|\d+) days?\./;

const { values } = readChoices(process.cwd()).family;
/** The slowest can of a kind, minutes to dry to the touch. */
const slowest = (name: string): number => {
  const [family] =
    Object.entries(values).find(([, says]) => says.split(',')[0]?.toLowerCase() === name) ?? [];
  const found = known.products.filter((one) => one.family === family);
  expect(found.length, name).toBeGreaterThan(0);
  return Math.max(...found.map((one) => one['touch-minutes'][1]));
};
const namesIn = (text = ''): string[] => text.trim().toLowerCase().split(', ');

it('says by when a wet coat is dry to the touch, and promises no kind more than its slowest can', () => {
  const pages = builtPages().filter(
    ({ address, html }) => HANDS_OFF.test(address) && /class="verdict (leave|wait)"/.test(html),
  );
  expect(pages.length).toBeGreaterThan(100);
  const texts = new Set<string>();
  for (const { address, html } of pages) {
    const [, says] = /<p class="until">(.*?)<\/p>/s.exec(html) ?? [];
    expect(says, address).toMatch(/by tomorrow morning|in up to/);
    texts.add((says ?? '').replace(/<[^>]*>[^<]*<\/[^>]*>/g, ''));
  }
  for (const text of texts) {
    const [, soon] = SOON.exec(text) ?? [];
    const [, late, days] = LATE.exec(text) ?? [];
    for (const name of soon ? namesIn(soon) : []) expect(slowest(name), name).toBeLessThanOrEqual(60);
    for (const name of late ? namesIn(late) : []) {
      expect(slowest(name), name).toBeGreaterThan(12 * 60);
      expect(slowest(name), name).toBeLessThanOrEqual((days === 'a' ? 1 : Number(days)) * 24 * 60);
    }
  }
});
