/** The lists of a card: their order, what they still take, and what a piece has to stand. Invented cards. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical } from '#engine/jobs/canonical.ts';
import { supposedNight } from '#engine/jobs/nights.ts';
import { sayBase } from '#engine/jobs/say-card.ts';
import {
  fitting,
  type JobCard,
  laidCoatOf,
  mergeCards,
  previewImport,
  putBack,
  roomOf,
  summaryOf,
  trialsOf,
  withCoat,
  withFlaw,
  withoutCoat,
  withoutFlaw,
  withPhoto,
  withRepair,
} from '#engine/jobs.ts';
import { CARD_LISTS, type CardList, MOST } from '#engine/model/card-limits.ts';
import { FACTS } from '#engine/model/facts.ts';
import { TRIALS } from '#engine/model/plan.ts';
import { readChoices } from '../../../content/tools/choices.ts';
import { anyCard, card, coat, HOUR, START } from './cards.ts';

const WHEN = { coats: 'laidAt', flaws: 'foundAt', repairs: 'doneAt', photos: 'takenAt' } as const;
/** An entry of each list, at a time. */
const entry = {
  coats: (id: string, at: number) => coat({ id, laidAt: at }),
  flaws: (id: string, at: number) => ({ id, foundAt: at, defect: 'bubbles', answers: [] }),
  repairs: (id: string, at: number) => ({ id, doneAt: at, remedy: 'shave-the-run' }),
  photos: (id: string, at: number) => ({ id, takenAt: at, width: 800, height: 600 }),
};
const PUT = { coats: withCoat, flaws: withFlaw, repairs: withRepair, photos: withPhoto } as const;
const put = (list: CardList, on: JobCard, id: string, at: number): JobCard =>
  (PUT[list] as (card: JobCard, item: unknown, now: number) => JobCard)(on, entry[list](id, at), START);
const idsOf = (on: JobCard, list: CardList) => on[list].map(({ id }) => id).join('');

describe.each(CARD_LISTS)('%s', (list) => {
  it('lie in the order of their times, and at one time by their ids, however they were noted', () => {
    const times = { d: 1, c: 2, b: 3, a: 3 };
    const orders = ['abcd', 'dcba', 'bdac', 'cadb'];
    for (const order of orders) {
      const end = [...order].reduce(
        (on, id) => put(list, on, id, START + times[id as keyof typeof times]),
        card({ coats: [] }),
      );
      expect(idsOf(end, list)).toBe('dcab');
    }
  });

  it('lie so in two cards that are put together', () => {
    fc.assert(
      fc.property(anyCard, anyCard, (one, two) => {
        const [both] = mergeCards([one], [{ ...two, id: one.id }]);
        const found = (both?.[list] ?? []) as unknown as Record<string, string | number>[];
        const keys = found.map((item) => [Number(item[WHEN[list]]), String(item['id'])] as const);
        const sorted = keys.toSorted(([a, x], [b, y]) => a - b || (x < y ? -1 : 1));
        expect(keys).toEqual(sorted);
      }),
      { numRuns: 60 },
    );
  });

  it('take so many more, and what is beyond that is named in its order', () => {
    const has = (count: number): JobCard =>
      ({
        ...card(),
        [list]: Array.from({ length: count }, (_, index) => entry[list](`i${index}`, START + index)),
      }) as JobCard;
    const most = MOST[list];
    expect(roomOf(has(0))[list]).toEqual({ held: 0, most, left: most });
    expect(roomOf(has(most - 2))[list]).toEqual({ held: most - 2, most, left: 2 });
    expect(roomOf(has(most + 3))[list]).toEqual({ held: most + 3, most, left: 0 });
    const chosen = ['a', 'b', 'c'];
    expect(fitting(has(0), list, chosen)).toEqual({ taken: chosen, beyond: [] });
    expect(fitting(has(most - 2), list, chosen)).toEqual({ taken: ['a', 'b'], beyond: ['c'] });
    expect(fitting(has(most + 1), list, chosen)).toEqual({ taken: [], beyond: chosen });
    // A device that keeps fewer; one that would keep more takes no more than a card holds.
    expect(fitting(has(1), list, chosen, 2)).toEqual({ taken: ['a'], beyond: ['b', 'c'] });
    expect(fitting(has(most - 1), list, chosen, most + 50)).toEqual({ taken: ['a'], beyond: ['b', 'c'] });
  });
});

