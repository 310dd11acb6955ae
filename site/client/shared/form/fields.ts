import * as v from 'valibot';
import { DAY_MIN, HOUR_MIN } from '#engine/plain/time.ts';
import { instantsOf, localText } from './local-time.ts';
import { FIXED_UNITS, type FieldUnit, quantityUnit } from './measures.ts';
import { readNumber, writeNumber } from './number.ts';
import { readTyped, type Typed } from './typed.ts';
import { QUANTITIES, type Units } from './units.ts';

/** A field of a form, without the form: how its text is read and checked, written, and turned into other units. */
export type Field<T> = {
  readonly schema: (units: Units) => v.GenericSchema<string, T>;
  readonly write: (value: T, units: Units) => string;
  /** The same quantity in the other units; text that is no number stays as it is. */
  readonly turn?: (text: string, to: Units) => string;
  /** What was typed with a unit or a fraction as the field holds it: the number alone. Nothing where it is one already. */
  readonly plain?: (text: string, units: Units) => PlainNumber | undefined;
};
/** A number alone, and what it was reckoned from: “21 °C is 70 °F.” */
type PlainNumber = { readonly text: string; readonly says?: string };
/** The type that a field reads. */
export type ValueIn<F> = F extends Field<infer T> ? T : never;

/** A sixty-fourth has six. */
const MOST_DIGITS = 6;
const WHOLE = 'Give a whole number';

type NumberOptions = {
  /** What it is, for the sentence of a fault: “the air temperature”. */
  readonly what: string;
  /** The least and the most, in metric units. */
  readonly least: number;
  readonly most: number;
  readonly quantity?: keyof typeof QUANTITIES;
  /** The unit of a field that is no such quantity. */
  readonly unit?: keyof typeof FIXED_UNITS;
  readonly whole?: boolean;
  /** In units of the field: hours as minutes have 60. */
  readonly times?: number;
  readonly digits?: number;
};

/** Why what was typed is no number, in a sentence that says what to do. */
const saysUnread = ({ unclear }: Typed, what: string, sign: string | undefined, orNone: string): string => {
  if (unclear === 'two') return `Give one number for ${what}, not a range${orNone}.`;
  if (unclear === 'unit')
    return `Give ${what} as a number alone${sign ? `, in ${sign === 'in' ? 'inches' : sign}` : ''}${orNone}.`;
  return `Give ${what} as a number${orNone}.`;
};

const OR_NONE = ', or leave it empty';

/** A number field: `unread` is asked about each text that gives no number, and is a fault where it says something. */
const numberField = (
  options: NumberOptions,
  unread: (typed: Typed, sign: string | undefined) => string | undefined,
): Field<number | undefined> => {
  const { what, least, most, whole = false, times = 1, digits = 2 } = options;
  const quantity = options.quantity && QUANTITIES[options.quantity];
  const unitIn = (units: Units): FieldUnit | undefined =>
    options.quantity ? quantityUnit(options.quantity, units) : options.unit && FIXED_UNITS[options.unit];
  const typedIn = (text: string, units: Units) => readTyped(text, unitIn(units));
  const digitsIn = (units: Units) => quantity?.digits[units] ?? digits;
  const shown = (metric: number, units: Units) => {
    const value = (units === 'us' && quantity ? quantity.toUs(metric) : metric) / times;
    return writeNumber(value, digitsIn(units));
  };
  return {
    schema: (units) =>
      v.pipe(
        v.string(),
        v.rawCheck(({ dataset, addIssue }) => {
          if (!dataset.typed) return;
          const typed = typedIn(dataset.value, units);
          const message =
            typed.value === undefined || Number.isNaN(typed.value)
              ? unread(typed, unitIn(units)?.sign)
              : undefined;
          if (message !== undefined) addIssue({ message });
        }),
        v.transform((text) => typedIn(text, units).value),
        v.check((value) => !whole || value === undefined || Number.isInteger(value), `${WHOLE}: ${what}.`),
        v.transform((value) => {
          if (value === undefined) return undefined;
          return (units === 'us' && quantity ? quantity.toMetric(value) : value) * times;
        }),
        // A limit that was turned over and rounded is still within.
        v.check(
          (value) => value === undefined || (value >= least - 0.02 * times && value <= most + 0.02 * times),
          `That cannot be: ${what} lies between ${shown(least, units)} and ${shown(most, units)}. Check the number and its unit.`,
        ),
      ),
    write: (value, units) => (value === undefined ? '' : shown(value, units)),
    plain: (text, units) => {
      const { value, reckoned } = typedIn(text, units);
      if (!Number.isNaN(readNumber(text))) return undefined;
      if (value === undefined || Number.isNaN(value)) return undefined;
      const written = writeNumber(value, reckoned ? digitsIn(units) : MOST_DIGITS);
      const sign = unitIn(units)?.sign ?? '';
      return {
        text: written,
        ...(reckoned && { says: `${text.trim()} is ${written} ${sign}.` }),
      };
    },
    ...(quantity && {
      turn: (text: string, to: Units) => {
        const { value } = typedIn(text, to === 'us' ? 'metric' : 'us');
        if (value === undefined || Number.isNaN(value)) return text;
        return writeNumber(
          to === 'us' ? quantity.toUs(value) : quantity.toMetric(value),
          quantity.digits[to],
        );
      },
    }),
  };
};

