import type { Units } from '../calc/units.ts';
import { lateAt } from '../clock/late.ts';
import { THIN_WORDS } from '../clock/thin.ts';
import { coatStep, factsOfLaying } from '../fitness/case.ts';
import { riskOfFilm } from '../fitness/film-risk.ts';
import { judgeLaying, madeReadyBy, type No } from '../fitness/judge.ts';
import { underCan } from '../fitness/laying.ts';
import { spoiledByNight } from '../fitness/night.ts';
import { DAY_MS, HOUR_MS, MINUTE_MS } from '../plain/time.ts';
import { type Firing, fire, isOfSteps, type SaidRule } from '../rules/rules.ts';
import { litersOf } from './amount.ts';
import { buildOf } from './build.ts';
import { type Dates, datesOf } from './dates.ts';
import { driedAt, type Night, nightsOn } from './dry.ts';
import type { Calendar, Job, PlanProduct, PlanTables } from './job.ts';
import type { CoatTimes, Outcome, Reckoned, Refusal } from './outcome.ts';
import { areaOf } from './piece.ts';
import { cautioned, type Raw } from './steps.ts';
import { wetEdgeOf } from './wet-edge.ts';
import { firstFit, type Stretch } from './windows.ts';

/** Windows tried for one coat before it is said that the weather never lets it dry. */
const TRIES = 8;
/** A part of a session is told in steps of five minutes. */
const STEP = 5;

const rounded = (minutes: number): number => Math.ceil(minutes / STEP) * STEP;

/**
 * The whole schedule of a job, or why it is a no. Knows no clock: the calendar and the start come in. Numbers in its
 * sentences stand in `units` first.
 */
