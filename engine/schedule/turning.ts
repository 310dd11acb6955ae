import type { Label } from '../calc/drying/label.ts';
import { answer, type Result } from '../calc/quantity.ts';
import { DAY_HOURS, HOUR_MIN, type Stretch } from '../plain/time.ts';
import { isFor } from './build.ts';
import { type Dried, driedAt } from './dry.ts';
import type { CanLabel, Turning } from './job.ts';
import type { Planning } from './planning.ts';

type Ends = readonly [from: number, to: number];

const later = (one: Ends, two: Ends): [number, number] => [
  Math.max(one[0], two[0]),
  Math.max(one[1], two[1]),
];
const timesOf = ([from, to]: Ends, by: number): [number, number] => [from * by, to * by];

/** What the can says but for these moments. */
const without = (label: CanLabel | undefined, ...moments: readonly (keyof Label['minutes'])[]) =>
  label && {
    ...label,
    minutes: Object.fromEntries(
      Object.entries(label.minutes).filter(([moment]) => !moments.some((one) => one === moment)),
    ),
  };

/**
 * When a coat is as hard as it is after `hours` at 23 °C and 50 %, in the air at hand, epoch milliseconds: what comes
 * before the next coat is slowed as that is, what comes after it as light use is.
 */
const hardAs = (planning: Planning, laidTo: number, hours: Ends): Result<Stretch> => {
  const { job, product } = planning;
  const { 'sand-if-beyond-hours': _, ...bare } = product;
  const recoat = product['recoat-hours'];
  const before = hours[1] < recoat[1];
  const touch = timesOf(product['touch-minutes'], 1 / HOUR_MIN);
  const days = timesOf(later(hours, recoat), 1 / DAY_HOURS);
  const changed = before
    ? { ...bare, 'recoat-hours': later(touch, [Math.min(hours[0], recoat[0]), hours[1]]) }
    : { ...bare, 'light-use-days': days, 'cure-days': later(product['cure-days'], days) };
  const label = before
    ? without(job.label, 'recoat', 'sand-if-beyond')
    : without(job.label, 'light-use', 'cure');
  const dried = driedAt({ ...planning, product: changed, job: { ...job, label } }, laidTo, 'between');
  return dried.ok ? answer(before ? dried.value.recoat : dried.value['light-use']) : dried;
};

/**
 * When a part can be turned so that this coat lies on points, epoch milliseconds: dry to the touch is not enough. After
 * each coat it is by what data sheets print for handling, else once it takes the next coat; a can that tells when it
 * does counts as it stands, and no table brings that forward. With all its coats a face lies longer, and waits longer.
 * What is wiped off has nothing that a point could print.
 */
export const turnableAt = (
  planning: Planning,
  turned: Turning,
  laidTo: number,
  dried: Dried,
): Result<Stretch> => {
  const { plan, job, product } = planning;
  const row = plan.turn.handled.find((one) => isFor(one, product));
  const whole = turned === 'each-face';
  if (row && row.hours[1] === 0 && !whole) return answer({ from: laidTo, to: laidTo });
  const hours: Ends | undefined = whole
    ? [plan.turn['all-coats'].hours, plan.turn['all-coats'].hours]
    : row?.hours;
  if (!hours) return answer(dried.recoat);
  const hard = hardAs(planning, laidTo, hours);
  if (!hard.ok) return hard;
  const least = whole || job.label?.minutes.recoat ? dried.recoat : dried.touch;
  const [from, to] = later([hard.value.from, hard.value.to], [least.from, least.to]);
  return answer({ from, to });
};
