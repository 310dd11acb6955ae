import type { Units } from '../calc/units.ts';
import type { Calendar } from '../clock/nights.ts';
import { coatStep, factsOfLaying } from '../fitness/case.ts';
import { judgeLaying, madeReadyBy } from '../fitness/judge.ts';
import { underCan } from '../fitness/laying.ts';
import { DAY_MS, type Stretch } from '../plain/time.ts';
import { type Firing, fire, isOfSteps, type SaidRule } from '../rules/rules.ts';
import { litersOf } from './amount.ts';
import { buildOf } from './build.ts';
import { layCoats } from './coats.ts';
import { type Dates, datesOf } from './dates.ts';
import type { Job, PlanProduct, PlanTables } from './job.ts';
import type { CoatTimes, Outcome, Reckoned, Refusal } from './outcome.ts';
import { faceAreasOf, turnedCount } from './piece.ts';
import type { Planning } from './planning.ts';
import { readyBase } from './ready-base.ts';
import { cautioned, type Raw } from './steps.ts';
import { wetEdgeOf } from './wet-edge.ts';
import { firstFit } from './windows.ts';

/**
 * The whole schedule of a job, or why it is a no. Knows no clock: the calendar and the start come in. Numbers in its
 * sentences stand in `units` first. Throws for a product of which the tables say no coats.
 */
export const schedule = (
  plan: PlanTables,
  known: Firing<SaidRule>,
  asked: Job,
  told: PlanProduct,
  calendar: Calendar,
  units: Units = 'metric',
): Outcome => {
  // Where there is none of what would be turned, nothing is.
  const job = turnedCount(asked) > 0 ? asked : { ...asked, both: undefined };
  const product = underCan(told, job);
  const on = factsOfLaying(job, product);
  const { noes, wait, care, weatherCare } = judgeLaying(plan, known, job, product, {
    at: job.start,
    units,
  });
  const fired = fire(known, on, [...madeReadyBy(plan, job, product), coatStep(job, product)]);
  const whole = [...fired.stops, ...fired.cautions].filter((rule) => !isOfSteps(rule));
  const areas = faceAreasOf(job, plan.extra);
  const squareMeters = areas.back + areas.front;
  const build = buildOf(plan, job, product);
  const reckoned: Reckoned = {
    squareMeters,
    areas,
    care,
    weatherCare,
    build,
    liters: build && litersOf(plan, job, build, squareMeters),
  };
  const refuse = (...why: Refusal['why']): Refusal => ({ ...reckoned, kind: 'no', why, cautions: whole });
  const [no, ...more] = noes;
  if (no) return refuse(no, ...more);
  if (!build) throw new Error(`no row of coats is for ${product.id}`);

  const planning: Planning = { plan, job, product, calendar, build };
  const base = readyBase(planning, wait);
  if (!base.ok) return refuse(base.no);
  const laid = layCoats(planning, areas, turnedCount(job), base.value.ready, units);
  if (!laid.ok) return refuse(laid.no);
  const { coats, nights, openMinutes, last, tops } = laid.value;
  const latest = (moment: 'light-use' | 'cure') => latestOf(tops.map(({ dried }) => dried[moment]));
  const dates = datesOf(
    plan,
    job,
    product.family,
    { ...last.coat, handle: last.dried.handle },
    latest('light-use'),
    latest('cure'),
  );
  const steps = [...base.value.steps, ...laid.value.steps, ...stepsAfter(planning, last.coat, dates)];
  return {
    ...reckoned,
    wetEdge: wetEdgeOf(plan, job, build, openMinutes),
    kind: 'plan',
    steps: cautioned(planning, known, on, steps, whole),
    coats,
    nights,
    dates,
    lateDays: lateDaysOf(job, dates),
    cautions: whole,
  };
};

/** When all of them are over. */
const latestOf = (all: readonly Stretch[]): Stretch => ({
  from: Math.max(...all.map(({ from }) => from)),
  to: Math.max(...all.map(({ to }) => to)),
});

/** The last look at the piece, and from when it may be used. */
const stepsAfter = (
  { plan, job, calendar }: Planning,
  { number, recoat }: CoatTimes,
  { lightUse, fullUse }: Dates,
): readonly Raw[] => {
  // Nobody waits up for it: it is looked at in her hours.
  const seenAt = firstFit(job, calendar, recoat.to, plan.work['look-minutes'])?.from ?? recoat.to;
  return [
    { kind: 'look', coat: number, from: seenAt, to: seenAt, final: true },
    { kind: 'light-use', ...lightUse },
    { kind: 'full-use', ...fullUse },
  ];
};

const lateDaysOf = ({ promised }: Job, { handOver }: Dates): number =>
  promised === undefined ? 0 : Math.max(0, Math.ceil((handOver - promised) / DAY_MS));
