import { type Refusal, schedule } from '#engine/schedule.ts';
import { planRules } from '../../shared/plan-rules.ts';
import { calendarAt } from '../shared/calendar.ts';
import type { OtherCoat, PlanAsked } from './shown.ts';

/** How its kind is called: the first word of its name. */
const kindOf = (name: string): string => name.split(' ')[0]?.toLowerCase() ?? '';

/** Of one kind the one that most know, with which the form begins. */
const KNOWN_BEST = 'water-based-polyurethane';

/**
 * The top coat to plan with where the one that was asked for will not do: of those that the no names in its place, the
 * first with which the same job comes to a plan, with the same tool or else a brush.
 */
export const otherCoat = ({ job, data, us }: PlanAsked, { why }: Refusal): OtherCoat | undefined => {
  const said = why
    .map(({ instead }) => instead ?? '')
    .join(' ')
    .toLowerCase();
  // What stood on the can, or was mixed into it, was the other one's.
  const { label: _label, hardener: _hardener, ...bare } = job;
  const named = data.products
    .filter(({ id, name }) => id !== job.product && said.includes(kindOf(name)))
    .toSorted(
      (a, b) =>
        said.indexOf(kindOf(a.name)) - said.indexOf(kindOf(b.name)) ||
        Number(b.id === KNOWN_BEST) - Number(a.id === KNOWN_BEST),
    );
  for (const product of named)
    for (const tool of new Set([job.applicator, 'brush' as const])) {
      const { kind } = schedule(
        data.plan,
        planRules(data),
        { ...bare, product: product.id, applicator: tool },
        product,
        calendarAt(job.start),
        us ? 'us' : 'metric',
      );
      if (kind !== 'no') return { product: product.id, name: product.name, tool };
    }
  return undefined;
};
