import { z } from 'zod';
import { angle, at, measure, perCm2, span, strength } from './measure.ts';

const along = z
  .enum(['scattered', 'pores', 'strokes', 'edge'])
  .default('scattered')
  .describe('Anywhere, in rows over pores, in the track of a tool, or along one edge.');

/** Heights and hollows of the film. */
export const RELIEF = [
  z.strictObject({
    kind: z.literal('bubbles').describe('Domes or froth, closed or burst.'),
    'diameter-mm': span(0.03, 6, 'Width of a dome.').default([0.2, 1]),
    'per-cm2': perCm2(12, 400),
    burst: z.number().min(0).max(1).default(0.15).describe('Share that has burst.'),
    along,
  }),
  z.strictObject({
    kind: z.literal('pinholes').describe('Round open holes.'),
    'diameter-mm': span(0.03, 2, 'Width of a hole.').default([0.05, 0.3]),
    'per-cm2': perCm2(14, 400),
    along,
  }),
  z.strictObject({
    kind: z.literal('craters').describe('Round dishes with raised rims.'),
    'diameter-mm': span(0.3, 15, 'Width inside the rim.').default([1.5, 6]),
    'per-cm2': measure(0.6, 0.02, 20, 'How many on a square centimeter.'),
    bare: strength(0.5).describe('How much of the base shows in the middle.'),
  }),
  z.strictObject({
    kind: z.literal('crawling').describe('Film drawn together in islands and ridges, with bare patches.'),
    'size-mm': measure(14, 3, 100, 'Size of the islands.'),
    bare: z.number().min(0.05).max(0.9).default(0.45).describe('Share of the board left bare.'),
    'ridge-um': measure(60, 5, 300, 'Height of the ridge at the edge in µm.'),
    follows: z
      .enum(['none', 'cloth'])
      .default('none')
      .describe('Bare where it likes, or where a cloth left wax.'),
  }),
  z.strictObject({
    kind: z.literal('runs').describe('Tears and beads, or a wavy curtain, on an upright face.'),
    shape: z.enum(['tears', 'curtain']).default('tears').describe('Single tears, or a sagging curtain.'),
    count: z.int().min(1).max(12).default(3).describe('How many.'),
    'width-mm': measure(4, 0.8, 30, 'Width of the bead.'),
    'length-mm': measure(24, 3, 120, 'Length of a run.'),
    'height-um': measure(260, 20, 1500, 'Height of the bead in µm.'),
  }),
  z.strictObject({
    kind: z.literal('pool').describe('Film gathered in a groove: a glassy or cloudy fillet.'),
    'width-mm': measure(5, 0.5, 20, 'Width of the groove.'),
    'depth-um': measure(900, 100, 4000, 'Depth of the groove in µm.'),
    'film-um': measure(350, 20, 2000, 'Film in the bottom in µm.'),
    look: z.enum(['glassy', 'cloudy', 'amber']).default('glassy').describe('How the fillet looks.'),
  }),
  z.strictObject({
    kind: z.literal('fat-edge').describe('Rope of film just in from an edge, the edge itself nearly bare.'),
    'inset-mm': measure(1.2, 0.3, 5, 'How far in from the lower edge.'),
    'width-mm': measure(1.6, 0.4, 6, 'Width of the rope.'),
    'height-um': measure(120, 10, 600, 'Height of the rope in µm.'),
  }),
  z.strictObject({
    kind: z.literal('brush-marks').describe('Parallel ridges along the strokes.'),
    'spacing-mm': measure(0.8, 0.2, 4, 'Distance between ridges.'),
    'height-um': measure(14, 1, 120, 'Height of a ridge in µm.'),
    angle,
  }),
  z.strictObject({
    kind: z.literal('stipple').describe('Even pebbles of a roller.'),
    'spacing-mm': measure(1.3, 0.3, 5, 'Width of a pebble.'),
    'height-um': measure(28, 2, 150, 'Height of a pebble in µm.'),
  }),
  z.strictObject({
    kind: z.literal('orange-peel').describe('Rounded dimples with gloss between.'),
    'spacing-mm': measure(2.6, 0.8, 8, 'Width of a dimple.'),
    'height-um': measure(28, 2, 120, 'Depth of a dimple in µm.'),
  }),
  z.strictObject({
    kind: z.literal('raised-grain').describe('Wood fibers standing, ridged grain.'),
    'height-um': measure(90, 10, 300, 'Height of the fibers in µm.'),
    at,
    'diameter-mm': measure(0, 0, 120, 'Only within a place so wide; 0 all over.'),
    oiled: z.boolean().default(false).describe('Fibers soaked and stuck together in tufts by oil.'),
    angle,
  }),
  z.strictObject({
    kind: z.literal('wrinkles').describe('Ridged, folded skin.'),
    'spacing-mm': measure(2.4, 0.4, 8, 'Distance between folds.'),
    'height-um': measure(160, 10, 600, 'Height of a fold in µm.'),
    cover: z.number().min(0.1).max(1).default(0.7).describe('Share of the board that is wrinkled.'),
    color: z
      .enum(['none', 'honey'])
      .default('none')
      .describe('Color of the skin itself: thick oil is honey-brown.'),
  }),
  z.strictObject({
    kind: z.literal('cracks').describe('Hairline nets, mud islands, scales or straight checks.'),
    pattern: z
      .enum(['crazing', 'mud', 'alligator', 'cold-check'])
      .default('crazing')
      .describe('Fine net; islands with curled rims; scales; parallel lines.'),
    'spacing-mm': measure(4, 0.3, 30, 'Distance between cracks.'),
    'width-um': measure(80, 5, 2000, 'Width of a crack in µm.'),
  }),
  z.strictObject({
    kind: z.literal('telegraphing').describe('An old fault below repeated as smooth relief.'),
    fault: z
      .enum(['dents', 'chips', 'ring', 'joint'])
      .default('chips')
      .describe('What lies below: round dents, edges of old chips, a ring, a joint line.'),
    'height-um': measure(55, 3, 200, 'Relief in µm.'),
    'size-mm': measure(14, 2, 60, 'Width of the fault.'),
  }),
  z.strictObject({
    kind: z.literal('print').describe('Outline or weave of something that lay on the film.'),
    pattern: z
      .enum(['cloth', 'finger', 'wrap', 'object'])
      .default('cloth')
      .describe('Woven cloth, fingerprint, bubble wrap, the foot of an object.'),
    at,
    'size-mm': measure(30, 5, 150, 'Width of the printed place.'),
    'pitch-mm': measure(0.9, 0.2, 10, 'Distance of threads or ridges.'),
    'depth-um': measure(20, 0, 100, 'Depth in µm.'),
    smear: strength(0).describe('How far a finger slid on as it left, 0 not at all.'),
    angle,
  }),
  z.strictObject({
    kind: z.literal('drag').describe('Torn smears and dune ridges of a pad or brush that stuck.'),
    'length-mm': measure(26, 4, 80, 'Length of the torn place.'),
    'height-um': measure(45, 3, 200, 'Height of the ridges in µm.'),
    at,
    angle,
  }),
] as const;
