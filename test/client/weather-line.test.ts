/** The line that stands for the folded fields of the plan. Drafts of our own, invented. */
import { expect, it } from 'vitest';
import { weatherLine } from '../../site/client/schedule/weather-line.ts';

const DEFAULTS = {
  units: 'us',
  air: '70',
  humidity: '50',
  night: '62',
  from: '09:00',
  to: '18:00',
  days: '0,1,2,3,4,5,6',
};

it('tells all that the folded fields hold', () => {
  expect(weatherLine(DEFAULTS, true)).toBe('70 °F, 50 %, nights 62 °F, any day, 9 AM to 6 PM');
  expect(
    weatherLine(
      { ...DEFAULTS, units: 'metric', air: '21', night: '', days: '1,2', to: '17:30', sun: 'yes' },
      false,
    ),
  ).toBe('21 °C, 50 %, in the sun, Mon, Tue, 9:00 to 17:30');
  expect(weatherLine({ ...DEFAULTS, start: '2026-12-01T08:00', days: '' }, true)).toContain(
    'start 2026-12-01, 08:00',
  );
});
