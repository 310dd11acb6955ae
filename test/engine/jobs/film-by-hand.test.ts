/**
 * The film of a card and its drawing, worked out by hand: the invented coats are of a water-based finish with 28 to 35
 * parts of solids in 100, so that 100 mL on a square meter leave 28 to 35 µm. 25 and 50 µm are the limits of the table of
 * sanding (film-s89 and common practice).
 */
import { describe, expect, it } from 'vitest';
import { adviceOf, filmBelow, layersOf, sayLayer, sayLayers, sectionOf } from '#engine/jobs.ts';
import { FAMILIES, UNSANDED } from '#engine/model/family.ts';
import { readChoices } from '../../../content/tools/choices.ts';
import { WORDS } from '../clock/words.ts';
import { card, coat, HOUR, PRODUCTS, plan, products, START } from './cards.ts';

const bases = readChoices(process.cwd()).base.values;
const tables = { sanding: plan.sanding, words: WORDS, bases };
const { applicator: _brush, ...bare } = coat();
const wet = (milliliters: number, index = 0, more: object = {}) => ({
  ...bare,
  id: `c${index}`,
  laidAt: START + index * HOUR,
  amount: { milliliters, squareMeters: 1 },
  ...more,
});
const of = (...amounts: number[]) => card({ coats: amounts.map((one, index) => wet(one, index)) });
const strange = (id: string, more: object = {}) => ({ ...bare, id, product: 'gone-from-the-shelf', ...more });

describe('the film in words', () => {
  const says = (one: ReturnType<typeof card>) => sayLayers(WORDS, layersOf(one, products));
  it.each([
    ['no coat', card({ coats: [] }), 'No coat is laid yet.'],
    ['one', of(100), '1 coat, 28–35 µm dry in all.'],
    ['three', of(100, 100, 50), '3 coats, 70–88 µm dry in all.'],
    [
      'one that nobody knows',
      card({ coats: [strange('a')] }),
      '1 coat. The film of 1 coat is not known and not counted.',
    ],
    [
      'two that nobody knows',
      card({ coats: [strange('a'), strange('b')] }),
      '2 coats. The film of 2 coats is not known and not counted.',
    ],
    [
      'one known and one not',
      card({ coats: [wet(100), strange('b')] }),
      '2 coats, 28–35 µm dry in all. The film of 1 coat is not known and not counted.',
    ],
    // The times of this product are for 100 µm wet.
    [
      'one without amount and tool',
      card({ coats: [bare] }),
      `1 coat, ${Math.round(0.28 * usual())}–${Math.round(0.35 * usual())} µm dry in all. 1 coat reckoned with the usual film.`,
    ],
    [
      'two without, and one not known',
      card({ coats: [bare, { ...bare, id: 'b' }, strange('c')] }),
      `3 coats, ${Math.round(2 * 0.28 * usual())}–${Math.round(2 * 0.35 * usual())} µm dry in all. The film of 1 coat is not known and not counted. 2 coats reckoned with the usual film.`,
    ],
  ])('%s', (_, one, words) => {
    expect(says(one)).toBe(words);
  });

  it('says of each coat how its film is known', () => {
    const layer = (more: object) => {
      const on = card({ coats: [{ ...bare, ...more } as ReturnType<typeof coat>] });
      return layersOf(on, products).layers.map((one) => ({ ...one, says: sayLayer(WORDS, one) }))[0];
    };
    const can = { minutes: {}, squareMetersPerLiter: 10 };
    expect(layer({ label: can })?.says).toBe('Film by the coverage on the can.');
    expect(layer({ label: { ...can, volumeSolids: 0.4 } })).toMatchObject({
      says: 'Film by the coverage on the can. Solids by the can.',
      wet: 100,
      dry: { from: 40, to: 40 },
    });
    expect(layer({ amount: { milliliters: 90, squareMeters: 1.5 } })).toMatchObject({
      says: 'Film by the amount that went on.',
      wet: 60,
      number: 1,
      family: 'water-based',
    });
    expect(layer({ applicator: 'brush' })?.says).toBe('Film by what the tool usually leaves.');
    expect(layer({})?.says).toBe('Neither amount nor tool is noted: reckoned with the usual film.');
    const gone = { product: 'gone-from-the-shelf' };
    const untold =
      'The film is not known: the card holds too little of this coat, or its product is not known here.';
    expect(layer(gone)).toMatchObject({
      says: untold,
      ground: 'nothing',
      family: undefined,
      wet: undefined,
      dry: undefined,
    });
    // How wet it went on alone tells nothing of what dries; with the solids of the can it does.
    const amount = { milliliters: 100, squareMeters: 1 };
    expect(layer({ ...gone, amount })).toMatchObject({
      says: untold,
      ground: 'nothing',
      wet: 100,
      dry: undefined,
    });
    expect(layer({ ...gone, amount, label: { minutes: {}, volumeSolids: 0.3 } })).toMatchObject({
      says: 'Film by the amount that went on. Solids by the can.',
      ground: 'amount',
      dry: { from: 30, to: 30 },
    });
    // Solids alone leave nothing to reckon with.
    expect(layer({ ...gone, label: { minutes: {}, volumeSolids: 0.3 } })).toMatchObject({ says: untold });
  });
});

