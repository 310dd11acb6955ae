import { z } from 'zod';
import { angle, at, measure, strength, tone } from './measure.ts';

/** Light scattered in or on the film: white, blue or gray veils. */
export const VEILS = [
  z.strictObject({
    kind: z.literal('haze').describe('Gray-white veil of flatting agent or of layers that disagree; smooth.'),
    spread: z
      .enum(['even', 'patchy', 'bands', 'corners', 'grain'])
      .default('patchy')
      .describe('Where it lies; `grain` follows pores.'),
    strength: strength(0.5),
    'size-mm': measure(14, 2, 80, 'Size of the patches or width of the bands.'),
    tone,
  }),
  z.strictObject({
    kind: z.literal('milky').describe('Even cast of a wet water-based coat, strongest in the corners.'),
    strength: strength(0.5),
    tone: tone.default('blue'),
  }),
  z.strictObject({
    kind: z.literal('clouds').describe('Soft-edged blue-white clouds of trapped water, worst where thick.'),
    strength: strength(0.6),
    'size-mm': measure(16, 4, 80, 'Width of a cloud.'),
  }),
  z.strictObject({
    kind: z.literal('blush').describe('White to gray bloom at the very surface, dull, patchy.'),
    strength: strength(0.6),
    'size-mm': measure(22, 4, 80, 'Width of a patch.'),
  }),
  z.strictObject({
    kind: z.literal('specks').describe('Star-like white specks where two layers disagree.'),
    strength: strength(0.6),
    'diameter-mm': measure(1.2, 0.3, 4, 'Width of a speck with its rays.'),
    'per-cm2': measure(3, 0.1, 40, 'How many on a square centimeter.'),
  }),
  z.strictObject({
    kind: z.literal('wax-bloom').describe('Powdery white veil sitting on top of wax.'),
    spread: z.enum(['even', 'patchy']).default('patchy').describe('Where it lies.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('frosting').describe('Even fine whitish matte with a micro-texture, as on tung oil.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('white-ring').describe('Ring left by a wet glass, or a drip; black lies in the wood.'),
    at,
    shape: z.enum(['ring', 'drops']).default('ring').describe('A ring, or the rims of dried drops.'),
    'diameter-mm': measure(34, 3, 120, 'Diameter over the ring, or of the largest drop.'),
    'width-mm': measure(2.5, 0.3, 15, 'Width of the ring.'),
    strength: strength(0.6),
    color: z
      .enum(['white', 'black', 'dull'])
      .default('white')
      .describe('White in the film, black in the wood, dull in a shining wax.'),
  }),
  z.strictObject({
    kind: z.literal('heat-mark').describe('White or dull full disc, may be embossed.'),
    at,
    'diameter-mm': measure(34, 5, 140, 'Diameter of the disc.'),
    'emboss-um': measure(4, 0, 60, 'Depth of the print in µm.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('wax-smear').describe('Arcs and bands of different shine, ridges that follow the cloth.'),
    state: z
      .enum(['loose', 'set'])
      .default('loose')
      .describe('Loose wax moved about in arcs, or wax set hard in circling ridges and dull all over.'),
    strength: strength(0.6),
    'width-mm': measure(18, 4, 60, 'Width of one pass of the cloth.'),
  }),
  z.strictObject({
    kind: z
      .literal('swipe')
      .describe(
        'Track of one finger that clears or moves what lies on top; give it after that, and beads after it.',
      ),
    at,
    'length-mm': measure(30, 4, 120, 'Length of the track.'),
    'width-mm': measure(13, 3, 40, 'Width of the track: a fingertip is 12–15.'),
    'ridge-um': measure(12, 0, 300, 'Height of what is pushed to the borders and the end, in µm.'),
    leaves: z.enum(['shine', 'dull']).default('shine').describe('How the cleared track looks.'),
    strength: strength(0.9),
    angle,
  }),
  z.strictObject({
    kind: z.literal('wax-in-grain').describe('White or pale wax in pores and recesses.'),
    strength: strength(0.8),
    angle,
    'length-mm': measure(4, 0.5, 15, 'Length of a filled pore.'),
    'per-cm2': measure(22, 1, 120, 'How many on a square centimeter.'),
  }),
] as const;
