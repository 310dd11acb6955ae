import { outside, type Refused } from './quantity.ts';

/** The air around a piece. Relative humidity is over liquid water, 0–1. */
export type Air = { celsius: number; relativeHumidity: number };

/** Standard pressure at sea level, Pa. */
export const STANDARD_PASCALS = 101_325;

/** Refuses air outside -40 to 60 °C or 0 to 100 % relative humidity: beyond that it is a slip of the pen. */
export const outsideAir = ({ celsius, relativeHumidity }: Air): Refused | undefined =>
  outside(['air temperature', celsius, -40, 60, '°C'], ['relative humidity', relativeHumidity, 0, 1, '0–1']);
