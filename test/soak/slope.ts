/** A line through measurements: the median slope of all pairs (Theil–Sen), with the interval that Sen gives it. */

export type Slope = {
  readonly slope: number;
  /** The slope is between these, 95 times in 100. */
  readonly least: number;
  readonly most: number;
};
type Point = readonly [x: number, y: number];

const TWO_SIDED_95 = 1.96;

const median = (sorted: readonly number[]): number => {
  const middle = Math.floor(sorted.length / 2);
  const [low = Number.NaN, high = Number.NaN] = [sorted[middle - 1], sorted[middle]];
  return sorted.length % 2 ? high : (low + high) / 2;
};

/**
 * P. K. Sen, Estimates of the regression coefficient based on Kendall's tau, Journal of the American Statistical
 * Association 63 (1968), 1379–1389. One odd measurement moves it little. Of fewer than five nothing is told.
 */
export const slopeOf = (points: readonly Point[]): Slope => {
  const n = points.length;
  const slopes = points
    .flatMap(([x, y], at) => points.slice(at + 1).map(([x2, y2]) => (y2 - y) / (x2 - x)))
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  if (n < 5 || !slopes.length)
    return { slope: median(slopes), least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };
  const reach = TWO_SIDED_95 * Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
  const low = Math.max(0, Math.floor((slopes.length - reach) / 2) - 1);
  const high = Math.min(slopes.length - 1, Math.ceil((slopes.length + reach) / 2));
  return {
    slope: median(slopes),
    least: slopes[low] ?? Number.NEGATIVE_INFINITY,
    most: slopes[high] ?? Number.POSITIVE_INFINITY,
  };
};