describe('what an import would do', () => {
  it('is counted as two cards and their merge are compared by eye', () => {
    const SILENT = ['version', 'id', 'madeAt', 'changedAt', 'plan', 'removed', ...CARD_LISTS];
    const bare = ({ changedAt: _at, ...item }: { id?: string; changedAt?: number }) => canonical(item);
    let both = 0;
    fc.assert(
      fc.property(anyCard, anyCard, (one, two) => {
        const [here] = mergeCards([one], []);
        const [theirs] = mergeCards([{ ...two, id: one.id }], []);
        if (!here || !theirs) throw new Error('one card each');
        const [row] = previewImport([here], [theirs]);
        const [merged] = mergeCards([here], [theirs]);
        if (!row || !merged) throw new Error('one card each');
        for (const list of CARD_LISTS) {
          const [mine, file, got] = [here, theirs, merged].map(
            (from) => new Map((from[list] as { id: string }[]).map((item) => [item.id, bare(item)])),
          ) as [Map<string, string>, Map<string, string>, Map<string, string>];
          const without = (from: Map<string, string>, there: Map<string, string>) =>
            [...from.keys()].filter((id) => !there.has(id)).length;
          const other = [...got].filter(([id, text]) => mine.has(id) && mine.get(id) !== text).length;
          expect([list, row.gains[list], row.losses[list], row.changes[list], row.withheld[list]]).toEqual([
            list,
            without(got, mine),
            without(mine, got),
            other,
            without(file, got),
          ]);
        }
        const text = (from: JobCard, name: string) =>
          canonical((from as Record<string, unknown>)[name] ?? null);
        const names = [...new Set([...Object.keys(here), ...Object.keys(merged)])].filter(
          (name) => !SILENT.includes(name) && text(here, name) !== text(merged, name),
        );
        expect([...row.fields].sort()).toEqual(names.sort());
        expect([row.id, row.name]).toEqual([merged.id, merged.name]);
        if (row.kind === 'both-changed') both++;
      }),
      { numRuns: 100 },
    );
    expect(both).toBeGreaterThan(20);
  });

  it('of a card that is not here is all that it has', () => {
    const theirs = card({ coats: [coat(), coat({ id: 'b' })] });
    expect(previewImport([], [theirs])).toEqual([
      {
        id: 'card-1',
        name: 'Navy dresser',
        kind: 'new',
        gains: { coats: 2, flaws: 0, repairs: 0, photos: 0 },
        losses: { coats: 0, flaws: 0, repairs: 0, photos: 0 },
        changes: { coats: 0, flaws: 0, repairs: 0, photos: 0 },
        withheld: { coats: 0, flaws: 0, repairs: 0, photos: 0 },
        fields: [],
      },
    ]);
  });
});

