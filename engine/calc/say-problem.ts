import type { Problem, Unit } from './quantity.ts';
import { toFahrenheit } from './units.ts';

const plain = (value: number): string => String(Number(value.toPrecision(4)));

const minutes = (value: number): string => {
  if (value > 0 && value < 120) return `${plain(value)} min`;
  return value < 2880 ? `${plain(value / 60)} h` : `${plain(value / 1440)} days`;
};

/** A value with its unit, as a person reads it: °C with °F, fractions as per cent, minutes as hours or days. */
export const sayValue = (value: number | string, unit: Unit): string => {
  if (typeof value === 'string') return `"${value}"`;
  if (unit === '°C') return `${plain(value)} °C (${plain(toFahrenheit(value))} °F)`;
  if (unit === '0–1') return `${plain(value * 100)} %`;
  if (unit === 'min') return minutes(value);
  return unit === '' ? plain(value) : `${plain(value)} ${unit}`;
};

const allowed = ({ min, max, unit }: Problem): string =>
  Number.isFinite(max)
    ? `between ${sayValue(min, unit)} and ${sayValue(max, unit)}`
    : `${sayValue(min, unit)} or more`;

/** One sentence for a problem: what was received, what is allowed, and what to do. */
export const sayProblem = (problem: Problem): string => {
  const { code, quantity, unit, value, min } = problem;
  const received = sayValue(value, unit);
  switch (code) {
    case 'out-of-range':
      return `The ${quantity} was given as ${received}; it must be ${allowed(problem)}. Check the number and its unit.`;
    case 'outside-product-limits':
      return `The ${quantity} is ${received}; this product needs it ${allowed(problem)}. No drying time can be promised.`;
    case 'surface-below-dew-point':
      return `The surface is ${received}, colder than the dew point of ${sayValue(min, unit)}: water condenses on it. No drying time can be promised.`;
    case 'below-film-formation':
      return `The surface is ${received}, below the ${sayValue(min, unit)} that this film needs to knit together. No drying time can be promised.`;
    case 'label-not-positive':
      return `The label's ${quantity} was given as ${received}; a label time must be longer than zero. Read the label again.`;
    case 'label-out-of-order':
      return `The label's ${quantity} was given as ${received}, but its other times ask for ${allowed(problem)}. Read the label again.`;
    case 'unknown-value':
      return `The ${quantity} was given as ${received}, which is not one that this calculator knows.`;
    default:
      return code satisfies never;
  }
};
