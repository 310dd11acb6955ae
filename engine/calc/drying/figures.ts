import type { Product } from '../../model/product.ts';
import { type Span, spanOf } from '../../plain/span.ts';
import { DAY_MIN, HOUR_MIN } from '../../plain/time.ts';
import type { Mechanism } from './mechanism.ts';
import type { ChainMilestone } from './milestone.ts';

/** Minutes since the coat was laid at which each moment comes. */
export type Figures = Readonly<Record<ChainMilestone, Span>> & {
  readonly 'sand-if-beyond'?: Span;
  /** From when on no coat goes on, and from when on one does again. */
  readonly 'no-coat'?: Span;
};

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

type DryingFigures = Pick<
  Product,
  | 'mechanism'
  | 'open-minutes'
  | 'touch-minutes'
  | 'recoat-hours'
  | 'sand-if-beyond-hours'
  | 'no-coat-hours'
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
  const closed = product['no-coat-hours'];
  return {
    mechanism: product.mechanism,
    figures: {
      open: spanOf(product['open-minutes']),
      touch: spanOf(product['touch-minutes']),
      recoat: spanOf(product['recoat-hours'], HOUR_MIN),
      'light-use': spanOf(product['light-use-days'], DAY_MIN),
      cure: spanOf(product['cure-days'], DAY_MIN),
      ...(deadline && { 'sand-if-beyond': spanOf(deadline, HOUR_MIN) }),
      ...(closed && { 'no-coat': spanOf(closed, HOUR_MIN) }),
    },
    limits: { celsius: spanOf(celsius), relativeHumidity: spanOf(humidity) },
    ...(formation && { filmFormationCelsius: spanOf(formation) }),
  };
};

export type Applicator = keyof Product['wet-film-micrometers'];
