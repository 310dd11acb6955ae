/** The coat clock against hand-made times: figures of the product files at 23 °C and 50 %, where they hold unchanged. */
import { expect, it } from 'vitest';
import {
  caseFromClock,
  checkCoat,
  clockNow,
  factsOf,
  jumpedBack,
  type LaidCoat,
  lifeLine,
  type Running,
  readStore,
  remindersOf,
  sayNow,
  sayReasons,
} from '#engine/clock.ts';
import { product } from './calc/products.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const LAID = Date.parse('2026-11-24T17:00:00Z');
const STYLE = { timeZone: 'America/Denver', hour12: true };
const poly = product('water-based-polyurethane');

const coat: LaidCoat = {
  id: 'a',
  piece: 'Navy dresser',
  product: 'water-based-polyurethane',
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
};

const running = (over: Partial<LaidCoat> = {}, minutes = 0): Running => {
  const reading = clockNow(poly, { ...coat, ...over }, LAID + minutes * MINUTE);
  if (reading.kind !== 'running') throw new Error(`not running: ${JSON.stringify(reading)}`);
  return reading;
};

it('gives the product’s own times in its own weather', () => {
  const { moments } = running();
  const [touch, use] = [poly['touch-minutes'], poly['light-use-days']];
  expect(moments.touch.from).toBeCloseTo(LAID + touch[0] * MINUTE, 0);
  expect(moments.touch.to).toBeCloseTo(LAID + touch[1] * MINUTE, 0);
  expect(moments['light-use'].to).toBeCloseTo(LAID + use[1] * 24 * HOUR, 0);
});

it.each([
  [0, 'wet', 'surely'],
  [3, 'wet', 'probably'],
  [12, 'setting', 'surely'],
  [30, 'setting', 'probably'],
  [121, 'dry-to-touch', 'probably'],
  [241, 'recoatable', 'surely'],
  [31 * 24 * 60, 'cured', 'surely'],
])('after %i minutes it is %s, %s', (minutes, stage, sureness) => {
  expect(running({}, minutes)).toMatchObject({ stage, sureness });
});

it('holds hands off until the film is surely dry to the touch', () => {
  expect(running({}, 44).handsOff).toBeDefined();
  expect(running({}, 46).handsOff).toBeUndefined();
});

it('lets the label win', () => {
  const label = { minutes: { touch: { from: 40, to: 55 }, recoat: { from: 60, to: 60 } } };
  const reading = running({ label }, 12);
  expect(sayNow(reading, LAID + 12 * MINUTE, STYLE).verdict).toBe('Hands off until 10:40–10:55 AM');
  expect(reading.moments.recoat).toEqual({ from: LAID + HOUR, to: LAID + HOUR, reasons: [] });
});

it('says until when in one line, noon, midnight and the early end behind it', () => {
  const label = (from: number, to: number) => ({ minutes: { touch: { from, to } } });
  const said = (over: Partial<LaidCoat>, now: number) =>
    sayNow(clockNow(poly, { ...coat, ...over }, now), now, STYLE).verdict;
  expect(said({ label: label(100, 125) }, LAID + 12 * MINUTE)).toBe('Hands off until 11:40–12:05 PM');
  expect(said({ label: label(100, 125) }, LAID + 110 * MINUTE)).toBe('Hands off until 12:05 PM');
  const late = Date.parse('2026-11-25T06:30:00Z');
  expect(said({ laidAt: late, label: label(20, 50) }, late)).toBe(
    'Hands off until 11:50 PM – tomorrow 12:20 AM',
  );
  expect(said({ laidAt: late, label: label(20, 50) }, late + 40 * MINUTE)).toBe('Hands off until 12:20 AM');
});

it('is not moved by a change to or from daylight-saving time', () => {
  const said = (laidAt: number, from: number, to: number) =>
    sayNow(
      clockNow(poly, { ...coat, laidAt, label: { minutes: { touch: { from, to } } } }, laidAt),
      laidAt,
      STYLE,
    ).verdict;
  // Denver, 1 November 2026: at 08:00Z the clock goes from 2:00 AM back to 1:00 AM.
  expect(said(Date.parse('2026-11-01T05:30:00Z'), 180, 239)).toBe('Hands off until tomorrow 1:30–2:29 AM');
  // Denver, 8 March 2026: at 09:00Z it goes from 2:00 AM on to 3:00 AM.
  expect(said(Date.parse('2026-03-08T08:30:00Z'), 60, 90)).toBe('Hands off until 3:30–4:00 AM');
});

