import type { Span } from '../../plain/span.ts';
import { type Refused, refuse } from '../quantity.ts';
import { belowDewPoint, type Climate, surfaceOf } from './climate.ts';
import type { DryingProduct } from './figures.ts';

const beyond = (
  quantity: string,
  unit: '°C' | '0–1',
  value: number,
  { from, to }: Span,
): Refused | undefined =>
  value >= from && value <= to
    ? undefined
    : refuse({ code: 'outside-product-limits', quantity, unit, value, min: from, max: to });

/** Refuses a climate in which a coat of this product must not be laid or left to set. */
export const outsideLimits = (product: DryingProduct, climate: Climate): Refused | undefined => {
  const { limits, filmFormationCelsius } = product;
  const surface = surfaceOf(climate);
  return (
    belowDewPoint(climate) ??
    (filmFormationCelsius && surface < filmFormationCelsius.from
      ? refuse({
          code: 'below-film-formation',
          quantity: 'surface temperature',
          unit: '°C',
          value: surface,
          min: filmFormationCelsius.from,
          max: Number.POSITIVE_INFINITY,
        })
      : undefined) ??
    beyond('air temperature', '°C', climate.celsius, limits.celsius) ??
    beyond('surface temperature', '°C', surface, limits.celsius) ??
    beyond('relative humidity', '0–1', climate.relativeHumidity, limits.relativeHumidity)
  );
};
