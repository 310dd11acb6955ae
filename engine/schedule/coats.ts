import type { Units } from '../calc/units.ts';
import { lateAt } from '../clock/late.ts';
import { firstWindow, LEAST_TO_LAY, readyForGood } from '../clock/next-coat.ts';
import type { No } from '../fitness/no.ts';
import { filled, inARow } from '../plain/filled.ts';
import { sayShort } from '../plain/say-span.ts';
import { spanOf } from '../plain/span.ts';
import { HOUR_MIN, MINUTE_MS, type Stretch } from '../plain/time.ts';
import { type Session, sessionFor, type Wanted } from './coat-session.ts';
import { minutesBefore, rowOf, stepsOf, twoPartOf, type Work } from './coat-steps.ts';
import { type Dried, type Night, nightsOn } from './dry.ts';
import { type Face, type Laying, layingsOf } from './layings.ts';
import type { CoatTimes } from './outcome.ts';
import type { FaceAreas } from './piece.ts';
import type { Planning } from './planning.ts';
import { type Fits, roundedUp, workOn } from './session.ts';
import type { Raw } from './steps.ts';

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

/** The coat laid last, on whichever face. */
type Before = { readonly coat: CoatTimes; readonly session: Session };

/** From when on hands are off it: nothing is laid, and nothing turned, before a wax is buffed. */
const doneWith = ({ at, buffed }: Session): number => buffed?.to ?? at.to;

/** When the next coat goes on, on this face over `below`, or, once it can be turned, on the other. */
const readyAfter = ({ coat, session }: Before, below: CoatTimes | undefined): Stretch => {
  const bears = below && readyForGood({ recoat: below.recoat, 'no-coat': below.closed });
  const until = session.turnable ?? bears ?? coat.recoat;
  const done = doneWith(session);
  return {
    from: Math.max(done, until.from, bears?.from ?? 0),
    to: Math.max(done, until.to, bears?.to ?? 0),
  };
};

/** The hands off after a coat, until it is ready for what comes next. */
const waitAfter = (
  { plan }: Planning,
  { coat: { number, face }, session }: Before,
  ready: Stretch,
  say?: string,
): Raw & { readonly surely: number } => {
  const turned = session.turnable && plan.turn.says.wait.say;
  return {
    kind: 'wait',
    coat: number,
    ...(face && { face }),
    from: doneWith(session),
    to: ready.from,
    surely: ready.to,
    ...(turned && { untilTurned: true }),
    ...((turned || say) && { say: inARow(turned, say) }),
  };
};

/**
 * When a coat is begun before the hours in which none goes on, by the clock of the first place that was laid: the others
 * follow in the same order. Nothing where it is not ready before them.
 */
const beforeClosed = ({ from, to, touch, recoat, closed }: CoatTimes): Stretch | undefined => {
  const whole = firstWindow({ touch, recoat, 'no-coat': closed });
  // Where all of it is surely ready in time, none of it is laid over sooner.
  if (whole?.from === recoat.to) return whole;
  const began = to - from;
  return firstWindow({
    touch: { from: touch.from - began, to: touch.to - began },
    recoat: { from: recoat.from - began, to: recoat.to - began },
    'no-coat': closed,
  });
};

/** A way to lay a coat: its work, from when on it may be done, and by when the coat is begun. */
type Way = {
  readonly work: Work;
  readonly ready: Stretch;
  readonly begunBy?: number;
  /** What is said of it before it, and of the wait for it. */
  readonly says?: { readonly coat?: string; readonly wait?: string };
};

/**
 * The ways to lay the next coat, the first that fits counts: where some hours take none, unsanded before them, since the
 * film is soft then, else once they are over.
 */
const waysToLay = (
  planning: Planning,
  before: Before | undefined,
  below: CoatTimes | undefined,
  work: Work,
  ready: number,
): readonly [Way, ...Way[]] => {
  if (!before) return [{ work, ready: { from: ready, to: ready } }];
  const plain: Way = { work, ready: readyAfter(before, below) };
  const words = below?.closed && closedWords(planning, below.number + 1);
  if (!words || !below) return [plain];
  const after: Way = { ...plain, says: { wait: words.after } };
  const window = beforeClosed(below);
  if (!window) return [after];
  const from = Math.max(doneWith(before.session), before.session.turnable?.to ?? 0, window.from);
  const within: Way = {
    work: { ...work, rub: 0, wipe: 0 },
    ready: { from, to: from },
    begunBy: window.to - LEAST_TO_LAY,
    says: { coat: words.within },
  };
  return [within, after];
};

