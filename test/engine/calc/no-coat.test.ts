/**
 * The hours in which a can lets no coat on. “Within one hour or after 48 hours” is what a finishing trade site reads on
 * spray cans (on the recoat window, undated); 60 minutes and not beyond 12 hours stands on a maker's data sheet,
 * pre-catalyzed lacquer, undated, at 77 °F and 50 % (it has no later time, so the one used here is invented). No source
 * prints such hours for other air: there the laws are checked, not figures.
 */
import { describe, expect, it } from 'vitest';
import type { Coat } from '#engine/calc/drying/coat.ts';
import { steady } from '#engine/calc/drying/history.ts';
import { type Label, outsideLabel } from '#engine/calc/drying/label.ts';
import { noCoat } from '#engine/calc/drying/no-coat.ts';
import { Product } from '#engine/model/product.ts';
import { dryingProduct, rawProduct } from './products.ts';

const span = (from: number, to = from) => ({ from, to });
const at = (celsius: number, more: Partial<Coat> = {}, id = 'aerosol-lacquer'): Coat => ({
  product: dryingProduct(id),
  history: steady({ celsius, relativeHumidity: 0.5 }),
  relativeThickness: 1,
  elapsedMinutes: 0,
  ...more,
});
const hours = (coat: Coat) => {
  const found = noCoat(coat);
  if (!found) return undefined;
  if (!found.ok) throw new Error(found.problem.code);
  return [found.value.from / 60, found.value.to / 60];
};

describe('the hours in which no coat goes on', () => {
  it('are those of the can in its own air', () => {
    expect(hours(at(23))).toEqual([1, 48]);
    const sheet: Label = {
      minutes: { recoat: span(60), 'no-coat': span(12 * 60, 36 * 60) },
      climate: { celsius: 25, relativeHumidity: 0.5 },
    };
    expect(hours(at(25, { label: sheet }, 'brushing-lacquer'))).toEqual([12, 36]);
    expect(hours(at(25, {}, 'brushing-lacquer'))).toBeUndefined();
  });

  it('begin no later in any air and sooner in warmth; they end no sooner, and later in the cold', () => {
    let [shut, open] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const celsius of [11, 14, 17, 20, 23, 26, 29]) {
      const [from = 0, to = 0] = hours(at(celsius)) ?? [];
      expect(from).toBeLessThanOrEqual(Math.min(1, shut));
      expect(to).toBeGreaterThanOrEqual(48);
      expect(to).toBeLessThanOrEqual(open);
      [shut, open] = [from, to];
    }
    expect(hours(at(12))?.[0]).toBe(1);
    expect(hours(at(12))?.[1]).toBeGreaterThan(60);
    expect(hours(at(29))?.[0]).toBeLessThan(0.9);
    // A thick film lets its solvent go later; a thin one promises nothing.
    expect(hours(at(23, { relativeThickness: 2 }))?.[1]).toBeGreaterThan(48);
    expect(hours(at(23, { relativeThickness: 0.5 }))).toEqual([1, 48]);
  });

  it('are the label’s where it has any, and none where it says that a coat goes on at any time', () => {
    const label = (closed: { from: number; to: number }): Label => ({ minutes: { 'no-coat': closed } });
    expect(hours(at(23, { label: label(span(120, 1440)) }))).toEqual([2, 24]);
    expect(hours(at(23, { label: label(span(0)) }))).toBeUndefined();
    expect(hours(at(23, { label: { minutes: { recoat: span(20) } } }))).toEqual([1, 48]);
  });

  it('are refused where no can has them so', () => {
    const refused = (minutes: Label['minutes']) => outsideLabel({ minutes })?.problem;
    expect(refused({ 'no-coat': span(60, 2880) })).toBeUndefined();
    expect(refused({ recoat: span(60), 'no-coat': span(60, 2880) })).toBeUndefined();
    expect(refused({ 'no-coat': span(0) })).toBeUndefined();
    expect(refused({ 'no-coat': span(60) })?.code).toBe('label-out-of-order');
    expect(refused({ 'no-coat': span(90, 60) })?.code).toBe('label-out-of-order');
    expect(refused({ 'no-coat': span(0, 60) })?.code).toBe('label-not-positive');
    expect(refused({ 'no-coat': span(60, 91 * 1440) })?.code).toBe('out-of-range');
    // No coat could go on before them.
    expect(refused({ recoat: span(90), 'no-coat': span(60, 2880) })).toMatchObject({
      code: 'label-out-of-order',
      quantity: 'time closed to coats',
      min: 90,
    });
  });

  it('of a product that cannot be so are a fault in its file', () => {
    const faults = (closed: readonly number[], recoat = [0.5, 1]) => {
      const read = Product.safeParse({
        ...rawProduct('aerosol-lacquer'),
        'recoat-hours': recoat,
        'no-coat-hours': closed,
      });
      return read.success ? [] : read.error.issues.map(({ path, message }) => `${path.join()}: ${message}`);
    };
    expect(faults([1, 48])).toEqual([]);
    expect(faults([48, 1]).join()).toMatch(/^no-coat-hours: write the smaller number first/);
    expect(faults([2, 2]).join()).toMatch(/^no-coat-hours: it ends as it begins/);
    expect(faults([1, 48], [2, 3]).join()).toMatch(/^no-coat-hours: it begins before recoat-hours/);
    const { claims, ...rest } = rawProduct('aerosol-lacquer');
    const without = (claims as { for?: string[] }[]).map((claim) => ({
      ...claim,
      ...(claim.for && { for: claim.for.filter((figure) => figure !== 'no-coat-hours') }),
    }));
    const read = Product.safeParse({ ...rest, claims: without });
    expect(read.error?.issues.map(({ path, message }) => `${path.join()}: ${message}`)).toEqual([
      expect.stringMatching(/^no-coat-hours: no claim stands behind it/),
    ]);
  });
});
