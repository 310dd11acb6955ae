import type { Product } from '../../model/product.ts';
import type { Mechanism } from './mechanism.ts';
import type { ChainMilestone } from './milestone.ts';

export type Span = { readonly from: number; readonly to: number };

/** Minutes since the coat was laid at which each moment comes. */
export type Figures = Readonly<Record<ChainMilestone, Span>> & { readonly 'sand-if-beyond'?: Span };

export type Limits = { readonly celsius: Span; readonly relativeHumidity: Span };

/** What the drying model needs to know of a product. */
export type DryingProduct = {
  readonly mechanism: Mechanism;
  /** Hold at 23 °C and 50 % for a film of the reference thickness. */
  readonly figures: Figures;
  readonly limits: Limits;
  /** Below `from` no sound film forms; between the two it may not. */
  readonly filmFormationCelsius?: Span;
};

const span = ([from, to]: readonly [number, number], minutes: number): Span => ({
  from: from * minutes,
  to: to * minutes,
});

const HOUR = 60;
const DAY = 1440;

type DryingFigures = Pick<
  Product,
  | 'mechanism'
  | 'open-minutes'
  | 'touch-minutes'
  | 'recoat-hours'
  | 'sand-if-beyond-hours'
  | 'light-use-days'
  | 'cure-days'
  | 'limits'
  | 'film-formation-celsius'
>;

/** The drying part of a product, in minutes. */
export const dryingOf = (product: DryingFigures): DryingProduct => {
  const { celsius, humidity } = product.limits;
  const formation = product['film-formation-celsius'];
  const deadline = product['sand-if-beyond-hours'];
  return {
    mechanism: product.mechanism,
    figures: {
      open: span(product['open-minutes'], 1),
      touch: span(product['touch-minutes'], 1),
      recoat: span(product['recoat-hours'], HOUR),
      'light-use': span(product['light-use-days'], DAY),
      cure: span(product['cure-days'], DAY),
      ...(deadline && { 'sand-if-beyond': span(deadline, HOUR) }),
    },
    limits: { celsius: span(celsius, 1), relativeHumidity: span(humidity, 1) },
    ...(formation && { filmFormationCelsius: span(formation, 1) }),
  };
};

export type Applicator = keyof Product['wet-film-micrometers'];
