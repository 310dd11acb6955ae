/** The coat clock against hand-made times: figures of the product files at 23 °C and 50 %, where they hold unchanged. */
import { expect, it } from 'vitest';
import { besideProblem, sayWeatherReasons } from '#engine/calc/say-weather.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import {
  askAboutLabel,
  caseFromClock,
  checkCoat,
  clockDoubt,
  clockNow,
  factsOf,
  isLateAtOnce,
  jumpedBack,
  type LaidCoat,
  labelHere,
  laidBeforeClocks,
  lifeLine,
  type Running,
  readStore,
  remindersOf,
  sayInstant,
  sayMoment,
  sayNow,
  sayReasons,
  saySpan,
  sayUntil,
} from '#engine/clock.ts';
import { product } from '../calc/products.ts';

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
  expect(sayNow(reading, LAID + 12 * MINUTE, STYLE).verdict).toBe(
    'Hands off until 10:55 AM, perhaps from 10:40 AM',
  );
  expect(reading.moments.recoat).toEqual({ from: LAID + HOUR, to: LAID + HOUR, reasons: [] });
});

it('says until when in one line, noon, midnight and the early end behind it', () => {
  const label = (from: number, to: number) => ({ minutes: { touch: { from, to } } });
  const said = (over: Partial<LaidCoat>, now: number) =>
    sayNow(clockNow(poly, { ...coat, ...over }, now), now, STYLE).verdict;
  expect(said({ label: label(100, 125) }, LAID + 12 * MINUTE)).toBe(
    'Hands off until 12:05 PM, perhaps from 11:40 AM',
  );
  expect(said({ label: label(100, 125) }, LAID + 110 * MINUTE)).toBe('Hands off until 12:05 PM');
  const late = Date.parse('2026-11-25T06:30:00Z');
  expect(said({ laidAt: late, label: label(20, 50) }, late)).toBe(
    'Hands off until tomorrow 12:20 AM, perhaps from today 11:50 PM',
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
  expect(said(Date.parse('2026-11-01T05:30:00Z'), 180, 239)).toBe(
    'Hands off until tomorrow 2:29 AM, perhaps from 1:30 AM MST',
  );
  // Denver, 8 March 2026: at 09:00Z it goes from 2:00 AM on to 3:00 AM.
  expect(said(Date.parse('2026-03-08T08:30:00Z'), 60, 90)).toBe(
    'Hands off until 4:00 AM, perhaps from 3:30 AM',
  );
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
  expect(sayReasons(['weather'])).toBe('A range, because the weather is not that of the table.');
  expect(sayReasons(['product-varies', 'weather', 'thick-film'])).toMatch(/, .+ and .+\.$/);
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

it('gives the late end in large letters and the early one behind it', () => {
  const label = { minutes: { touch: { from: 100, to: 125 } } };
  const said = sayNow(running({ label }), LAID, STYLE);
  expect(said.large).toBe('Hands off until 12:05 PM');
  expect(said.perhaps).toBe('perhaps from 11:40 AM');
});

it('names no time before it comes: both ends are rounded up', () => {
  const at = (minutes: number) => LAID + minutes * MINUTE;
  // Seven hours wide: steps of half an hour. 10:07 AM is not told as 10:00.
  expect(saySpan(at(7), at(427), LAID, STYLE)).toBe('10:30 AM–5:30 PM');
  expect(saySpan(at(7), at(8.2), LAID, STYLE)).toBe('10:07–10:09 AM');
});

it('names the year where it is not this one', () => {
  expect(sayInstant(Date.parse('2027-11-28T17:00:00Z'), LAID, STYLE)).toBe('Sun, Nov 28, 2027, 10:00 AM');
  expect(sayUntil(Date.parse('2026-12-30T17:00:00Z'), Date.parse('2027-01-09T17:00:00Z'), LAID, STYLE)).toBe(
    'Sat, Jan 9, 2027, perhaps from Wed, Dec 30',
  );
});

it('tells the two hours apart that look alike when clocks are put back', () => {
  const newYork = { timeZone: 'America/New_York', hour12: true };
  // 1 November 2026: 1:30 AM comes at 05:30Z (EDT) and at 06:30Z (EST).
  const [first, second] = [Date.parse('2026-11-01T05:30:00Z'), Date.parse('2026-11-01T06:30:00Z')];
  expect(sayUntil(first + 20 * MINUTE, second - 7 * MINUTE, first, newYork)).toBe(
    '1:23 AM EST, perhaps from 1:50 AM EDT',
  );
  expect(saySpan(first + 20 * MINUTE, second - 7 * MINUTE, first, newYork)).toBe('1:50 AM EDT – 1:23 AM EST');
  expect(sayInstant(second + 3 * HOUR, second, newYork)).toBe('4:30 AM');
});

it('doubts a device whose clock went back, far ahead or was never set', () => {
  expect(clockDoubt(LAID, LAID - 5 * HOUR, STYLE)).toMatchObject({ kind: 'back', minutes: 300 });
  expect(clockDoubt(LAID, LAID + 400 * 24 * HOUR, STYLE)).toMatchObject({ kind: 'ahead' });
  expect(clockDoubt(LAID, LAID + 400 * 24 * HOUR, STYLE)?.says).toContain('2027');
  expect(clockDoubt(1000, LAID, STYLE)).toMatchObject({ kind: 'ahead' });
  expect(clockDoubt(0, 1000, STYLE)).toMatchObject({ kind: 'unset' });
  expect(clockDoubt(0, LAID, STYLE)).toBeUndefined();
  expect(clockDoubt(LAID, LAID + 30 * 24 * HOUR, STYLE)).toBeUndefined();
  expect([laidBeforeClocks(1000), laidBeforeClocks(LAID)]).toEqual([true, false]);
});

it('asks about a time of the label that lies far from all cans of its kind', () => {
  const oil = product('oil-based-polyurethane');
  const minutes = {
    touch: { from: 30, to: 30 },
    recoat: { from: 60, to: 60 },
    cure: { from: 4320, to: 4320 },
  };
  expect(askAboutLabel(oil, { minutes }).map(({ milestone }) => milestone)).toEqual([
    'touch',
    'recoat',
    'cure',
  ]);
  expect(askAboutLabel(oil, { minutes })[1]?.says).toBe(
    'Oil-based polyurethane: the time to recoat is 12–24 h on most cans, and you typed 60 min. Is it this can, and this unit?',
  );
  // A fast can, and its own figures.
  expect(askAboutLabel(poly, { minutes: { recoat: { from: 60, to: 60 } } })).toEqual([]);
  expect(askAboutLabel(poly, undefined)).toEqual([]);
});

it('says what the can’s time becomes here', () => {
  const label = {
    minutes: { recoat: { from: 120, to: 120 } },
    climate: { celsius: 25, relativeHumidity: 0.5 },
  };
  const cold = { ...coat, label, celsius: 11, relativeHumidity: 0.8 };
  const [said] = labelHere(cold, running(cold), 'us');
  expect(said?.says).toMatch(
    /^Your can’s 2 h \(at the can’s 77 °F \(25 °C\), 50 %\) becomes [\d.]+–[\d.]+ h in this air\.$/,
  );
  expect(said?.here.to).toBeGreaterThan(240);
  const own = { ...coat, label, celsius: 25 };
  expect(labelHere(own, running(own))[0]?.says).toBe('By your can: 2 h.');
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

it('has the surplus of an oil wiped off while it is open, and then hands off', () => {
  const oil = product('drying-oil');
  const [, open] = oil['open-minutes'];
  const at = (minutes: number) => {
    const now = LAID + minutes * MINUTE;
    return sayNow(clockNow(oil, { ...coat, product: 'drying-oil' }, now), now, STYLE);
  };
  expect(at(open / 2)).toMatchObject({ doing: 'wipe-back', verdict: 'Wipe the surplus off by 11:00 AM' });
  expect(at(open + 1)).toMatchObject({ doing: 'leave' });
  expect(sayNow(clockNow(poly, coat, LAID + MINUTE), LAID + MINUTE, STYLE).doing).toBe('leave');
});

it('leads on to no other coat over the last one', () => {
  const now = LAID + 30 * HOUR;
  const said = (last: boolean) => sayNow(clockNow(poly, { ...coat, last }, now), now, STYLE);
  expect(said(false).doing).toBe('repair');
  expect(said(true)).toMatchObject({ doing: 'accept', verdict: 'Leave it to cure' });
  expect(sayNow(clockNow(poly, { ...coat, last: true }, LAID + MINUTE), LAID + MINUTE, STYLE).doing).toBe(
    'leave',
  );
});

it('says what leads on where the air is to blame that no time can be told', () => {
  const cold = clockNow(poly, { ...coat, celsius: 4 }, LAID + HOUR);
  expect(cold.kind).toBe('refused');
  expect(sayNow(cold, LAID + HOUR, STYLE).why).toMatch(
    /Bring the piece, held where it is bare, slowly into air that is right for it/,
  );
});

it('buffs a finish in the wood and sands none; a deadline is told by its early end', () => {
  const wax = product('soft-wax');
  const reading = clockNow(wax, { ...coat, product: 'soft-wax' }, LAID + 60 * HOUR);
  expect(sayNow(reading, LAID + 60 * HOUR, STYLE).verdict).toBe('Ready to buff and recoat');
  const deadline = running().moments['sand-if-beyond'];
  if (!deadline) throw new Error('no deadline');
  expect(sayMoment('sand-if-beyond', deadline, LAID, STYLE)).toBe('tomorrow 10:00 AM');
});

it.each(['paste-wax', 'soft-wax'])(
  'has %s wiped back at once, buffed by its look within the hour, and left a day',
  (id) => {
    // Dull and no longer cool after 10 to 30 minutes (wax-w8), 30 to 60 by a museum agency (safety-s69); 24 to 48 hours
    // between coats (wax-w11).
    const wax = product(id);
    const at = (minutes: number) => {
      const now = LAID + minutes * MINUTE;
      return sayNow(clockNow(wax, { ...coat, product: id }, now), now, STYLE);
    };
    expect(at(1)).toMatchObject({ doing: 'wipe-back', verdict: 'Wipe the surplus off now' });
    expect(at(1).why).toMatch(/10:1\d–11:00 AM, and buff it/);
    expect(at(16)).toMatchObject({ doing: 'leave', large: 'Hands off until 11:00 AM' });
    expect(at(16).why).toMatch(/dull all over and no longer cool.+buff it/);
    expect(at(61)).toMatchObject({
      doing: 'wait',
      large: 'Buff it, then leave it until Thu, Nov 26, 10:00 AM',
    });
    expect(at(48 * 60).verdict).toBe('Ready to buff and recoat');
    const [first] = remindersOf(clockNow(wax, { ...coat, product: id }, LAID) as Running, coat, LAID);
    expect(first).toMatchObject({ title: 'Navy dresser: look whether the wax is dull' });
    expect(first && first.at - LAID).toBeLessThanOrEqual(15 * MINUTE);
  },
);

it('opens no window that has closed before: slow varnish is dulled in any case, and no deadline rings before it is ready', () => {
  const of = (celsius: number, id = 'oil-based-polyurethane') => {
    const cool = { ...coat, product: id, celsius };
    const reading = clockNow(product(id), cool, LAID);
    if (reading.kind !== 'running') throw new Error('not running');
    return { late: isLateAtOnce(reading.moments), rings: remindersOf(reading, cool, LAID) };
  };
  // Surely ready after 24 h and to be sanded from 24 h on (film-s140): no time between the two, however warm. A
  // water-based coat is ready after 4 h and sanded from 24 h on.
  const [cool, warm] = [of(15.5), of(23, 'water-based-polyurethane')];
  expect([cool.late, of(23).late, warm.late]).toEqual([true, true, false]);
  expect(cool.rings.map(({ key }) => key)).not.toContain('sand-if-beyond');
  expect(cool.rings.find(({ key }) => key === 'recoat')?.detail).toMatch(
    /light strokes by hand until it is dull/,
  );
  expect(warm.rings.map(({ key }) => key)).toContain('sand-if-beyond');
});

// 54 °F, 60 °F, 96 °F and a warm damp afternoon; °F = °C × 9/5 + 32 by hand.
it.each([
  ['oil-based-polyurethane', 12.22, 0.5],
  ['sprayed-lacquer', 29.44, 0.7],
  ['water-based-polyurethane', 35.56, 0.5],
  ['gel-varnish', 15.56, 0.5],
  ['shellac', 21.11, 0.85],
])(
  'leads on from %s at %d °C and %d, and says one fact once, in figures that differ',
  (id, celsius, relativeHumidity) => {
    const of = product(id);
    const reading = clockNow(of, { ...coat, product: id, celsius, relativeHumidity }, LAID);
    if (reading.kind !== 'refused') throw new Error('not refused');
    const { why } = sayNow(reading, LAID, { ...STYLE, units: 'us' });
    expect(why).toMatch(/Bring the piece, held where it is bare, slowly into air that is right for it/);
    const weather = weatherVerdict(of, { celsius, relativeHumidity });
    if (!weather.ok) throw new Error('no weather');
    const beside = besideProblem(weather.value.reasons, reading.problem);
    const said = sayWeatherReasons({ ...weather.value, reasons: beside }, 'told', 'us').map(
      ({ says }) => says,
    );
    for (const says of said) expect(why.slice(0, 40)).not.toContain(/\d+ (?:°F|%)/.exec(says)?.[0] ?? says);
    const [is = '', least = ''] = why.match(/[\d.]+ °F \([\d.]+ °C\)/g) ?? [];
    for (const unit of [/[\d.]+ °F/, /[\d.]+ °C/])
      if (is) expect(unit.exec(is)?.[0]).not.toBe(unit.exec(least)?.[0]);
  },
);
