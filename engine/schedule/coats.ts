import type { Units } from '../calc/units.ts';
import { lateAt } from '../clock/late.ts';
import { spoiledByNight } from '../fitness/night.ts';
import type { No } from '../fitness/no.ts';
import { filled } from '../plain/filled.ts';
import { MINUTE_MS, type Stretch } from '../plain/time.ts';
import { buffOf, minutesBefore, rowOf, stepsOf, twoPartOf, type Work } from './coat-steps.ts';
import { type Dried, driedAt, type Night, nightsOn } from './dry.ts';
import { type Face, type Laying, layingsOf } from './layings.ts';
import type { CoatTimes } from './outcome.ts';
import type { FaceAreas } from './piece.ts';
import type { Planning } from './planning.ts';
import { type Fits, roundedUp, tooShort, workOn } from './session.ts';
import type { Raw } from './steps.ts';
import { turnableAt } from './turning.ts';
import { dayOf, firstFit } from './windows.ts';

/** Days tried for one coat before it is said that the weather never lets it dry. */
const TRIES = 8;

/** The session of one coat, all its work in it, with when the coat is dry, and buffed where it is. */
type Session = {
  readonly at: Stretch;
  readonly dried: Dried;
  readonly buffed: Stretch | undefined;
  /** When it can lie on points, where it is turned next. */
  readonly turnable: Stretch | undefined;
};

/** A wax is buffed once it is dull, in the hours of the day on which it was laid. */
const buffedAt = (planning: Planning, { touch }: Dried): Stretch | undefined =>
  buffOf(planning) && {
    from: touch.to,
    to: touch.to + planning.plan.work['wipe-minutes'] * MINUTE_MS,
  };

/** What a session is for. */
type Wanted = Laying & {
  /** The coats that this face has already. */
  readonly laid: readonly CoatTimes[];
  readonly minutes: number;
  /** It is turned after this coat, so that the other face can be coated. */
  readonly turnedNext: boolean;
};

/** When a coat laid by `laidTo` is dry, and when it can be turned, where it is. */
const driedFor = (
  planning: Planning,
  { number, turnedNext }: Wanted,
  laidTo: number,
  units: Units,
): Fits<Omit<Session, 'at'>> => {
  const dried = driedAt(planning, laidTo, number === planning.build.coats ? 'last' : 'between');
  if (!dried.ok) return { ok: false, no: spoiledByNight(planning.plan, dried.problem, units) };
  const buffed = buffedAt(planning, dried.value);
  const turned = turnedNext && planning.job.both?.turned;
  const found = turned ? turnableAt(planning, turned, laidTo, dried.value) : undefined;
  if (found && !found.ok) return { ok: false, no: spoiledByNight(planning.plan, found.problem, units) };
  return { ok: true, value: { dried: dried.value, buffed, turnable: found?.value } };
};

/** The first session of so many minutes after which the coat dries, with no more coats in a day than the can allows. */
const sessionFor = (planning: Planning, wanted: Wanted, ready: number, units: Units): Fits<Session> => {
  const { job, calendar } = planning;
  const { laid, minutes } = wanted;
  const perDay = job.label?.coatsPerDay ?? Number.POSITIVE_INFINITY;
  let no: No = tooShort(planning, minutes);
  let from = ready;
  for (let tries = 0; tries < TRIES; tries++) {
    const at = firstFit(job, calendar, from, minutes);
    if (!at) return { ok: false, no: tooShort(planning, minutes) };
    const day = dayOf(calendar, at.to);
    from = calendar.at(day + 1, 0);
    if (laid.filter(({ to }) => dayOf(calendar, to) === day).length >= perDay) continue;
    const found = driedFor(planning, wanted, at.to, units);
    if (!found.ok) {
      no = found.no;
      continue;
    }
    const { buffed } = found.value;
    if (!buffed || buffed.to <= calendar.at(day, job.hours.to))
      return { ok: true, value: { at, ...found.value } };
    no = tooShort(planning, Math.ceil((buffed.to - at.from) / MINUTE_MS));
  }
  return { ok: false, no };
};

/** A film that is not sanded, and has dried too long to be coated as it is, waits for full cure: no plan does. */
const tooLate = ({ plan, job }: Planning, number: number): No => {
  const old = plan.noes['film-too-old'];
  return {
    code: 'hours',
    says: filled(old.why, { coat: String(number) }),
    instead: job.both?.turned === 'each-coat' ? old['instead-turned'] : old.instead,
  };
};

/** The coat on top of a face, and how it dries. */
type Top = { readonly coat: CoatTimes; readonly dried: Dried };

