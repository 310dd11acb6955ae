import { type Climate, surfaceOf } from './climate.ts';
import type { Figures } from './figures.ts';
import type { Course } from './history.ts';
import type { Label } from './label.ts';
import { CHAIN, type ChainMilestone } from './milestone.ts';
import { slowing } from './slowing.ts';

/** Early ends of the chain, minutes since the coat was laid. */
export type Early = Readonly<Record<ChainMilestone, number>>;

/** What printed sheets show of warmth are times to the touch and to the next coat. Use and cure no sheet moves. */
const MOVED_BY_WARMTH: readonly ChainMilestone[] = ['touch', 'recoat'];

/**
 * Share of a can's time that is left in the warmest stretch of the weather, at the can's own humidity: the sheets were
 * printed for temperatures, none for dry air. 1 where it is no warmer than on the can.
 */
const leftInWarmth = ({ product, base, history }: Course, milestone: ChainMilestone): number => {
  const warmest = Math.max(surfaceOf(base), ...history.map(surfaceOf));
  const warm: Climate = { celsius: warmest, relativeHumidity: base.relativeHumidity };
  const even: Climate = { celsius: surfaceOf(base), relativeHumidity: base.relativeHumidity };
  return Math.min(1, slowing(product.mechanism, milestone, even, warm, 1).from);
};

/**
 * Early ends as they may be promised: none before what is printed, whatever the weather and the film. `printed` are the
 * figures at 23 °C and 50 %, the label's put in. A label's time to the touch and to the next coat may come sooner where
 * it is warmer, as far as sheets print it. The end of open time has no floor: to be told sooner is the safe side of it.
 * Keeps the order of the moments.
 */
export const notBeforePrinted = (
  reckoned: Early,
  printed: Figures,
  label: Label | undefined,
  course: Course,
): Early => {
  const early: Record<ChainMilestone, number> = { ...reckoned };
  let roof = Number.POSITIVE_INFINITY;
  for (const milestone of CHAIN.toReversed()) {
    if (milestone === 'open') continue;
    const told = label?.minutes[milestone];
    const moves = told !== undefined && MOVED_BY_WARMTH.includes(milestone);
    const floor = moves ? told.from * leftInWarmth(course, milestone) : printed[milestone].from;
    early[milestone] = Math.min(Math.max(early[milestone], floor), roof);
    // What the can does not tell gives way to what it tells.
    if (told) roof = early[milestone];
  }
  let before = 0;
  for (const milestone of CHAIN) {
    before = Math.max(before, early[milestone]);
    early[milestone] = before;
  }
  return early;
};
