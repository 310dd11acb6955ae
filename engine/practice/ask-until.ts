import type { Moment } from '../clock/reading.ts';
import { sayInstant, sayUntil } from '../clock/say-time.ts';
import type { PracticeWords } from '../model/practice.ts';
import type { Doing } from '../model/remedy.ts';
import { MINUTE_MS } from '../plain/time.ts';
import type { Chance } from './chance.ts';
import type { PracticeAsk, PracticeChoice, PracticeCoat } from './item.ts';
import { PRACTICE_TIME } from './story.ts';

/** When the film may be touched or worked on: the clock's own range against what is tempting to believe. */
export const askUntil = (
  { waits }: PracticeWords,
  { laid, now, reading, touchMinutes, recoatMinutes }: PracticeCoat,
  right: Doing,
  chance: Chance,
): PracticeAsk | undefined => {
  const { moments } = reading;
  const touching = right === 'leave';
  const moment: Moment = touching ? moments.touch : moments.recoat;
  if (moment.to <= now) return undefined;
  const printed = laid.laidAt + (touching ? touchMinutes : recoatMinutes) * MINUTE_MS;
  const say = (at: number) => sayInstant(at, now, PRACTICE_TIME);
  const wrong: PracticeChoice[] = [
    {
      id: 'now',
      says: 'No need to wait',
      right: false,
      because: waits[touching ? 'touched-now' : 'worked-now'].says,
    },
  ];
  // The time of the can holds in the room of the can.
  if (printed > now && printed < moment.from - 2 * MINUTE_MS)
    wrong.push({
      id: 'can',
      says: `Until ${say(printed)}`,
      right: false,
      because: waits.can.says,
    });
  const half = now + (moment.from - now) / 2;
  if (half - now > 5 * MINUTE_MS && moment.from - half > 5 * MINUTE_MS)
    wrong.push({
      id: 'half',
      says: `Until ${say(Math.round(half / (5 * MINUTE_MS)) * 5 * MINUTE_MS)}`,
      right: false,
      because: waits.half.says,
    });
  const late = moments.cure.to;
  if (late > moment.to)
    wrong.push({
      id: 'cure',
      says: `Until ${sayUntil(moments.cure.from, late, now, PRACTICE_TIME)}`,
      right: false,
      because: waits.cure.says,
    });
  const offered = wrong.filter((one, index) => wrong.findIndex(({ says }) => says === one.says) === index);
  if (offered.length < 2) return undefined;
  return {
    kind: 'until',
    ask: touching ? 'Until when are hands off?' : 'Until when does it dry on before you work on it?',
    choices: chance.mixed([
      {
        id: 'range',
        says: `Until ${sayUntil(moment.from, moment.to, now, PRACTICE_TIME)}`,
        right: true,
        because: waits.range.says,
      },
      ...offered,
    ]),
  };
};
