import { type Air, outsideAir } from './air.ts';
import { answer, type Result } from './quantity.ts';
import { saturationPascals } from './saturation-pressure.ts';

/** Partial pressure of water vapor in the air, Pa, unchecked. */
export const vaporPascals = ({ celsius, relativeHumidity }: Air): number =>
  relativeHumidity * saturationPascals(celsius);

/**
 * How far the air is from saturated, Pa: saturation pressure minus vapor pressure.
 * Valid from -40 to 60 °C and 0 to 100 % relative humidity.
 */
export const vaporPressureDeficit = (air: Air): Result<number> =>
  outsideAir(air) ?? answer(saturationPascals(air.celsius) - vaporPascals(air));
