import type { Family } from '../model/family.ts';
import { DAY_MS, HOUR_MS, MINUTE_MS } from '../plain/time.ts';
import type { ClockProduct } from './coat.ts';

/** From an evening's last stroke to the next morning. */
const NIGHT = 12 * HOUR_MS;

/** What is known of when a fresh coat is dry to the touch, where nothing tells the can. */
export type TouchBounds = {
  /** Kinds whose slowest can is dry within the hour. */
  readonly soon: readonly Family[];
  /** Kinds of which a can is wet longer than a night. */
  readonly late: readonly Family[];
  /** Whole days after which the slowest can of all is dry to the touch. */
  readonly days: number;
};

/**
 * Bounds over every can of these kinds, by the late end of its own figures at 73 °F (23 °C) and 50 %. A kind without a can
 * is in neither list.
 */
export const touchBounds = (
  products: readonly Pick<ClockProduct, 'family' | 'touch-minutes'>[],
  families: readonly Family[],
): TouchBounds => {
  const slowest = (family: Family): number =>
    Math.max(0, ...products.filter((one) => one.family === family).map((one) => one['touch-minutes'][1])) *
    MINUTE_MS;
  const known = families.filter((family) => slowest(family) > 0);
  return {
    soon: known.filter((family) => slowest(family) <= HOUR_MS),
    late: known.filter((family) => slowest(family) > NIGHT),
    days: Math.ceil(Math.max(0, ...known.map(slowest)) / DAY_MS),
  };
};
