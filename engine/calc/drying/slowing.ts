import type { Climate } from './climate.ts';
import { evaporationDriver } from './evaporation-driver.ts';
import { type Mechanism, PACES } from './mechanism.ts';
import type { Milestone } from './milestone.ts';
import { narrowed, ordered, type Slowing, times, together } from './slowing-range.ts';
import { beyondUsual, byWarmth, inUsual, KILOJOULES_PER_MOLE } from './warmth.ts';

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
 * Widest that the weather makes a range from 10 to 35 °C: a hair under ±40 %, so that rounding does not carry it over.
 * Nine of ten printed steps lie inside (README.md counts them); one wide enough for the rest would help nobody. A little
 * less where water leaves: the steps of such a film slow unlike one another, and their sum comes out wider than each.
 */
export const WIDEST = { dry: 0.399, wet: 0.39 } as const;

const byWater = (from: Climate, to: Climate): Slowing => {
  const ratios = WARMTHS.map((warmth) => evaporationDriver(from, warmth) / evaporationDriver(to, warmth));
  const [low, high] = [Math.min(...ratios), Math.max(...ratios)];
  return {
    from: low ** (1 - Math.sign(low - 1) * AIR_GIVE),
    to: high ** (1 + Math.sign(high - 1) * AIR_GIVE),
  };
};

/** What the weather does to the step that ends in a milestone, both climates from 10 to 35 °C. */
const byWeather = (mechanism: Mechanism, milestone: Milestone, from: Climate, to: Climate): Slowing => {
  const { waterShare, humidityDrag } = PACES[mechanism];
  const share = waterShare[milestone];
  const drag = (1 + humidityDrag * to.relativeHumidity) / (1 + humidityDrag * from.relativeHumidity);
  const late = times(byWarmth(KILOJOULES_PER_MOLE, from, to), ordered(drag, drag));
  if (share === 0) return narrowed(late, mechanism === 'coalescence' ? WIDEST.wet : WIDEST.dry);
  const early = byWater(from, to);
  return narrowed(
    {
      from: share * early.from + (1 - share) * late.from,
      to: share * early.to + (1 - share) * late.to,
    },
    WIDEST.wet,
  );
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
  const weather = times(byWeather(mechanism, milestone, inUsual(from), inUsual(to)), beyondUsual(from, to));
  if (relativeThickness === 1) return weather;
  const { best, give } = PACES[mechanism].thicknessPower;
  const thickness = ordered(relativeThickness ** (best - give), relativeThickness ** (best + give));
  return together(weather, thickness);
};
