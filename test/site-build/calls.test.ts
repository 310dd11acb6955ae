import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCalls } from '../../content/tools/calls.ts';
import { regionOf } from '../../site/client/shared/zones.ts';
import { telOf } from '../../site/shared/calls.ts';
import { dialedIn } from '../../site/shared/dialed.ts';
import { leadOf, ordersIn, waysOf } from '../../site/shared/sentences.ts';

const { places } = readCalls('.');
const placeOf = (zone: string, languages: readonly string[]) => {
  const region = regionOf(zone, languages);
  return places.find(({ regions }) => region !== undefined && regions.includes(region));
};
const placeAt = (zone: string, ...languages: string[]) => placeOf(zone, languages)?.place;

describe('where a device seems to be', () => {
  // Zones by the time zone database, regions by ISO 3166-1.
  it.each<[string, string | undefined, ...string[]]>([
    ['Europe/London', 'the UK', 'en-US'],
    ['Europe/Berlin', 'the rest of Europe', 'de-DE'],
    ['Europe/Vienna', 'Austria', 'de-AT'],
    ['Europe/Dublin', 'Ireland', 'en-GB'],
    ['Australia/Sydney', 'Australia', 'en-US'],
    ['Pacific/Auckland', 'New Zealand', 'en-GB'],
    ['America/Toronto', 'Canada', 'en-US'],
    ['America/New_York', 'the US', 'en-GB'],
    ['America/Indiana/Knox', 'the US', 'fr'],
    // Nothing is told by these: the language is asked.
    ['UTC', 'the UK', 'en-GB'],
    ['', 'the US', 'en', 'en-US'],
    ['UTC', 'the US', 'en-US@posix'],
    ['Etc/UTC', 'the rest of Europe', 'de-DE'],
    // A country that is not in the table, and no language at all.
    ['Asia/Tokyo', undefined, 'en-US'],
    ['America/Mexico_City', undefined, 'en-US'],
    ['UTC', undefined, 'en', 'not a language'],
  ])('%s is %s', (zone, place, ...languages) => expect(placeAt(zone, ...languages)).toBe(place));
  it('is one of the table or nothing, whatever a device tells', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.string()), (zone, languages) => {
        const region = regionOf(zone, languages);
        expect(region === undefined || /^[A-Z]{2}$/.test(region)).toBe(true);
      }),
    );
  });
  it('is one of Europe in every zone of Europe that the machine knows, and known in all of Australia', () => {
    for (const zone of Intl.supportedValuesOf('timeZone')) {
      if (zone.startsWith('Europe/')) expect(placeAt(zone)).toMatch(/UK|Ireland|Austria|Switzerland|Europe/);
      if (zone.startsWith('Australia/')) expect(placeAt(zone)).toBe('Australia');
    }
  });
});

describe('a number in a text', () => {
  const dialed = (text: string, zone: string) =>
    dialedIn(text, placeOf(zone, []))
      .map(({ text: part, tel }) => (tel ? `[${part}](${tel})` : part))
      .join('');
  it('stands behind that of where she is', () => {
    expect(dialed('Call the fire department, 911 in the US.', 'Europe/London')).toBe(
      'Call the fire department, [999](tel:999) where you are, [911](tel:911) in the US.',
    );
    expect(dialed('Call Poison Help now, 1-800-222-1222 in the US.', 'Australia/Perth')).toBe(
      'Call Poison Help now, [13 11 26](tel:131126) where you are, [1-800-222-1222](tel:18002221222) in the US.',
    );
  });
  it('stands alone where it is hers, where hers is not known, and where no line was found', () => {
    for (const zone of ['America/Denver', 'Asia/Tokyo'])
      expect(dialed('Call 911.', zone)).toBe('Call [911](tel:911).');
    expect(dialed('Call 1-800-222-1222.', 'Europe/Paris')).toBe('Call [1-800-222-1222](tel:18002221222).');
  });
  it('is dialed by its figures alone', () => {
    for (const { emergency, poison } of places)
      for (const number of [emergency, poison?.number ?? emergency])
        expect(telOf(number)).toMatch(/^tel:\d{3,11}$/);
  });
});

it('parts what an order is about from what it says', () => {
  expect(leadOf('Eye: rinse with running water.')).toEqual({
    lead: 'Eye:',
    rest: 'rinse with running water.',
  });
  expect(leadOf('Empty the vacuum outdoors at once.')).toEqual({
    lead: '',
    rest: 'Empty the vacuum outdoors at once.',
  });
});

it('sets off the ways that an order leaves open, and only where it does so itself', () => {
  expect(waysOf('lay each cloth flat, or on a line; or put it in a tin.')).toEqual([
    'Lay each cloth flat, or on a line.',
    'Or put it in a tin.',
  ]);
  expect(waysOf('Rinse, or call.')).toEqual(['Rinse, or call.']);
});

it('keeps a question with its answer, and leads with it', () => {
  const orders = ordersIn('Test it first. Sanded some already? Stop, and wash. No broom.');
  expect(orders).toEqual(['Test it first.', 'Sanded some already? Stop, and wash.', 'No broom.']);
  expect(leadOf(orders[1] ?? '')).toEqual({ lead: 'Sanded some already?', rest: 'Stop, and wash.' });
  expect(ordersIn('Is it old?')).toEqual(['Is it old?']);
});
