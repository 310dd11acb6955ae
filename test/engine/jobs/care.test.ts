import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockNow } from '#engine/clock.ts';
import { careOf, coatsInOrder, datesOfCard, type JobCard, laidCoatOf, trialsOf } from '#engine/jobs.ts';
import { FACTS } from '#engine/model/facts.ts';
import { FAMILIES } from '#engine/model/family.ts';
import { driedAt } from '#engine/schedule/dry.ts';
import { type Calendar, datesOf } from '#engine/schedule.ts';
import {
  anyCard,
  card,
  care,
  coat,
  DAY,
  HOUR,
  job,
  known,
  MINUTE,
  PRODUCTS,
  plan,
  products,
  START,
} from './cards.ts';

/** Days of 24 hours, each from midnight in Greenwich. */
const calendar = (at: number): Calendar => ({
  at: (day, minute) => (Math.floor(at / DAY) + day) * DAY + minute * MINUTE,
  weekday: 1,
});
const datesFor = (one: JobCard) => datesOfCard(one, products, plan, calendar);
/** Nights in the same air as the day, as in a heated room. */
const heated = (one: JobCard): JobCard => {
  const last = coatsInOrder(one).at(-1);
  const night = last && { celsius: last.celsius, relativeHumidity: last.relativeHumidity };
  return night ? { ...one, night } : one;
};
const careFor = (one: JobCard) => {
  const told = careOf(one, products, care, datesFor(one));
  if (told.kind !== 'care') throw new Error('no care card');
  return told;
};
const wordsOf = (one: JobCard): string => JSON.stringify(careOf(one, products, care, datesFor(one)));

