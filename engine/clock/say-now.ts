import { sayProblem } from '../calc/say-problem.ts';
import type { Reading } from './reading.ts';
import { sayInstant, sayUntil, type TimeStyle } from './say-time.ts';

export type NowWords = {
  /** What hands do now, as the verdict of a walk has it. */
  readonly doing: 'leave' | 'wait' | 'repair' | 'accept' | 'stop';
  readonly verdict: string;
  /** Why, where the verdict does not tell it. */
  readonly why: string;
};

/** The verdict of the clock in words: first what hands do, then until when. */
export const sayNow = (reading: Reading, now: number, style: TimeStyle): NowWords => {
  if (reading.kind === 'future')
    return {
      doing: 'stop',
      verdict: 'This coat is laid in the future',
      why: `It says ${sayInstant(reading.laidAt, now, style)}, and this device says ${sayInstant(now, now, style)}. One of the two is wrong, so no time is told. Correct the coat or the clock of the device.`,
    };
  if (reading.kind === 'refused')
    return {
      doing: 'leave',
      verdict: 'Hands off, and no time can be told',
      why: sayProblem(reading.problem),
    };
  const { moments, handsOff, stage } = reading;
  const until = ({ from, to }: { from: number; to: number }) => sayUntil(from, to, now, style);
  if (handsOff)
    return {
      doing: 'leave',
      verdict: `Hands off until ${until(handsOff)}`,
      why: 'Then look again in low light.',
    };
  if (now < moments.recoat.to)
    return {
      doing: 'wait',
      verdict: `Let it dry on until ${until(moments.recoat)}`,
      why: 'It is dry to the touch, but soft inside. Fine paper must make dry powder before you sand or coat.',
    };
  if (stage === 'cured') return { doing: 'accept', verdict: 'Cured', why: 'Ready for use.' };
  const deadline = moments['sand-if-beyond'];
  if (deadline && now < deadline.from)
    return {
      doing: 'repair',
      verdict: `Ready to sand and recoat until ${sayInstant(deadline.from, now, style)}`,
      why: 'Later than that, always sand before the next coat.',
    };
  return {
    doing: 'repair',
    verdict: deadline ? 'Sand before the next coat' : 'Ready to sand and recoat',
    why: `Full cure: ${until(moments.cure)}.`,
  };
};
