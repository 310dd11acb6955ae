import type { Stretch } from '../plain/time.ts';
import { atEarliest, type TimeStyle, untilOf } from './say-time.ts';

export type NowWords = {
  /** What hands do now, as the verdict of a walk has it. */
  readonly doing: 'leave' | 'wait' | 'wipe-back' | 'repair' | 'accept' | 'stop';
  readonly verdict: string;
  /** The verdict with the late end alone, for large letters, and the early end to stand small behind it. */
  readonly large: string;
  readonly earliest: string | undefined;
  /** Why, where the verdict does not tell it. */
  readonly why: string;
};

export type Said = Pick<NowWords, 'doing' | 'verdict' | 'why'>;

/** A verdict that holds until a moment. */
export const until = (
  doing: NowWords['doing'],
  words: string,
  { from, to }: Stretch,
  why: string,
  now: number,
  style: TimeStyle,
): NowWords => {
  const { late, early } = untilOf(from, to, now, style);
  const large = `${words} until ${late}`;
  const earliest = early && atEarliest(early);
  return { doing, verdict: earliest ? `${large}, ${earliest}` : large, large, earliest, why };
};

export const plain = (said: Said): NowWords => ({ ...said, large: said.verdict, earliest: undefined });