describe('the dates of a card', () => {
  it('are those of the planning table for the last coat, as the clock has it', () => {
    for (const product of PRODUCTS)
      for (const kind of ['furniture', 'tabletop', 'food-surface', 'childs-item'] as const) {
        const { applicator: _brush, ...laid } = coat({ product, laidAt: START + DAY });
        const one = card({ kind, coats: [coat({ id: 'first' }), laid] });
        const figures = products[product];
        if (!figures) throw new Error(product);
        const reading = clockNow(figures, laidCoatOf(one, laid), START + DAY, products);
        if (reading.kind !== 'running') throw new Error(reading.kind);
        const { recoat, 'light-use': light, cure } = reading.moments;
        const end = { to: START + DAY, recoat };
        const { kind: _kind, ...dates } = datesFor(heated(one)) as Record<string, unknown>;
        const wanted = datesOf(plan, { kind, trials: trialsOf(one) }, figures.family, end, light, cure);
        expect(dates['handle']).toBe(wanted.handle);
        expect(dates['handOver']).toBe(wanted.handOver);
        expect(dates['lightUse']).toMatchObject({ from: wanted.lightUse.from, to: wanted.lightUse.to });
        expect(dates['fullUse']).toMatchObject({ from: wanted.fullUse.from, to: wanted.fullUse.to });
      }
  });

  it('keep the figures of the can to the minute, in its own climate and in warmer air', () => {
    const days = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(
        fc.constantFrom('water-based-polyurethane', 'oil-based-polyurethane', 'waterborne-acrylic'),
        days,
        days,
        days,
        fc.constantFrom(23, 26, 29),
        (product, light, more, slack, celsius) => {
          const minutes = {
            'light-use': { from: light * 1440, to: (light + slack) * 1440 },
            cure: { from: (light + more) * 1440, to: (light + more + slack) * 1440 },
          };
          const dates = datesFor(heated(card({ coats: [coat({ product, celsius, label: { minutes } })] })));
          if (dates.kind !== 'dates') throw new Error(dates.why);
          expect(dates.lightUse.to).toBe(START + minutes['light-use'].to * MINUTE);
          expect(dates.fullUse.to).toBe(START + minutes.cure.to * MINUTE);
          expect(dates.lightUse.from).toBe(START + minutes['light-use'].from * MINUTE);
        },
      ),
    );
  });

  it('come no earlier in a colder room, nor for children, food, heat or water', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...PRODUCTS),
        fc.double({ min: 12, max: 28, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (product, celsius, colder) => {
          const [warm, cold] = [celsius, celsius - colder].map((air) =>
            datesFor(card({ coats: [coat({ product, celsius: air })] })),
          );
          if (warm?.kind !== 'dates' || cold?.kind !== 'dates') return;
          expect(cold.fullUse.to).toBeGreaterThanOrEqual(warm.fullUse.to - 1);
          const careful = datesFor(card({ trials: ['child'], coats: [coat({ product, celsius })] }));
          if (careful.kind !== 'dates') throw new Error('refused');
          // For children: the maker's figure, never less than 30 days (common practice, no source).
          expect(careful.fullUse.to).toBeGreaterThanOrEqual(START + 30 * DAY);
          expect(careful.handOver).toBeGreaterThanOrEqual(careful.fullUse.to);
        },
      ),
    );
  });

  it('are those of the schedule for the same nights', () => {
    const night = { celsius: 12, relativeHumidity: 0.7 };
    // Six in the evening, so that the first night comes three hours later.
    const laidAt = Math.floor(START / DAY) * DAY + 18 * HOUR;
    for (const product of PRODUCTS) {
      const figures = products[product];
      if (!figures) throw new Error(product);
      const { applicator: _brush, ...laid } = coat({ product, laidAt });
      const dates = datesFor(card({ night, coats: [laid] }));
      const planned = job({ night, hours: { from: plan.night.to, to: plan.night.from, days: [] } });
      const wet = figures['reference-wet-film-micrometers'];
      const dried = driedAt(
        {
          plan,
          job: planned,
          product: { ...figures, id: product, ambering: 'none', 'square-meters-per-liter': [8, 12] },
          calendar: calendar(laidAt),
          build: { wet },
        },
        laidAt,
        'last',
      );
      expect([product, dates.kind === 'dates']).toEqual([product, dried.ok]);
      if (dates.kind !== 'dates' || !dried.ok) continue;
      expect(dates.unknownNights).toBeUndefined();
      const light = dried.value['light-use'];
      const sooner = (at: number | undefined) => Math.max(at ?? 0, dates.handle);
      expect(dates.lightUse.from).toBeCloseTo(sooner(light?.from), -1);
      expect(dates.lightUse.to).toBeCloseTo(sooner(light?.to), -1);
    }
  });

  it('reach from nights like the day to colder ones where none is noted, and say why', () => {
    for (const product of PRODUCTS) {
      const one = card({ coats: [coat({ product })] });
      const [open, warm] = [datesFor(one), datesFor(heated(one))];
      if (open.kind !== 'dates' || warm.kind !== 'dates') throw new Error(product);
      expect(open.lightUse.from).toBe(warm.lightUse.from);
      expect(open.fullUse.to).toBeGreaterThanOrEqual(warm.fullUse.to);
      expect(open.lightUse.to).toBeGreaterThanOrEqual(warm.lightUse.to);
      const later = open.lightUse.to > warm.lightUse.to || open.fullUse.to > warm.fullUse.to;
      if (open.unknownNights !== 'left-out')
        expect([product, open.unknownNights]).toEqual([product, later ? 'allowed-for' : undefined]);
      if (product === 'water-based-polyurethane') expect(later).toBe(true);
      expect(warm.unknownNights).toBeUndefined();
    }
  });

  it('keep the order handle, light use, full use, and never hand over before it may be lifted', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        const dates = datesFor(one);
        if (dates.kind === 'none') {
          expect(Boolean(dates.problem)).toBe(dates.why === 'no-time');
          return;
        }
        expect(dates.lightUse.to).toBeLessThanOrEqual(dates.fullUse.to);
        expect(dates.lightUse.from).toBeLessThanOrEqual(dates.lightUse.to);
        expect(dates.handOver).toBeGreaterThanOrEqual(dates.handle);
        const last = Math.max(...one.coats.map(({ laidAt }) => laidAt));
        expect(dates.handle).toBeGreaterThanOrEqual(last + 24 * HOUR);
      }),
      { numRuns: 300 },
    );
  });

  it('are not promised without a coat, for a product that is not known, or where the cold forbids it', () => {
    expect(datesFor(card({ coats: [] })).kind).toBe('none');
    expect(datesFor(card({ coats: [coat({ product: 'unknown' })] })).kind).toBe('none');
    expect(datesFor(card({ coats: [coat({ celsius: 3 })] })).kind).toBe('none');
  });
});

