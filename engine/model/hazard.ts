import { keysOf } from '../plain/entry-of.ts';

/**
 * What a step can do to her, to those who use the piece, or to the piece. A step has these by its kind and what it
 * works with (`engine/rules/hazards.ts`); what only its words tell stands under `does`. Rules name these, never products.
 */
export const HAZARDS = {
  'old-film': 'breaks into the layers below: scraping, stripping, cutting, coarse sanding',
  'old-film-in-reach': 'sands finely, where the paper can reach an old layer at an edge',
  dust: 'makes dust',
  blade: 'works with a bare edge',
  mist: 'sprays, so that mist is in the air',
  'sprayed-coat': 'sprays a coat of finish, which may come from a can with hours of its own',
  vapor: 'lets flammable vapor out',
  'much-vapor': 'lets the vapor of more than half a cup (100 mL) of solvent out',
  'solvent-on-skin': 'wets hands or cloths with solvent',
  'oily-cloth': 'leaves a cloth wet with something that heats up by itself',
  stripper: 'lays on a paint stripper',
  'oxalic-acid': 'puts oxalic acid on',
  caustic: 'puts lye, peroxide or ammonia on',
  heat: 'warms the piece or the room',
  'mold-spores': 'stirs up mold',
  waste: 'leaves solvent, sludge or a can to be got rid of',
  'mouth-contact': 'lays a film that food or a child’s mouth may touch',
  hardener: 'lays a finish that may have a hardener in it',
  tint: 'colors a clear finish',
  thin: 'thins a finish',
  extend: 'adds extender',
} as const;

export type Hazard = keyof typeof HAZARDS;
export const HAZARD_NAMES = keysOf(HAZARDS);
