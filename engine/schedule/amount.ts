import type { Units } from '../calc/units.ts';
import type { Plan } from '../model/plan.ts';
import type { Build } from './build.ts';
import type { Job } from './job.ts';

export type Can = Plan['cans'][number];

/** Liters for all coats: area × wet film, with what a thirsty base drinks in the first coat and what the tool loses. */
export const litersOf = (plan: Plan, job: Job, build: Build, squareMeters: number): number => {
  const loss = plan.tools.find(({ applicator }) => applicator === job.applicator)?.loss[1] ?? 0;
  const drinks = plan.thirst.bases.includes(job.base) ? plan.thirst.times - 1 : 0;
  return (squareMeters * build.wet * (build.coats + drinks) * (1 + loss)) / 1000;
};

/** Cans to buy: the smallest that holds it, or as many of the largest as are needed and the smallest for the rest. */
export const cansFor = (
  plan: Plan,
  liters: number,
  units: Units,
  aerosol: boolean,
): readonly { readonly can: Can; readonly count: number }[] => {
  const sizes = plan.cans
    .filter((can) => can.units === units && can.aerosol === aerosol)
    .sort((one, two) => one.liters - two.liters);
  const largest = sizes.at(-1);
  if (!largest || !(liters > 0)) return [];
  const whole = Math.floor(liters / largest.liters);
  const rest = liters - whole * largest.liters;
  const last = rest > 0 ? sizes.find((can) => can.liters >= rest) : undefined;
  if (last === largest) return [{ can: largest, count: whole + 1 }];
  return [...(whole ? [{ can: largest, count: whole }] : []), ...(last ? [{ can: last, count: 1 }] : [])];
};
