/** Of many clocks the one that is due next stands on top. By the figures of the products; the chairs are invented. */
import { describe, expect, it } from 'vitest';
import { clockNow, dueOf, type LaidCoat, sayInstant } from '#engine/clock.ts';
import { product } from '../calc/products.ts';
import { WORDS } from './words.ts';

const HOUR = 3_600_000;
const LAID = Date.parse('2026-11-24T17:00:00Z');
const STYLE = { timeZone: 'America/Denver', hour12: true };
const poly = product('water-based-polyurethane');
const chair: LaidCoat = {
  id: 'a',
  piece: 'Chair 3',
  product: 'water-based-polyurethane',
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
};
const due = (hours: number, more: Partial<LaidCoat> = {}) => {
  const now = LAID + hours * HOUR;
  return dueOf(WORDS, clockNow(poly, { ...chair, ...more }, now), now, STYLE);
};

describe('what comes next of a coat', () => {
  it('is the next coat while it dries, at the time when it is surely ready', () => {
    const recoat = LAID + poly['recoat-hours'][1] * HOUR;
    for (const hours of [0, 1])
      expect(due(hours)).toEqual({
        at: recoat,
        says: `next coat from ${sayInstant(recoat, LAID, STYLE)}`,
      });
  });

  it('is now once it is ready, and never another coat over the last', () => {
    expect(due(poly['recoat-hours'][1] + 0.1).at).toBeLessThanOrEqual(LAID + 24 * HOUR);
    expect(due(poly['recoat-hours'][1] + 0.1).says).toContain('ready for the next coat');
    for (const hours of [0.1, 1, 5, 30, 300])
      expect(due(hours, { last: true }).says).not.toContain('next coat');
    expect(due(24 * 365).says).toBe('cured');
  });

  it('puts a coat without any time first, and a cured one last', () => {
    const lost = due(1, { celsius: 2 });
    expect(lost.says).toBe('no time can be told');
    const order = [due(24 * 365), due(0), due(6), lost].toSorted((one, two) => one.at - two.at);
    expect(order.map(({ says }) => says.split(' ').slice(0, 2).join(' '))).toEqual([
      'no time',
      'next coat',
      'ready for',
      'cured',
    ]);
  });
});