export const schedule = (
  plan: PlanTables,
  known: Firing<SaidRule>,
  job: Job,
  told: PlanProduct,
  calendar: Calendar,
  units: Units = 'metric',
): Outcome => {
  const product = underCan(told, job);
  const on = factsOfLaying(job, product);
  const prepare = plan.prepare.find(({ bases }) => bases.includes(job.base));
  const between = plan.between.find(({ families }) => families.includes(product.family));
  const buff = plan.buff.find(({ families }) => families.includes(product.family));
  const { noes, wait, care, weatherCare } = judgeLaying(plan, known, job, product, {
    at: job.start,
    units,
  });
  const fired = fire(known, on, [...madeReadyBy(plan, job, product), coatStep(job, product)]);
  const whole = [...fired.stops, ...fired.cautions].filter((rule) => !isOfSteps(rule));
  const squareMeters = areaOf(job.parts, plan.extra);
  const build = buildOf(plan, job, product);
  const baseReady = job.start + (wait?.hours ?? 0) * HOUR_MS;
  const reckoned: Reckoned = {
    squareMeters,
    care,
    weatherCare,
    build,
    liters: build && litersOf(plan, job, build, squareMeters),
  };
  const refuse = (...why: readonly No[]): Refusal => ({
    ...reckoned,
    kind: 'no',
    why: why as Refusal['why'],
    cautions: whole,
  });
  if (noes.length || !build) return refuse(...noes);

  const tool = plan.tools.find(({ applicator }) => applicator === job.applicator);
  const { work } = plan;
  const sandMinutes = rounded(work['sand-minutes-per-square-meter'] * squareMeters);
  const layMinutes = rounded(
    work['set-up-minutes'] + squareMeters / (tool?.['square-meters-per-minute'] ?? Number.POSITIVE_INFINITY),
  );
  const wash = plan.wash.find(({ bases }) => bases.includes(job.base));
  const patch = plan['test-patch'].find(
    (row) => row.bases.includes(job.base) && (!row.families || row.families.includes(product.family)),
  );
  const raw: Raw[] = [];
  let ready = Math.max(job.start, baseReady);
  if (wait) raw.push({ kind: 'wait', from: job.start, to: baseReady, surely: baseReady, say: wait.row.why });
  const tooShort = (minutes: number): Refusal =>
    refuse({
      code: 'hours',
      says: job.hours.days.some(Boolean)
        ? `One session takes about ${minutes} minutes without a stop, and your hours leave ${Math.max(0, job.hours.to - job.hours.from)}.`
        : 'No day of the week is ticked.',
      instead: 'Give longer hours, or plan the piece in parts: top one day, sides the next.',
    });
  if (wash) {
    const minutes = rounded(work['wipe-minutes']);
    const at = firstFit(job, calendar, ready, minutes);
    if (!at) return tooShort(minutes);
    ready = at.to + wash.hours * HOUR_MS;
    raw.push({ kind: 'wash', ...at, surely: ready, hours: wash.hours, say: wash.say, does: wash.does });
  }
  if (patch) {
    const minutes = rounded(work['set-up-minutes']);
    const at = firstFit(job, calendar, ready, minutes);
    if (!at) return tooShort(minutes);
    raw.push({
      kind: 'test-patch',
      ...at,
      surely: at.to + patch.hours * HOUR_MS,
      hours: patch.hours,
      say: patch.why,
    });
    ready = at.to + patch.hours * HOUR_MS;
  }

  const coats: CoatTimes[] = [];
  const nights: Night[] = [];
  let openMinutes = product['open-minutes'][0];
  let last: ReturnType<typeof driedAt> | undefined;
  const perDay = job.label?.coatsPerDay ?? Number.POSITIVE_INFINITY;
  for (let number = 1; number <= build.coats; number++) {
    const row = number === 1 ? prepare : between;
    const lookMinutes = number === 1 ? 0 : work['look-minutes'];
    const rub = row?.grit ? sandMinutes : 0;
    const before = lookMinutes + rub + work['wipe-minutes'];
    const minutes = before + layMinutes;
    const final = number === build.coats;
    let at: Stretch | undefined;
    let dried: ReturnType<typeof driedAt> | undefined;
    let buffed: Stretch | undefined;
    for (let tries = 0; tries < TRIES; tries++) {
      at = firstFit(job, calendar, ready, minutes);
      if (!at) return tooShort(minutes);
      const day = dayOf(calendar, at.to);
      const laidThatDay = coats.filter(({ to }) => dayOf(calendar, to) === day).length;
      if (laidThatDay < perDay) {
        dried = driedAt(plan, job, product, calendar, build.wet, at.to, final ? 'last' : 'between');
        const dull = dried.ok && buff && dried.value.touch.to;
        buffed = dull ? { from: dull, to: dull + work['wipe-minutes'] * MINUTE_MS } : undefined;
        if (dried.ok && (!buffed || buffed.to <= calendar.at(day, job.hours.to))) break;
      }
      ready = calendar.at(day + 1, 0);
    }
    if (!at || !dried) return tooShort(minutes);
    if (!dried.ok) return refuse(spoiledByNight(dried.problem, units));
    if (buffed && buffed.to > calendar.at(dayOf(calendar, at.to), job.hours.to))
      return tooShort(Math.ceil((buffed.to - at.from) / MINUTE_MS));
    const { touch, recoat } = dried.value;
    const laidFrom = at.from + before * MINUTE_MS;
    const deadline = dried.value['sand-if-beyond'];
    const previous = coats.at(-1);
    if (number > 1)
      raw.push({ kind: 'look', coat: number - 1, from: at.from, to: at.from + lookMinutes * MINUTE_MS });
    const rubFrom = at.from + lookMinutes * MINUTE_MS;
    const must = previous && lateAt(laidFrom, previous.deadline, previous.recoat);
    const thin = number > 1 && riskOfFilm(plan.sanding, number - 1, (number - 1) * build.dry.from) === 'high';
    if (rub && row?.grit)
      raw.push({
        kind: 'sand',
        coat: number,
        ...(thin && { thin }),
        from: rubFrom,
        to: rubFrom + rub * MINUTE_MS,
        grit: row.grit,
        say: thin ? THIN_WORDS[must ? 'late' : 'ready'] : row.say,
        does: row.does,
        must,
      });
    raw.push({
      kind: 'wipe',
      coat: number,
      from: rubFrom + rub * MINUTE_MS,
      to: laidFrom,
      ...(rub ? {} : { say: row?.say }),
    });
    raw.push({ kind: 'coat', coat: number, from: laidFrom, to: at.to });
    if (buffed) {
      raw.push({ kind: 'wait', coat: number, from: at.to, to: touch.from, surely: touch.to });
      raw.push({ kind: 'buff', coat: number, ...buffed, say: buff?.say });
    }
    const left = buffed?.to ?? at.to;
    raw.push({ kind: 'wait', coat: number, from: left, to: Math.max(left, recoat.from), surely: recoat.to });
    if (number === 1) openMinutes = (dried.value.open.from - at.to) / MINUTE_MS;
    coats.push({
      number,
      from: laidFrom,
      to: at.to,
      touch,
      recoat,
      // The clock of the first face ran while the others were laid.
      deadline: deadline && {
        from: deadline.from - (at.to - laidFrom),
        to: deadline.to - (at.to - laidFrom),
      },
    });
    nights.push(...nightsOn(plan, job, product, calendar, { from: at.to, to: recoat.to }, number));
    ready = recoat.to;
    last = dried;
  }
  const end = coats.at(-1);
  if (!end || !last?.ok) throw new Error('a build without coats');
  const dates = datesOf(plan, job, product.family, end, last.value['light-use'], last.value.cure);
  // Nobody waits up for it: it is looked at in her hours.
  const seenAt = firstFit(job, calendar, end.recoat.to, work['look-minutes'])?.from ?? end.recoat.to;
  raw.push({ kind: 'look', coat: build.coats, from: seenAt, to: seenAt, final: true });
  raw.push({ kind: 'light-use', from: dates.lightUse.from, to: dates.lightUse.to });
  raw.push({ kind: 'full-use', from: dates.fullUse.from, to: dates.fullUse.to });
  return {
    ...reckoned,
    wetEdge: wetEdgeOf(plan, job, build, openMinutes),
    kind: 'plan',
    steps: cautioned(plan, known, on, job, product, raw, whole),
    coats,
    nights,
    dates,
    lateDays: lateDaysOf(job, dates),
    cautions: whole,
  };
};

const lateDaysOf = ({ promised }: Job, { handOver }: Dates): number =>
  promised === undefined ? 0 : Math.max(0, Math.ceil((handOver - promised) / DAY_MS));

/** The calendar day in which an instant lies. */
const dayOf = (calendar: Calendar, at: number): number => {
  let day = 0;
  while (calendar.at(day + 1, 0) <= at) day += 1;
  return day;
};