it('reckons nothing from a coat laid in the future', () => {
  const now = LAID - 24 * HOUR;
  expect(clockNow(poly, coat, now)).toEqual({ kind: 'future', laidAt: LAID });
  expect(factsOf(poly, coat, now)['stage']).toBeUndefined();
  expect(checkCoat(poly, coat, now, STYLE)).toMatchObject([{ field: 'laidAt', stops: true }]);
  expect(sayNow(clockNow(poly, coat, now), now, STYLE).why).toContain('tomorrow 10:00 AM');
});

it('tells a clock of the device that went back, but not a small correction', () => {
  expect(jumpedBack(LAID, LAID - 90 * MINUTE)).toBe(90);
  expect(jumpedBack(LAID, LAID - MINUTE)).toBe(0);
  expect(jumpedBack(LAID, LAID + HOUR)).toBe(0);
});

it.each([
  [{ celsius: 60 }, 'celsius', true],
  [{ relativeHumidity: 1.3 }, 'relativeHumidity', true],
  [{ surfaceCelsius: 140 }, 'surfaceCelsius', true],
  [{ surfaceCelsius: 5, relativeHumidity: 0.8 }, 'surfaceCelsius', false],
  [{ celsius: 5 }, 'celsius', false],
  [{ coatNumber: 0 }, 'coatNumber', true],
  [{ amount: { milliliters: 1000, squareMeters: 0.1 } }, 'amount', true],
  [{ label: { minutes: { recoat: { from: 0, to: 0 } } } }, 'label-recoat', true],
] as const)('finds the fault of %j beside its field', (over, field, stops) => {
  const faults = checkCoat(poly, { ...coat, ...over }, LAID, STYLE);
  expect(faults.map((fault) => [fault.field, fault.stops])).toContainEqual([field, stops]);
  for (const { says } of faults) expect(says.length).toBeGreaterThan(20);
});

it('promises no time below the dew point, and gives no stage', () => {
  const cold = { ...coat, surfaceCelsius: 5, relativeHumidity: 0.8 };
  expect(clockNow(poly, cold, LAID)).toMatchObject({
    kind: 'refused',
    problem: { code: 'surface-below-dew-point' },
  });
  expect(factsOf(poly, cold, LAID)['stage']).toBeUndefined();
});

it('knows what no walk has to ask', () => {
  const on = caseFromClock(poly, {
    minutes: 12,
    celsius: 18,
    relativeHumidity: 0.65,
    applicator: 'brush',
    sheen: 'satin',
  });
  expect(on['stage']).toEqual({ value: 'setting', how: 'computed' });
  expect(on['hours-since-coat']?.value).toBeCloseTo(0.2);
  expect(Object.fromEntries(Object.entries(on).map(([name, fact]) => [name, fact.value]))).toMatchObject({
    family: 'water-based',
    applicator: 'brush',
    sheen: 'satin',
    'coat-number': 1,
    'air-celsius': 18,
    'relative-humidity': 0.65,
  });
});

it('rings at the late end, and for the deadline at the early one', () => {
  const rings = remindersOf(running(), coat, LAID);
  expect(rings.map(({ key }) => key)).toEqual(['touch', 'recoat', 'sand-if-beyond', 'light-use', 'cure']);
  expect(rings[1]?.at).toBeCloseTo(LAID + 4 * HOUR, 0);
  expect(rings[2]?.at).toBeCloseTo(LAID + 24 * HOUR, 0);
  expect(remindersOf(running(), coat, LAID + 5 * HOUR).map(({ key }) => key)).not.toContain('recoat');
});

it('draws the life of the film in order, with now moving on', () => {
  const places = [0, 12, 60, 200, 5000, 50_000].map((minutes) =>
    lifeLine(running({}, minutes), LAID, LAID + minutes * MINUTE),
  );
  const marks = places.map(({ now }) => now);
  expect(marks).toEqual([...marks].sort((one, two) => one - two));
  expect(marks.at(0)).toBe(0);
  for (const { bands } of places)
    for (const { from, sure, to } of bands) expect(from <= sure && sure <= to).toBe(true);
});

it('joins the reasons into one sentence', () => {
  expect(sayReasons([])).toBe('');
  expect(sayReasons(['weather'])).toBe('It is not certain because the weather is not that of the figures.');
  expect(sayReasons(['product-varies', 'weather', 'film-thickness'])).toMatch(/, .+ and .+\.$/);
});

it.each([null, undefined, 7, '[]', { version: 2 }, { version: 1, coats: 'none' }])(
  'reads %j as no coat',
  (kept) => {
    expect(readStore(kept).store.coats).toEqual([]);
  },
);

it('keeps the coats that read and counts those that do not', () => {
  const kept = JSON.parse(
    JSON.stringify({ version: 1, coats: [coat, { id: 1 }], products: { x: {} }, seenAt: 'now' }),
  );
  const { store, lost } = readStore(kept);
  expect(store.coats).toEqual([coat]);
  expect(lost).toBe(1);
  expect(store.products).toEqual({});
});
