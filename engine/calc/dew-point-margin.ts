import type { Air } from './air.ts';
import { dewPoint } from './dew-point.ts';
import { answer, outside, type Result } from './quantity.ts';

/**
 * Least surface temperature above the dew point before coating, °C.
 * Trade rule "3 °C or 5 °F" (ISO 8502-4 practice; MIL-HDBK-1110 has 5 °F = 2.78 °C): the stricter of the two.
 */
export const LEAST_MARGIN_CELSIUS = 3;

export type DewPointMargin = {
  readonly dewPointCelsius: number;
  readonly marginCelsius: number;
  readonly fit: boolean;
};

/**
 * How far a surface is above the dew point of the air, and whether that is enough to coat.
 * Valid for air as in `dewPoint` and a surface from -40 to 80 °C. A colder surface than the dew point gives a
 * negative margin, which is never fit.
 */
export const dewPointMargin = (air: Air, surfaceCelsius: number): Result<DewPointMargin> => {
  const refused = outside(['surface temperature', surfaceCelsius, -40, 80, '°C']);
  if (refused) return refused;
  const dew = dewPoint(air);
  if (!dew.ok) return dew;
  const marginCelsius = surfaceCelsius - dew.value;
  return answer({ dewPointCelsius: dew.value, marginCelsius, fit: marginCelsius >= LEAST_MARGIN_CELSIUS });
};
