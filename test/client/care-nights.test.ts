/** What a care card says of nights that nobody noted, the unit of the reader first. 5 °C are 9 °F. */
import { expect, it } from 'vitest';
import { sayNights } from '../../site/client/jobs/parts/night.ts';

const AT = { from: 0, to: 0 };
const dates = {
  kind: 'dates',
  unknownNights: 'allowed-for',
  handle: 0,
  handOver: 0,
  lightUse: AT,
  fullUse: AT,
} as const;

it('says how much colder the nights may be in the unit of the reader first', () => {
  expect(sayNights(dates, 5, true)).toContain('nights 9 °F (5 °C) colder');
  expect(sayNights(dates, 5, false)).toContain('nights 5 °C (9 °F) colder');
});
