import { sayShort, unitOf } from '../plain/say-span.ts';
import type { Problem, Unit } from './quantity.ts';
import { toFahrenheit, type Units } from './units.ts';

const fourDigits = (value: number): number => Number(value.toPrecision(4));

/** A temperature in °C and °F. */
const both = (celsius: number): readonly [number, number] => [celsius, toFahrenheit(celsius)];

/**
 * A temperature in whole degrees, the chosen unit first; in a unit in which it would else read like `against`, from which
 * it differs, with a decimal.
 */
export const sayDegrees = (celsius: number, units: Units = 'metric', against = celsius): string => {
  const other = both(against);
  const [metric, us] = both(celsius).map((value, at) => {
    const alike = celsius !== against && value.toFixed(0) === (other[at] ?? value).toFixed(0);
    return Number(value.toFixed(alike ? 1 : 0)) + 0;
  });
  return units === 'us' ? `${us} °F (${metric} °C)` : `${metric} °C (${us} °F)`;
};

/** A value with its unit, as a person reads it: °C with °F, fractions as per cent, minutes as hours or days. */
export const sayValue = (
  value: number | string,
  unit: Unit,
  units: Units = 'metric',
  against?: number,
): string => {
  if (typeof value === 'string') return `"${value}"`;
  if (unit === '°C') return sayDegrees(value, units, against);
  if (unit === '0–1') return `${Math.round(value * 1000) / 10} %`;
  if (unit === 'min') return sayShort({ from: value, to: value }, unitOf(value), fourDigits);
  return unit === '' ? `${fourDigits(value)}` : `${fourDigits(value)} ${unit}`;
};

const allowed = ({ min, max, unit, value }: Problem, units: Units): string => {
  const [least, most] = [min, max].map((bound) =>
    sayValue(bound, unit, units, typeof value === 'number' ? value : undefined),
  );
  return Number.isFinite(max) ? `between ${least} and ${most}` : `${least} or more`;
};

/** The bound that a value broke. */
const broken = ({ value, min, max }: Problem): number =>
  typeof value === 'number' && value > max ? max : min;

/** One sentence for a problem: what was received, what is allowed, and what to do. */
export const sayProblem = (problem: Problem, units: Units = 'metric'): string => {
  const { code, quantity, unit, value, min } = problem;
  const received = sayValue(value, unit, units, broken(problem));
  const bound = sayValue(min, unit, units, typeof value === 'number' ? value : undefined);
  switch (code) {
    case 'out-of-range':
      return `The ${quantity} was given as ${received}; it must be ${allowed(problem, units)}. Check the number and its unit.`;
    case 'outside-product-limits':
      return `The ${quantity} is ${received}; this product needs it ${allowed(problem, units)}. No drying time can be promised.`;
    case 'surface-below-dew-point':
      return `The surface is ${received}, colder than the dew point of ${bound}: water condenses on it. No drying time can be promised.`;
    case 'below-film-formation':
      return `The surface is ${received}, below the ${bound} that this film needs to knit together. No drying time can be promised.`;
    case 'label-not-positive':
      return `The label’s ${quantity} was given as ${received}; a label time must be longer than zero. Read the label again.`;
    case 'label-out-of-order':
      return `The label’s ${quantity} was given as ${received}, but its other times ask for ${allowed(problem, units)}. Read the label again.`;
    case 'unknown-value':
      return `The ${quantity} was given as ${received}, which is not one that this calculator knows.`;
    default:
      return code satisfies never;
  }
};
