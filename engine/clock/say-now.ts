import type { Problem } from '../calc/quantity.ts';
import { sayDegrees, sayProblem } from '../calc/say-problem.ts';
import { PERHAPS_TWO_PART } from './hardener.ts';
import { LATE_WORDS, type Late, lateAt } from './late.ts';
import { type NowWords, plain, type Said, until } from './now-words.ts';
import type { Reading, Running } from './reading.ts';
import { sayInstant, sayUntil, type TimeStyle, untilOf } from './say-time.ts';
import { sayWax } from './say-wax.ts';
import { sayThick, THICK_ENOUGH } from './thick.ts';
import { THIN_WORDS } from './thin.ts';
import { type Unsanded, unsandedFor } from './unsanded.ts';

/** What is left of dry film has the word on sanding: a thin one is coated, not sanded. */
const sayThin = (
  deadline: Running['moments']['sand-if-beyond'],
  late: Late | undefined,
  cure: string,
  now: number,
  style: TimeStyle,
): Said => {
  if (late)
    return {
      doing: 'repair',
      verdict: 'Dull it before the next coat',
      why: `${LATE_WORDS[late]} ${THIN_WORDS.late} ${cure}`,
    };
  return {
    doing: 'repair',
    verdict: deadline
      ? `Ready for the next coat until ${sayInstant(deadline.from, now, style)}`
      : 'Ready for the next coat',
    why: `${THIN_WORDS.ready} ${deadline ? 'Later than that, dull it first.' : cure}`,
  };
};

/** What is never sanded as it is, is coated while that needs no sanding, and else left alone. */
const sayUnsanded = (
  words: Unsanded,
  deadline: Running['moments']['sand-if-beyond'],
  late: Late | undefined,
  cure: string,
  now: number,
  style: TimeStyle,
): Said =>
  late
    ? {
        doing: 'wait',
        verdict: words.stop,
        why: `${LATE_WORDS[late]} ${words.late} ${cure}`,
      }
    : {
        doing: 'repair',
        verdict: deadline
          ? `Ready for the next coat until ${sayInstant(deadline.from, now, style)}, unsanded`
          : 'Ready for the next coat, unsanded',
        why: `${words.ready} ${cure}`,
      };

/** Of the last coat nothing is left but to wait. */
const sayCuring = ({ 'light-use': use, cure }: Running['moments'], now: number, style: TimeStyle): Said => ({
  doing: 'accept',
  verdict: 'Leave it to cure',
  why:
    now < use.to
      ? `It was the last coat. Light use: ${sayUntil(use.from, use.to, now, style)}. Full cure: ${sayUntil(cure.from, cure.to, now, style)}.`
      : `It was the last coat, and bears light use. Full cure: ${sayUntil(cure.from, cure.to, now, style)}.`,
});

/** Nor of one that made the film thicker than it should be. */
const sayThickEnough = ({ cure }: Running['moments'], most: number, now: number, style: TimeStyle): Said => ({
  doing: 'accept',
  verdict: THICK_ENOUGH,
  why: `${sayThick(most, style.units)} Leave it to cure. Full cure: ${sayUntil(cure.from, cure.to, now, style)}.`,
});

const BEFORE_WORK = {
  sanded: 'It is dry to the touch, but soft inside. Fine paper must make dry powder before you sand or coat.',
  buffed:
    'It is dry to the touch, but soft inside. A clean cloth must slide over it before you buff or coat.',
} as const;

/** What is done to a film that may be sanded before the next coat, by its thickness and the time. */
const saySanded = (
  { moments, thin }: Running,
  late: Late | undefined,
  cure: string,
  now: number,
  style: TimeStyle,
): Said => {
  const deadline = moments['sand-if-beyond'];
  if (thin) return sayThin(deadline, late, cure, now, style);
  if (late)
    return { doing: 'repair', verdict: 'Sand before the next coat', why: `${LATE_WORDS[late]} ${cure}` };
  if (deadline)
    return {
      doing: 'repair',
      verdict: `Ready to sand and recoat until ${sayInstant(deadline.from, now, style)}`,
      why: 'Later than that, always sand before the next coat.',
    };
  return { doing: 'repair', verdict: 'Ready to sand and recoat', why: cure };
};

const sayReady = (running: Running, now: number, style: TimeStyle): NowWords => {
  const { moments, sanded, twoPart } = running;
  const cure = `Full cure: ${sayUntil(moments.cure.from, moments.cure.to, now, style)}.`;
  if (!sanded)
    return plain({
      doing: 'repair',
      verdict: 'Ready to buff and recoat',
      why: `Buff it with a clean cloth; this finish is not sanded. ${cure}`,
    });
  const late = lateAt(now, moments['sand-if-beyond'], moments.recoat);
  const unsanded = unsandedFor(running);
  if (unsanded) return plain(sayUnsanded(unsanded, moments['sand-if-beyond'], late, cure, now, style));
  const said = saySanded(running, late, cure, now, style);
  return plain(twoPart ? { ...said, why: `${said.why} ${PERHAPS_TWO_PART}` } : said);
};

