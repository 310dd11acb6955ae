import { outside, type Refused } from './quantity.ts';

/** The air around a piece. Relative humidity is over liquid water, 0–1. */
export type Air = { readonly celsius: number; readonly relativeHumidity: number };

/**
 * Air in °C, from–to. `laid`: where a coat is laid and dries; beyond that it is a slip of the pen. `kept`: what is read
 * back of a card or a clock, where a can's own climate may be hotter. `reckoned`: as far as the physics of damp air is
 * held to printed tables; a dew point or a wet bulb lies below the air that it is reckoned from.
 */
export const AIR_CELSIUS = { laid: [-30, 50], kept: [-30, 60], reckoned: [-40, 60] } as const;

/** Standard pressure at sea level, Pa. */
export const STANDARD_PASCALS = 101_325;

/** Refuses air that is not reckoned with, or outside 0 to 100 % relative humidity. */
export const outsideAir = ({ celsius, relativeHumidity }: Air): Refused | undefined =>
  outside(
    ['air temperature', celsius, ...AIR_CELSIUS.reckoned, '°C'],
    ['relative humidity', relativeHumidity, 0, 1, '0–1'],
  );
