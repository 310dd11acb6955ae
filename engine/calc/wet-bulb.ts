import { type Air, outsideAir } from './air.ts';
import { bisect } from './bisect.ts';
import { humidityRatioAt } from './humidity-ratio.ts';
import { answer, type Result } from './quantity.ts';
import { saturationPascals } from './saturation-pressure.ts';
import { vaporPascals } from './vapor-pressure-deficit.ts';

/** Humidity ratio of air at `celsius` whose wet bulb is `bulb`: eq. 33 above freezing, eq. 35 below. */
const ratioFor = (celsius: number, bulb: number): number => {
  const saturated = humidityRatioAt(saturationPascals(bulb));
  return bulb >= 0
    ? ((2501 - 2.326 * bulb) * saturated - 1.006 * (celsius - bulb)) / (2501 + 1.86 * celsius - 4.186 * bulb)
    : ((2830 - 0.24 * bulb) * saturated - 1.006 * (celsius - bulb)) / (2830 + 1.86 * celsius - 2.1 * bulb);
};

/** Wet-bulb temperature, °C, unchecked. */
export const wetBulbCelsius = (air: Air): number => {
  const ratio = humidityRatioAt(vaporPascals(air));
  return bisect((bulb) => ratioFor(air.celsius, bulb) - ratio, air.celsius - 40, air.celsius);
};

/**
 * Thermodynamic wet-bulb temperature, °C: how cold a wet surface can get by evaporating into this air.
 * ASHRAE Handbook, Fundamentals, 2017, ch. 1, eq. 33 and 35, solved by halving, at 101325 Pa.
 * Valid from -40 to 60 °C and 0 to 100 % relative humidity.
 */
export const wetBulb = (air: Air): Result<number> => outsideAir(air) ?? answer(wetBulbCelsius(air));
