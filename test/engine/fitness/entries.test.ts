/** The coat that is about to be laid, as a card, a clock and a walk tell it. Invented cards; hours are counted by hand. */
import { describe, expect, it } from 'vitest';
import type { Case } from '#engine/case/case.ts';
import { layingOfCase, layingOfCoat, pieceOfCase } from '#engine/fitness/entries.ts';
import { layingOfCard } from '#engine/jobs/laying.ts';
import { card, coat, HOUR, START } from '../jobs/cards.ts';

const told = (facts: Record<string, string | number>): Case =>
  Object.fromEntries(
    Object.entries(facts).map(([name, value]) => [name, { value, how: 'told' as const }]),
  ) as Case;

describe('of a card', () => {
  it('the first coat lies on the base, a later one on her own', () => {
    const second = coat({ id: 'coat-2', laidAt: START + 5 * HOUR });
    const both = card({ coats: [coat(), second] });
    expect(layingOfCard(both, coat()).onOwnCoat).toBe(false);
    expect(layingOfCard(both, second).onOwnCoat).toBe(true);
    expect(layingOfCard(card({ coats: [] }), coat()).onOwnCoat).toBe(false);
    // A coat of the same instant comes before or after; neither is counted as below.
    const twin = coat({ id: 'twin' });
    expect(layingOfCard(card({ coats: [coat(), twin] }), twin).onOwnCoat).toBe(false);
  });

  it('the base is as old as it is', () => {
    expect(layingOfCard(card({ baseLaidAt: START - 30 * HOUR }), coat()).baseHours).toBe(30);
    expect(layingOfCard(card(), coat())).not.toHaveProperty('baseHours');
  });

  it('the piece is the card’s, the tool and the air the coat’s', () => {
    const one = layingOfCard(card(), coat({ celsius: 18, relativeHumidity: 0.4 }));
    expect(one).toMatchObject({
      kind: 'furniture',
      base: 'latex-paint',
      tone: 'dark',
      age: 'since-1993',
      sheen: 'satin',
      applicator: 'brush',
      wear: 'normal',
      day: { celsius: 18, relativeHumidity: 0.4 },
      inSun: false,
    });
    expect(one.day).not.toHaveProperty('surfaceCelsius');
    expect(layingOfCard(card(), coat({ surfaceCelsius: 0 }), true)).toMatchObject({
      day: { surfaceCelsius: 0 },
      inSun: true,
    });
  });
});

describe('of the clock', () => {
  const laid = {
    id: 'a',
    piece: 'Chair',
    product: 'p',
    laidAt: START,
    celsius: 20,
    relativeHumidity: 0.5,
    coatNumber: 1,
  };
  it('the second coat lies on her own', () => {
    expect(layingOfCoat(laid).onOwnCoat).toBe(false);
    expect(layingOfCoat({ ...laid, coatNumber: 2 }).onOwnCoat).toBe(true);
  });
  it('what the coat tells goes before what is known of the piece', () => {
    const piece = {
      sheen: 'matte',
      tone: 'light',
      applicator: 'pad',
      label: { minutes: {} },
      base: 'stain',
    } as const;
    expect(layingOfCoat(laid, piece)).toMatchObject(piece);
    const own = {
      sheen: 'gloss',
      baseTone: 'dark',
      applicator: 'brush',
      label: { minutes: { open: { from: 1, to: 2 } } },
    } as const;
    expect(layingOfCoat({ ...laid, ...own }, piece)).toMatchObject({
      sheen: 'gloss',
      tone: 'dark',
      applicator: 'brush',
      label: own.label,
      base: 'stain',
    });
  });
});

describe('of a walk', () => {
  it('is nothing where the air is not known', () => {
    expect(layingOfCase(told({}))).toBeUndefined();
    expect(layingOfCase(told({ 'air-celsius': 20 }))).toBeUndefined();
    expect(layingOfCase(told({ 'relative-humidity': 0.5 }))).toBeUndefined();
    expect(layingOfCase(told({ 'air-celsius': 'warm', 'relative-humidity': 0.5 }))).toBeUndefined();
  });
  it('holds what is told of the piece', () => {
    const facts = {
      piece: 'tabletop',
      base: 'stain',
      'base-tone': 'wood',
      age: 'unknown',
      sheen: 'gloss',
      applicator: 'pad',
      'air-celsius': 0,
      'relative-humidity': 0,
      'surface-celsius': 3,
    };
    expect(layingOfCase(told(facts), { baseHours: 7, onOwnCoat: true })).toEqual({
      kind: 'tabletop',
      wear: 'normal',
      base: 'stain',
      tone: 'wood',
      age: 'unknown',
      sheen: 'gloss',
      applicator: 'pad',
      baseHours: 7,
      onOwnCoat: true,
      day: { celsius: 0, relativeHumidity: 0, surfaceCelsius: 3 },
    });
    expect(pieceOfCase(told({ piece: 3 })).kind).toBeUndefined();
  });
});
