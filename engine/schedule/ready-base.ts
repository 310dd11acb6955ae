import type { Judgement } from '../fitness/judge.ts';
import { HOUR_MS } from '../plain/time.ts';
import type { Planning } from './planning.ts';
import { type Fits, roundedUp, tooShort } from './session.ts';
import type { Raw } from './steps.ts';
import { firstFit } from './windows.ts';

/** What is done to a base, and the hours that it is then left alone. */
type Act = Pick<Raw, 'kind' | 'say' | 'does'> & { readonly minutes: number; readonly hours: number };

/** What a base asks for before it is coated, in this order. */
const actsOn = ({ plan, job, product }: Pick<Planning, 'plan' | 'job' | 'product'>): readonly Act[] => {
  const wash = plan.wash.find(({ bases }) => bases.includes(job.base));
  const patch = plan['test-patch'].find(
    ({ bases, families }) => bases.includes(job.base) && (!families || families.includes(product.family)),
  );
  return [
    ...(wash
      ? [
          {
            kind: 'wash' as const,
            minutes: plan.work['wipe-minutes'],
            hours: wash.hours,
            say: wash.say,
            does: wash.does,
          },
        ]
      : []),
    ...(patch
      ? [
          {
            kind: 'test-patch' as const,
            minutes: plan.work['set-up-minutes'],
            hours: patch.hours,
            say: patch.why,
          },
        ]
      : []),
  ];
};

/** All that comes before the first coat, and when (epoch milliseconds) the base is ready for it. */
export const readyBase = (
  planning: Pick<Planning, 'plan' | 'job' | 'product' | 'calendar'>,
  wait: Judgement['wait'],
): Fits<{ readonly steps: readonly Raw[]; readonly ready: number }> => {
  const { job, calendar } = planning;
  const steps: Raw[] = [];
  let ready = job.start + (wait?.hours ?? 0) * HOUR_MS;
  if (wait) steps.push({ kind: 'wait', from: job.start, to: ready, surely: ready, say: wait.row.why });
  for (const { minutes, ...act } of actsOn(planning)) {
    const session = roundedUp(minutes);
    const at = firstFit(job, calendar, ready, session);
    if (!at) return { ok: false, no: tooShort(planning, session) };
    ready = at.to + act.hours * HOUR_MS;
    steps.push({ ...act, ...at, surely: ready });
  }
  return { ok: true, value: { steps, ready } };
};
