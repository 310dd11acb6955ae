import { z } from 'zod';
import { Condition } from './condition.ts';
import { HAZARD_NAMES } from './hazard.ts';
import { STAGES } from './stage.ts';

const common = {
  say: z.string().min(12).describe('The step, in plain words. Times and grits are added from the fields.'),
  when: Condition.optional().describe(
    'Only for these facts; where they are not known it is told all the same, under a heading such as “If it applies to yours”.',
  ),
  except: Condition.optional().describe(
    'Left out for these facts, where another step stands in for it; where they are not known it is told as it stands.',
  ),
  'worked-if': z.string().min(8).optional().describe('How to see that this step is done.'),
  does: z
    .array(z.enum(HAZARD_NAMES))
    .min(1)
    .optional()
    .describe(
      'What it does that only its words tell; what follows from its kind and its means needs no mark.',
    ),
};

const WIPES = [
  'dry-cloth',
  'damp-cloth',
  'soapy-water',
  'mineral-spirits',
  'alcohol',
  'naphtha',
  'vacuum',
  'fresh-oil',
  'fresh-wax',
  'clear-wax',
  'lacquer-retarder',
  'thinner',
  'polish',
  'wood-bleach',
] as const;
const PRODUCTS = [
  'same',
  'same-in-gloss',
  'tinted-same',
  'water-based',
  'dewaxed-shellac',
  'shellac-primer',
  'stain-blocking-primer',
  'base-color',
  'stain',
  'wax',
  'oil',
  'mist-of-same',
  'grain-filler',
] as const;
const STRIPS = ['scraper-and-sanding', 'stripper', 'solvent'] as const;
const TRIED = [...WIPES, ...PRODUCTS, 'tape'] as const;

/** Whatever a step can work with. */
export type Means = (typeof TRIED)[number] | (typeof STRIPS)[number];

/** What comes off wet or soft, into the cloth, onto the paper or as shavings. */
const OFF = ['same', 'oil', 'base-color', 'wood-bleach'] as const;
export type Off = (typeof OFF)[number];
const Off = z
  .enum(OFF)
  .optional()
  .describe(
    'What comes off wet or soft, into the cloth, onto the paper, as shavings or out of the can: her finish, drying oil, the color below, or, on the wipe that rinses it off, the acid of wood bleach.',
  );

const By = z
  .enum(['hand', 'spray'])
  .optional()
  .describe('Surely by hand or surely by spray; left out, as she lays her top coat.');

/** From–to: the smaller number stands first. */
const inOrder = ([from, to]: readonly [number, number]): boolean => from <= to;
const IN_ORDER = 'write the smaller number first';

const Hours = z.tuple([z.number().positive(), z.number().positive()]).refine(inOrder, IN_ORDER);

/** P grades a hand may use on a finish. */
export const GRITS = [120, 150, 180, 220, 240, 280, 320, 400, 500, 600, 800, 1000, 1200, 1500, 2000] as const;

export const Step = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('wait'),
      ...common,
      until: z.enum(STAGES).optional().describe('The stage to wait for.'),
      hours: Hours.optional().describe('Hours from–to, where a stage does not say it.'),
      of: z.literal('stain').optional().describe('What dries, where it is not the coat.'),
      from: z
        .literal('coat')
        .optional()
        .describe('The hours count from when the coat was laid; what has passed of them is taken off.'),
    })
    .describe('Wait for a stage or for some hours; at least one of the two.'),
  z.strictObject({ kind: z.literal('look'), ...common }).describe('Look, feel or smell; changes nothing.'),
  z
    .strictObject({
      kind: z.literal('wipe'),
      ...common,
      with: z.enum(WIPES),
      of: Off,
      by: By,
    })
    .describe('Wipe, wash, buff or take up dust.'),
  z
    .strictObject({
      kind: z.literal('scrape'),
      ...common,
      tool: z.enum(['razor', 'card-scraper', 'plastic-scraper', 'tweezers', 'soft-brush']),
      of: Off,
    })
    .describe('Shave, pick or scrape.'),
  z
    .strictObject({
      kind: z.literal('sand'),
      ...common,
      grit: z.literal(GRITS).describe('FEPA P grade.'),
      strokes: z.int().min(1).max(40).optional(),
      of: Off,
    })
    .describe('Sand by hand.'),
  z
    .strictObject({
      kind: z.literal('mix'),
      ...common,
      what: z.enum(['stir', 'smear', 'tint', 'thin', 'extender', 'fresh-batch', 'wood-bleach']),
      percent: z
        .tuple([z.number().min(0), z.number().max(100)])
        .refine(inOrder, IN_ORDER)
        .optional()
        .describe('Parts in a hundred, from–to.'),
      of: Off,
    })
    .describe('Stir, try on glass, tint, thin or make up the product.'),
  z
    .strictObject({
      kind: z.literal('coat'),
      ...common,
      product: z.enum(PRODUCTS),
      by: By,
      thin: z.boolean().default(true),
    })
    .describe('Lay one coat.'),
  z
    .strictObject({
      kind: z.literal('strip'),
      ...common,
      with: z.enum(STRIPS),
      of: Off,
    })
    .describe('Take the finish off.'),
  z
    .strictObject({
      kind: z.literal('test-patch'),
      ...common,
      hours: Hours,
      tries: z.enum(TRIED).describe('What is tried on the hidden spot.'),
      of: Off,
      by: By,
    })
    .describe('Try it on a hidden spot and wait.'),
  z
    .strictObject({ kind: z.literal('ask-professional'), ...common, who: z.string().min(4) })
    .describe('Hand over to someone trained.'),
]);
export type Step = z.infer<typeof Step>;
export type StepKind = Step['kind'];
