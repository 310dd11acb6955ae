/**
 * The coldest night, told once, counts alike on the clock, on a card, in the form and in the plan. That oil needs 55 °F
 * (13 °C) or more until it is dry to the touch stands at the product; the pieces are invented.
 */
import { describe, expect, it } from 'vitest';
import { calendarIn, USUAL_NIGHT } from '#engine/clock/nights.ts';
import { clockNow, readyForNext } from '#engine/clock/reading.ts';
import { type LaidCoat, readStore, sayNow } from '#engine/clock.ts';
import { judgeLaying, layingOfCoat } from '#engine/fitness.ts';
import { laidCoatOf, layingOfCard } from '#engine/jobs.ts';
import { card, coat, products } from '../jobs/cards.ts';
import { HOUR, job, known, MINUTE, outcome, plan, productOf } from '../schedule/sheet.ts';
import { WORDS } from './words.ts';

const STYLE = { hour12: true, units: 'us' } as const;
const OIL = 'oil-based-polyurethane';
const poly = productOf(OIL);
/** By the clocks of whatever place the tests run in. */
const FOUR_PM = new Date(2026, 10, 29, 16, 0).getTime();
const NEXT_MORNING = new Date(2026, 10, 30, 8, 12).getTime();
const COLD = { celsius: 4.4 };
const laid = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Bench',
  product: OIL,
  laidAt: FOUR_PM,
  celsius: 18.3,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});

describe('the coldest night', () => {
  it('is night when the tables of the plan say so', () => {
    expect(plan.night).toMatchObject(USUAL_NIGHT.night);
  });

  it('keeps an evening coat of oil from being called dry in the morning', () => {
    const warm = clockNow(poly, laid(), NEXT_MORNING);
    expect(warm).toMatchObject({ kind: 'running', stage: 'dry-to-touch' });
    const cold = clockNow(poly, laid({ night: COLD }), NEXT_MORNING);
    expect(cold).toMatchObject({ kind: 'refused', night: 4.4 });
    const { doing, why } = sayNow(WORDS, cold, NEXT_MORNING, STYLE);
    expect(doing).toBe('leave');
    expect(why).toContain('Your coldest night is 40 °F (4 °C): it rests until morning.');
  });

  it('counts on a card as on the clock', () => {
    const one = coat({ product: OIL, laidAt: FOUR_PM, celsius: 18.3 });
    const on = card({ coats: [one], night: COLD, product: OIL });
    expect(laidCoatOf(on, one).night).toEqual(COLD);
    expect(clockNow(poly, laidCoatOf(on, one), NEXT_MORNING, products).kind).toBe('refused');
  });

  it('lets a coat that is dry to the touch before dark rest, and tells it', () => {
    const morning = new Date(2026, 10, 29, 9, 0).getTime();
    const day = { laidAt: morning, celsius: 23 };
    const noon = morning + 8 * HOUR;
    const [warm, cold] = [laid(day), laid({ ...day, night: COLD })].map((one) => clockNow(poly, one, noon));
    if (warm?.kind !== 'running' || cold?.kind !== 'running') throw new Error('both dry');
    expect(cold.moments.touch.to).toBe(warm.moments.touch.to);
    // Ten hours of night in which nothing is counted on.
    expect(cold.moments.recoat.to - warm.moments.recoat.to).toBeGreaterThanOrEqual(10 * HOUR);
    expect(cold.night).toEqual({ celsius: 4.4, rests: true });
    expect(sayNow(WORDS, cold, noon, STYLE).why).toContain(
      'Your coldest night is 40 °F (4 °C): it rests until morning.',
    );
  });

  it('is not reckoned from a time that is none, as while one is typed', () => {
    for (const at of [Number.NaN, Number.POSITIVE_INFINITY, 8.64e15, -8.64e15, 9e15]) {
      const laying = layingOfCoat(laid({ night: COLD }));
      const { noes } = judgeLaying(plan, known, laying, poly, { at, units: 'us', dries: true });
      expect(noes.map(({ says }) => says).join()).not.toContain('the night spoils it');
    }
  });

  it('is no yes in the form, on the clock and on a card, where it spoils the coat, as in the plan', () => {
    const how = { at: FOUR_PM, units: 'us', dries: true } as const;
    const next = coat({ product: OIL, laidAt: FOUR_PM, celsius: 18.3 });
    const on = card({ coats: [], night: COLD, base: 'bare-wood', product: OIL });
    for (const laying of [layingOfCoat(laid({ night: COLD })), layingOfCard(on, next)]) {
      const { verdict, noes } = judgeLaying(plan, known, laying, poly, how);
      expect(verdict).toBe('no');
      expect(noes.map(({ says }) => says).join()).toContain('the night spoils it');
    }
    const { noes } = judgeLaying(plan, known, layingOfCoat(laid()), poly, how);
    expect(noes).toEqual([]);
    const planned = outcome(
      job({
        product: OIL,
        base: 'bare-wood',
        day: { celsius: 18.3, relativeHumidity: 0.5 },
        night: COLD,
        hours: { from: 900, to: 1080, days: [true, true, true, true, true, true, true] },
      }),
    );
    expect(planned.kind === 'no' && planned.why[0].says).toContain('the night spoils it');
  });

  it('makes no coat ready for the next one sooner than the day alone does', () => {
    const ready = readyForNext(laid(), products)?.recoat.to ?? Number.NaN;
    expect(readyForNext(laid({ night: COLD }), products)?.recoat.to).toBeGreaterThanOrEqual(ready);
  });

  it('is kept with the coat, and a coat with a night that cannot be is not read', () => {
    const kept = (night: unknown) =>
      readStore({ version: 1, coats: [{ ...laid(), night }], products: {}, seenAt: 0 });
    expect(kept(COLD).store.coats).toHaveLength(1);
    for (const night of [4, null, { celsius: 400 }, { celsius: 4, relativeHumidity: 7 }])
      expect(kept(night).lost, JSON.stringify(night)).toBe(1);
  });

  it('is counted by the clocks of the place, also where they are changed', () => {
    // Denver, 1 November 2026: at 08:00Z the clock goes from 2:00 AM back to 1:00 AM.
    const { at, weekday } = calendarIn('America/Denver')(Date.parse('2026-10-31T18:30:00Z'));
    expect(weekday).toBe(6);
    expect(at(0, 21 * 60)).toBe(Date.parse('2026-11-01T03:00:00Z'));
    expect(at(1, 7 * 60)).toBe(Date.parse('2026-11-01T14:00:00Z'));
    expect(at(1, 0) - at(0, 0)).toBe(24 * HOUR);
    expect(at(2, 0) - at(1, 0)).toBe(25 * HOUR);
    expect(at(0, 1) - at(0, 0)).toBe(MINUTE);
  });
});
