import { answer, outside, type Result } from './quantity.ts';

const KELVIN_AT_0_CELSIUS = 273.15;
/** Where the branches over ice and over water meet, °C. */
const TRIPLE_POINT_CELSIUS = 0.01;

const overIce = (k: number): number =>
  Math.exp(
    -5.6745359e3 / k +
      6.3925247 -
      9.677843e-3 * k +
      6.2215701e-7 * k ** 2 +
      2.0747825e-9 * k ** 3 -
      9.484024e-13 * k ** 4 +
      4.1635019 * Math.log(k),
  );

const overWater = (k: number): number =>
  Math.exp(
    -5.8002206e3 / k +
      1.3914993 -
      4.8640239e-2 * k +
      4.1764768e-5 * k ** 2 -
      1.4452093e-8 * k ** 3 +
      6.5459673 * Math.log(k),
  );

/**
 * Saturation pressure of water vapor in Pa, unchecked: for callers that have checked the temperature.
 * Hyland and Wexler 1983, as in ASHRAE Handbook, Fundamentals, 2017, ch. 1, eq. 5 (over ice) and 6 (over water).
 */
export const saturationPascals = (celsius: number): number =>
  (celsius <= TRIPLE_POINT_CELSIUS ? overIce : overWater)(celsius + KELVIN_AT_0_CELSIUS);

/** Saturation pressure of water vapor in Pa. Valid from -100 to 200 °C; within 0.03 % of the handbook's table. */
export const saturationPressure = (celsius: number): Result<number> =>
  outside(['temperature', celsius, -100, 200, '°C']) ?? answer(saturationPascals(celsius));