describe('what a piece has to stand', () => {
  it('is what is told, or what its kind usually stands; a piece for food or a child never less', () => {
    const usual = { furniture: [], tabletop: ['water', 'heat'], valuable: [] } as const;
    for (const [kind, trials] of Object.entries(usual)) {
      expect(trialsOf({ kind: kind as JobCard['kind'] })).toEqual(trials);
      for (const told of TRIALS)
        expect(trialsOf({ kind: kind as JobCard['kind'], trials: [told] })).toEqual([told]);
      expect(trialsOf({ kind: kind as JobCard['kind'], trials: [] })).toEqual([]);
    }
    const never = { 'food-surface': 'food', 'childs-item': 'child', crib: 'child' } as const;
    for (const [kind, least] of Object.entries(never)) {
      expect(trialsOf({ kind: kind as JobCard['kind'] })).toEqual([least]);
      expect(trialsOf({ kind: kind as JobCard['kind'], trials: [] })).toEqual([least]);
      for (const told of TRIALS)
        expect([...trialsOf({ kind: kind as JobCard['kind'], trials: [told] })].sort()).toEqual(
          [...new Set([least, told])].sort(),
        );
    }
    expect([...Object.keys(usual), ...Object.keys(never)].sort()).toEqual([...FACTS.piece.values].sort());
  });
});

