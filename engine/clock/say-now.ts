import type { Problem } from '../calc/quantity.ts';
import { sayDegrees, sayProblem } from '../calc/say-problem.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { filled, inARow } from '../plain/filled.ts';
import { type Late, lateAt } from './late.ts';
import { firstWindow, nextCoatAt, readyForGood } from './next-coat.ts';
import { type NowWords, plain, type Said, until } from './now-words.ts';
import type { Reading, Running } from './reading.ts';
import { sayInstant, sayUntil, type TimeStyle, untilOf } from './say-time.ts';
import { sayWax } from './say-wax.ts';
import { sayThick } from './thick.ts';
import { type Unsanded, unsandedFor } from './unsanded.ts';

/** The sentences of the clock, and how times are printed now. */
type Saying = { readonly words: ClockWords; readonly now: number; readonly style: TimeStyle };

/** A coat that is ready for the next one, and what holds of that. */
type Ready = {
  readonly deadline: Running['moments']['sand-if-beyond'];
  readonly late: Late | undefined;
  readonly cure: string;
};

const isReady = (verdict: string, ...why: readonly (string | undefined)[]): Said => ({
  doing: 'repair',
  verdict,
  why: inARow(...why),
});

/** What is left of dry film has the word on sanding: a thin one is coated, not sanded. */
const sayThin = ({ deadline, late, cure }: Ready, { words, now, style }: Saying): Said => {
  const { ready, thin } = words;
  if (late) return isReady(ready['coat-late'], words.late[late], thin.late, cure);
  if (!deadline) return isReady(ready.coat, thin.ready, cure);
  const by = sayInstant(deadline.from, now, style);
  return isReady(filled(ready['coat-until'], { until: by }), thin.ready, ready['coat-later']);
};

/** What is never sanded as it is, is coated while that needs no sanding, and else left alone. */
const sayUnsanded = (
  unsanded: Unsanded,
  { deadline, late, cure }: Ready,
  { words, now, style }: Saying,
): Said => {
  if (late)
    return { doing: 'wait', verdict: unsanded.stop, why: inARow(words.late[late], unsanded.late, cure) };
  const verdict = deadline
    ? filled(words.ready['unsanded-until'], { until: sayInstant(deadline.from, now, style) })
    : words.ready.unsanded;
  return isReady(verdict, unsanded.ready, cure);
};

const sayFullCure = ({ cure }: Running['moments'], { words, now, style }: Saying): string =>
  filled(words.cure.full, { cure: sayUntil(cure.from, cure.to, now, style) });

/** Of the last coat nothing is left but to wait. */
const sayCuring = ({ 'light-use': use, cure }: Running['moments'], { words, now, style }: Saying): Said => {
  const cured = sayUntil(cure.from, cure.to, now, style);
  return {
    doing: 'accept',
    verdict: words.cure.leave,
    why:
      now < use.to
        ? filled(words.cure.last, { use: sayUntil(use.from, use.to, now, style), cure: cured })
        : filled(words.cure['last-used'], { cure: cured }),
  };
};

/** Nor of one that made the film thicker than it should be. */
const sayThickEnough = (moments: Running['moments'], most: number, saying: Saying): Said => {
  const { words, style } = saying;
  return {
    doing: 'accept',
    verdict: words.thick.enough,
    why: inARow(sayThick(words, most, style.units), words.cure['leave-thick'], sayFullCure(moments, saying)),
  };
};

/** What is done to a film that may be sanded before the next coat, by its thickness and the time. */
const saySanded = (thin: boolean, ready: Ready, saying: Saying): Said => {
  if (thin) return sayThin(ready, saying);
  const { deadline, late, cure } = ready;
  const { words, now, style } = saying;
  if (late) return isReady(words.ready['sand-late'], words.late[late], cure);
  if (!deadline) return isReady(words.ready.sand, cure);
  const by = sayInstant(deadline.from, now, style);
  return isReady(filled(words.ready['sand-until'], { until: by }), words.ready['sand-later']);
};

const sayReady = (running: Running, saying: Saying): NowWords => {
  const { moments, sanded, thin, twoPart } = running;
  const { words, now } = saying;
  const cure = sayFullCure(moments, saying);
  if (!sanded) return plain(isReady(words.ready.buff, words.ready['buff-how'], cure));
  const deadline = moments['sand-if-beyond'];
  const ready = { deadline, late: lateAt(now, deadline, moments.recoat), cure };
  const unsanded = unsandedFor(words, running);
  if (unsanded) return plain(sayUnsanded(unsanded, ready, saying));
  const said = saySanded(thin, ready, saying);
  return plain(twoPart ? { ...said, why: inARow(said.why, words['two-part'].perhaps) } : said);
};

/** Where the air is to blame that no time can be told, something leads on. */
const COMES_BACK: readonly Problem['code'][] = [
  'outside-product-limits',
  'surface-below-dew-point',
  'below-film-formation',
];

/** Why no time can be told, and what leads on. */
const sayRefused = (
  { problem, night }: Extract<Reading, { kind: 'refused' }>,
  { words, style }: Saying,
): string => {
  const { move, flame, anew, warmer, cold } = words['no-time'];
  const why = sayProblem(problem, style.units);
  if (night !== undefined) return inARow(sayRests(words, night, style), why, warmer, cold);
  return COMES_BACK.includes(problem.code) ? inARow(why, move, flame, anew) : why;
};

