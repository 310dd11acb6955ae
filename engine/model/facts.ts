import { FAMILIES } from './family.ts';
import { STAGES } from './stage.ts';

type ChoiceShape = { kind: 'choice'; values: readonly string[]; label: string };
type NumberShape = { kind: 'number'; min: number; max: number; unit: string; label: string };

/**
 * Every fact that is not the answer to a question, with its range.
 * The answer to a question is a fact too: its name is the question's id, its value `yes`, `no` or `unsure`.
 */
export const FACTS = {
  stage: { kind: 'choice', values: STAGES, label: 'how dry the film is' },
  overdue: {
    kind: 'choice',
    values: ['yes', 'no'],
    label: 'still tacky after three times the drying time on the can',
  },
  family: { kind: 'choice', values: FAMILIES, label: 'what kind of top coat it is' },
  sheen: { kind: 'choice', values: ['gloss', 'satin', 'matte'], label: 'the sheen on the can' },
  'base-tone': {
    kind: 'choice',
    values: ['dark', 'light', 'wood'],
    label: 'what shows through the top coat',
  },
  base: {
    kind: 'choice',
    values: [
      'chalk-paint',
      'milk-paint',
      'latex-paint',
      'oil-paint',
      'stain',
      'bare-wood',
      'old-finish',
      'wax',
      'laminate',
    ],
    label: 'what lies under the top coat',
  },
  applicator: {
    kind: 'choice',
    values: ['brush', 'roller', 'pad', 'sponge', 'cloth', 'spray-gun', 'aerosol'],
    label: 'what laid the coat',
  },
  age: {
    kind: 'choice',
    values: ['before-1993', 'since-1993', 'unknown'],
    label: 'when the old paint or varnish below was put on',
  },
  piece: {
    kind: 'choice',
    values: ['furniture', 'tabletop', 'food-surface', 'childs-item', 'crib', 'valuable'],
    label: 'what piece it is',
  },
  part: {
    kind: 'choice',
    values: ['flat', 'edge', 'inside-corner', 'carving', 'leg'],
    label: 'where on the piece it is',
  },
  hardener: {
    kind: 'choice',
    values: ['none', 'isocyanate', 'acid'],
    label: 'whether a hardener is mixed in, and of which kind',
  },
  'coat-number': { kind: 'number', min: 1, max: 20, unit: 'coats', label: 'which coat this is' },
  'film-micrometers': { kind: 'number', min: 0, max: 2000, unit: 'µm', label: 'dry clear film so far' },
  'air-celsius': { kind: 'number', min: -20, max: 50, unit: '°C', label: 'air temperature' },
  'surface-celsius': { kind: 'number', min: -20, max: 60, unit: '°C', label: 'coldest surface' },
  'relative-humidity': { kind: 'number', min: 0, max: 1, unit: '0–1', label: 'relative humidity' },
  'hours-since-coat': {
    kind: 'number',
    min: 0,
    max: 9000,
    unit: 'h',
    label: 'hours since the coat was laid',
  },
} as const satisfies Record<string, ChoiceShape | NumberShape>;

/**
 * Facts of the piece and its coats that are a choice. How dry it is and what kind of top coat it is are told in ways of
 * their own.
 */
export const CHOICES_OF_THE_PIECE = [
  'sheen',
  'base-tone',
  'base',
  'applicator',
  'age',
  'piece',
  'hardener',
  'part',
] as const satisfies readonly (keyof typeof FACTS)[];

export type FactName = keyof typeof FACTS;

/** Whether this is the name of a fact; else it is the id of a question, whose answer is one. */
export const isFact = (name: string): name is FactName => Object.hasOwn(FACTS, name);

type NumberName = { [F in FactName]: (typeof FACTS)[F]['kind'] extends 'number' ? F : never }[FactName];

/** Whether a fact can have this value: one beyond its range says nothing, so it is not told. */
export const isInFact = (name: NumberName, value: number): boolean =>
  value >= FACTS[name].min && value <= FACTS[name].max;

export type ValueOf<F extends FactName> = (typeof FACTS)[F] extends { values: readonly (infer V)[] }
  ? V
  : number;
