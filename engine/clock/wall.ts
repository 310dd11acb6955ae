/** What the clock on the wall shows. Month from 1. */
export type WallTime = {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
};

const HOUR = 3_600_000;
/** No place is farther from Greenwich, and no clock is put on or back by more than an hour. */
const FARTHEST = 15;

const wallOf = (at: number, timeZone: string | undefined): WallTime => {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    hourCycle: 'h23',
  }).formatToParts(at);
  const part = (name: string) => Number(parts.find(({ type }) => type === name)?.value);
  return {
    year: part('year'),
    month: part('month'),
    day: part('day'),
    hour: part('hour'),
    minute: part('minute'),
  };
};

const asUtc = ({ year, month, day, hour, minute }: WallTime): number =>
  Date.UTC(year, month - 1, day, hour, minute);

/**
 * Every instant at which the clocks of a place show this, epoch milliseconds, the earlier first: one as a rule, two in
 * the hour that comes twice when clocks are put back, none in the one that is skipped. Without a zone, that of the
 * device. Years from 1000 on.
 */
export const instantsOf = (wall: WallTime, timeZone?: string): readonly number[] => {
  const wanted = asUtc(wall);
  if (!Number.isFinite(wanted)) return [];
  // The offsets of the place around that day; each gives one instant that may show this.
  const offsets = [-FARTHEST, -1, 0, 1, FARTHEST].map((hours) => {
    const at = wanted + hours * HOUR;
    return asUtc(wallOf(at, timeZone)) - at;
  });
  return [...new Set(offsets)]
    .map((offset) => wanted - offset)
    .filter((at) => asUtc(wallOf(at, timeZone)) === wanted)
    .sort((one, two) => one - two);
};