/** What is minded of a film that is dry to the touch and soft inside. */
const softInside = (running: Running, { words }: Saying): string => {
  if (!running.sanded) return words.soft.buffed;
  return (
    unsandedFor(words, running)?.soft ??
    inARow(words.soft.sanded, running.twoPart && words['two-part'].perhaps)
  );
};

/** What a night does that is too cold to count on any drying. */
const sayRests = (words: ClockWords, celsius: number, { units }: TimeStyle): string =>
  filled(words['no-time'].rests, { degrees: sayDegrees(celsius, units) });

/** What the nights do to a wait that is told; nothing where they only slow it. */
const ofNight = ({ night }: Running, { words, style }: Saying): string | undefined =>
  night?.rests ? sayRests(words, night.celsius, style) : undefined;

/**
 * The verdict of the clock in words: first what hands do, then until when. Of a range the late end stands first. An open
 * flaw comes before the next coat; what hands must not do to a film that sets comes before the flaw.
 */
export const sayNow = (words: ClockWords, reading: Reading, now: number, style: TimeStyle): NowWords => {
  const said = byTime(reading, { words, now, style });
  const flaw = reading.kind === 'running' && reading.flaw;
  if (!flaw || ['leave', 'stop', 'wipe-back'].includes(said.doing)) return said;
  const byClock = filled(words.flaw['by-clock'], { verdict: said.verdict });
  return plain({ doing: 'wait', verdict: words.flaw[flaw], why: inARow(words.flaw[`${flaw}-why`], byClock) });
};

const byTime = (reading: Reading, saying: Saying): NowWords => {
  const { words, now, style } = saying;
  if (reading.kind === 'future')
    return plain({
      doing: 'stop',
      verdict: words.future.verdict,
      why: filled(words.future.why, {
        laid: sayInstant(reading.laidAt, now, style),
        now: sayInstant(now, now, style),
      }),
    });
  if (reading.kind === 'refused')
    return plain({ doing: 'leave', verdict: words['no-time'].verdict, why: sayRefused(reading, saying) });
  const { moments, handsOff, stage, wipeOff, buff, last, pastMost } = reading;
  if (buff && now < moments.recoat.to) return sayWax(words, reading, buff, now, style);
  if (wipeOff) return plain(sayWipeOff(moments, wipeOff, saying));
  const isOpen = !last && pastMost === undefined;
  if (handsOff) {
    const off = words['hands-off'];
    const soon = isOpen ? saySoon(moments, saying) : undefined;
    return until(
      'leave',
      off.verdict,
      handsOff,
      inARow(off.next, soon, ofNight(reading, saying)),
      now,
      style,
    );
  }
  const closed = isOpen && moments['no-coat'] && sayClosed(reading, saying);
  if (closed) return closed;
  if (now < moments.recoat.to) {
    const why =
      pastMost === undefined
        ? inARow(softInside(reading, saying), ofNight(reading, saying))
        : inARow(words.soft.inside, `${words.thick.enough}.`, sayThick(words, pastMost, style.units));
    return until('wait', words.soft.verdict, moments.recoat, why, now, style);
  }
  if (stage === 'cured')
    return plain({ doing: 'accept', verdict: words.cure.cured, why: words.cure['cured-why'] });
  if (last) return plain(sayCuring(moments, saying));
  if (pastMost !== undefined) return plain(sayThickEnough(moments, pastMost, saying));
  return sayReady(reading, saying);
};

/** Of a coat that takes no other for some hours, before them: that its first time for one is short. */
const saySoon = (moments: Running['moments'], { words, now, style }: Saying): string | undefined => {
  const window = firstWindow(moments);
  return (
    window &&
    filled(words.closed.soon, {
      until: sayInstant(window.to, now, style),
      again: sayInstant(readyForGood(moments).to, now, style),
    })
  );
};

/** What holds of the next coat over one that takes none for some hours; nothing once they are over. */
const sayClosed = (running: Running, saying: Saying): NowWords | undefined => {
  const { moments } = running;
  const { words, now, style } = saying;
  const next = nextCoatAt(moments, now);
  if (next.may) {
    if (next.until === undefined) return undefined;
    const again = sayInstant(readyForGood(moments).to, now, style);
    const verdict = filled(words.ready['coat-until'], { until: sayInstant(next.until, now, style) });
    return plain(isReady(verdict, words.closed.before, filled(words.closed.over, { again })));
  }
  const night = ofNight(running, saying);
  return next.closed
    ? until('wait', words.closed.verdict, next.from, inARow(words.closed.why, night), now, style)
    : until(
        'wait',
        words.soft.verdict,
        next.from,
        inARow(words.soft.inside, saySoon(moments, saying), night),
        now,
        style,
      );
};

/** Of a finish that is wiped off, until its time is over. */
const sayWipeOff = (
  { touch }: Running['moments'],
  { from, to }: NonNullable<Running['wipeOff']>,
  { words, now, style }: Saying,
): Said => {
  const { by, how, cloths, next } = words['wipe-off'];
  const { late } = untilOf(touch.from, touch.to, now, style);
  return {
    doing: 'wipe-back',
    verdict: filled(by, { by: sayInstant(to, now, style) }),
    why: inARow(filled(how, { from: sayInstant(from, now, style) }), cloths, filled(next, { late })),
  };
};
