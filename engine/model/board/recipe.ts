import { z } from 'zod';
import { BODIES } from './bodies.ts';
import { PAINTS, SHEEN_NAMES, WOODS } from './names.ts';
import { RELIEF } from './relief.ts';
import { SHEENS } from './sheens.ts';
import { TINTS } from './tints.ts';
import { VEILS } from './veils.ts';

const Base = z.strictObject({
  paint: z.enum(PAINTS).optional().describe('Painted board, and its color.'),
  wood: z.enum(WOODS).optional().describe('Bare or stained wood, grain along the board.'),
  knot: z
    .tuple([z.number(), z.number()])
    .optional()
    .describe('Middle of a knot in the wood, mm from the upper left corner.'),
});

export const BoardFeature = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('none').describe('A good surface.') }),
  ...VEILS,
  ...TINTS,
  ...RELIEF,
  ...SHEENS,
  ...BODIES,
]);
export type BoardFeature = z.infer<typeof BoardFeature>;
export type FeatureKind = BoardFeature['kind'];
/** One kind of feature, with every default filled in. */
export type FeatureOf<K extends FeatureKind> = Extract<BoardFeature, { kind: K }>;

export const FEATURE_KINDS: readonly FeatureKind[] = BoardFeature.options.map((o) => o.shape.kind.value);

/** A patch of finished surface, as an author writes it: sizes in mm, film and relief in µm. */
export const BoardRecipe = z.strictObject({
  'width-mm': z
    .number()
    .min(8)
    .max(300)
    .default(60)
    .describe('Width of the patch; its height is three quarters.'),
  base: Base.refine((b) => (b.paint === undefined) !== (b.wood === undefined), 'write either paint: or wood:')
    .refine((b) => b.knot === undefined || b.wood !== undefined, 'knot: needs wood:')
    .describe('What lies under the clear film.'),
  sheen: z.enum(SHEEN_NAMES).default('satin').describe('Sheen of the clear film.'),
  'film-um': z.number().min(0).max(500).default(40).describe('Film thickness in µm; 0 is bare.'),
  seed: z.int().min(0).max(65535).default(1).describe('Another number gives another board of the same kind.'),
  piece: z
    .int()
    .min(0)
    .max(255)
    .default(0)
    .describe(
      'Another number shows the same flaw on another piece: other grain, another corner of the window.',
    ),
  wet: z.boolean().default(false).describe('Wet film: glossy and level.'),
  features: z
    .array(BoardFeature)
    .max(6)
    .default([])
    .describe('What is on it, in order; empty is a good surface.'),
  alt: z.string().min(12).max(240).describe('What tells it apart, for someone who cannot see the picture.'),
});
export type BoardRecipe = z.infer<typeof BoardRecipe>;
