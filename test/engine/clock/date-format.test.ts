/** Dates are printed in the zone of the device, also after it has traveled. */
import { afterEach, expect, it } from 'vitest';
import { dateFormat } from '#engine/clock.ts';

const home = process.env['TZ'];
afterEach(() => {
  if (home === undefined) delete process.env['TZ'];
  else process.env['TZ'] = home;
});

it('follows the device into another zone', () => {
  const at = Date.UTC(2026, 10, 29, 12);
  const hour = () => dateFormat({ hour: 'numeric', hourCycle: 'h23' }).format(at);
  process.env['TZ'] = 'America/Denver';
  expect(hour()).toBe('05');
  process.env['TZ'] = 'Europe/Berlin';
  expect(hour()).toBe('13');
  process.env['TZ'] = 'America/Denver';
  expect(hour()).toBe('05');
});

it('keeps one for each way of printing', () => {
  expect(dateFormat({ hour: 'numeric' })).toBe(dateFormat({ hour: 'numeric' }));
  expect(dateFormat({ hour: 'numeric' })).not.toBe(dateFormat({ hour: 'numeric', timeZone: 'UTC' }));
});
