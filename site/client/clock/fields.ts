import { AIR_CELSIUS } from '#engine/calc/air.ts';
import type { CoatField } from '#engine/clock.ts';
import { FACTS } from '#engine/model/facts.ts';
import { DAY_MIN, HOUR_MIN } from '#engine/plain/time.ts';
import {
  type Field,
  line,
  maybeOneOf,
  neededNumber,
  oneOf,
  optionalInstant,
  optionalNumber,
} from '../shared/form/fields.ts';

/** The unit that cans give each time in, its minutes, and the most of it that any can promises. */
const ON_CAN = {
  touch: { unit: 'minutes', times: 1, most: 20_160 },
  handle: { unit: 'hours', times: HOUR_MIN, most: 43_200 },
  recoat: { unit: 'hours', times: HOUR_MIN, most: 43_200 },
  'sand-if-beyond': { unit: 'hours', times: HOUR_MIN, most: 129_600 },
  'light-use': { unit: 'days', times: DAY_MIN, most: 129_600 },
  cure: { unit: 'days', times: DAY_MIN, most: 525_600 },
  // Zero and zero where its can lets a coat on at any time.
  'no-coat': { unit: 'hours', times: HOUR_MIN, most: 129_600, least: 0 },
} as const;
type CanMilestone = keyof typeof ON_CAN;
export const CAN_MILESTONES = [
  'touch',
  'handle',
  'recoat',
  'no-coat',
  'sand-if-beyond',
  'light-use',
  'cure',
] as const;

const onCan = (milestone: CanMilestone): Field<number | undefined> => {
  const { times, ...rest } = ON_CAN[milestone];
  return optionalNumber({ what: 'the time on the can', least: times / 100, times, ...rest });
};
const [COLDEST, HOTTEST] = AIR_CELSIUS.laid;
const degrees = (what: string) => ({ what, least: COLDEST, most: HOTTEST, quantity: 'degrees' }) as const;

/** Every field of a coat by its name. Read in °C, 0–1, milliliters, square meters, minutes and instants. */
export const COAT_FIELDS = {
  product: line(61),
  piece: line(40, 'My piece'),
  coat: optionalNumber({ what: 'the number of the coat', least: 1, most: 20, whole: true, digits: 0 }),
  air: neededNumber(degrees('the air temperature')),
  humidity: neededNumber({
    what: 'the humidity',
    hint: 'No meter: 50 % is a fair guess.',
    least: 0,
    most: 1,
    times: 0.01,
    unit: 'percent',
    digits: 0,
  }),
  surface: optionalNumber(degrees('the surface temperature')),
  night: optionalNumber(degrees('the coldest night')),
  when: oneOf(['now', 'ago', 'at'], 'now'),
  ago: optionalNumber({ what: 'the minutes since it was laid', unit: 'minutes', least: 0, most: 259_200 }),
  at: optionalInstant('laying'),
  'at-hour': maybeOneOf(['first', 'second']),
  tool: maybeOneOf(FACTS.applicator.values),
  hardener: maybeOneOf(FACTS.hardener.values),
  amount: optionalNumber({ what: 'the amount used', least: 0.1, most: 100_000, quantity: 'volume' }),
  area: optionalNumber({ what: 'the area', least: 0.001, most: 1000, quantity: 'area' }),
  sheen: maybeOneOf(FACTS.sheen.values),
  tone: maybeOneOf(FACTS['base-tone'].values),
  'label-touch': onCan('touch'),
  'label-touch-to': onCan('touch'),
  'label-handle': onCan('handle'),
  'label-handle-to': onCan('handle'),
  'label-recoat': onCan('recoat'),
  'label-recoat-to': onCan('recoat'),
  'label-no-coat': onCan('no-coat'),
  'label-no-coat-to': onCan('no-coat'),
  'label-sand-if-beyond': onCan('sand-if-beyond'),
  'label-sand-if-beyond-to': onCan('sand-if-beyond'),
  'label-light-use': onCan('light-use'),
  'label-light-use-to': onCan('light-use'),
  'label-cure': onCan('cure'),
  'label-cure-to': onCan('cure'),
  'label-air': optionalNumber({ ...degrees('the can’s own temperature'), least: 0, most: 40 }),
  'label-humidity': optionalNumber({
    what: 'the can’s own humidity',
    least: 0.1,
    most: 0.9,
    times: 0.01,
    unit: 'percent',
    digits: 0,
  }),
};
export type CoatFieldName = keyof typeof COAT_FIELDS;

/** What the can says: it belongs to one can, and is emptied with the product and the piece. */
export const CAN_FIELDS: readonly string[] = Object.keys(COAT_FIELDS).filter((name) =>
  name.startsWith('label-'),
);

/** What is measured of one coat: it says nothing of another, nor of another piece. */
export const OF_ONE_COAT: readonly CoatFieldName[] = ['surface', 'amount', 'area'];

/** The name of the form field that a fault of the engine stands beside. */
export const FIELD_NAMES: Readonly<Partial<Record<CoatField, CoatFieldName>>> = {
  celsius: 'air',
  relativeHumidity: 'humidity',
  surfaceCelsius: 'surface',
  night: 'night',
  laidAt: 'at',
  coatNumber: 'coat',
  amount: 'amount',
  applicator: 'tool',
};