describe('the care card', () => {
  it('is refused for a crib, whatever else is on the card', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        const told = careOf({ ...one, kind: 'crib' }, products, care, datesFor(one));
        expect(told.kind).toBe('no');
      }),
      { numRuns: 30 },
    );
  });

  it('never promises food or toy safety, and says so on every card', () => {
    fc.assert(
      fc.property(anyCard, (one) => {
        if (one.kind === 'crib') return;
        const { promise, notYet, cleaning } = careFor(one);
        expect(promise.some(({ say }) => /does not promise.*certificate/.test(say))).toBe(true);
        expect(cleaning.length).toBeGreaterThan(0);
        expect(notYet.length).toBeGreaterThan(0);
        expect(wordsOf(one)).not.toMatch(/(food|toy|child)[- ]safe/i);
      }),
    );
  });

  it('gives each "not yet" the late end of its range', () => {
    const one = card({ kind: 'tabletop' });
    const dates = datesFor(one);
    if (dates.kind !== 'dates') throw new Error('no dates');
    const { notYet, dates: told } = careFor(one);
    expect(told).toEqual({
      lightUse: dates.lightUse.to,
      fullUse: dates.fullUse.to,
      handOver: dates.handOver,
    });
    for (const { date, until } of notYet)
      expect(until).toBe(
        { 'hand-over': dates.handOver, 'light-use': dates.lightUse.to, 'full-use': dates.fullUse.to }[date],
      );
  });

  it('names no day to fetch a piece that was handed over before it', () => {
    const one = card({ kind: 'tabletop' });
    const dates = datesFor(one);
    if (dates.kind !== 'dates') throw new Error('no dates');
    const early = careFor({ ...one, handedOverAt: dates.handOver - DAY });
    expect(early.dates).toMatchObject({ lightUse: dates.lightUse.to, handOver: undefined });
    expect(early.notYet.map(({ date }) => date)).not.toContain('hand-over');
    expect(careFor({ ...one, handedOverAt: dates.handOver }).dates?.handOver).toBe(dates.handOver);
  });

  it('says why there is no date, and keeps the sentences', () => {
    const { dates, noDates, notYet } = careFor(card({ coats: [coat({ celsius: 3 })] }));
    expect(dates).toBeUndefined();
    expect(noDates).toContain('No date can be promised');
    expect(notYet.every(({ until }) => until === undefined)).toBe(true);
  });

  it('warns of oily rags with oil and of none with water, and keeps water off wax', () => {
    expect(wordsOf(card({ coats: [coat({ product: 'drying-oil', applicator: 'cloth' })] }))).toMatch(
      /catch fire/,
    );
    expect(wordsOf(card())).not.toMatch(/catch fire/);
    expect(wordsOf(card({ coats: [coat({ product: 'soft-wax' })] }))).toMatch(/No water on the wax/);
    // No card says whether the tin of a wax names oil, so the buyer is told on what it hangs.
    expect(wordsOf(card({ coats: [coat({ product: 'soft-wax' })] }))).toMatch(/names linseed.*catch fire/);
    expect(wordsOf(card())).not.toMatch(/wax and buff/);
  });

  it('names every layer that it is made of, in generic words', () => {
    const one = card({ coats: [coat({ id: 'a', product: 'shellac', laidAt: START - DAY }), coat()] });
    const said = careFor(one)
      .madeOf.map(({ say }) => say)
      .join(' ');
    expect(said).toMatch(/shellac/);
    expect(said).toMatch(/clear water-based finish/);
    expect(said).toMatch(/latex/);
  });

  it('has words for every family of top coat: what it is, how it is cleaned', () => {
    for (const family of FAMILIES) {
      const product = known.products.find((entry) => entry.family === family)?.id ?? '';
      const one = careFor(card({ base: 'stain', coats: [coat({ product })] }));
      expect([family, one.madeOf.length]).toEqual([family, 2]);
      expect(one.cleaning.length).toBeGreaterThanOrEqual(2);
    }
    for (const base of FACTS.base.values.filter((value) => value !== 'wax'))
      expect(careFor(card({ base })).madeOf.length).toBe(2);
  });

  it('warns of old paint below where it may be there, and not where all is new', () => {
    expect(wordsOf(card({ age: 'unknown' }))).toMatch(/lead/);
    expect(wordsOf(card({ age: 'none' }))).not.toMatch(/lead/);
  });
});

describe('the care card of a piece that can tip', () => {
  // The rule tip-over and the card speak of one danger (US Consumer Product Safety Commission: most who died were children).
  const pieces = known.rules.find(({ id }) => id === 'tip-over')?.when?.['piece'];

  it('tells to fix it to the wall for each kind that the rule names', () => {
    expect(pieces).toEqual(expect.arrayContaining(['furniture', 'childs-item']));
    for (const kind of [pieces].flat() as JobCard['kind'][])
      expect(wordsOf(card({ kind, coats: [coat({})] })), kind).toContain('to the wall');
  });
});

it('says of parts on both faces that their backs are as young as their fronts, with the dates of the last coat', () => {
  const one = heated(card({ coats: [coat({ laidAt: START })] }));
  const [single, both] = [false, true].map((faces) => careOf(one, products, care, datesFor(one), faces));
  if (single?.kind !== 'care' || both?.kind !== 'care') throw new Error('no care card');
  expect(both.dates).toEqual(single.dates);
  const more = (of: 'madeOf' | 'notYet') =>
    both[of].flatMap(({ say }) => (single[of].some((line) => line.say === say) ? [] : [say]));
  expect(more('madeOf')).toEqual([expect.stringMatching(/both faces/)]);
  expect(more('notYet')).toEqual([expect.stringMatching(/its back is as young as its front/)]);
  expect(both.notYet.find(({ say }) => /as young/.test(say))?.until).toBe(both.dates?.fullUse);
});
