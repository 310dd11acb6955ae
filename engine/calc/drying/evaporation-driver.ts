import { saturationPascals } from '../saturation-pressure.ts';
import { vaporPascals } from '../vapor-pressure-deficit.ts';
import { wetBulbCelsius } from '../wet-bulb.ts';
import { type Climate, surfaceOf } from './climate.ts';

/**
 * What drives water out of a wet film, Pa: saturation pressure at the film's own temperature minus the vapor
 * pressure of the air (Dalton). A film with nothing warm behind it cools to the wet bulb (`warmth` 0); one on a
 * thick board stays as warm as the board (`warmth` 1).
 */
export const evaporationDriver = (climate: Climate, warmth: number): number => {
  const surface = surfaceOf(climate);
  const bulb = warmth === 1 ? surface : Math.min(surface, wetBulbCelsius(climate));
  return saturationPascals(bulb + warmth * (surface - bulb)) - vaporPascals(climate);
};
