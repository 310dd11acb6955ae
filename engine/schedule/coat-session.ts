import type { Units } from '../calc/units.ts';
import { spoiledByNight } from '../fitness/night.ts';
import type { No } from '../fitness/no.ts';
import { MINUTE_MS, type Stretch } from '../plain/time.ts';
import { buffOf } from './coat-steps.ts';
import { type Dried, driedAt } from './dry.ts';
import type { Laying } from './layings.ts';
import type { CoatTimes } from './outcome.ts';
import type { Planning } from './planning.ts';
import { type Fits, tooShort } from './session.ts';
import { turnableAt } from './turning.ts';
import { dayOf, firstFit } from './windows.ts';

/** Days tried for one coat before it is said that the weather never lets it dry. */
const TRIES = 8;

/** The session of one coat, all its work in it, with when the coat is dry, and buffed where it is. */
export type Session = {
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
export type Wanted = Laying & {
  /** The coats that this face has already. */
  readonly laid: readonly CoatTimes[];
  readonly minutes: number;
  /** The coat is begun by then, epoch milliseconds, `before` minutes into the session; else it does not fit. */
  readonly begunBy?: { readonly at: number; readonly before: number } | undefined;
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
export const sessionFor = (
  planning: Planning,
  wanted: Wanted,
  ready: number,
  units: Units,
): Fits<Session> => {
  const { job, calendar } = planning;
  const { laid, minutes, begunBy } = wanted;
  const perDay = job.label?.coatsPerDay ?? Number.POSITIVE_INFINITY;
  let no: No = tooShort(planning, minutes);
  let from = ready;
  for (let tries = 0; tries < TRIES; tries++) {
    const at = firstFit(job, calendar, from, minutes);
    if (!at || (begunBy && at.from + begunBy.before * MINUTE_MS > begunBy.at))
      return { ok: false, no: tooShort(planning, minutes) };
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
