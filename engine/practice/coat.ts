import type { Applicator } from '../calc/drying/figures.ts';
import type { ClockProduct, LaidCoat } from '../clock/coat.ts';
import { clockNow, type Running } from '../clock/reading.ts';
import type { Stage } from '../model/stage.ts';
import { DAY_MS, HOUR_MS, MINUTE_MS } from '../plain/time.ts';
import type { Chance } from './chance.ts';
import type { PracticeCoat } from './item.ts';

/** A Saturday in May at nine; coats of practice are laid on that day. */
const MORNING = Date.UTC(2026, 4, 2, 9);

/** Rooms that a refinisher has: air in °C and relative humidity. Our own choice. */
const ROOMS = [
  [21, 0.45],
  [23, 0.5],
  [18, 0.55],
  [16, 0.6],
  [13, 0.6],
  [12, 0.75],
  [17, 0.72],
  [24, 0.65],
  [27, 0.4],
  [29, 0.6],
] as const;

/** Nobody looks at a coat in the middle of the night. */
const [EARLIEST_HOUR, LATEST_HOUR] = [6, 23];

/** The moment that is asked about, surely inside its stage; nothing where the stage is too short to be sure of. */
const momentOf = ({ moments }: Running, laidAt: number, stage: Stage, chance: Chance): number | undefined => {
  const spans: Readonly<Record<Stage, readonly [number, number]>> = {
    wet: [laidAt + MINUTE_MS, moments.open.from],
    setting: [moments.open.to, moments.touch.from],
    'dry-to-touch': [moments.touch.to, moments.recoat.from],
    recoatable: [moments.recoat.to, Math.min(moments.cure.from, moments.recoat.to + 3 * DAY_MS)],
    cured: [moments.cure.to, moments.cure.to + 30 * DAY_MS],
  };
  const [from, to] = spans[stage];
  if (to <= from) return undefined;
  const at = from + ((to - from) * (20 + chance.under(61))) / 100;
  const step = stage === 'wet' || stage === 'setting' ? MINUTE_MS : 5 * MINUTE_MS;
  const asked = Math.round(at / step) * step;
  const hour = Math.floor((asked % DAY_MS) / HOUR_MS);
  return hour >= LATEST_HOUR || hour < EARLIEST_HOUR ? undefined : asked;
};

/** Times as a can prints them. */
const NICE = [5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 360, 480, 720, 1440, 2160, 2880] as const;
const nice = (minutes: number): number =>
  NICE.reduce((best, one) => (Math.abs(one - minutes) < Math.abs(best - minutes) ? one : best));

/** A coat with the times on its can, asked about when its clock is surely in that stage; nothing where this try is not. */
export const coatOf = (
  product: ClockProduct & { readonly id: string },
  applicator: Applicator,
  coatNumber: number,
  stage: Stage,
  chance: Chance,
): PracticeCoat | undefined => {
  const middle = ([from, to]: readonly [number, number]) => (from + to) / 2;
  const touchMinutes = nice(middle(product['touch-minutes']));
  const recoatMinutes = Math.max(nice(60 * middle(product['recoat-hours'])), 2 * touchMinutes);
  const [celsius, relativeHumidity] = chance.one(ROOMS);
  const laidAt = MORNING + chance.under(32) * 15 * MINUTE_MS;
  const laid: LaidCoat = {
    id: 'practice',
    piece: '',
    product: product.id,
    label: {
      minutes: {
        touch: { from: touchMinutes, to: touchMinutes },
        recoat: { from: recoatMinutes, to: recoatMinutes },
      },
    },
    laidAt,
    celsius,
    relativeHumidity,
    coatNumber,
    applicator,
  };
  const first = clockNow(product, laid, laidAt);
  if (first.kind !== 'running') return undefined;
  const now = momentOf(first, laidAt, stage, chance);
  if (now === undefined) return undefined;
  const reading = clockNow(product, laid, now);
  return reading.kind === 'running' && reading.stage === stage && reading.sureness === 'surely'
    ? { laid, now, reading, touchMinutes, recoatMinutes }
    : undefined;
};
