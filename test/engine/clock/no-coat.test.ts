/**
 * The clock of a coat over which none goes on for some hours: “within one hour or after 48 hours”, as a finishing trade
 * site reads on spray cans (on the recoat window, undated). Coats and other hours are invented.
 */
import { describe, expect, it } from 'vitest';
import { readyForNext } from '#engine/clock/reading.ts';
import { readStore } from '#engine/clock/store.ts';
import { clockNow, dueOf, type LaidCoat, nextCoatAt, remindersOf, sayMoment, sayNow } from '#engine/clock.ts';
import { HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '#engine/plain/time.ts';
import { PRODUCTS } from '../calc/products.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const LAID = Date.UTC(2026, 10, 24, 9);
const products = Object.fromEntries(PRODUCTS);
const laid = (more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Stool',
  product: 'aerosol-lacquer',
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});
const runs = (minutes: number, more: Partial<LaidCoat> = {}) => {
  const now = LAID + minutes * MINUTE;
  const coat = laid(more);
  const reading = clockNow(PRODUCTS.get(coat.product) ?? fail(), coat, now, products);
  if (reading.kind !== 'running') throw new Error('it does not run');
  return { now, coat, reading };
};
const fail = (): never => {
  throw new Error('no such product');
};
const said = (minutes: number, more: Partial<LaidCoat> = {}) => {
  const { now, reading } = runs(minutes, more);
  const { doing, verdict, why } = sayNow(WORDS, reading, now, STYLE);
  return { doing, verdict, why, due: dueOf(WORDS, reading, now, STYLE).says };
};
const ANY_TIME = { label: { minutes: { 'no-coat': { from: 0, to: 0 } } } };

describe('a coat over which none goes on for some hours', () => {
  it('tells while hands are off it that the time for the next one is short', () => {
    const { doing, why, due } = said(20);
    expect(doing).toBe('leave');
    expect(why).toContain('until 10:00 AM');
    expect(why).toContain('none before Thu, Nov 26');
    expect(due).toBe('next coat from 9:30 AM');
    expect(said(20, ANY_TIME).why).not.toContain('none before');
  });

  it('takes one as it is before them', () => {
    expect(said(45)).toMatchObject({
      doing: 'repair',
      verdict: 'Ready for the next coat until 10:00 AM',
      due: 'ready for the next coat until 10:00 AM',
    });
    expect(said(45).why).toMatch(/Touch it with nothing first.+no coat before Thu, Nov 26/);
    expect(said(45, ANY_TIME)).toMatchObject({ doing: 'wait', due: 'next coat from 10:00 AM' });
  });

  it('takes none in them, to the minute, and one after them', () => {
    for (const minutes of [60, 61, 300, 24 * 60, 48 * 60 - 1]) {
      expect(said(minutes).doing, `${minutes}`).toBe('wait');
      expect(said(minutes).verdict).toMatch(/^No coat on it until /);
      expect(said(minutes).why).toMatch(/can lift or wrinkle this one/);
    }
    expect(said(59).doing).toBe('repair');
    expect(said(48 * 60)).toMatchObject({ doing: 'repair', verdict: 'Ready for the next coat' });
    expect(said(300, ANY_TIME).verdict).toBe('Ready for the next coat');
  });

  it('has them for nothing where it is the last', () => {
    expect(said(45, { last: true }).why).not.toContain('no coat before');
    expect(said(300, { last: true }).verdict).toBe('Leave it to cure');
  });

  it('is not ready before them where the cold keeps it soft that long', () => {
    const cold = said(100, { celsius: 11 });
    expect(cold.verdict).toMatch(/^No coat on it until /);
    expect(nextCoatAt(runs(50, { celsius: 11 }).reading.moments, LAID + 50 * MINUTE)).toMatchObject({
      may: false,
      closed: true,
    });
  });

  it('rings when its short time begins, and when a coat goes on again', () => {
    const { reading, coat, now } = runs(0);
    const rings = remindersOf(WORDS, reading, coat, now).map(({ key, at }) => [key, (at - LAID) / HOUR]);
    expect(rings.slice(0, 3)).toEqual([
      ['touch', 0.5],
      ['coat-soon', 0.5],
      ['recoat', 48],
    ]);
    expect(sayMoment('no-coat', reading.moments['no-coat'] ?? fail(), now, STYLE)).toBe(
      '10:00 AM to Thu, Nov 26, 9:00 AM',
    );
  });

  it('is told with when it bears the next one, and kept in the browser as any time of its can', () => {
    const bears = readyForNext(laid(), products);
    expect(bears?.['no-coat']).toMatchObject({ from: LAID + HOUR, to: LAID + 48 * HOUR });
    const label = { minutes: { 'no-coat': { from: 120, to: 1440 } } };
    const kept = readStore({ version: 1, coats: [laid({ label })], products, seenAt: 0 });
    expect([kept.lost, kept.store.coats[0]?.label, kept.store.products['aerosol-lacquer']]).toEqual([
      0,
      label,
      products['aerosol-lacquer'],
    ]);
    const broken = { ...products['aerosol-lacquer'], 'no-coat-hours': ['soon', 48] };
    const read = readStore({ version: 1, coats: [], products: { 'aerosol-lacquer': broken }, seenAt: 0 });
    expect(read.store.products).toEqual({});
  });
});

describe('the next coat', () => {
  const bears = (recoat: [number, number], closed?: [number, number]) => ({
    touch: { from: 0, to: 0.4 * HOUR },
    recoat: { from: recoat[0], to: recoat[1] },
    ...(closed && { 'no-coat': { from: closed[0], to: closed[1] } }),
  });
  const H = HOUR;

  it('waits until it is surely ready where that leaves a quarter of an hour, else only until it may be', () => {
    expect(nextCoatAt(bears([H / 2, 0.75 * H], [H, 48 * H]), 0.6 * H)).toEqual({
      may: false,
      from: { from: H / 2, to: 0.75 * H },
      closed: false,
    });
    expect(nextCoatAt(bears([H / 2, 0.76 * H], [H, 48 * H]), 0.6 * H)).toEqual({ may: true, until: H });
  });

  it('is not laid before the one below is surely dry to the touch', () => {
    const wet = { ...bears([H / 2, H], [H, 48 * H]), touch: { from: H / 4, to: 0.7 * H } };
    expect(nextCoatAt(wet, 0.6 * H)).toEqual({
      may: false,
      from: { from: H / 2, to: 0.7 * H },
      closed: false,
    });
    expect(nextCoatAt(wet, 0.7 * H)).toEqual({ may: true, until: H });
    expect(nextCoatAt({ ...wet, touch: { from: H / 4, to: 0.8 * H } }, 0.9 * H)).toMatchObject({
      may: false,
      closed: true,
    });
  });

  it('waits for both where the film is ready only after those hours', () => {
    expect(nextCoatAt(bears([60 * H, 70 * H], [H, 48 * H]), 50 * H)).toEqual({
      may: false,
      from: { from: 60 * H, to: 70 * H },
      closed: true,
    });
    expect(nextCoatAt(bears([60 * H, 70 * H], [H, 48 * H]), 70 * H)).toEqual({ may: true });
  });

  it('of any other film goes on once it is surely ready', () => {
    expect(nextCoatAt(bears([2 * H, 4 * H]), 3 * H)).toEqual({
      may: false,
      from: { from: 2 * H, to: 4 * H },
      closed: false,
    });
    expect(nextCoatAt(bears([2 * H, 4 * H]), 4 * H)).toEqual({ may: true });
  });
});