describe('one text for one content', () => {
  it('stands whatever the order of keys, and not whatever the order of a list', () => {
    expect(canonical({ b: 1, a: { d: 2, c: [3, { f: 4, e: 5 }] } })).toBe(
      canonical({ a: { c: [3, { e: 5, f: 4 }], d: 2 }, b: 1 }),
    );
    expect(canonical({ a: [1, 2] })).not.toBe(canonical({ a: [2, 1] }));
    expect(canonical({ a: 1 })).not.toBe(canonical({ a: '1' }));
    expect(canonical(null)).toBe('null');
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        const turned = Object.fromEntries(Object.entries(value).reverse());
        expect(canonical(turned)).toBe(canonical(value));
        expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
});

describe('a card as the clock has it', () => {
  const three = card({
    coats: ['a', 'b', 'c'].map((id, index) => coat({ id, laidAt: START + index * HOUR })),
    finishedAt: START + 2 * HOUR,
  });
  it('numbers a coat by its place, with those below it, the uppermost first', () => {
    for (const [at, below] of [
      [0, undefined],
      [1, ['a']],
      [2, ['b', 'a']],
    ] as const) {
      const laid = laidCoatOf(three, three.coats[at] as ReturnType<typeof coat>);
      expect(laid).toMatchObject({
        coatNumber: at + 1,
        piece: 'Navy dresser',
        card: 'card-1',
        baseTone: 'dark',
      });
      expect(laid.below?.map(({ id }) => id)).toEqual(below);
      expect(laid.below?.map(({ coatNumber }) => coatNumber)).toEqual(below?.map((_, index) => at - index));
      // No other comes over one that was laid by when she said that all are laid.
      expect(laid.last).toBe(true);
    }
    const after = laidCoatOf(three, coat({ id: 'd', laidAt: START + 3 * HOUR }));
    expect(after).toMatchObject({ coatNumber: 4 });
    expect(after).not.toHaveProperty('last');
    expect(after.below?.map(({ id }) => id)).toEqual(['c', 'b', 'a']);
  });

  it('has its flaw on the uppermost coat alone', () => {
    const flawed = { ...three, flaws: [{ id: 'f', foundAt: START, defect: 'bubbles', answers: [] }] };
    expect(flawed.coats.map((one) => laidCoatOf(flawed, one).flaw)).toEqual([undefined, undefined, 'open']);
  });

  it('takes the can of the card for the planned product, without what is not told', () => {
    const label = {
      minutes: { recoat: { from: 1, to: 2 }, touch: undefined },
      limits: { celsius: undefined },
      climate: undefined,
    } as never;
    const one = card({ label });
    const laid = laidCoatOf(one, coat());
    expect(laid.label).toEqual({ minutes: { recoat: { from: 1, to: 2 } }, limits: {} });
    expect(Object.keys(laid.label?.minutes ?? {})).toEqual(['recoat']);
    expect(laidCoatOf(one, coat({ product: 'shellac' })).label).toBeUndefined();
    const own = {
      minutes: {},
      climate: { celsius: 20, relativeHumidity: 0.5, surfaceCelsius: undefined },
    } as never;
    expect(Object.keys(laidCoatOf(one, coat({ label: own })).label?.climate ?? {})).toEqual([
      'celsius',
      'relativeHumidity',
    ]);
  });

  it('is listed with what it is, and counts', () => {
    const full = {
      ...three,
      changedAt: START + 7,
      photos: [entry.photos('p', START), entry.photos('q', START)],
    };
    expect(summaryOf(full)).toEqual({
      id: 'card-1',
      name: 'Navy dresser',
      kind: 'furniture',
      state: 'curing',
      coats: 3,
      lastCoat: { laidAt: START + 2 * HOUR, product: 'water-based-polyurethane' },
      openFlaws: 0,
      photos: 2,
      changedAt: START + 7,
    });
    expect(summaryOf(card({ coats: [] })).lastCoat).toBeUndefined();
    const found = ['a', 'b', 'c'].map((id) => entry.flaws(id, START));
    const flaws = found.map((one, at) => (at ? one : { ...one, settledAt: START + 1 }));
    expect(summaryOf({ ...full, flaws }).openFlaws).toBe(2);
  });
});

describe('what was taken off and is put back', () => {
  const flaw = { id: 'f', foundAt: START, defect: 'bubbles', coat: 'coat-1', answers: [] };
  const other = { id: 'g', foundAt: START, defect: 'bubbles', answers: [] };
  const repair = { id: 'r', doneAt: START, remedy: 'shave-the-run', flaw: 'f' };
  const base = card({
    coats: [coat(), coat({ id: 'coat-2', laidAt: START + 1 })],
    flaws: [flaw, other],
    repairs: [repair],
  });

  it('is named again by what named it then, and by nothing else', () => {
    const noCoat = withoutCoat(base, 'coat-1', START + 5);
    const back = putBack(noCoat, base, 'coats', 'coat-1', START + 6);
    expect(back.flaws).toEqual(base.flaws);
    expect(back.removed).toBeUndefined();
    expect(idsOf(back, 'coats')).toBe('coat-1coat-2');
    // What was found on another coat since keeps that.
    const moved = {
      ...noCoat,
      flaws: noCoat.flaws.map((one) => (one.id === 'f' ? { ...one, coat: 'coat-2' } : one)),
    };
    expect(putBack(moved, base, 'coats', 'coat-1', START + 6).flaws[0]?.coat).toBe('coat-2');
    const noFlaw = withoutFlaw(base, 'f', START + 5);
    expect(noFlaw.repairs[0]).not.toHaveProperty('flaw');
    expect(putBack(noFlaw, base, 'flaws', 'f', START + 6).repairs).toEqual([repair]);
  });

  it('stays as it is where there was no such thing', () => {
    expect(putBack(base, base, 'coats', 'nobody', START + 6)).toBe(base);
  });
});

it('a night that nobody noted is colder by what the tables say, but no colder than the can allows', () => {
  const plan = { night: { from: 1260, to: 420, 'most-humidity': 0.95, 'supposed-colder': 5 } } as never;
  const night = (celsius: number, least: number) =>
    supposedNight(
      plan,
      { id: 'a', piece: '', product: 'p', laidAt: START, celsius, relativeHumidity: 0.5, coatNumber: 1 },
      least,
    ).celsius;
  expect(night(23, 10)).toBe(18);
  expect(night(13, 10)).toBe(10);
  expect(night(15, 10)).toBe(10);
  expect(night(15.5, 10)).toBe(10.5);
  // Where the day is colder than that already, it is no warmer by night.
  expect(night(9, 10)).toBe(9);
});

it('the ground is named with its color, and wood without', () => {
  const words = readChoices(process.cwd()).base.values;
  for (const base of FACTS.base.values) {
    expect(sayBase(words, { base, tone: 'wood' })).toBe(words[base]);
    expect(sayBase(words, { base, tone: 'light' })).toBe(`${words[base]}, light`);
  }
});
