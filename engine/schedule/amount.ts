import type { Units } from '../calc/units.ts';
import type { Plan } from '../model/plan.ts';
import type { Build } from './build.ts';
import type { Job, PlanTables } from './job.ts';

export type Can = Plan['cans'][number];

/**
 * Liters for all coats: area × what a coat takes, with what a thirsty base drinks in the first coat and what the tool
 * loses.
 */
export const litersOf = (plan: PlanTables, job: Job, build: Build, squareMeters: number): number => {
  const loss = plan.tools.find(({ applicator }) => applicator === job.applicator)?.loss[1] ?? 0;
  const drinks = plan.thirst.bases.includes(job.base) ? plan.thirst.times - 1 : 0;
  return (squareMeters * build.taken * (build.coats + drinks) * (1 + loss)) / 1000;
};

type Bought = { readonly can: Can; readonly count: number };

/** What a can costs against others of another size: a quart about a third of a gallon. Common practice, no source. */
const costOf = (bought: readonly Bought[]): number =>
  bought.reduce((total, { can, count }) => total + count * can.liters ** 0.75, 0);
/** More cans than this of sizes below the largest are not bought for one piece. */
const MOST_SMALL = 4;

/** Every way to hold so much with these sizes, the largest first. */
const waysTo = (
  liters: number,
  [size, ...smaller]: readonly Can[],
  left: number,
): readonly (readonly Bought[])[] => {
  if (liters <= 0) return [[]];
  if (!size) return [];
  const enough = Math.min(left, Math.ceil(liters / size.liters));
  return Array.from({ length: enough + 1 }, (_, count) => count).flatMap((count) =>
    waysTo(liters - count * size.liters, smaller, left - count).map((rest) =>
      count ? [{ can: size, count }, ...rest] : rest,
    ),
  );
};

/**
 * Cans to buy, with something to spare: those that cost least together. Of the largest as many as are needed, and a few
 * smaller ones for the rest.
 */
export const cansFor = (
  plan: Pick<Plan, 'cans' | 'spare'>,
  liters: number,
  units: Units,
  aerosol: boolean,
): readonly Bought[] => {
  const sizes = plan.cans
    .filter((can) => can.units === units && can.aerosol === aerosol)
    .sort((one, two) => two.liters - one.liters);
  const [largest] = sizes;
  if (!largest || !(liters > 0)) return [];
  const wanted = liters * (1 + plan.spare.share);
  const whole = Math.floor(wanted / largest.liters);
  const base = whole ? [{ can: largest, count: whole }] : [];
  const [best = []] = waysTo(wanted - whole * largest.liters, sizes, MOST_SMALL).toSorted(
    (one, two) => costOf(one) - costOf(two),
  );
  const [first, ...rest] = best;
  return first?.can === largest
    ? [{ can: largest, count: whole + first.count }, ...rest]
    : [...base, ...best];
};