/** A number that may be left empty, in metric units whatever stands in the field. */
export const optionalNumber = (options: NumberOptions): Field<number | undefined> =>
  numberField(options, (typed, sign) =>
    typed.value === undefined ? undefined : saysUnread(typed, options.what, sign, OR_NONE),
  );

/** A number without which nothing can be reckoned. `hint` ends the sentence that asks for it. */
export const neededNumber = (options: NumberOptions & { readonly hint?: string }): Field<number> => {
  const { what, hint } = options;
  const { schema, ...rest } = numberField(options, (typed, sign) =>
    [saysUnread(typed, what, sign, ''), hint].filter(Boolean).join(' '),
  );
  return { ...rest, schema: (units) => v.pipe(schema(units), v.number(`Give ${what} as a number.`)) };
};

/** One of these; where nothing is chosen, `otherwise`, or a fault. */
export const oneOf = <const T extends string>(values: readonly T[], otherwise?: NoInfer<T>): Field<T> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.transform((text) => (text === '' && otherwise !== undefined ? otherwise : text)),
      v.picklist(values, 'Choose one of these.'),
    ),
  write: (value) => value,
});

/** One of these, or not said. */
export const maybeOneOf = <const T extends string>(values: readonly T[]): Field<T | undefined> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.transform((text) => text || undefined),
      v.optional(v.picklist(values, 'Choose one of these, or none.')),
    ),
  write: (value) => value ?? '',
});

/** Any of these, as they stand in a draft: joined by commas. */
export const anyOf = <const T extends string>(values: readonly T[]): Field<readonly T[]> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.transform((text) => (text ? text.split(',') : [])),
      v.array(v.picklist(values, 'Choose of these alone.')),
    ),
  write: (value) => value.join(','),
});

/** A name, or `otherwise`; one with more letters is told, not cut: it was pasted, and is not what was meant. */
export const nameOf = (most: number, otherwise: string): Field<string> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.transform((text) => text.trim() || otherwise),
      v.maxLength(most, `A name takes ${most} letters at most.`),
    ),
  write: (value) => value,
});

/** A line of text, cut at so many characters. */
export const line = (most: number, otherwise = ''): Field<string> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.transform((text) => text.trim().slice(0, most).trim() || otherwise),
    ),
  write: (value) => value,
});

const CLOCK_TIME = /^(\d\d?):(\d\d)(?::\d\d)?$/;
/** A time of day, in minutes since midnight. */
export const timeOfDay = (what: string): Field<number> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.transform((text) => {
        const [, hour, minute] = (CLOCK_TIME.exec(text.trim()) ?? []).map(Number);
        return (hour ?? Number.NaN) * HOUR_MIN + (minute ?? Number.NaN);
      }),
      v.check((minutes) => minutes >= 0 && minutes < DAY_MIN, `Give ${what} as a time of day.`),
    ),
  write: (value) =>
    `${String(Math.floor(value / HOUR_MIN)).padStart(2, '0')}:${String(value % HOUR_MIN).padStart(2, '0')}`,
});

/** The years that every reader takes. A field for day and time that is still being typed holds the year 2, or 20. */
const EARLIEST_YEAR = 1970;
const LATEST_YEAR = 2199;

/**
 * A day with a time on this device, as an instant; nothing where it is empty. In the hour that comes twice the earlier
 * one is read: `instantsOf` tells where she has to be asked.
 */
export const optionalInstant = (what: string): Field<number | undefined> => ({
  schema: () =>
    v.pipe(
      v.string(),
      v.check((text) => {
        const year = Number(text.slice(0, text.indexOf('-')));
        return !text || (year >= EARLIEST_YEAR && year <= LATEST_YEAR);
      }, `Give ${what} a year from ${EARLIEST_YEAR} to ${LATEST_YEAR}, with four digits.`),
      v.check(
        (text) => !text || instantsOf(text).length > 0,
        `Check ${what}: there is no such time on that day. Where clocks go forward an hour is left out.`,
      ),
      v.transform((text) => (text ? instantsOf(text)[0] : undefined)),
    ),
  write: (value) => (value === undefined ? '' : localText(value)),
});

/** A day with a time that has to be given. */
export const neededInstant = (what: string): Field<number> => {
  const { schema, write } = optionalInstant(what);
  const says = `Give the day and the time of ${what}.`;
  return { schema: (units) => v.pipe(v.string(), v.nonEmpty(says), schema(units), v.number(says)), write };
};
