import { arrheniusFactor } from './arrhenius.ts';
import { type Climate, surfaceOf } from './climate.ts';
import { evaporationDriver } from './evaporation-driver.ts';
import { type Mechanism, PACES } from './mechanism.ts';
import type { Milestone } from './milestone.ts';

/** How many times longer a step takes, from–to. Exactly 1–1 where nothing has changed. */
export type Slowing = { from: number; to: number };

/**
 * A film lies between the wet bulb, as on glass or thin metal in moving air, and the board under it. Data sheets are
 * printed from panels, so the whole bracket is open.
 */
const WARMTHS = [0, 1];

/**
 * The air right above a film is not quite the room's, and a hygrometer is a few points off: the whole effect of the
 * air is taken to be a fifth weaker or stronger than the driver says. Our own estimate.
 */
const AIR_GIVE = 0.2;

/**
 * Activation energy of all that warmth alone hastens, kJ/mol: best and half width, so 1.5 to 1.6 times as fast for each
 * 10 °C, and anything from no faster to twice the energy. Chosen on 70 printed steps of drying, each from a sheet's row
 * nearest 23 °C to another of its rows (5 to 50 °C, 16 coatings): they ask for 0 to 65 kJ/mol, nine of ten for 8 to 53.
 * Solvents lie inside: heat of vaporization (ethanol 42, heptane 36) less what the film loses by cooling itself.
 */
const KILOJOULES_PER_MOLE = { best: 32, give: 32 } as const;

/**
 * Widest that the weather makes a range, as a half width on a log scale: ±40 %. 65 of those 70 steps lie inside; a
 * range wide enough for the rest would help nobody.
 */
const WIDEST = 0.42;
const USUAL_CELSIUS = { from: 10, to: 35 } as const;
/** Beyond that, sheets disagree more. Slower than the middle moves, so that colder is never faster. Our own estimate. */
const WIDER_PER_DEGREE = 0.035;
const MOST_DEGREES = 5;

const ordered = (one: number, two: number): Slowing => ({ from: Math.min(one, two), to: Math.max(one, two) });

const byWater = (from: Climate, to: Climate): Slowing => {
  const ratios = WARMTHS.map((warmth) => evaporationDriver(from, warmth) / evaporationDriver(to, warmth));
  const [low, high] = [Math.min(...ratios), Math.max(...ratios)];
  return {
    from: low ** (1 - Math.sign(low - 1) * AIR_GIVE),
    to: high ** (1 + Math.sign(high - 1) * AIR_GIVE),
  };
};

const byWarmth = (mechanism: Mechanism, from: Climate, to: Climate): Slowing => {
  const { humidityDrag } = PACES[mechanism];
  const drag = (1 + humidityDrag * to.relativeHumidity) / (1 + humidityDrag * from.relativeHumidity);
  const { best, give } = KILOJOULES_PER_MOLE;
  const by = (energy: number) => 1 / arrheniusFactor(energy, surfaceOf(from), surfaceOf(to));
  const { from: low, to: high } = ordered(by(best - give), by(best + give));
  return { from: low * drag, to: high * drag };
};

/** Draws both ends in alike until the range is no wider than the weather may make it. */
const narrowed = ({ from, to }: Slowing, climate: Climate): Slowing => {
  const celsius = surfaceOf(climate);
  const beyond = Math.max(0, USUAL_CELSIUS.from - celsius, celsius - USUAL_CELSIUS.to);
  const spread = Math.exp(WIDEST + WIDER_PER_DEGREE * Math.min(beyond, MOST_DEGREES));
  const middle = Math.sqrt(from * to);
  return { from: Math.max(from, middle / spread), to: Math.min(to, middle * spread) };
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
  const late = byWarmth(mechanism, from, to);
  const early = share > 0 ? byWater(from, to) : late;
  const weather = narrowed(
    {
      from: share * early.from + (1 - share) * late.from,
      to: share * early.to + (1 - share) * late.to,
    },
    to,
  );
  const { best, give } = thicknessPower;
  const thickness = ordered(relativeThickness ** (best - give), relativeThickness ** (best + give));
  return together(weather, thickness);
};