function usual(): number {
  return products['water-based-polyurethane']?.['reference-wet-film-micrometers'] ?? Number.NaN;
}

describe('the film that a coat comes to lie on', () => {
  const three = of(100, 50, 200);
  const below = (which: number, more: object = {}) =>
    filmBelow(three, { ...(three.coats[which] as ReturnType<typeof coat>), ...more }, products);
  it('is what was laid before it, at its least', () => {
    expect(below(0)).toEqual({ micrometers: 0, families: [] });
    expect(below(1).micrometers).toBeCloseTo(28, 9);
    expect(below(2).micrometers).toBeCloseTo(42, 9);
    expect(below(2).families).toEqual(['water-based', 'water-based']);
    // A coat that is not on the card yet, on all of them; one of the same instant counts as none below.
    expect(below(2, { id: 'next', laidAt: START + 99 * HOUR }).micrometers).toBeCloseTo(98, 9);
    expect(below(2, { id: 'next', laidAt: START }).micrometers).toBe(0);
  });
  it('never counts the coat itself where its time is corrected', () => {
    expect(below(0, { laidAt: START + 99 * HOUR }).micrometers).toBeCloseTo(0.28 * 250, 9);
  });
  it('counts no finish that lies in the wood', () => {
    for (const product of PRODUCTS) {
      const family = products[product]?.family;
      const [low = Number.NaN] = products[product]?.['volume-solids'] ?? [];
      const on = card({ coats: [wet(100, 0, { product }) as ReturnType<typeof coat>] });
      const film = filmBelow(on, wet(1, 5) as ReturnType<typeof coat>, products);
      const none = family !== undefined && UNSANDED.includes(family);
      expect(film.families).toEqual(none ? [] : [family]);
      expect(film.micrometers).toBeCloseTo(none ? 0 : 100 * low, 9);
    }
    expect(FAMILIES.some((family) => UNSANDED.includes(family))).toBe(true);
  });
});

describe('the drawing', () => {
  const drawn = (one: ReturnType<typeof card>) => sectionOf(one, layersOf(one, products), tables);

  it('has the base below a line three quarters down, named by what it is', () => {
    const [base] = drawn(of(100)).rects;
    expect(base).toEqual({
      kind: 'base',
      x: 0,
      y: 180,
      width: 320,
      height: 60,
      label: 'Latex paint, dark',
      detail: 'Not drawn in proportion.',
      known: false,
    });
    expect(drawn(card({ base: 'stain', tone: 'wood' })).rects[0]?.label).toBe('Stained wood');
  });

  it('fills the rest with one coat, and shares it by thickness among several', () => {
    const [, only] = drawn(of(100)).rects;
    expect(only).toMatchObject({
      kind: 'coat',
      y: 0,
      height: 180,
      label: 'Coat 1, 28–35 µm dry',
      known: true,
    });
    const { rects, inProportion, says } = drawn(of(100, 50));
    expect(rects.slice(1).map(({ y, height }) => [Math.round(y), Math.round(height)])).toEqual([
      [60, 120],
      [0, 60],
    ]);
    expect(inProportion).toBe(true);
    expect(says).toBe('Latex paint, dark; on it 2 coats, 42–53 µm dry in all.');
  });

  it('gives a coat that nobody knows the least height, and no thickness', () => {
    const one = card({
      coats: [wet(100), strange('b', { laidAt: START + HOUR })] as ReturnType<typeof coat>[],
    });
    const { rects } = drawn(one);
    expect(rects[2]).toMatchObject({ label: 'Coat 2, film not known', height: 22, y: 0, known: false });
    expect(rects[1]).toMatchObject({ height: 158, y: 22, known: true });
    expect(rects[2]?.detail).toMatch(/^The film is not known/);
    // Of a film that is told as one figure, one is written.
    const told = card({
      coats: [wet(100, 0, { label: { minutes: {}, volumeSolids: 0.3 } })] as ReturnType<typeof coat>[],
    });
    expect(drawn(told).rects[1]?.label).toBe('Coat 1, 30 µm dry');
  });

  it('grows by the least height of a coat where there are many', () => {
    const many = drawn(of(...Array.from({ length: 12 }, () => 100)));
    expect(many.height).toBeCloseTo(12 * 22 + 60, 9);
    expect(many.rects[0]?.y).toBeCloseTo(12 * 22, 9);
    expect(drawn(of(...Array.from({ length: 8 }, () => 100))).height).toBe(240);
  });

  it('shows where 25 µm of film are left, by the middle of what each coat leaves', () => {
    // One coat of 31.5 µm over 180 units: 25 of it are 142.86 up from the base.
    expect(drawn(of(100)).warn?.y).toBeCloseTo(180 - (180 * 25) / 31.5, 6);
    // Two of 22.05 µm, 90 units each: 2.95 µm into the upper one.
    expect(drawn(of(70, 70)).warn?.y).toBeCloseTo(180 - 90 - (90 * 2.95) / 22.05, 6);
    // All of it where there is less; nothing where there is none, or enough.
    expect(drawn(of(50)).warn).toEqual({ y: 0, says: 'Sand-through risk' });
    expect(drawn(card({ coats: [] })).warn).toBeUndefined();
    expect(drawn(card({ coats: [strange('a')] as ReturnType<typeof coat>[] })).warn).toBeUndefined();
    expect(drawn(of(100, 100)).warn).toBeUndefined();
  });

  it('is in proportion only while no coat is drawn thicker than it is', () => {
    expect(drawn(of(100)).inProportion).toBe(true);
    expect(drawn(of(100, 100, 90)).inProportion).toBe(true);
    // 5 of 205 parts of 180 units would be 4.4.
    expect(drawn(of(5, 200)).inProportion).toBe(false);
    expect(drawn(card({ coats: [] })).inProportion).toBe(true);
  });
});

