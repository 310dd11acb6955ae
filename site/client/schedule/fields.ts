import * as v from 'valibot';
import { MOST_LETTERS } from '#engine/model/card-limits.ts';
import { FACTS } from '#engine/model/facts.ts';
import { DAY_MIN, HOUR_MIN } from '#engine/plain/time.ts';
import type { Turning, Wear } from '#engine/schedule.ts';
import {
  anyOf,
  type Field,
  line,
  maybeOneOf,
  nameOf,
  neededNumber,
  oneOf,
  optionalInstant,
  optionalNumber,
  timeOfDay,
} from '../shared/form/fields.ts';
import { localText } from '../shared/form/local-time.ts';
import { TRIALS } from '../shared/form/trials.ts';
import { LOOSE } from '../shared/say-both-faces.ts';

const WEARS = ['low', 'normal', 'high'] as const satisfies readonly Wear[];

const TURNED = ['each-coat', 'each-face'] as const satisfies readonly Turning[];

const air = (what: string) => ({ what, least: -30, most: 50, quantity: 'fine-degrees' }) as const;
const percent = (what: string) =>
  ({ what, unit: 'percent', least: 0.01, most: 1, times: 0.01, digits: 0 }) as const;
const count = (what: string, most: number) => ({ what, least: 1, most, whole: true, digits: 0 }) as const;
const MINUTES_IN = { minutes: 1, hours: HOUR_MIN, days: DAY_MIN } as const;
/** A time on the can, kept in minutes and given in `unit`. */
const onCan = (least: number, most: number, unit: keyof typeof MINUTES_IN) => {
  const times = MINUTES_IN[unit];
  return optionalNumber({
    what: 'the time on the can',
    unit,
    least: least * times,
    most: most * times,
    times,
  });
};

/** How many faces of one kind there are, and how long and wide one is, in centimeters. */
const faces = optionalNumber({ ...count('how many there are', 60), least: 0 });
const side = optionalNumber({ what: 'length and width', least: 0, most: 500, quantity: 'length' });

/** A day whose end is meant. */
const endOfDay = (what: string): Field<number | undefined> => {
  const { schema } = optionalInstant(what);
  return {
    schema: (units) =>
      v.pipe(
        v.string(),
        v.transform((day) => day && `${day}T23:59`),
        schema(units),
      ),
    write: (at) => (at === undefined ? '' : localText(at).slice(0, 10)),
  };
};

/** Every field of the planner by its name. Read in °C, 0–1, centimeters, m²/L, minutes and instants. */
export const PLAN_FIELDS = {
  piece: nameOf(MOST_LETTERS.name, 'My piece'),
  kind: oneOf(FACTS.piece.values, 'furniture'),
  preset: line(61),
  'top-count': faces,
  'top-long': side,
  'top-wide': side,
  'side-count': faces,
  'side-long': side,
  'side-wide': side,
  'front-count': faces,
  'front-long': side,
  'front-wide': side,
  'leg-count': faces,
  'leg-long': side,
  'leg-wide': side,
  both: anyOf(LOOSE),
  turned: oneOf(TURNED, 'each-coat'),
  base: oneOf(FACTS.base.values),
  'base-age': optionalNumber({
    what: 'the hours since the base was laid',
    unit: 'hours',
    least: 0,
    most: 100_000,
  }),
  tone: oneOf(FACTS['base-tone'].values),
  age: oneOf([...FACTS.age.values, 'none']),
  wear: oneOf(WEARS),
  trials: anyOf(TRIALS),
  product: line(61),
  sheen: oneOf(FACTS.sheen.values),
  tool: oneOf(FACTS.applicator.values),
  hardener: maybeOneOf(FACTS.hardener.values),
  'can-coverage': optionalNumber({
    what: 'the area that a can covers',
    least: 1,
    most: 200,
    quantity: 'coverage',
  }),
  'can-solids': optionalNumber(percent('the solids')),
  'can-coats': optionalNumber(count('the number of coats', 12)),
  'can-per-day': optionalNumber(count('the coats a day', 12)),
  'can-touch': onCan(0.1, 20_160, 'minutes'),
  'can-handle': onCan(0.1, 720, 'hours'),
  'can-recoat': onCan(0.1, 720, 'hours'),
  'can-no-coat': onCan(0, 720, 'hours'),
  'can-no-coat-to': onCan(0, 2160, 'hours'),
  'can-light': onCan(0.04, 90, 'days'),
  'can-cure': onCan(0.04, 180, 'days'),
  'can-cold': optionalNumber({ ...air('the least temperature on the can'), least: -10, most: 40 }),
  'can-hot': optionalNumber({ ...air('the greatest temperature on the can'), least: 0, most: 60 }),
  'can-damp': optionalNumber({ ...percent('the greatest humidity on the can'), least: 0.1 }),
  air: neededNumber(air('the air temperature')),
  humidity: neededNumber({ ...percent('the humidity'), hint: 'No meter: 50 is a fair guess.' }),
  night: neededNumber(air('the coldest temperature of the night')),
  'night-humidity': optionalNumber(percent('the humidity by night')),
  sun: maybeOneOf(['yes']),
  start: optionalInstant('the start'),
  promised: endOfDay('the promised day'),
  from: timeOfDay('the hour from which you work'),
  to: timeOfDay('the hour until which you work'),
  days: anyOf(['0', '1', '2', '3', '4', '5', '6']),
};
