/**
 * Whatever the product and however old the coat: the clock says what its own moments call for, by a plain list written
 * here again, in whole sentences, and says what comes next. Coats are invented.
 */
import { describe, expect, it } from 'vitest';
import type { Widening } from '#engine/calc/drying/coat.ts';
import {
  clockNow,
  isLateAtOnce,
  type LaidCoat,
  type NowWords,
  type Reading,
  type Running,
  remindersOf,
  sayInstant,
  sayNow,
  sayReasons,
  sayUntil,
} from '#engine/clock.ts';
import { UNSANDED, WIPED_OFF } from '#engine/model/family.ts';
import type { Span } from '#engine/plain/span.ts';
import { DAY_MS as DAY, HOUR_MS as HOUR, MINUTE_MS as MINUTE } from '#engine/plain/time.ts';
import { PRODUCTS } from '../calc/products.ts';
import { WORDS } from './words.ts';

const STYLE = { timeZone: 'UTC', hour12: true } as const;
const LAID = Date.UTC(2026, 10, 24, 9);
const products = Object.fromEntries(PRODUCTS);

/** Sentences, each begun with a capital and ended with its mark, one blank between two of them. */
const WHOLE = /^(?:[A-Z0-9“][^.?!]*(?:[.,:]\d[^.?!]*)*[.?!](?: (?=\S)|$))+$/;
const isWhole = (text: string): boolean => WHOLE.test(text) && !/undefined|NaN| {2}|\[object/.test(text);

type Seen = {
  readonly reading: Running;
  readonly coat: LaidCoat;
  readonly now: number;
  readonly name: string;
  readonly said: NowWords;
};

/** Just before and at each moment of a coat. */
const seenOf = (coat: LaidCoat): readonly Seen[] => {
  const product = products[coat.product];
  if (!product) throw new Error('no such product');
  const first = clockNow(product, coat, LAID, products);
  if (first.kind !== 'running') throw new Error(`${coat.product} does not run`);
  const ends = Object.values(first.moments).flatMap((one) => (one ? [one.from, one.to] : []));
  const times = ends.map(Math.ceil).flatMap((end) => [end - MINUTE, end]);
  return [LAID, ...times].flatMap((now) => {
    const reading: Reading = clockNow(product, coat, now, products);
    return reading.kind === 'running'
      ? [
          {
            reading,
            coat,
            now,
            name: `${coat.product} after ${(now - LAID) / MINUTE} min`,
            said: sayNow(WORDS, reading, now, STYLE),
          },
        ]
      : [];
  });
};

/** One name for all that is compared; thousands of plain matchers would take seconds. */
const same = (name: string, is: unknown, wanted: unknown): void => {
  if (JSON.stringify(is) !== JSON.stringify(wanted)) expect({ name, is }).toEqual({ name, is: wanted });
};

const coatOf = (product: string, more: Partial<LaidCoat> = {}): LaidCoat => ({
  id: 'a',
  piece: 'Chest',
  product,
  laidAt: LAID,
  celsius: 23,
  relativeHumidity: 0.5,
  coatNumber: 1,
  ...more,
});

const VARIANTS: readonly Partial<LaidCoat>[] = [
  {},
  { coatNumber: 3 },
  { last: true },
  { flaw: 'open' },
  { flaw: 'repaired', coatNumber: 2 },
];
/** Eight times the usual film, which is far more than any should be. */
const flood = (micrometers: number) => ({ amount: { milliliters: 8 * micrometers, squareMeters: 1 } });
/** Each product as it is, and two of the others by turns. */
const seen = [...PRODUCTS].flatMap(([id, { 'reference-wet-film-micrometers': usual }], at) =>
  [...VARIANTS, flood(usual)]
    .filter((_, which) => which === 0 || (which + at) % 3 === 0)
    .flatMap((more) => seenOf(coatOf(id, more))),
);

/** When its first time for a coat begins and ends, and from when on one goes on for good. */
const turnsOf = ({ moments }: Running): { first?: Span; ready: Span } => {
  const { touch, recoat, 'no-coat': closed } = moments;
  if (!closed) return { ready: recoat };
  const begins = recoat.to + 15 * MINUTE <= closed.from ? recoat.to : Math.max(recoat.from, touch.to);
  return {
    ...(begins + 15 * MINUTE <= closed.from && { first: { from: begins, to: closed.from } }),
    ready: { from: Math.max(recoat.from, closed.to), to: Math.max(recoat.to, closed.to) },
  };
};
const isIn = (now: number, span: { from: number; to: number } | undefined): boolean =>
  span !== undefined && now >= span.from && now < span.to;

/** What hands do by the clock alone. */
const byClock = ({ reading, coat, now }: Seen): string => {
  const { moments, last, pastMost } = reading;
  const family = products[coat.product]?.family;
  if (!family) throw new Error('no such product');
  if (WIPED_OFF.includes(family) && now < moments.open.to) return 'wipe-back';
  if (now < moments.touch.to) return 'leave';
  const { first, ready } = turnsOf(reading);
  if (!last && pastMost === undefined) {
    if (isIn(now, first)) return 'repair';
    if (now < ready.to) return 'wait';
  }
  if (now < moments.recoat.to) return 'wait';
  if (now >= moments.cure.to || last || pastMost !== undefined) return 'accept';
  return 'repair';
};

describe('what the clock says', () => {
  it('is seen of every product at every stage', () => {
    expect(seen.length).toBeGreaterThan(500);
    expect(new Set(seen.map((one) => byClock(one)))).toEqual(
      new Set(['wipe-back', 'leave', 'wait', 'accept', 'repair']),
    );
  });

  it('is what its moments call for; a flaw comes before another coat, and after what a soft film must be spared', () => {
    for (const one of seen) {
      const { doing, why } = one.said;
      const alone = byClock(one);
      const spared = alone === 'leave' || alone === 'wipe-back';
      same(one.name, doing, one.coat.flaw && !spared ? 'wait' : alone);
      if (one.coat.flaw && !spared) expect(why).toMatch(/By the clock: [A-Z].+\.$/);
      else expect(why).not.toContain('By the clock');
    }
  });

  it('is said in whole sentences, each part of it there', () => {
    for (const { name, said } of seen) {
      const { verdict, large, earliest, why } = said;
      same(name, [isWhole(verdict.replace(/\??$/, '.')), isWhole(why)], [true, true]);
      same(name, verdict, earliest ? `${large}, ${earliest}` : large);
    }
  });

  it('names the late end of what it waits for, and what is done then', () => {
    for (const one of seen) {
      const { reading, now, name } = one;
      const { moments } = reading;
      const doing = byClock(one);
      const { verdict, why } = one.said;
      const until = (span: { from: number; to: number }) => sayUntil(span.from, span.to, now, STYLE);
      const flawed = one.coat.flaw !== undefined;
      if (doing === 'leave') same(name, [verdict], [`Hands off until ${until(moments.touch)}`]);
      if (doing === 'wait' && !flawed) {
        const { first, ready } = turnsOf(reading);
        const isOpen = !reading.last && reading.pastMost === undefined;
        const soon = isOpen && first && now < first.from;
        const next = !isOpen ? moments.recoat : soon ? { from: moments.recoat.from, to: first.from } : ready;
        same(name, [verdict.endsWith(` until ${until(next)}`)], [true]);
        if (isOpen && moments['no-coat']) {
          same(
            name,
            [/until .+ and unsanded/.test(why), /can lift/.test(why)],
            [soon === true, soon !== true],
          );
        } else if (!reading.buff) {
          same(name, [/soft inside/.test(why)], [true]);
          if (reading.pastMost === undefined)
            same(name, [/before you sand or coat/.test(why)], [reading.sanded]);
        }
      }
      // Who is not told that it is ready is told until when it cures.
      if (doing === 'accept' && !flawed && now < moments.cure.to)
        same(name, [why.includes(`Full cure: ${until(moments.cure)}.`)], [true]);
      if (doing === 'accept' && reading.last && !flawed && now < moments.cure.to) {
        same(name, [/It was the last coat/.test(why)], [true]);
        same(
          name,
          [why.includes(`Light use: ${until(moments['light-use'])}.`)],
          [now < moments['light-use'].to],
        );
      }
      // A word that holds until a day says what holds after it; any other tells of the cure.
      if (doing !== 'repair' || flawed) continue;
      const { first, ready } = turnsOf(reading);
      if (isIn(now, first)) {
        same(name, [verdict], [`Ready for the next coat until ${sayInstant(first?.to ?? 0, now, STYLE)}`]);
        same(name, [why.includes(`no coat before ${sayInstant(ready.to, now, STYLE)}`)], [true]);
        continue;
      }
      const deadline = moments['sand-if-beyond'];
      const open = deadline && now < deadline.from && !isLateAtOnce(moments) && reading.sanded;
      same(name, [/ until /.test(verdict), /Later than that/.test(why)], [open === true, open === true]);
      if (open) expect(verdict.endsWith(` until ${sayInstant(deadline.from, now, STYLE)}`)).toBe(true);
      // An exception that few have comes after all else.
      else
        same(
          name,
          [why.replace(` ${WORDS['two-part'].perhaps}`, '').endsWith(`Full cure: ${until(moments.cure)}.`)],
          [true],
        );
      expect(/\bsand\b|\bSand\b|not sanded/.test(`${verdict} ${why}`) || /^Dull it/.test(verdict)).toBe(true);
      same(name, [/not sanded/.test(why)], [!reading.sanded]);
    }
  });

  it('of wax is its look and not the clock', () => {
    const waxed = seen.filter(({ reading }) => reading.buff);
    expect(waxed.length).toBeGreaterThan(20);
    for (const { reading, name, said } of waxed) {
      const { doing, why } = said;
      if (doing === 'wipe-back' || doing === 'leave' || (doing === 'wait' && !reading.flaw))
        same(name, [/no longer cool/.test(why), /buff it|Buff it/.test(why)], [true, true]);
    }
    for (const { reading, coat } of seen)
      expect(reading.buff !== undefined).toBe(products[coat.product]?.family === 'wax');
  });

  it('of oil is where the cloths go', () => {
    const oiled = seen.filter((one) => byClock(one) === 'wipe-back' && !one.reading.buff);
    expect(oiled.length).toBeGreaterThan(10);
    for (const { reading, now, name, said } of oiled) {
      const { verdict, why } = said;
      same(name, [verdict], [`Wipe the surplus off by ${sayInstant(reading.moments.open.to, now, STYLE)}`]);
      expect(why).toMatch(/flat and single outdoors, or in a metal tin under water/);
      expect(why).toContain(`From ${sayInstant(reading.moments.open.from, now, STYLE)} on`);
    }
  });

  it('holds of a reading what its product and its coat are', () => {
    for (const { reading, coat, now, name } of seen) {
      const family = products[coat.product]?.family;
      if (!family) throw new Error('no such product');
      same(name, [reading.sanded], [!UNSANDED.includes(family)]);
      expect(reading.last).toBe(coat.last ?? false);
      expect(reading.flaw).toBe(coat.flaw);
      expect(reading.handsOff).toEqual(now < reading.moments.touch.to ? reading.moments.touch : undefined);
      // One coat is thin however thick it is; of a finish in the wood there is no film.
      if (coat.coatNumber === 1) same(name, [reading.thin], [reading.sanded]);
      if (!reading.sanded) same(name, [reading.pastMost], [undefined]);
    }
  });
});

describe('what rings', () => {
  it('is whole, of its piece, soonest first, and nothing that has passed', () => {
    for (const { reading, coat, now, name } of seen) {
      const rings = remindersOf(WORDS, reading, coat, now);
      const times = rings.map(({ at }) => at);
      expect(times).toEqual(times.toSorted((one, two) => one - two));
      expect(new Set(rings.map(({ key }) => key)).size).toBe(rings.length);
      for (const { key, at, title, detail } of rings) {
        same(name, [key, at > now], [key, true]);
        same(name, [key, /^Chest: [a-z].*[a-z]$/.test(title), isWhole(detail)], [key, true, true]);
      }
    }
  });

  it('rings when it is sure, but for a wax to be looked at and for a deadline', () => {
    for (const { reading, coat, now, name } of seen) {
      const { moments, buff, pastMost, sanded, thin } = reading;
      const deadline = moments['sand-if-beyond'];
      const wanted = {
        touch: buff ? moments.touch.from : moments.touch.to,
        ...(pastMost === undefined && { recoat: turnsOf(reading).ready.to }),
        ...(pastMost === undefined &&
          turnsOf(reading).first && { 'coat-soon': turnsOf(reading).first?.from }),
        ...(pastMost === undefined &&
          deadline &&
          deadline.from >= moments.recoat.to + HOUR && { 'sand-if-beyond': deadline.from }),
        'light-use': moments['light-use'].to,
        cure: moments.cure.to,
      };
      const ahead = Object.entries(wanted).filter(([, at]) => (at ?? 0) > now);
      const rings = remindersOf(WORDS, reading, coat, now);
      same(name, [Object.fromEntries(rings.map(({ key, at }) => [key, at]))], [Object.fromEntries(ahead)]);
      const again = rings.find(({ key }) => key === 'recoat');
      if (!again) continue;
      expect(again.title).toMatch(thin ? /next coat$/ : sanded ? /sand and recoat$/ : /buff and recoat$/);
      same(name, [/dry powder/.test(again.detail), /clean cloth/.test(again.detail)], [sanded, !sanded]);
      same(name, [/clear film is thin/.test(again.detail)], [thin]);
    }
  });
});

describe('why a time is a range', () => {
  const { one: _one, more: _more, ...reasons } = WORDS.range;
  const words = Object.entries(reasons);
  it('has words of its own for each reason', () => {
    expect(new Set(words.map(([, says]) => says)).size).toBe(words.length);
    for (const [reason, says] of words) {
      expect([reason, /^[a-z].{10,}[a-z]$/.test(says)]).toEqual([reason, true]);
      expect(sayReasons(WORDS, [reason as Widening])).toBe(`A range, because ${says}.`);
    }
  });
  it('joins two by “and”, and more by commas before it', () => {
    const [one, two, three] = ['weather', 'thick-film', 'cold-spells'] as const;
    expect(sayReasons(WORDS, [one, two])).toBe(`A range, because ${reasons[one]} and ${reasons[two]}.`);
    expect(sayReasons(WORDS, [one, two, three])).toBe(
      `A range, because ${reasons[one]}, ${reasons[two]} and ${reasons[three]}.`,
    );
  });
});

it('a coat that is laid in the future, or in air that spoils it, is told in whole sentences', () => {
  for (const [id, product] of PRODUCTS) {
    const future = sayNow(WORDS, clockNow(product, coatOf(id), LAID - DAY), LAID - DAY, STYLE);
    expect([id, future.doing, isWhole(future.why)]).toEqual([id, 'stop', true]);
    expect(future).toMatchObject({
      verdict: 'This coat is laid in the future',
      large: 'This coat is laid in the future',
    });
    expect(future.why).toContain(`It says ${sayInstant(LAID, LAID - DAY, STYLE)}`);
    expect(future.why).toContain(`this device says ${sayInstant(LAID - DAY, LAID - DAY, STYLE)}`);
    const wet = sayNow(
      WORDS,
      clockNow(product, coatOf(id, { surfaceCelsius: 3, relativeHumidity: 0.9 }), LAID),
      LAID,
      STYLE,
    );
    expect([id, wet.doing, isWhole(wet.why)]).toEqual([id, 'leave', true]);
    expect(wet).toMatchObject({ verdict: 'Hands off, and no time can be told', earliest: undefined });
    expect(wet.why).toMatch(/Bring the piece/);
  }
});
