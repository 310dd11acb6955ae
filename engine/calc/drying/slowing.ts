import { arrheniusFactor } from './arrhenius.ts';
import { type Climate, surfaceOf } from './climate.ts';
import { evaporationDriver } from './evaporation-driver.ts';
import { type Mechanism, PACES } from './mechanism.ts';
import type { Milestone } from './milestone.ts';

/** How many times longer a step takes, from–to. Exactly 1–1 where nothing has changed. */
export type Slowing = { from: number; to: number };

/**
 * Films on wood lie between the wet bulb and the board: the two ends of the bracket. The lower one leaves out films
 * that cool fully to the wet bulb, as on a wire or a thin sheet of metal, which furniture is not.
 */
const WARMTHS = [0.35, 1];

/**
 * The air right above a film is not quite the room's, and a hygrometer is a few points off: the whole effect of the
 * air is taken to be 12 % weaker or stronger than the driver says. Our own estimate.
 */
const AIR_GIVE = 0.12;

const ordered = (one: number, two: number): Slowing => ({ from: Math.min(one, two), to: Math.max(one, two) });

const byWater = (from: Climate, to: Climate): Slowing => {
  const ratios = WARMTHS.map((warmth) => evaporationDriver(from, warmth) / evaporationDriver(to, warmth));
  const [low, high] = [Math.min(...ratios), Math.max(...ratios)];
  return {
    from: low ** (1 - Math.sign(low - 1) * AIR_GIVE),
    to: high ** (1 + Math.sign(high - 1) * AIR_GIVE),
  };
};

const byChemistry = (mechanism: Mechanism, from: Climate, to: Climate): Slowing => {
  const { kilojoulesPerMole, humidityDrag } = PACES[mechanism];
  const drag = (1 + humidityDrag * to.relativeHumidity) / (1 + humidityDrag * from.relativeHumidity);
  const { best, give } = kilojoulesPerMole;
  const by = (energy: number) => 1 / arrheniusFactor(energy, surfaceOf(from), surfaceOf(to));
  const { from: low, to: high } = ordered(by(best - give), by(best + give));
  return { from: low * drag, to: high * drag };
};

/** Independent doubts do not add up: half widths on a log scale join as the sides of a right triangle. */
const together = (one: Slowing, two: Slowing): Slowing => {
  const middle = Math.sqrt(one.from * one.to * two.from * two.to);
  const half = Math.hypot(Math.log(one.to / one.from), Math.log(two.to / two.from)) / 2;
  return { from: middle * Math.exp(-half), to: middle * Math.exp(half) };
};

/**
 * How much longer the step that ends in a milestone takes in one climate than in another, and in a film of
 * `relativeThickness` (1 = as thick as the figures are for). Both climates must have passed `outsideClimate`, and
 * `belowDewPoint` where water still has to leave.
 */
export const slowing = (
  mechanism: Mechanism,
  milestone: Milestone,
  from: Climate,
  to: Climate,
  relativeThickness: number,
): Slowing => {
  const { waterShare, thicknessPower } = PACES[mechanism];
  const share = waterShare[milestone];
  const late = byChemistry(mechanism, from, to);
  const early = share > 0 ? byWater(from, to) : late;
  const weather = {
    from: share * early.from + (1 - share) * late.from,
    to: share * early.to + (1 - share) * late.to,
  };
  const { best, give } = thicknessPower;
  const thickness = ordered(relativeThickness ** (best - give), relativeThickness ** (best + give));
  return together(weather, thickness);
};
