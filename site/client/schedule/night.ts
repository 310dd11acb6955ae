import { type Draft, unitsIn } from '../shared/form/form.ts';
import { readNumber, writeNumber } from '../shared/form/number.ts';

const FAHRENHEIT_TO_A_DEGREE = 9 / 5;
/** Both fields are rounded to a tenth where units are turned. */
const ROUNDED_AWAY = 0.15;

/** What a field holds of degrees; nothing where it is empty or no number. */
const degreesIn = (text: string | undefined): number | undefined => {
  const value = readNumber(text ?? '');
  return Number.isFinite(value) ? value : undefined;
};

/** The coldest night where none is told: so many °C colder than the day, in the units of the draft. */
export const usualNight = (draft: Draft, colderCelsius: number): string | undefined => {
  const air = degreesIn(draft['air']);
  const colder = unitsIn(draft) === 'us' ? colderCelsius * FAHRENHEIT_TO_A_DEGREE : colderCelsius;
  return air === undefined ? undefined : writeNumber(air - colder, 1);
};

/**
 * The night as it follows the day from `airBefore`: until she sets it herself it is as much colder as it usually is.
 * Nothing where she did, or where the day can not be read.
 */
export const nightFollowing = (
  draft: Draft,
  airBefore: string,
  colderCelsius: number,
): string | undefined => {
  const night = degreesIn(draft['night']);
  const usual = degreesIn(usualNight({ ...draft, air: airBefore }, colderCelsius));
  const hers = night !== undefined && (usual === undefined || Math.abs(night - usual) > ROUNDED_AWAY);
  return hers ? undefined : usualNight(draft, colderCelsius);
};

type Air = { readonly celsius: number };

/** What is said of the night beside the day: one that is warmer is asked about, one that nobody told is named as such. */
export const sayOfNight = (day: Air, night: Air, colderCelsius: number, us: boolean): string | undefined => {
  if (night.celsius > day.celsius)
    return 'The night is warmer than the day: is that so? If not, correct it under ‘Weather and time’, or the waits are too short.';
  if (Math.abs(day.celsius - night.celsius - colderCelsius) > ROUNDED_AWAY) return undefined;
  const [celsius, fahrenheit] = [`${colderCelsius} °C`, `${colderCelsius * FAHRENHEIT_TO_A_DEGREE} °F`];
  const colder = us ? `${fahrenheit} (${celsius})` : `${celsius} (${fahrenheit})`;
  return `Until you set it, the night is taken to be ${colder} colder than the day.`;
};
