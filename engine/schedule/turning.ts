import type { Printed } from '../calc/drying/milestone.ts';
import { answer, type Result } from '../calc/quantity.ts';
import { DAY_HOURS, later, type Stretch } from '../plain/time.ts';
import { isFor } from './build.ts';
import { type Dried, driedAt } from './dry.ts';
import type { CanLabel, Turning } from './job.ts';
import type { Planning } from './planning.ts';

type Ends = readonly [from: number, to: number];

/** What the can says but for these moments. */
const without = (label: CanLabel | undefined, ...moments: readonly Printed[]) =>
  label && {
    ...label,
    minutes: Object.fromEntries(
      Object.entries(label.minutes).filter(([moment]) => !moments.some((one) => one === moment)),
    ),
  };

/**
 * When a coat is as hard as after `hours` at 23 °C and 50 %, sooner than it takes the next coat, in the air at hand.
 * Never before it is dry to the touch; a can that tells when it takes the next coat means this, too.
 */
const hardSooner = (planning: Planning, laidTo: number, [from, to]: Ends): Result<Stretch> => {
  const { 'sand-if-beyond-hours': _, ...product } = planning.product;
  const changed = {
    ...product,
    'recoat-hours': [Math.min(from, product['recoat-hours'][0]), to] as [number, number],
  };
  const dried = driedAt({ ...planning, product: changed }, laidTo, 'between');
  return dried.ok ? answer(dried.value.recoat) : dried;
};

/** The same where it is later than the next coat: slowed as what comes between that and light use, never before it. */
const hardLater = (
  planning: Planning,
  laidTo: number,
  { recoat }: Dried,
  [from, to]: Ends,
): Result<Stretch> => {
  const { job, product } = planning;
  const changed = { ...product, 'light-use-days': [from / DAY_HOURS, to / DAY_HOURS] as [number, number] };
  const label = without(job.label, 'light-use', 'cure', 'handle');
  const dried = driedAt({ ...planning, product: changed, job: { ...job, label } }, laidTo, 'between');
  return dried.ok ? answer(later(dried.value['light-use'], recoat)) : dried;
};

/**
 * When a part can be turned so that this coat lies on points, epoch milliseconds: dry to the touch is not enough. After
 * each coat it is by what the can prints for handling, else by what data sheets do, else once it takes the next coat; a
 * can that tells when it does counts as it stands, and no table brings that forward. With all its coats a face lies
 * longer, and waits longer, whatever its can says of one coat. What is wiped off has nothing that a point could print.
 */
export const turnableAt = (
  planning: Planning,
  turned: Turning,
  laidTo: number,
  dried: Dried,
): Result<Stretch> => {
  const { plan, product } = planning;
  if (turned === 'each-face') {
    const { hours } = plan.turn['all-coats'];
    const hard = hardLater(planning, laidTo, dried, [hours, hours]);
    return hard.ok && dried.handle ? answer(later(hard.value, dried.handle)) : hard;
  }
  if (dried.handle) return answer(dried.handle);
  const hours = plan.turn.handled.find((row) => isFor(row, product))?.hours;
  if (!hours) return answer(dried.recoat);
  if (hours[1] === 0) return answer({ from: laidTo, to: laidTo });
  return hours[1] < product['recoat-hours'][1]
    ? hardSooner(planning, laidTo, hours)
    : hardLater(planning, laidTo, dried, hours);
};
