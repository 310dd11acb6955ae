import type { ChoiceFact, ValueOf } from '#engine/model/facts.ts';

/** What she can tell of a piece once, so that cautions fit it and questions fall away. */
export const TOLD = {
  age: {
    ask: 'Is there older paint or varnish on it?',
    values: {
      'since-1993': 'No, only mine, or from 1993 on',
      'before-1993': 'Yes, from before 1993',
      unknown: 'I do not know',
    },
  },
  piece: {
    ask: 'What piece is it?',
    values: {
      furniture: 'Furniture',
      tabletop: 'Table or desk',
      'food-surface': 'Food touches it',
      'childs-item': 'For a small child',
      crib: 'Crib or cot',
      valuable: 'Antique, may be valuable',
    },
  },
  family: {
    ask: 'What is the top coat?',
    values: {
      'water-based': 'Water-based clear',
      'oil-based': 'Oil-based varnish',
      'wipe-on': 'Wipe-on varnish',
      shellac: 'Shellac',
      lacquer: 'Lacquer, with solvent',
      'water-lacquer': 'Water-based lacquer',
      wax: 'Wax',
      oil: 'Drying oil',
      'hardwax-oil': 'Hardwax oil',
    },
  },
  base: {
    ask: 'What lies below it?',
    values: {
      'chalk-paint': 'Chalk paint',
      'milk-paint': 'Milk paint',
      'latex-paint': 'Latex paint',
      'oil-paint': 'Oil paint',
      stain: 'Stain',
      'bare-wood': 'Bare wood',
      'old-finish': 'An old finish',
      wax: 'Wax',
      laminate: 'Laminate',
    },
  },
  applicator: {
    ask: 'What laid the coat?',
    values: {
      brush: 'Brush',
      roller: 'Roller',
      pad: 'Pad',
      sponge: 'Sponge',
      cloth: 'Cloth',
      'spray-gun': 'Spray gun',
      aerosol: 'Spray can',
    },
  },
  hardener: {
    ask: 'Was a hardener mixed in?',
    values: { none: 'No', isocyanate: 'Yes, with isocyanate', acid: 'Yes, an acid' },
  },
} as const satisfies {
  [F in ChoiceFact]?: { ask: string; values: Record<Extract<ValueOf<F>, string>, string> };
};

export type ToldFact = keyof typeof TOLD;
export const TOLD_FACTS = Object.keys(TOLD) as readonly ToldFact[];
