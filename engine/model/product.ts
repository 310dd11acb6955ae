import { z } from 'zod';
import { MECHANISMS } from '../calc/drying/mechanism.ts';
import { keysOf } from '../plain/entry-of.ts';
import { DAY_MIN, HOUR_MIN } from '../plain/time.ts';
import { FACTS } from './facts.ts';
import { FAMILIES } from './family.ts';
import { Claim } from './source.ts';

const THINNERS = ['water', 'mineral-spirits', 'alcohol', 'lacquer-thinner', 'none'] as const;

const AMBERINGS = ['none', 'slight', 'strong'] as const;

const span = (doc: string, min: number, max: number) =>
  z
    .tuple([z.number().min(min).max(max), z.number().min(min).max(max)])
    .refine(([from, to]) => from <= to, 'write the smaller number first')
    .describe(doc);

const CELSIUS = [-10, 50] as const;

const Window = (what: string) =>
  z
    .strictObject({
      celsius: span(`Air and surface temperature, °C: ${what}.`, ...CELSIUS),
      humidity: span(`Relative humidity, 0–1: ${what}.`, 0, 1),
    })
    .describe(`Weather: ${what}.`);

const figures = {
  'open-minutes': span('End of open time, when it may no longer be brushed, minutes.', 0, 1440),
  'touch-minutes': span('Dry to touch, minutes.', 0.1, 20_160),
  'recoat-hours': span('Ready to sand and recoat, hours.', 0.1, 336),
  'sand-if-beyond-hours': span('Later than this, sand before recoating, hours.', 0.1, 2160).optional(),
  'no-coat-hours': span(
    'From when on no coat goes on over this one, since it would lift it, and from when on one does again, hours.',
    0.1,
    2160,
  ).optional(),
  'light-use-days': span('Light, careful use, days.', 0.04, 60),
  'cure-days': span('Full cure, days.', 0.04, 120),
  'volume-solids': span('Share of the wet film that stays, 0–1.', 0, 1),
  'reference-wet-film-micrometers': z
    .number()
    .min(5)
    .max(300)
    .describe('The wet film that the times above hold for, µm.'),
  'wet-film-micrometers': z
    .partialRecord(
      z.enum(FACTS.applicator.values),
      span('Wet film that this applicator leaves in one coat, µm.', 1, 500),
    )
    .refine((films) => Object.keys(films).length > 0, 'name at least one applicator')
    .describe('Wet film in one coat by applicator, µm.'),
  'square-meters-per-liter': span('Area that a liter covers in one coat, m².', 1, 200),
  limits: Window('outside it no coat is laid'),
  best: Window('where it goes on and dries best'),
  hardeners: z
    .array(z.enum(['isocyanate', 'acid']))
    .min(1)
    .optional()
    .describe('What may be mixed into a can of this kind to harden it; left out where nothing is.'),
  'film-formation-celsius': span(
    'Where it hardens from droplets: below the first no sound film forms, below the second it may not, °C.',
    ...CELSIUS,
  ).optional(),
};

const FIGURES = keysOf(figures);

const ProductClaim = Claim.extend({
  for: z.array(z.enum(FIGURES)).default([]).describe('The figures of this file that rest on this claim.'),
});

const Fields = z.strictObject({
  name: z.string().min(3).describe('The kind of coating, in the words on a can. No brand.'),
  family: z.enum(FAMILIES).describe('What it is thinned with and how it hardens.'),
  mechanism: z.enum(MECHANISMS).describe('How it hardens.'),
  also: z
    .array(z.string().min(3))
    .min(2)
    .describe('Other names and what people type, in lay words. No brand.'),
  what: z.string().min(20).describe('What it is and what it is good for, in one or two sentences.'),
  ...figures,
  thinner: z.enum(THINNERS).describe('What thins it.'),
  cleanup: z.enum(THINNERS).describe('What cleans the tools.'),
  ambering: z.enum(AMBERINGS).describe('How much it yellows, over white as seen after a year or two.'),
  claims: z.array(ProductClaim).min(1).describe('How we know each figure.'),
});

type Fields = z.infer<typeof Fields>;
type Fault = { path: (string | number)[]; message: string };

const inside = (product: Fields, key: 'celsius' | 'humidity'): Fault[] => {
  const [limit, best] = [product.limits[key], product.best[key]];
  return best[0] >= limit[0] && best[1] <= limit[1]
    ? []
    : [{ path: ['best', key], message: `keep it inside what limits: says, ${limit[0]} to ${limit[1]}` }];
};

const inOrder = (product: Fields): Fault[] => {
  const steps = [
    ['open-minutes', 1],
    ['touch-minutes', 1],
    ['recoat-hours', HOUR_MIN],
    ['light-use-days', DAY_MIN],
    ['cure-days', DAY_MIN],
  ] as const;
  return steps.slice(1).flatMap(([key, minutes], index) => {
    const [before, each] = steps[index] ?? steps[0];
    return [0, 1].some((end) => (product[key][end] ?? 0) * minutes < (product[before][end] ?? 0) * each)
      ? [{ path: [key], message: `it is less than ${before}: raise it, or lower ${before}` }]
      : [];
  });
};

/** The time closed to coats begins once one may, and ends after it begins. */
const closedOutOfOrder = ({ 'no-coat-hours': closed, 'recoat-hours': recoat }: Fields): Fault[] => {
  if (!closed) return [];
  const fault = (message: string) => [{ path: ['no-coat-hours'], message }];
  if (closed[0] === closed[1])
    return fault('it ends as it begins: write when a coat goes on again, or leave it out');
  return closed[0] < recoat[0]
    ? fault(
        'it begins before recoat-hours, so no coat could go on before it: raise it, or lower recoat-hours',
      )
    : [];
};

const unclaimed = (product: Fields): Fault[] =>
  FIGURES.filter(
    (figure) => product[figure] !== undefined && !product.claims.some((claim) => claim.for.includes(figure)),
  ).map((figure) => ({
    path: [figure],
    message: `no claim stands behind it: add ${figure} to the for: of a claim`,
  }));

/**
 * A generic kind of top coat: times at 23 °C and 50 % relative humidity, film, weather, and where each figure is from.
 */
export const Product = Fields.superRefine((product, context) => {
  const deadline = product['sand-if-beyond-hours'];
  const early = deadline && deadline[0] < product['recoat-hours'][0];
  const faults = [
    ...inside(product, 'celsius'),
    ...inside(product, 'humidity'),
    ...inOrder(product),
    ...(early
      ? [
          {
            path: ['sand-if-beyond-hours'],
            message: 'it is less than recoat-hours: raise it, or lower recoat-hours',
          },
        ]
      : []),
    ...closedOutOfOrder(product),
    ...unclaimed(product),
  ];
  for (const { path, message } of faults) context.addIssue({ code: 'custom', path, message });
});
export type Product = z.infer<typeof Product>;
