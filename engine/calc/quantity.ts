/** Units that a value, a range or a problem may carry. Fractions (`0–1`) are shown as per cent. */
export type Unit =
  | '°C'
  | '0–1'
  | 'Pa'
  | 'µm'
  | 'mm'
  | 'min'
  | 's'
  | 'm²/L'
  | 'Pa·s'
  | 'N/m'
  | 'kg/m³'
  | '%'
  | '';

/** A value that is not certain: from–to in one unit, with what made it wide. */
export type Range<Reason extends string = string> = {
  readonly from: number;
  readonly to: number;
  readonly unit: Unit;
  readonly reasons: readonly Reason[];
};

const PROBLEM_CODES = [
  'out-of-range',
  'outside-product-limits',
  'surface-below-dew-point',
  'below-film-formation',
  'label-not-positive',
  'label-out-of-order',
  'unknown-value',
] as const;
type ProblemCode = (typeof PROBLEM_CODES)[number];

/** Why there is no answer: the quantity, the value received and the range that is allowed. */
export type Problem = {
  readonly code: ProblemCode;
  readonly quantity: string;
  readonly unit: Unit;
  readonly value: number | string;
  readonly min: number;
  readonly max: number;
};

export type Ok<T> = { readonly ok: true; readonly value: T };
export type Refused = { readonly ok: false; readonly problem: Problem };
export type Result<T> = Ok<T> | Refused;

export const answer = <T>(value: T): Ok<T> => ({ ok: true, value });
export const refuse = (problem: Problem): Refused => ({ ok: false, problem });

/** A check `[quantity, value, min, max, unit]`: both ends are allowed, NaN is not. */
export type Check = readonly [quantity: string, value: number, min: number, max: number, unit: Unit];

/** The first value that lies outside its range, as a refusal; nothing where all are inside. */
export const outside = (...checks: readonly Check[]): Refused | undefined => {
  for (const [quantity, value, min, max, unit] of checks)
    if (!(value >= min && value <= max))
      return refuse({ code: 'out-of-range', quantity, unit, value, min, max });
  return undefined;
};
