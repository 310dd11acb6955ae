import { AIR_CELSIUS, type Air } from '../air.ts';
import { dewPointCelsius } from '../dew-point.ts';
import { outside, type Refused, refuse } from '../quantity.ts';

/** Air around a film, and its surface where that is not as warm as the air. */
export type Climate = Air & { readonly surfaceCelsius?: number | undefined };

/** Where the times of products and of most laboratory sheets hold (ASTM D3924, ISO 3270: 23 °C, 50 %). */
export const REFERENCE_CLIMATE: Climate = { celsius: 23, relativeHumidity: 0.5 };

export const surfaceOf = ({ celsius, surfaceCelsius }: Climate): number => surfaceCelsius ?? celsius;

export const sameClimate = (one: Climate, two: Climate): boolean =>
  one.celsius === two.celsius &&
  one.relativeHumidity === two.relativeHumidity &&
  surfaceOf(one) === surfaceOf(two);

/** No thermometer in a garage tells less than this apart: 73 °F is 23 °C. */
const SAME_CELSIUS = 0.25;

/** A climate with the temperatures of another one where they are as good as the same. */
export const nearly = (climate: Climate, base: Climate): Climate => {
  const near = (one: number, other: number) => (Math.abs(one - other) <= SAME_CELSIUS ? other : one);
  const { surfaceCelsius } = climate;
  return {
    ...climate,
    celsius: near(climate.celsius, base.celsius),
    ...(surfaceCelsius !== undefined && { surfaceCelsius: near(surfaceCelsius, surfaceOf(base)) }),
  };
};

/**
 * Refuses a climate that can only be a slip of the pen: no coat is laid in it, or it is outside 0 to 100 % relative
 * humidity.
 */
export const outsideClimate = (climate: Climate): Refused | undefined =>
  outside(
    ['air temperature', climate.celsius, ...AIR_CELSIUS.laid, '°C'],
    ['relative humidity', climate.relativeHumidity, 0, 1, '0–1'],
    ['surface temperature', surfaceOf(climate), ...AIR_CELSIUS.laid, '°C'],
  );

/** Refuses a surface at or below the dew point, where water condenses on the film instead of leaving it. */
export const belowDewPoint = (climate: Climate): Refused | undefined => {
  const surface = surfaceOf(climate);
  const dew = dewPointCelsius(climate);
  if (surface > dew) return undefined;
  return refuse({
    code: 'surface-below-dew-point',
    quantity: 'surface temperature',
    unit: '°C',
    value: surface,
    min: dew,
    max: Number.POSITIVE_INFINITY,
  });
};
