/** The coat clock against hand-made times: figures of the product files at 23 °C and 50 %, where they hold unchanged. */
import { expect, it } from 'vitest';
import { caseFromClock, checkCoat, clockNow, factsOf, lifeLine, remindersOf, sayNow } from '#engine/clock.ts';
import { coat, HOUR, LAID, MINUTE, poly, running, STYLE } from './running-coat.ts';
import { WORDS } from './words.ts';

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
  expect(sayNow(WORDS, reading, LAID + 12 * MINUTE, STYLE).verdict).toBe(
    'Hands off until 10:55 AM, 10:40 AM at the earliest',
  );
  expect(reading.moments.recoat).toEqual({ from: LAID + HOUR, to: LAID + HOUR, reasons: [] });
});

it('reckons nothing from a coat laid in the future', () => {
  const now = LAID - 24 * HOUR;
  expect(clockNow(poly, coat, now)).toEqual({ kind: 'future', laidAt: LAID });
  expect(factsOf(poly, coat, now)['stage']).toBeUndefined();
  expect(checkCoat(WORDS, poly, coat, now, STYLE)).toMatchObject([{ field: 'laidAt', stops: true }]);
  expect(sayNow(WORDS, clockNow(poly, coat, now), now, STYLE).why).toContain('tomorrow 10:00 AM');
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
  const rings = remindersOf(WORDS, running(), coat, LAID);
  expect(rings.map(({ key }) => key)).toEqual(['touch', 'recoat', 'sand-if-beyond', 'light-use', 'cure']);
  expect(rings[1]?.at).toBeCloseTo(LAID + 4 * HOUR, 0);
  expect(rings[2]?.at).toBeCloseTo(LAID + 24 * HOUR, 0);
  expect(remindersOf(WORDS, running(), coat, LAID + 5 * HOUR).map(({ key }) => key)).not.toContain('recoat');
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

it('cures no sooner than its lowest coat', () => {
  const below = { ...coat, id: 'b', amount: { milliliters: 300, squareMeters: 1 } };
  const products = { 'water-based-polyurethane': poly };
  const lower = clockNow(poly, below, LAID);
  if (lower.kind !== 'running') throw new Error('not running');
  const firm = lower.moments.recoat.from;
  const top = { ...coat, laidAt: firm, below: [below] };
  const upper = clockNow(poly, top, firm, products);
  if (upper.kind !== 'running') throw new Error('not running');
  expect(upper.moments.cure.to).toBe(lower.moments.cure.to);
  expect(upper.moments.cure.reasons).toContain('coat-below');
  const alone = running({ laidAt: firm }, (firm - LAID) / MINUTE);
  const after = clockNow(poly, top, alone.moments.cure.to + HOUR, products);
  expect(after).toMatchObject({ stage: 'recoatable' });
});

it('dries as one film over a coat that was not ready for another', () => {
  const spread = { milliliters: 120, squareMeters: 1 };
  const below = { ...coat, id: 'b', amount: spread };
  const products = { 'water-based-polyurethane': poly };
  const at = LAID + 12 * MINUTE;
  const over = (laidAt: number) =>
    clockNow(poly, { ...coat, laidAt, amount: spread, below: [below] }, laidAt, products);
  const twice = clockNow(
    poly,
    { ...coat, laidAt: at, amount: { ...spread, milliliters: 240 } },
    at,
    products,
  );
  const alone = clockNow(poly, { ...coat, laidAt: at, amount: spread }, at, products);
  const soon = over(at);
  const later = over(LAID + 24 * HOUR);
  for (const one of [twice, alone, soon, later]) if (one.kind !== 'running') throw new Error('not running');
  const touchOf = (one: typeof soon) =>
    one.kind === 'running' ? one.moments.touch.to - (one === later ? LAID + 24 * HOUR : at) : Number.NaN;
  expect(touchOf(soon)).toBeGreaterThanOrEqual(touchOf(twice));
  expect(touchOf(later)).toBe(touchOf(alone));
});
