/** What a part of the bench hands on: a line for each contestant, with its goal. */
import type { Timed } from './measure.ts';

export type Unit = 'ns' | 'bytes' | 'times' | 'questions' | 'requests' | 'pages';
/** What is to be reached, of the figure itself or of its ratio to the first of its group. */
export type Goal = { readonly of: 'value' | 'ratio' } & (
  | { readonly most: number }
  | { readonly least: number }
);
export type Row = {
  /** What is measured; lines of one group stand below each other, and the first of them is what the others are beside. */
  readonly what: string;
  /** Who is measured. */
  readonly name: string;
  readonly value: number;
  readonly unit: Unit;
  /** Of the first of the group: median, least, most of the rounds. */
  readonly ratio?: readonly [number, number, number];
  readonly goal?: Goal;
};

/** Contestants of one race as lines; the goals go by their names. */
export const rowsOf = (
  what: string,
  timed: readonly Timed[],
  goals: Readonly<Record<string, Goal>> = {},
): readonly Row[] =>
  timed.map(({ name, ns, ratio }, at) => {
    const goal = goals[name];
    return {
      what: at ? '' : what,
      name,
      value: ns,
      unit: 'ns',
      ...(at && { ratio }),
      ...(goal && { goal }),
    };
  });

/** Whether a line reaches its goal; nothing where it has none. */
export const isMet = ({ value, ratio, goal }: Row): boolean | undefined => {
  if (!goal) return undefined;
  const reached = goal.of === 'value' ? value : (ratio?.[0] ?? Number.NaN);
  return 'most' in goal ? reached <= goal.most : reached >= goal.least;
};
