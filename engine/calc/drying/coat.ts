import type { Range } from '../quantity.ts';
import type { DryingProduct } from './figures.ts';
import type { History } from './history.ts';
import type { Label } from './label.ts';
import type { Milestone } from './milestone.ts';

export type Coat = {
  readonly product: DryingProduct;
  readonly label?: Label;
  /** Weather since the coat was laid; `steady` makes one of constant weather. */
  readonly history: History;
  /** Wet film against the usual one, 0.1 to 10: 1 wherever it is as thick as the product's times are for. */
  readonly relativeThickness: number;
  /** Minutes since the coat was laid. */
  readonly elapsedMinutes: number;
};

/** What made a time wide. */
export type Widening =
  | 'product-varies'
  | 'label-range'
  | 'weather'
  | 'label-in-warmth'
  | 'thin-film'
  | 'thick-film'
  | 'cold-spells'
  | 'coat-below';

/** Minutes since the coat was laid, by moment. */
export type Times = ReadonlyMap<Milestone, Range<Widening>>;