/** What is said of the hours in which no coat goes on, by the can or by its kind. */
const closedWords = (
  { plan, job, product }: Planning,
  number: number,
): { readonly within: string; readonly after: string } | undefined => {
  const hours = product['no-coat-hours'];
  const closed = job.label?.minutes['no-coat'] ?? (hours && spanOf(hours, HOUR_MIN));
  if (!closed) return undefined;
  const say = (at: number) => sayShort({ from: at, to: at }, at < HOUR_MIN ? 'min' : 'h');
  const parts = { within: say(closed.from), after: say(closed.to) };
  // Told whole once: the coats after it go on in the same way.
  const { within, again } = plan.closed;
  return {
    within: filled((number > 2 ? again : within).say, parts),
    after: filled(plan.closed.after.say, parts),
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
  let before: Before | undefined;
  for (const [index, laying] of layings.entries()) {
    const { number, face } = laying;
    const below = tops.get(face)?.coat;
    const minutes = workOn(plan, job, areas[face ?? 'front']);
    const whole: Work = {
      turn: before && before.coat.face !== face ? turning : 0,
      look: below ? plan.work['look-minutes'] : 0,
      rub: rowOf(planning, number)?.grit && !(below && unsanded) ? minutes.sand : 0,
      wipe: plan.work['wipe-minutes'],
    };
    const next = layings[index + 1];
    const wanted = {
      ...laying,
      laid: coats.filter((coat) => coat.face === face),
      turnedNext: next !== undefined && next.face !== face,
    };
    const chosen = firstOf(
      planning,
      wanted,
      waysToLay(planning, before, below, whole, ready),
      minutes.lay,
      units,
    );
    if (!chosen.ok) return chosen;
    const { way, found } = chosen.value;
    const { work } = way;
    const wait = before && waitAfter(planning, before, way.ready, way.says?.wait);
    const { at, dried, turnable } = found;
    const coat = coatOf(laying, { from: at.from + minutesBefore(work) * MINUTE_MS, to: at.to }, dried);
    if (unsanded && below && lateAt(coat.from, below.deadline, below.recoat) === 'surely')
      return { ok: false, no: tooLate(planning, number) };
    steps.push(
      ...(wait && (!wait.untilTurned || wait.from < wait.surely) ? [wait] : []),
      ...stepsOf(planning, work, coat, below, { ...found, say: way.says?.coat }),
    );
    coats.push(coat);
    nights.push(
      ...nightsOn(planning, { from: at.to, to: Math.max(coat.recoat.to, turnable?.to ?? 0) }, laying),
    );
    openMinutes ??= (dried.open.from - at.to) / MINUTE_MS;
    tops.set(face, { coat, dried });
    before = { coat, session: found };
  }
  const last = before && tops.get(before.coat.face);
  if (!before || !last || openMinutes === undefined) throw new Error('a build without coats');
  steps.push(waitAfter(planning, before, readyAfter(before, undefined)));
  return { ok: true, value: { steps, coats, nights, openMinutes, last, tops: [...tops.values()] } };
};

/** The first way that fits her hours; what forbids the last where none does. */
const firstOf = (
  planning: Planning,
  wanted: Omit<Wanted, 'minutes' | 'begunBy'>,
  ways: readonly [Way, ...Way[]],
  lay: number,
  units: Units,
): Fits<{ readonly way: Way; readonly found: Session }> => {
  let no: No | undefined;
  for (const way of ways) {
    const minutes = minutesBefore(way.work);
    const begunBy = way.begunBy === undefined ? undefined : { at: way.begunBy, before: minutes };
    const found = sessionFor(planning, { ...wanted, minutes: minutes + lay, begunBy }, way.ready.to, units);
    if (found.ok) return { ok: true, value: { way, found: found.value } };
    no = found.no;
  }
  if (!no) throw new Error('a coat without a way to lay it');
  return { ok: false, no };
};

const coatOf = ({ number, face }: Laying, laid: Stretch, dried: Dried): CoatTimes => {
  const { touch, recoat, 'sand-if-beyond': deadline, 'no-coat': closed } = dried;
  // The clock of the first face ran while the others were laid.
  const began = laid.to - laid.from;
  return {
    number,
    ...(face && { face }),
    ...laid,
    touch,
    recoat,
    deadline: deadline && { from: deadline.from - began, to: deadline.to - began },
    ...(closed && { closed: { from: closed.from - began, to: closed.to } }),
  };
};
