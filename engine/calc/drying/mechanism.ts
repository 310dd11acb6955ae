import type { Milestone } from './milestone.ts';

/**
 * How a film hardens.
 * coalescence: water leaves, then droplets fuse. oxidation: solvent leaves, then oxygen links the oil.
 * evaporation: solvent leaves and that is all. wax: the same, from a paste. oil: oxygen alone, deep in the wood.
 * oil-wax: oil links while a little solvent leaves the wax.
 */
export const MECHANISMS = ['coalescence', 'oxidation', 'evaporation', 'wax', 'oil', 'oil-wax'] as const;
export type Mechanism = (typeof MECHANISMS)[number];

export type Pace = {
  /** Share of the way to each moment that is free water leaving: that share follows the air's thirst for water. */
  readonly waterShare: Readonly<Record<Milestone, number>>;
  /** Time grows as film thickness to this power: best and half width. */
  readonly thicknessPower: { readonly best: number; readonly give: number };
  /** Longer by this part between bone-dry and saturated air, where water does not evaporate from the film. */
  readonly humidityDrag: number;
};

const DRY = { open: 0, touch: 0, recoat: 0, 'light-use': 0, cure: 0, 'sand-if-beyond': 0 } as const;
const WATER = { ...DRY, open: 1, touch: 0.8, recoat: 0.4 } as const;

// Surface-limited evaporation gives thickness to the power 1, diffusion through the film the power 2. A coat is
// first the one and then the other, so 1.5; oil that must take oxygen from above is nearer 2, wax nearer 1.
const POWER = { best: 1.5, give: 0.2 } as const;

export const PACES: Readonly<Record<Mechanism, Pace>> = {
  coalescence: { waterShare: WATER, thicknessPower: POWER, humidityDrag: 0 },
  oxidation: { waterShare: DRY, thicknessPower: POWER, humidityDrag: 0.08 },
  evaporation: { waterShare: DRY, thicknessPower: POWER, humidityDrag: 0 },
  wax: {
    waterShare: DRY,
    thicknessPower: { best: 1.3, give: 0.2 },
    humidityDrag: 0,
  },
  oil: {
    waterShare: DRY,
    thicknessPower: { best: 1.8, give: 0.2 },
    humidityDrag: 0.08,
  },
  'oil-wax': {
    waterShare: DRY,
    thicknessPower: { best: 1.7, give: 0.2 },
    humidityDrag: 0.08,
  },
};
