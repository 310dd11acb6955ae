import { REFERENCE_CLIMATE } from '#engine/calc/drying/climate.ts';
import { type Mechanism, PACES } from '#engine/calc/drying/mechanism.ts';
import { slowing } from '#engine/calc/drying/slowing.ts';
import { toCelsius, toFahrenheit } from '#engine/calc/units.ts';
import { sayShort } from '#engine/plain/say-span.ts';
import { spanOf } from '#engine/plain/span.ts';
import { HOUR_MIN } from '#engine/plain/time.ts';
import { span } from '../shared/span.ts';
import { knowledge } from './knowledge.ts';

/** A narrow column: minutes below three hours. */
const touch = (minutes: readonly [number, number]): string =>
  sayShort(spanOf(minutes), minutes[1] < 3 * HOUR_MIN ? 'min' : 'h');

const bothDegrees = ([from, to]: readonly [number, number]): string =>
  `${span([Math.round(toFahrenheit(from)), Math.round(toFahrenheit(to))], '°F')} (${span([from, to], '°C')})`;

/** Where a can lets no coat on for some hours, when one goes on again. */
const again = (hours: readonly [number, number] | undefined): string =>
  hours ? ` or after ${hours[1]} h` : '';

/** Each kind of top coat with its times at 73 °F and 50 %. */
export const timesByHand = knowledge.products.map((product) => ({
  name: product.name,
  open: span(product['open-minutes'], 'min'),
  touch: touch(product['touch-minutes']),
  recoat: `${span(product['recoat-hours'], 'h')}${again(product['no-coat-hours'])}`,
  sand: product['sand-if-beyond-hours'] ? `${product['sand-if-beyond-hours'][0]} h` : '–',
  use: span(product['light-use-days'], 'd'),
  cure: span(product['cure-days'], 'd'),
  limits: bothDegrees(product.limits.celsius),
}));

const WEATHERS = [
  [50, 70],
  [60, 50],
  [60, 70],
  [70, 50],
  [70, 70],
  [85, 40],
  [85, 70],
] as const;

const times = (mechanism: Mechanism, fahrenheit: number, percent: number): string => {
  const climate = { celsius: toCelsius(fahrenheit), relativeHumidity: percent / 100 };
  const { to } = slowing(mechanism, 'touch', REFERENCE_CLIMATE, climate, 1);
  return `× ${to < 2 ? to.toFixed(1) : Math.ceil(to * 2) / 2}`;
};

/** How many times longer a film takes to dry to touch at most, by weather. */
export const factorsByHand = WEATHERS.map(([fahrenheit, percent]) => ({
  weather: `${fahrenheit} °F (${Math.round(toCelsius(fahrenheit))} °C), ${percent} %`,
  water: times('coalescence', fahrenheit, percent),
  oil: times('oxidation', fahrenheit, percent),
  spirit: times('evaporation', fahrenheit, percent),
}));

/** How many times longer a film of water-based or oil-based finish takes that is laid twice as thick. */
export const TWICE_AS_THICK = Math.round(2 ** PACES.coalescence.thicknessPower.best);
