/**
 * The calculators: with each stand its formula, where that is from, its units and its valid range. What lies outside of the
 * range is refused by name (`Result`); nothing throws, and nothing knows a clock.
 */
export {
  type GritSystem,
  gradesOf,
  grainMicrometers,
  nearestP,
  sayGrit,
  scratchDepth,
} from './calc/abrasives.ts';
export type { Air } from './calc/air.ts';
export { type Bubble, bubbleRise, type Rise } from './calc/bubble-rise.ts';
export { cie76, ciede2000 } from './calc/color-difference.ts';
export { dewPoint } from './calc/dew-point.ts';
export { type DewPointMargin, dewPointMargin } from './calc/dew-point-margin.ts';
export type { Coat } from './calc/drying/coat.ts';
export { type Drying, drying } from './calc/drying.ts';
export {
  coatsFor,
  dryFilmMicrometers,
  litersFor,
  squareMetersPerLiter,
  wetFilmFromCoverage,
  wetFilmMicrometers,
} from './calc/film.ts';
export { clearTransmittance, hazeDifference, reflectanceOver } from './calc/film-reflectance.ts';
export { humidityRatio } from './calc/humidity-ratio.ts';
export { labFromHex, labFromXyz } from './calc/lab.ts';
export { levelingSeconds, quickestLevelingSeconds, type Ripple } from './calc/leveling.ts';
export type { Problem, Range, Result, Unit } from './calc/quantity.ts';
export { type Flow, fallingFilm, sagLimitMicrometers, type UprightFilm } from './calc/sag.ts';
export { saturationPressure } from './calc/saturation-pressure.ts';
export { sayProblem, sayValue } from './calc/say-problem.ts';
export { sayWeather } from './calc/say-weather.ts';
export { vaporPressureDeficit } from './calc/vapor-pressure-deficit.ts';
export { water, waterSurfaceTension } from './calc/water.ts';
export { type Weather, type WeatherReason, type WeatherVerdict, weatherVerdict } from './calc/weather.ts';
export { wetBulb } from './calc/wet-bulb.ts';
export { woodMoisturePercent, woodMoistureRange } from './calc/wood-moisture.ts';
export { yellowness } from './calc/yellowness.ts';
