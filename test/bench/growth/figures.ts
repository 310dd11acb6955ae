/** How a figure grows with the knowledge. */
export type Grown = {
  readonly what: string;
  readonly unit: 'ms' | 'µs' | 'bytes' | 'pages';
  /** By the size of the knowledge, as far as it was measured. */
  readonly points: readonly (readonly [size: number, value: number])[];
  readonly exponent: number;
};
export type GrowthFigures = {
  readonly sizes: readonly number[];
  /** Flaws at 1×. */
  readonly flaws: number;
  readonly grown: readonly Grown[];
  /** Memory of the whole run at its most, bytes. */
  readonly memory: number;
  /** The exponent that n log n would show over all sizes. */
  readonly nLogN: number;
};
