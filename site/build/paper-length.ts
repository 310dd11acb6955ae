import type { Entry, ResolvedStep } from '#engine/index.ts';
import { stepRows } from './by-part.ts';

/** Letters of a repair as far as they take room on paper; what each is set in stands in styles/print-repair.css. */
const LENGTHS = [
  ['brief', 1300],
  ['short', 2100],
  ['middle', 3480],
  ['whole', 3900],
  ['full', 4400],
  ['long', 5400],
  ['longer', 6300],
  ['longest', Number.POSITIVE_INFINITY],
] as const;
/** A step is set larger than what is cautioned before it; a stop has a frame, a head and two boxes to tick. */
const STEP = 1.35;
const LABEL = 14;
const HEAD = 20;
const STOP = 300;

const lettersOf = (texts: readonly (string | undefined)[]): number =>
  texts.reduce((sum, text = '') => sum + text.length, 0);

const roomOf = (
  { say, grit, hours, until, workedIf, limits, before }: ResolvedStep,
  small: boolean,
): number =>
  (small
    ? say.length + HEAD
    : (say.length + (grit || hours || until ? LABEL : 0)) * STEP + lettersOf([workedIf])) +
  lettersOf(limits.map((rule) => rule.say)) +
  before.reduce((sum, rule) => sum + rule.say.length + (rule.kind === 'stop' ? STOP : rule.title.length), 0);

/**
 * How long the steps of a repair are on paper, from their letters: a short one is set as large as its sheet has room for,
 * one that just fits is set closer, and one that would have to be set too small for a bench has the room of two sheets.
 */
export const paperLength = (remedy: Entry<'remedy'>, steps: readonly ResolvedStep[]): string => {
  const rooms = stepRows(steps, remedy.steps).flatMap((row) =>
    'step' in row ? [roomOf(row.step, false)] : row.ways.map((way) => roomOf(way, true)),
  );
  const room = rooms.reduce((sum, one) => sum + one, lettersOf([remedy.worked, remedy['if-not'].say]));
  const [name] = LENGTHS.find(([, most]) => room <= most) ?? LENGTHS[0];
  return name;
};