describe('what the film allows', () => {
  const { says, thin, bears, coats } = plan.sanding;
  // Of one part, so that its thickness alone has the word (test/engine/clock/hardener.test.ts has the rest).
  const advice = ({ coats: laid, ...one }: ReturnType<typeof card>) => {
    const ofOnePart = laid.map((coat) => ({ ...coat, hardener: 'none' as const }));
    return adviceOf(plan.sanding, WORDS, layersOf({ ...one, coats: ofOnePart }, products), one.age);
  };
  it('goes by the limits of the table, at these and beside them', () => {
    expect([thin.micrometers, bears.micrometers, coats.least]).toEqual([25, 50, 2]);
    // At 28 parts in 100: 25 µm of 89.3 wet, 50 µm of 178.6 wet, in two coats.
    expect(advice(of(44, 45)).risk).toBe('high');
    expect(advice(of(45, 45)).risk).toBe('some');
    expect(advice(of(89, 89)).risk).toBe('some');
    expect(advice(of(90, 89)).risk).toBe('low');
    expect(advice(of(300)).risk).toBe('high');
    for (const [one, risk] of [
      [of(44, 45), 'high'],
      [of(45, 45), 'some'],
      [of(100, 100), 'low'],
    ] as const) {
      expect(advice(one)).toEqual({
        risk,
        pastMost: undefined,
        says: says[risk].say,
        grounds: says[risk].grounds,
      });
    }
  });

  it('takes what is not known as thin, unless what is known is enough; one coat is thin whatever it is', () => {
    const with_ = (amounts: number[]) =>
      card({
        coats: [...of(...amounts).coats, strange('z', { laidAt: START + 99 * HOUR })] as ReturnType<
          typeof coat
        >[],
      });
    expect(advice(with_([100])).risk).toBe('unknown');
    expect(advice(with_([100, 100])).risk).toBe('low');
    expect(advice(card({ coats: [strange('z')] as ReturnType<typeof coat>[] })).risk).toBe('high');
  });

  it('adds to a film past the most that no other coat comes, with its grounds', () => {
    const [, any] = plan.sanding['too-thick'];
    // 28 parts of 450 are 126 µm: above the 125 of the table; of 446, 124.9.
    const over = advice(of(225, 225));
    expect(over).toMatchObject({ risk: 'low', pastMost: 125, says: `${says.low.say} ${any?.say}` });
    expect(over.grounds).toEqual([...says.low.grounds, { grade: 'published', source: 'film-s103' }]);
    expect(advice(of(223, 223)).pastMost).toBeUndefined();
    // One thick coat: nothing of another that were to be laid before it is sanded.
    expect(advice(of(450))).toEqual({
      risk: 'high',
      pastMost: 125,
      says: any?.say,
      grounds: [{ grade: 'published', source: 'film-s103' }],
    });
    // Of lacquer less is the most, and no source gives it.
    const lacquer = card({
      coats: [wet(700, 0, { product: 'sprayed-lacquer' }), wet(1, 1)] as ReturnType<typeof coat>[],
    });
    expect(advice(lacquer)).toMatchObject({
      pastMost: 100,
      grounds: [...says.low.grounds, { grade: 'common-practice' }],
    });
  });
});
