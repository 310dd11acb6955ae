/** What the head of a running coat tells her to do, by the kind of finish and what lies ahead. */
import { expect, it } from 'vitest';
import { besideProblem, sayWeatherReasons } from '#engine/calc/say-weather.ts';
import { weatherVerdict } from '#engine/calc/weather.ts';
import { clockNow, isLateAtOnce, type Running, remindersOf, sayMoment, sayNow } from '#engine/clock.ts';
import { product } from '../calc/products.ts';
import { coat, HOUR, LAID, MINUTE, poly, running, STYLE } from './running-coat.ts';
import { WORDS } from './words.ts';

it('has the surplus of an oil wiped off while it is open, and then hands off', () => {
  const oil = product('drying-oil');
  const [, open] = oil['open-minutes'];
  const at = (minutes: number) => {
    const now = LAID + minutes * MINUTE;
    return sayNow(WORDS, clockNow(oil, { ...coat, product: 'drying-oil' }, now), now, STYLE);
  };
  expect(at(open / 2)).toMatchObject({ doing: 'wipe-back', verdict: 'Wipe the surplus off by 11:00 AM' });
  expect(at(open + 1)).toMatchObject({ doing: 'leave' });
  expect(sayNow(WORDS, clockNow(poly, coat, LAID + MINUTE), LAID + MINUTE, STYLE).doing).toBe('leave');
});

it('leads on to no other coat over the last one', () => {
  const now = LAID + 30 * HOUR;
  const said = (last: boolean) => sayNow(WORDS, clockNow(poly, { ...coat, last }, now), now, STYLE);
  expect(said(false).doing).toBe('repair');
  expect(said(true)).toMatchObject({ doing: 'accept', verdict: 'Leave it to cure' });
  expect(
    sayNow(WORDS, clockNow(poly, { ...coat, last: true }, LAID + MINUTE), LAID + MINUTE, STYLE).doing,
  ).toBe('leave');
});

it('says what leads on where the air is to blame that no time can be told', () => {
  const cold = clockNow(poly, { ...coat, celsius: 4 }, LAID + HOUR);
  expect(cold.kind).toBe('refused');
  expect(sayNow(WORDS, cold, LAID + HOUR, STYLE).why).toMatch(
    /Bring the piece, held where it is bare, slowly into air that is right for it/,
  );
});

it('buffs a finish in the wood and sands none; a deadline is told by its early end', () => {
  const wax = product('soft-wax');
  const reading = clockNow(wax, { ...coat, product: 'soft-wax' }, LAID + 60 * HOUR);
  expect(sayNow(WORDS, reading, LAID + 60 * HOUR, STYLE).verdict).toBe('Ready to buff and recoat');
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
      return sayNow(WORDS, clockNow(wax, { ...coat, product: id }, now), now, STYLE);
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
    const [first] = remindersOf(WORDS, clockNow(wax, { ...coat, product: id }, LAID) as Running, coat, LAID);
    expect(first).toMatchObject({ title: 'Navy dresser: look whether the wax is dull' });
    expect(first && first.at - LAID).toBeLessThanOrEqual(15 * MINUTE);
  },
);

it('opens no window that has closed before: slow varnish is dulled in any case, and no deadline rings before it is ready', () => {
  const of = (celsius: number, id = 'oil-based-polyurethane') => {
    const cool = { ...coat, product: id, celsius };
    const reading = clockNow(product(id), cool, LAID);
    if (reading.kind !== 'running') throw new Error('not running');
    return { late: isLateAtOnce(reading.moments), rings: remindersOf(WORDS, reading, cool, LAID) };
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
    const { why } = sayNow(WORDS, reading, LAID, { ...STYLE, units: 'us' });
    expect(why).toMatch(/Bring the piece, held where it is bare, slowly into air that is right for it/);
    const weather = weatherVerdict(of, { celsius, relativeHumidity });
    if (!weather.ok) throw new Error('no weather');
    const beside = besideProblem(weather.value.reasons, reading.problem);
    const said = sayWeatherReasons(WORDS, { ...weather.value, reasons: beside }, 'told', 'us').map(
      ({ says }) => says,
    );
    for (const says of said) expect(why.slice(0, 40)).not.toContain(/\d+ (?:°F|%)/.exec(says)?.[0] ?? says);
    const [is = '', least = ''] = why.match(/[\d.]+ °F \([\d.]+ °C\)/g) ?? [];
    for (const unit of [/[\d.]+ °F/, /[\d.]+ °C/])
      if (is) expect(unit.exec(is)?.[0]).not.toBe(unit.exec(least)?.[0]);
  },
);
