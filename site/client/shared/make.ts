import { sayInstant } from '#engine/clock.ts';
import type { RuleEntry } from '#engine/index.ts';
import type { Job, Outcome } from '#engine/schedule.ts';
import type { PlanData } from '../../shared/plan-data.ts';
import { titleLine } from '../../shared/told-rule.ts';
import { timeStyle } from './time-style.ts';

/** All that one view of a plan is made of. */
export type Shown = {
  readonly job: Job;
  readonly outcome: Outcome;
  readonly data: PlanData;
  readonly us: boolean;
  readonly linked: boolean;
  readonly link: string;
  readonly now: number;
  /** Plans anew from a later start. */
  readonly planFrom: (at: number) => void;
};
export type Inside = string | Node;

/** An element by its name and classes, with what stands in it. */
export const make = (tag: string, ...inside: readonly Inside[]): HTMLElement => {
  const [name = 'p', ...classes] = tag.split('.');
  const element = document.createElement(name);
  if (classes.length) element.className = classes.join(' ');
  element.append(...inside);
  return element;
};

/** A rule in a plan: a stop is told from a caution by its word and its color. */
export const ruleLine = (
  { kind, title, say }: Pick<RuleEntry, 'kind' | 'title' | 'say'>,
  lead = '',
): HTMLElement =>
  make(
    kind === 'stop' ? 'p.caution.stop' : 'p.caution',
    make('b', `${kind === 'stop' ? 'Stop: ' : lead}${titleLine(title)} `),
    say,
  );

export const day = (at: number): string =>
  new Intl.DateTimeFormat('en-US', { weekday: 'short', month: 'short', day: 'numeric' }).format(at);

export const clockTime = (at: number): string => sayInstant(at, at, timeStyle());
/** From–to as it may stand on paper: the weekday wherever it is not that of `on`, never 'tomorrow'. */
export const spanOn = (on: number, from: number, to: number): string => {
  const at = (instant: number, beside: number) =>
    day(instant) === day(beside) ? clockTime(instant) : `${day(instant)}, ${clockTime(instant)}`;
  return from === to ? at(from, on) : `${at(from, on)} – ${at(to, from)}`;
};
