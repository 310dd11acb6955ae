/**
 * Days and times of a device, against the time zone database that the engine of the browser brings (IANA tzdata, through
 * `Intl`): New York goes back on 1 November 2026 at 2:00 and forward on 14 March 2027 at 2:00; Lord Howe Island moves its
 * clocks by half an hour, on 5 April 2026 at 2:00 back.
 */
import { afterEach, describe, expect, it } from 'vitest';
import { instantsOf, localText, whichOf } from '../../../site/client/shared/form/local-time.ts';

const { TZ } = process.env;
afterEach(() => {
  if (TZ === undefined) delete process.env['TZ'];
  else process.env['TZ'] = TZ;
});
const inZone = (zone: string) => {
  process.env['TZ'] = zone;
};
const utc = (text: string) => new Date(text).getTime();

describe('the hour that comes twice', () => {
  it('is found in New York', () => {
    inZone('America/New_York');
    expect(instantsOf('2026-11-01T01:30')).toEqual([utc('2026-11-01T05:30Z'), utc('2026-11-01T06:30Z')]);
    expect(instantsOf('2026-11-01T00:59')).toEqual([utc('2026-11-01T04:59Z')]);
    expect(instantsOf('2026-11-01T02:00')).toEqual([utc('2026-11-01T07:00Z')]);
    expect(whichOf(utc('2026-11-01T05:30Z'))).toBe('first');
    expect(whichOf(utc('2026-11-01T06:30Z'))).toBe('second');
    expect(whichOf(utc('2026-11-01T07:30Z'))).toBeUndefined();
  });
  it('is half an hour on Lord Howe Island', () => {
    inZone('Australia/Lord_Howe');
    expect(instantsOf('2026-04-05T01:45')).toEqual([utc('2026-04-04T14:45Z'), utc('2026-04-04T15:15Z')]);
    expect(instantsOf('2026-04-05T01:15')).toHaveLength(1);
  });
});

it('finds no instant in the hour that is left out', () => {
  inZone('America/New_York');
  expect(instantsOf('2027-03-14T02:30')).toEqual([]);
  expect(instantsOf('2027-03-14T03:30')).toEqual([utc('2027-03-14T07:30Z')]);
});

it('writes an instant so that it is among those read', () => {
  for (const zone of [
    'America/New_York',
    'Australia/Lord_Howe',
    'Pacific/Kiritimati',
    'UTC',
    'Asia/Kathmandu',
  ]) {
    inZone(zone);
    for (let at = utc('2026-01-01T00:00Z'); at < utc('2027-12-31T00:00Z'); at += 1007 * 60_000)
      expect(instantsOf(localText(at)), `${zone} ${at}`).toContain(at);
  }
});
