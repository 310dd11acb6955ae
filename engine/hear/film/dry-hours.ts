import type { Family } from '../../model/family.ts';

/**
 * Hours until a coat of each kind is dry to touch and ready for the next, the slow end of the product figures, doubled
 * for air that is not known. Common practice, no source.
 */
export type DryHours = Readonly<Partial<Record<Family, readonly [touch: number, recoat: number]>>>;

/** Air that is not known may be cold or damp. */
export const UNKNOWN_AIR = 2;
