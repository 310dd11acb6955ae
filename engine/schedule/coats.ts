import type { Units } from '../calc/units.ts';
import { PERHAPS_TWO_PART, TWO_PART_WORDS, twoPartIn } from '../clock/hardener.ts';
import { lateAt } from '../clock/late.ts';
import { THIN_WORDS } from '../clock/thin.ts';
import { riskOfFilm } from '../fitness/film-risk.ts';
import { spoiledByNight } from '../fitness/night.ts';
import type { No } from '../fitness/no.ts';
import { MINUTE_MS, type Stretch } from '../plain/time.ts';
import { type Dried, driedAt, type Night, nightsOn } from './dry.ts';
import type { CoatTimes } from './outcome.ts';
import type { Planning } from './planning.ts';
import { type Fits, tooShort, type workOn } from './session.ts';
import type { Raw } from './steps.ts';
import { dayOf, firstFit } from './windows.ts';

/** Days tried for one coat before it is said that the weather never lets it dry. */
const TRIES = 8;

/** The session of one coat, all its work in it, with when the coat is dry, and buffed where it is. */
type Session = { readonly at: Stretch; readonly dried: Dried; readonly buffed: Stretch | undefined };

const buffOf = ({ plan, product }: Planning) =>
  plan.buff.find(({ families }) => families.includes(product.family));

/** A wax is buffed once it is dull, in the hours of the day on which it was laid. */
const buffedAt = (planning: Planning, { touch }: Dried): Stretch | undefined =>
  buffOf(planning) && {
    from: touch.to,
    to: touch.to + planning.plan.work['wipe-minutes'] * MINUTE_MS,
  };

/** The first session of so many minutes after which the coat dries, with no more coats in a day than the can allows. */
const sessionFor = (
  planning: Planning,
  laid: readonly CoatTimes[],
  ready: number,
  minutes: number,
  units: Units,
): Fits<Session> => {
  const { job, calendar, build } = planning;
  const perDay = job.label?.coatsPerDay ?? Number.POSITIVE_INFINITY;
  const which = laid.length + 1 === build.coats ? 'last' : 'between';
  let no: No = tooShort(job, minutes);
  let from = ready;
  for (let tries = 0; tries < TRIES; tries++) {
    const at = firstFit(job, calendar, from, minutes);
    if (!at) return { ok: false, no: tooShort(job, minutes) };
    const day = dayOf(calendar, at.to);
    from = calendar.at(day + 1, 0);
    if (laid.filter(({ to }) => dayOf(calendar, to) === day).length >= perDay) continue;
    const dried = driedAt(planning, at.to, which);
    if (!dried.ok) {
      no = spoiledByNight(dried.problem, units);
      continue;
    }
    const buffed = buffedAt(planning, dried.value);
    if (!buffed || buffed.to <= calendar.at(day, job.hours.to))
      return { ok: true, value: { at, dried: dried.value, buffed } };
    no = tooShort(job, Math.ceil((buffed.to - at.from) / MINUTE_MS));
  }
  return { ok: false, no };
};

/** Minutes of what is done in one session, in this order; the coat is laid last. */
type Work = { readonly look: number; readonly rub: number; readonly wipe: number };

/** How the base, or the coat below, is made ready for a coat, from 1. */
const rowOf = ({ plan, job, product }: Planning, number: number) =>
  number === 1
    ? plan.prepare.find(({ bases }) => bases.includes(job.base))
    : plan.between.find(({ families }) => families.includes(product.family));

/** Whether a film of this job may be sanded before the next coat: not with isocyanate in it, and perhaps not. */
const twoPartOf = ({ job, product }: Planning) => twoPartIn(product, job);

/** A film that is not sanded, and has dried too long to be coated as it is, waits for full cure: no plan does. */
const tooLate = (number: number): No => ({
  code: 'hours',
  says: `By your hours coat ${number} would come when the one below has dried too long to be coated unsanded, and with isocyanate in it nobody sands it before its can says fully cured.`,
  instead: 'Give days and hours that let the coats follow sooner, or take a finish of one part.',
});

