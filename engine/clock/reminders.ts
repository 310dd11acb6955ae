import type { ClockWords } from '../model/clock-words.ts';
import { filled, inARow } from '../plain/filled.ts';
import type { LaidCoat } from './coat.ts';
import { firstWindow, readyForGood } from './next-coat.ts';
import { isLateAtOnce, type Running } from './reading.ts';
import { unsandedFor } from './unsanded.ts';

export type Reminder = {
  readonly key: string;
  /** Epoch milliseconds: the late end of the range, when it is sure. A deadline rings at its early end. */
  readonly at: number;
  readonly title: string;
  readonly detail: string;
};

/** The title and the detail of a reminder. */
type Words = readonly [title: string, detail: string];

/** When a coat bears the next one, and how that is tried. */
const coatAgain = (words: ClockWords, { sanded, thin, moments }: Running, more: More): Words => {
  const { rings } = words;
  const when = isLateAtOnce(moments) ? 'late' : 'ready';
  if (more.unsanded) return [rings.coat, more.unsanded[when]];
  if (!sanded) return [rings.buff, rings['buff-how']];
  return [
    thin ? rings.coat : rings.sand,
    inARow(rings['sand-how'], thin ? words.thin[when] : undefined, more.perhaps),
  ];
};

/** From when on a film has to be dulled. */
const tooHard = ({ rings }: ClockWords, thin: boolean, { unsanded, perhaps }: More): Words => [
  filled(rings.late, { what: unsanded?.due ?? rings[thin ? 'late-dull' : 'late-sand'] }),
  inARow(rings['late-why'], unsanded ? unsanded.late : perhaps),
];

/** What is said in the place of words on sanding, or beside them. */
type More = {
  readonly unsanded: ReturnType<typeof unsandedFor>;
  readonly perhaps: string | undefined;
};

/** What is worth ringing for, soonest first; what has passed is left out. */
export const remindersOf = (
  words: ClockWords,
  running: Running,
  coat: LaidCoat,
  now: number,
): readonly Reminder[] => {
  const { moments, sanded, thin, buff, pastMost, twoPart } = running;
  const { rings, wax } = words;
  const unsanded = unsandedFor(words, running);
  const perhaps = twoPart && sanded && !unsanded ? words['two-part'].perhaps : undefined;
  const more = { unsanded, perhaps };
  const reminder = (key: string, at: number, [title, detail]: Words): Reminder => ({
    key,
    at,
    title: `${coat.piece}: ${title}`,
    detail,
  });
  const deadline = moments['sand-if-beyond'];
  const window = firstWindow(moments);
  return [
    // A wax that has set drags: it is looked at from the early end on.
    buff
      ? reminder('touch', buff.from, [wax.ring, wax['ring-how']])
      : reminder('touch', moments.touch.to, [rings.touch, rings['touch-how']]),
    ...(pastMost === undefined
      ? [
          ...(window
            ? [reminder('coat-soon', window.from, [words.closed.ring, words.closed['ring-how']])]
            : []),
          reminder('recoat', readyForGood(moments).to, coatAgain(words, running, more)),
        ]
      : []),
    ...(pastMost === undefined && deadline && !isLateAtOnce(moments)
      ? [reminder('sand-if-beyond', deadline.from, tooHard(words, thin, more))]
      : []),
    reminder('light-use', moments['light-use'].to, [rings.use, rings['use-how']]),
    reminder('cure', moments.cure.to, [rings.cure, rings['cure-how']]),
  ]
    .filter(({ at }) => at > now)
    .sort((one, two) => one.at - two.at);
};
