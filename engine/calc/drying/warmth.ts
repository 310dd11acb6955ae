import { arrheniusFactor } from './arrhenius.ts';
import { type Climate, surfaceOf } from './climate.ts';
import { ordered, type Slowing } from './slowing-range.ts';

/**
 * Activation energy of all that warmth alone hastens, kJ/mol: 1.5 times as fast for each 10 °C. The middle of what the
 * printed steps ask for (README.md counts them), each from a sheet's row nearest 23 °C to another of its rows, -5 to
 * 50 °C: nine of ten ask for 2 to 65, half of them for 32 or less. Intervals to the next coat ask for no other energy
 * than drying. Solvents lie inside: heat of vaporization (ethanol 42, heptane 36) less what the film loses by cooling itself.
 */
export const KILOJOULES_PER_MOLE = 30;

/** From no change to twice the energy: some sheets print one time for 15 and for 25 °C, some half of it. */
export const byWarmth = (kilojoulesPerMole: number, from: Climate, to: Climate): Slowing =>
  ordered(1, 1 / arrheniusFactor(2 * kilojoulesPerMole, surfaceOf(from), surfaceOf(to)));

/** Where finishes are meant to be laid, °C. */
const USUAL = { from: 10, to: 35 } as const;
/**
 * Beyond that sheets agree on little, and the range may grow: from 10 down to 5 °C eight of them ask for 0 to 91 kJ/mol.
 * In the cold driers and fusing droplets fail, in the heat solvents boil off. A round 100 for those not seen.
 */
const KILOJOULES_BEYOND = 100;

const usual = (celsius: number): number => Math.min(Math.max(celsius, USUAL.from), USUAL.to);

/** The nearest climate of the same humidity from 10 to 35 °C. */
export const inUsual = (climate: Climate): Climate => ({
  celsius: usual(climate.celsius),
  relativeHumidity: climate.relativeHumidity,
  surfaceCelsius: usual(surfaceOf(climate)),
});

/** What the part of the way below 10 or above 35 °C adds: from nothing to `KILOJOULES_BEYOND`. */
export const beyondUsual = (from: Climate, to: Climate): Slowing => {
  const whole = arrheniusFactor(KILOJOULES_BEYOND, surfaceOf(from), surfaceOf(to));
  const inside = arrheniusFactor(KILOJOULES_BEYOND, usual(surfaceOf(from)), usual(surfaceOf(to)));
  return ordered(1, inside / whole);
};
