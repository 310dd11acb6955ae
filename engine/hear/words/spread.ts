/** How far a time in numbers is taken as told about: "two hours" is from 1.6 to 2.6. Common practice, no source. */
const LESS = 0.8;
const MORE = 1.3;

/** A time in numbers, "two hours" or "two to three hours", as it is meant. */
export const spreadOf = (
  low: number,
  high: number,
): { readonly least: number; readonly likely: number; readonly most: number } => ({
  least: low * LESS,
  likely: (low + high) / 2,
  most: high * MORE,
});
