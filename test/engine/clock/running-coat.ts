/** A coat on the clock, in the air that its product's figures are for. */
import { clockNow, type LaidCoat, type Running } from '#engine/clock.ts';
import { product } from '../calc/products.ts';

export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const LAID = Date.parse('2026-11-24T17:00:00Z');
export const STYLE = { timeZone: 'America/Denver', hour12: true };
export const poly = product('water-based-polyurethane');

export const coat: LaidCoat = {
  id: 'a',
  piece: 'Navy dresser',
  product: 'water-based-polyurethane',
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
};

export const running = (over: Partial<LaidCoat> = {}, minutes = 0): Running => {
  const reading = clockNow(poly, { ...coat, ...over }, LAID + minutes * MINUTE);
  if (reading.kind !== 'running') throw new Error(`not running: ${JSON.stringify(reading)}`);
  return reading;
};