const INTO_RIGHT_AIR =
  'Bring the piece, held where it is bare, slowly into air that is right for it. No heat on the film; if it smells of solvent, no flame, pilot light or spark in there, and a door open. Count its time anew from when it is there. A film that dried outside of it may stay weak or cloudy: try a hidden spot before the next coat.';
/** What leads on where the air is to blame that no time can be told. */
const COMES_BACK: Partial<Record<Problem['code'], string>> = {
  'outside-product-limits': INTO_RIGHT_AIR,
  'surface-below-dew-point': INTO_RIGHT_AIR,
  'below-film-formation': INTO_RIGHT_AIR,
};

/** What is minded of a film that is dry to the touch and soft inside. */
const softInside = (running: Running): string => {
  if (!running.sanded) return BEFORE_WORK.buffed;
  const { soft } = unsandedFor(running) ?? { soft: undefined };
  return soft ?? `${BEFORE_WORK.sanded}${running.twoPart ? ` ${PERHAPS_TWO_PART}` : ''}`;
};

/** What a night does that is too cold to count on any drying. */
const sayRests = (celsius: number, { units }: TimeStyle): string =>
  `Your coldest night is ${sayDegrees(celsius, units)}: it rests until morning.`;
const KEEP_WARMER =
  'Before evening bring the piece, held where it is bare, slowly to where the nights stay warmer, with house heating, never a flame, and correct the night: its time is told then. A film that was cold while it set may stay weak or cloudy: try a hidden spot before the next coat.';

/** What the nights do to a wait that is told; nothing where they only slow it. */
const ofNight = ({ night }: Running, style: TimeStyle): string =>
  night?.rests ? ` ${sayRests(night.celsius, style)}` : '';

/** An open flaw comes before the next coat; what hands must not do to a film that sets comes before the flaw. */
const FLAW_FIRST = {
  open: {
    verdict: 'First the flaw that is open',
    why: 'It is noted on the job card of this piece. No coat over it before its own page says so.',
  },
  repaired: {
    verdict: 'Look: is the flaw gone?',
    why: 'Its repair is noted on the job card of this piece.',
  },
} as const;

/** The verdict of the clock in words: first what hands do, then until when. Of a range the late end stands first. */
export const sayNow = (reading: Reading, now: number, style: TimeStyle): NowWords => {
  const said = byTime(reading, now, style);
  const flaw = reading.kind === 'running' && reading.flaw;
  if (!flaw || ['leave', 'stop', 'wipe-back'].includes(said.doing)) return said;
  const { verdict, why } = FLAW_FIRST[flaw];
  return plain({ doing: 'wait', verdict, why: `${why} By the clock: ${said.verdict}.` });
};

const byTime = (reading: Reading, now: number, style: TimeStyle): NowWords => {
  if (reading.kind === 'future')
    return plain({
      doing: 'stop',
      verdict: 'This coat is laid in the future',
      why: `It says ${sayInstant(reading.laidAt, now, style)}, and this device says ${sayInstant(now, now, style)}. One of the two is wrong, so no time is told. Correct the coat or the clock of the device.`,
    });
  if (reading.kind === 'refused')
    return plain({
      doing: 'leave',
      verdict: 'Hands off, and no time can be told',
      why: (reading.night === undefined
        ? [sayProblem(reading.problem, style.units), COMES_BACK[reading.problem.code]]
        : [sayRests(reading.night, style), sayProblem(reading.problem, style.units), KEEP_WARMER]
      )
        .filter(Boolean)
        .join(' '),
    });
  const { moments, handsOff, stage, wipeOff, buff, last, pastMost } = reading;
  if (buff && now < moments.recoat.to) return sayWax(reading, buff, now, style);
  if (wipeOff)
    return plain({
      doing: 'wipe-back',
      verdict: `Wipe the surplus off by ${sayInstant(wipeOff.to, now, style)}`,
      why: `From ${sayInstant(wipeOff.from, now, style)} on, or when the can says: wipe until a fresh cloth comes away dry. What the wood has not taken in by then turns sticky. Lay each cloth flat and single outdoors, or in a metal tin under water, lid on: oily cloths catch fire by themselves. Once it is off: hands off until ${untilOf(moments.touch.from, moments.touch.to, now, style).late}.`,
    });
  if (handsOff)
    return until(
      'leave',
      'Hands off',
      handsOff,
      `Then look again in low light.${ofNight(reading, style)}`,
      now,
      style,
    );
  if (now < moments.recoat.to)
    return until(
      'wait',
      'Leave it to dry',
      moments.recoat,
      pastMost === undefined
        ? `${softInside(reading)}${ofNight(reading, style)}`
        : `It is dry to the touch, but soft inside. ${THICK_ENOUGH}. ${sayThick(pastMost, style.units)}`,
      now,
      style,
    );
  if (stage === 'cured') return plain({ doing: 'accept', verdict: 'Cured', why: 'Ready for use.' });
  if (last) return plain(sayCuring(moments, now, style));
  if (pastMost !== undefined) return plain(sayThickEnough(moments, pastMost, now, style));
  return sayReady(reading, now, style);
};
