/** What a repair does that the trade does not, as a proof of its steps finds it and an author is told of it. */
import type { Issue } from '../faults/issue.ts';
import type { Entry } from '../model/knowledge.ts';
import type { Remedy } from '../model/remedy.ts';
import type { Step } from '../model/step.ts';

/** At which step, what, and the way out. */
export type Against = { readonly index: number; readonly what: string; readonly mend: string };
export type Held = (remedy: Pick<Remedy, 'steps'>) => readonly Against[];

export const toldOfStep = (remedy: Entry<'remedy'>, { index, what, mend }: Against): Issue => ({
  file: remedy.file,
  line: remedy.lineOf(['steps', index]),
  code: 'against-the-trade',
  what,
  mend,
});

/** Each step with the earlier ones: what is told of it, or nothing. */
export const each =
  (
    told: (step: Step, before: readonly Step[], after: readonly Step[]) => Omit<Against, 'index'> | undefined,
  ): Held =>
  ({ steps }) =>
    steps.flatMap((step, index) => {
      const found = told(step, steps.slice(0, index), steps.slice(index + 1));
      return found ? [{ index, ...found }] : [];
    });

/** The steps since the last one of a kind; all, where there is none. */
export const since = (steps: readonly Step[], ...kinds: readonly Step['kind'][]): readonly Step[] =>
  steps.slice(steps.findLastIndex(({ kind }) => kinds.includes(kind)) + 1);

export const isVacuum = (step: Step): boolean => step.kind === 'wipe' && step.with === 'vacuum';

/** No case takes both of two steps that are for other kinds of top coat. */
export const bothAreTaken = (one: Step, other: Step): boolean =>
  !one.when || !other.when || JSON.stringify(one.when) === JSON.stringify(other.when);
