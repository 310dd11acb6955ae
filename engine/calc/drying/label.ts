import type { Span } from '../../plain/span.ts';
import { DAY_MIN } from '../../plain/time.ts';
import { outside, type Refused, refuse } from '../quantity.ts';
import type { Climate } from './climate.ts';
import type { DryingProduct, Figures, Limits } from './figures.ts';
import { CHAIN, MILESTONE_WORDS, MILESTONES, type Printed } from './milestone.ts';

/** What the can says. Its times win over the product's, and hold in its own climate, 23 °C and 50 % if not given. */
export type Label = {
  readonly minutes: Readonly<Partial<Record<Printed, Span>>>;
  readonly climate?: Climate;
  readonly limits?: Partial<Limits>;
};

const refuseTime = (
  code: 'label-not-positive' | 'label-out-of-order',
  milestone: Printed,
  value: number,
  min: number,
): Refused =>
  refuse({
    code,
    quantity: MILESTONE_WORDS[milestone],
    unit: 'min',
    value,
    min,
    max: Number.POSITIVE_INFINITY,
  });

/** No can prints a shorter time, minutes, nor a longer one for these. */
const LEAST_MINUTES = 0.1;
const MOST_LABEL_MINUTES: Readonly<Record<Printed, number>> = {
  open: 2 * DAY_MIN,
  touch: 30 * DAY_MIN,
  recoat: 90 * DAY_MIN,
  'light-use': 365 * DAY_MIN,
  cure: 1000 * DAY_MIN,
  'sand-if-beyond': 365 * DAY_MIN,
  handle: 90 * DAY_MIN,
  'no-coat': 90 * DAY_MIN,
};
/** The longest time that any can prints, minutes. */
export const LONGEST_LABEL_MINUTES = Math.max(...Object.values(MOST_LABEL_MINUTES));

/** Refuses a time that no can prints; zero and less is told apart. */
const beyondCans = (milestone: Printed, { from, to }: Span): Refused | undefined => {
  const range = (value: number) =>
    outside([MILESTONE_WORDS[milestone], value, LEAST_MINUTES, MOST_LABEL_MINUTES[milestone], 'min']);
  return range(from) ?? range(to);
};

/** Refuses a time that is not above zero, that no can prints, or that is reversed. */
const impossible = (moment: Printed, time: Span): Refused | undefined => {
  if (!(time.from > 0)) return refuseTime('label-not-positive', moment, time.from, 0);
  const beyond = beyondCans(moment, time);
  if (beyond) return beyond;
  return time.to >= time.from ? undefined : refuseTime('label-out-of-order', moment, time.to, time.from);
};

/** Refuses a time that comes before one that it can not come before. */
const before = (moment: Printed, time: Span, floor: Span | undefined): Refused | undefined => {
  if (!floor) return undefined;
  if (time.from < floor.from) return refuseTime('label-out-of-order', moment, time.from, floor.from);
  return time.to < floor.to ? refuseTime('label-out-of-order', moment, time.to, floor.to) : undefined;
};

/** What is handled is dry to the touch, and what is cured has long been handled. */
const handledOutside = ({ handle, touch, cure }: Label['minutes']): Refused | undefined =>
  handle &&
  (impossible('handle', handle) ?? before('handle', handle, touch) ?? (cure && before('cure', cure, handle)));

/** Of a can that lets a coat on at any time it ends as it begins, at zero. */
export const hasNoClosedTime = ({ to }: Span): boolean => to === 0;

/** The time closed to coats ends after it begins, and a coat went on before it. */
const closedOutside = ({ 'no-coat': closed, recoat }: Label['minutes']): Refused | undefined => {
  if (!closed || hasNoClosedTime(closed)) return undefined;
  const refused = impossible('no-coat', closed);
  if (refused) return refused;
  if (closed.to === closed.from) return refuseTime('label-out-of-order', 'no-coat', closed.to, closed.from);
  return recoat && closed.from < recoat.from
    ? refuseTime('label-out-of-order', 'no-coat', closed.from, recoat.from)
    : undefined;
};

/**
 * Refuses a label time that no can prints, that is not above zero, is reversed, or comes before an earlier moment of
 * the same label.
 */
export const outsideLabel = ({ minutes }: Label): Refused | undefined => {
  let last: Span | undefined;
  for (const milestone of MILESTONES) {
    const time = minutes[milestone];
    if (!time) continue;
    const floor = milestone === 'sand-if-beyond' ? minutes.recoat : last;
    const refused = impossible(milestone, time) ?? before(milestone, time, floor);
    if (refused) return refused;
    last = time;
  }
  return handledOutside(minutes) ?? closedOutside(minutes);
};

const between = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** The figures with those of a label that is in order put in; the others give way where they would come out of order. */
export const withLabel = (figures: Figures, { minutes }: Label): Figures => {
  const chain = { ...figures };
  let before: Span = { from: 0, to: 0 };
  for (const [index, milestone] of CHAIN.entries()) {
    const later = CHAIN.slice(index + 1).flatMap((next) => minutes[next] ?? []);
    const deadline = index <= CHAIN.indexOf('recoat') ? minutes['sand-if-beyond'] : undefined;
    const roof = [...later, ...(deadline ? [deadline] : [])];
    const time = minutes[milestone] ?? figures[milestone];
    before = {
      from: between(
        time.from,
        before.from,
        Math.min(...roof.map(({ from }) => from), Number.POSITIVE_INFINITY),
      ),
      to: between(time.to, before.to, Math.min(...roof.map(({ to }) => to), Number.POSITIVE_INFINITY)),
    };
    chain[milestone] = before;
  }
  const deadline = minutes['sand-if-beyond'] ?? figures['sand-if-beyond'];
  if (!deadline) return chain;
  const { recoat } = chain;
  return {
    ...chain,
    'sand-if-beyond': {
      from: Math.max(deadline.from, recoat.from),
      to: Math.max(deadline.to, recoat.to),
    },
  };
};

/** The product under the label's own limits. A can that gives a least temperature knows its film better than we do. */
export const underLabel = (product: DryingProduct, label: Label | undefined): DryingProduct => {
  const limits = { ...product.limits, ...label?.limits };
  const { filmFormationCelsius, ...rest } = product;
  const keep = filmFormationCelsius && !label?.limits?.celsius;
  return { ...rest, limits, ...(keep && { filmFormationCelsius }) };
};