/** The look at the coat below, sanding, wiping and laying, and the waits and the buffing after it. */
const stepsOf = (
  planning: Planning,
  { look, rub, wipe }: Work,
  coat: CoatTimes,
  below: CoatTimes | undefined,
  { at, buffed }: Session,
): readonly Raw[] => {
  const { plan, build } = planning;
  const { number, touch, recoat } = coat;
  const row = rowOf(planning, number);
  const rubFrom = at.from + look * MINUTE_MS;
  const wipeFrom = rubFrom + rub * MINUTE_MS;
  const must = below && lateAt(coat.from, below.deadline, below.recoat);
  const thin = below && riskOfFilm(plan.sanding, below.number, below.number * build.dry.from) === 'high';
  const dry = buffed?.to ?? at.to;
  const twoPart = below && twoPartOf(planning);
  const unsanded = twoPart === 'surely' && row?.grit !== undefined;
  const words = thin ? THIN_WORDS[must ? 'late' : 'ready'] : (row?.say ?? '');
  return [
    ...(below ? [{ kind: 'look' as const, coat: below.number, from: at.from, to: rubFrom }] : []),
    ...(rub && row?.grit
      ? [
          {
            kind: 'sand' as const,
            coat: number,
            ...(thin && { thin }),
            ...(twoPart && { ifOnePart: true as const }),
            from: rubFrom,
            to: wipeFrom,
            grit: row.grit,
            say: twoPart ? `${PERHAPS_TWO_PART} ${words}` : words,
            does: row.does,
            must,
          },
        ]
      : []),
    {
      kind: 'wipe',
      coat: number,
      from: wipeFrom,
      to: wipeFrom + wipe * MINUTE_MS,
      ...(unsanded
        ? { unsanded, say: TWO_PART_WORDS[must ? 'late' : 'ready'] }
        : rub
          ? {}
          : { say: row?.say }),
    },
    { kind: 'coat', coat: number, from: coat.from, to: coat.to },
    ...(buffed
      ? [
          { kind: 'wait' as const, coat: number, from: at.to, to: touch.from, surely: touch.to },
          { kind: 'buff' as const, coat: number, ...buffed, say: buffOf(planning)?.say },
        ]
      : []),
    { kind: 'wait', coat: number, from: dry, to: Math.max(dry, recoat.from), surely: recoat.to },
  ];
};

/** All coats of a plan, one after another. */
export type Laid = {
  readonly steps: readonly Raw[];
  readonly coats: readonly CoatTimes[];
  readonly nights: readonly Night[];
  /** How long the first coat stays open, minutes: the early end. */
  readonly openMinutes: number;
  readonly last: { readonly coat: CoatTimes; readonly dried: Dried };
};

/** Lays the coats of the build from `ready` on, epoch milliseconds. Throws for a build that has none. */
export const layCoats = (
  planning: Planning,
  minutes: ReturnType<typeof workOn>,
  ready: number,
  units: Units,
): Fits<Laid> => {
  const { plan, build } = planning;
  const unsanded = twoPartOf(planning) === 'surely';
  const steps: Raw[] = [];
  const coats: CoatTimes[] = [];
  const nights: Night[] = [];
  let openMinutes: number | undefined;
  let last: Laid['last'] | undefined;
  for (let number = 1; number <= build.coats; number++) {
    const below = last?.coat;
    const work: Work = {
      look: below ? plan.work['look-minutes'] : 0,
      rub: rowOf(planning, number)?.grit && !(below && unsanded) ? minutes.sand : 0,
      wipe: plan.work['wipe-minutes'],
    };
    const before = work.look + work.rub + work.wipe;
    const found = sessionFor(planning, coats, below?.recoat.to ?? ready, before + minutes.lay, units);
    if (!found.ok) return found;
    const { at, dried } = found.value;
    const coat = coatOf(number, { from: at.from + before * MINUTE_MS, to: at.to }, dried);
    if (unsanded && below && lateAt(coat.from, below.deadline, below.recoat) === 'surely')
      return { ok: false, no: tooLate(number) };
    steps.push(...stepsOf(planning, work, coat, below, found.value));
    coats.push(coat);
    nights.push(...nightsOn(planning, { from: at.to, to: coat.recoat.to }, number));
    openMinutes ??= (dried.open.from - at.to) / MINUTE_MS;
    last = { coat, dried };
  }
  if (!last || openMinutes === undefined) throw new Error('a build without coats');
  return { ok: true, value: { steps, coats, nights, openMinutes, last } };
};

const coatOf = (number: number, laid: Stretch, dried: Dried): CoatTimes => {
  const { touch, recoat, 'sand-if-beyond': deadline } = dried;
  // The clock of the first face ran while the others were laid.
  const began = laid.to - laid.from;
  return {
    number,
    ...laid,
    touch,
    recoat,
    deadline: deadline && { from: deadline.from - began, to: deadline.to - began },
  };
};
