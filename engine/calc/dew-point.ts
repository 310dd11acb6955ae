import { type Air, outsideAir } from './air.ts';
import { bisect } from './bisect.ts';
import { answer, outside, type Result } from './quantity.ts';
import { saturationPascals } from './saturation-pressure.ts';
import { vaporPascals } from './vapor-pressure-deficit.ts';

/** Driest air with a dew point here: below it the vapor pressure is that of -100 °C ice, and no paint cares. */
const DRIEST = 0.001;

/** Dew point, °C, unchecked; at most the air temperature. */
export const dewPointCelsius = (air: Air): number => {
  const pascals = vaporPascals(air);
  return bisect((celsius) => saturationPascals(celsius) - pascals, -100, air.celsius);
};

/**
 * Temperature at which the air's vapor would just condense, °C; below 0 °C the frost point (over ice).
 * Found by halving on the saturation pressure (ASHRAE Handbook, Fundamentals, 2017, ch. 1, eq. 5 and 6).
 * Valid from -40 to 60 °C and 0.1 to 100 % relative humidity.
 */
export const dewPoint = (air: Air): Result<number> =>
  outsideAir(air) ??
  outside(['relative humidity', air.relativeHumidity, DRIEST, 1, '0–1']) ??
  answer(dewPointCelsius(air));
