import type { Range } from '../quantity.ts';
import type { DryingProduct } from './figures.ts';
import type { History } from './history.ts';
import type { Label } from './label.ts';
import type { Milestone } from './milestone.ts';

export type Coat = {
  product: DryingProduct;
  label?: Label;
  /** Weather since the coat was laid; `steady` makes one of constant weather. */
  history: History;
  /** Wet film divided by the product's reference wet film, 0.1 to 10. */
  relativeThickness: number;
  /** Minutes since the coat was laid. */
  elapsedMinutes: number;
};

/** What made a time wide. */
export type Widening = 'product-varies' | 'label-range' | 'weather' | 'film-thickness' | 'cold-spells';

/** Each in words that finish "it is not certain because …". */
export const WIDENING_WORDS: Readonly<Record<Widening, string>> = {
  'product-varies': 'cans of this kind differ',
  'label-range': 'the label gives a range',
  weather: 'the weather is not that of the figures',
  'film-thickness': 'the film is thinner or thicker than usual',
  'cold-spells': 'it was too cold for a while',
};

/** Minutes since the coat was laid, by moment. */
export type Times = ReadonlyMap<Milestone, Range<Widening>>;
