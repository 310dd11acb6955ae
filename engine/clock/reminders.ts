import type { LaidCoat } from './coat.ts';
import { PERHAPS_TWO_PART } from './hardener.ts';
import { isLateAtOnce, type Running } from './reading.ts';
import { THIN_WORDS } from './thin.ts';
import { unsandedFor } from './unsanded.ts';

export type Reminder = {
  readonly key: string;
  /** Epoch milliseconds: the late end of the range, when it is sure. A deadline rings at its early end. */
  readonly at: number;
  readonly title: string;
  readonly detail: string;
};

/** What is worth ringing for, soonest first; what has passed is left out. */
export const remindersOf = (running: Running, coat: LaidCoat, now: number): readonly Reminder[] => {
  const { moments, sanded, thin, buff, pastMost, twoPart } = running;
  const { touch, recoat, cure } = moments;
  const unsanded = unsandedFor(running);
  const perhaps = twoPart && sanded && !unsanded ? ` ${PERHAPS_TWO_PART}` : '';
  const reminder = (key: string, at: number, title: string, detail: string): Reminder => ({
    key,
    at,
    title: `${coat.piece}: ${title}`,
    detail,
  });
  const deadline = moments['sand-if-beyond'];
  const coatAgain = reminder(
    'recoat',
    recoat.to,
    thin || unsanded
      ? 'ready for the next coat'
      : sanded
        ? 'ready to sand and recoat'
        : 'ready to buff and recoat',
    unsanded
      ? unsanded[isLateAtOnce(moments) ? 'late' : 'ready']
      : sanded
        ? `A light stroke with fine paper must make dry powder.${thin ? ` ${THIN_WORDS[isLateAtOnce(moments) ? 'late' : 'ready']}` : ''}${perhaps}`
        : 'A clean cloth must slide over it and take nothing off.',
  );
  return [
    // A wax that has set drags: it is looked at from the early end on.
    buff
      ? reminder(
          'touch',
          buff.from,
          'look whether the wax is dull',
          'Once it is dull all over and no longer feels cool, buff it with clean dry cotton. Until then look again every few minutes.',
        )
      : reminder(
          'touch',
          touch.to,
          'dry to the touch, look again',
          'Look in low light. Do not sand or coat yet.',
        ),
    ...(pastMost === undefined ? [coatAgain] : []),
    ...(pastMost === undefined && deadline && !isLateAtOnce(moments)
      ? [
          reminder(
            'sand-if-beyond',
            deadline.from,
            `from now on ${unsanded ? unsanded.due : `${thin ? 'dull it' : 'sand'} before the next coat`}`,
            `The film is getting too hard for the next coat to hold on unsanded.${unsanded ? ` ${unsanded.late}` : perhaps}`,
          ),
        ]
      : []),
    reminder('light-use', moments['light-use'].to, 'light use', 'With care: no water, no heavy things.'),
    reminder('cure', cure.to, 'fully cured', 'Ready for use, washing and the buyer.'),
  ]
    .filter(({ at }) => at > now)
    .sort((one, two) => one.at - two.at);
};
