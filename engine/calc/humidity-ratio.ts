import { type Air, outsideAir, STANDARD_PASCALS } from './air.ts';
import { answer, type Result } from './quantity.ts';
import { vaporPascals } from './vapor-pressure-deficit.ts';

/** Ratio of the molar masses of water and dry air (ASHRAE Handbook, Fundamentals, 2017, ch. 1, eq. 20). */
const MASS_RATIO = 0.621945;

/** Water per dry air, kg/kg, for a vapor pressure in Pa at standard pressure. */
export const humidityRatioAt = (pascals: number): number =>
  (MASS_RATIO * pascals) / (STANDARD_PASCALS - pascals);

/**
 * Kilograms of water for each kilogram of dry air, at 101325 Pa (same handbook, eq. 20 and 22).
 * Valid from -40 to 60 °C and 0 to 100 % relative humidity.
 */
export const humidityRatio = (air: Air): Result<number> =>
  outsideAir(air) ?? answer(humidityRatioAt(vaporPascals(air)));