/** All coats of a plan, one after another. */
export type Laid = {
  readonly steps: readonly Raw[];
  readonly coats: readonly CoatTimes[];
  readonly nights: readonly Night[];
  /** How long the first coat stays open, minutes: the early end. */
  readonly openMinutes: number;
  /** The coat laid last. */
  readonly last: Top;
  /** The last coat of each face. */
  readonly tops: readonly Top[];
};

/** The hands off after a coat, until the next is laid, on this face or, once it can be turned, on the other. */
const waitAfter = (
  { plan }: Planning,
  { number, face, recoat }: CoatTimes,
  { at, buffed, turnable }: Session,
  below: CoatTimes | undefined,
): Raw & { readonly surely: number } => {
  const until = turnable ?? recoat;
  const dry = buffed?.to ?? at.to;
  // Nothing is laid, and nothing turned, before a wax is buffed.
  const ready = Math.max(dry, until.to, below?.recoat.to ?? 0);
  return {
    kind: 'wait',
    coat: number,
    ...(face && { face }),
    from: dry,
    to: Math.max(dry, until.from, below?.recoat.from ?? 0),
    surely: ready,
    ...(turnable && { untilTurned: true, say: plan.turn.says.wait.say }),
  };
};

/**
 * Lays the coats of the build from `ready` on, epoch milliseconds; what is turned on both faces, each coat once the one
 * below takes it and the face that lies down can be turned. Throws for a build that has none.
 */
export const layCoats = (
  planning: Planning,
  areas: FaceAreas,
  turns: number,
  ready: number,
  units: Units,
): Fits<Laid> => {
  const { plan, job, build } = planning;
  const unsanded = twoPartOf(planning) === 'surely';
  const turning = roundedUp(plan.turn.minutes['a-part'] * turns);
  const layings = layingsOf(build.coats, job.both?.turned);
  const steps: Raw[] = [];
  const coats: CoatTimes[] = [];
  const nights: Night[] = [];
  const tops = new Map<Face | undefined, Top>();
  let openMinutes: number | undefined;
  let before: { readonly coat: CoatTimes; readonly session: Session } | undefined;
  for (const [index, laying] of layings.entries()) {
    const { number, face } = laying;
    const below = tops.get(face)?.coat;
    const minutes = workOn(plan, job, areas[face ?? 'front']);
    const work: Work = {
      turn: before && before.coat.face !== face ? turning : 0,
      look: below ? plan.work['look-minutes'] : 0,
      rub: rowOf(planning, number)?.grit && !(below && unsanded) ? minutes.sand : 0,
      wipe: plan.work['wipe-minutes'],
    };
    const wait = before && waitAfter(planning, before.coat, before.session, below);
    const next = layings[index + 1];
    const wanted: Wanted = {
      ...laying,
      laid: coats.filter((coat) => coat.face === face),
      minutes: minutesBefore(work) + minutes.lay,
      turnedNext: next !== undefined && next.face !== face,
    };
    const found = sessionFor(planning, wanted, wait?.surely ?? ready, units);
    if (!found.ok) return found;
    const { at, dried, turnable } = found.value;
    const coat = coatOf(laying, { from: at.from + minutesBefore(work) * MINUTE_MS, to: at.to }, dried);
    if (unsanded && below && lateAt(coat.from, below.deadline, below.recoat) === 'surely')
      return { ok: false, no: tooLate(planning, number) };
    steps.push(
      ...(wait && (!wait.untilTurned || wait.from < wait.surely) ? [wait] : []),
      ...stepsOf(planning, work, coat, below, found.value),
    );
    coats.push(coat);
    nights.push(
      ...nightsOn(planning, { from: at.to, to: Math.max(coat.recoat.to, turnable?.to ?? 0) }, laying),
    );
    openMinutes ??= (dried.open.from - at.to) / MINUTE_MS;
    tops.set(face, { coat, dried });
    before = { coat, session: found.value };
  }
  const last = before && tops.get(before.coat.face);
  if (!before || !last || openMinutes === undefined) throw new Error('a build without coats');
  steps.push(waitAfter(planning, before.coat, before.session, undefined));
  return { ok: true, value: { steps, coats, nights, openMinutes, last, tops: [...tops.values()] } };
};

const coatOf = ({ number, face }: Laying, laid: Stretch, dried: Dried): CoatTimes => {
  const { touch, recoat, 'sand-if-beyond': deadline } = dried;
  // The clock of the first face ran while the others were laid.
  const began = laid.to - laid.from;
  return {
    number,
    ...(face && { face }),
    ...laid,
    touch,
    recoat,
    deadline: deadline && { from: deadline.from - began, to: deadline.to - began },
  };
};
