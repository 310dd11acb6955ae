import { AIR_CELSIUS } from '../calc/air.ts';
import { outsideClimate } from '../calc/drying/climate.ts';
import { outsideLabel } from '../calc/drying/label.ts';
import { MILESTONE_WORDS, PRINTED, type Printed } from '../calc/drying/milestone.ts';
import { outside, type Problem } from '../calc/quantity.ts';
import { sayProblem } from '../calc/say-problem.ts';
import type { ClockWords } from '../model/clock-words.ts';
import { FACTS, isInFact } from '../model/facts.ts';
import { filled } from '../plain/filled.ts';
import { DAY_MS } from '../plain/time.ts';
import { type ClockProduct, type LaidCoat, relativeThicknessOf } from './coat.ts';
import { AHEAD_MILLISECONDS, clockNow } from './reading.ts';
import { sayInstant, type TimeStyle } from './say-time.ts';

/** A coat older than this is cured, whatever it is. */
const OLDEST_DAYS = 180;

export type CoatField =
  | 'celsius'
  | 'relativeHumidity'
  | 'surfaceCelsius'
  | 'laidAt'
  | 'coatNumber'
  | 'amount'
  | 'applicator'
  | 'night'
  | `label-${Printed}`;

/** What is wrong with one field. Only a slip of the pen stops the clock; bad weather is told and no time promised. */
export type CoatFault = { readonly field: CoatField; readonly says: string; readonly stops: boolean };

const FIELDS: Readonly<Record<string, CoatField>> = {
  'air temperature': 'celsius',
  'relative humidity': 'relativeHumidity',
  'surface temperature': 'surfaceCelsius',
  ...Object.fromEntries(
    PRINTED.map((milestone) => [MILESTONE_WORDS[milestone], `label-${milestone}` as const]),
  ),
};

/** A surface that was not measured has the fault of the air. */
const fieldOf = ({ quantity }: Problem, coat: LaidCoat): CoatField => {
  const field = FIELDS[quantity] ?? 'celsius';
  return field === 'surfaceCelsius' && coat.surfaceCelsius === undefined ? 'celsius' : field;
};

const whenLaid = (
  { form }: ClockWords,
  laidAt: number,
  now: number,
  style: TimeStyle,
): string | undefined => {
  if (!Number.isFinite(laidAt)) return form['no-time'];
  if (laidAt > now + AHEAD_MILLISECONDS)
    return filled(form.ahead, {
      laid: sayInstant(laidAt, now, style),
      now: sayInstant(now, now, style),
    });
  return laidAt < now - OLDEST_DAYS * DAY_MS ? filled(form.old, { days: String(OLDEST_DAYS) }) : undefined;
};

/** Every field that can not be right, each in a sentence that says what to do. */
export const checkCoat = (
  words: ClockWords,
  product: ClockProduct,
  coat: LaidCoat,
  now: number,
  style: TimeStyle,
): readonly CoatFault[] => {
  const faults: CoatFault[] = [];
  const stop = (field: CoatField, says: string) => faults.push({ field, says, stops: true });
  const when = whenLaid(words, coat.laidAt, now, style);
  if (when) stop('laidAt', when);
  const air = outsideClimate({ celsius: coat.celsius, relativeHumidity: 0.5 });
  if (air) stop('celsius', sayProblem({ ...air.problem, quantity: 'air temperature' }, style.units));
  const damp = outside(['relative humidity', coat.relativeHumidity, 0, 1, '0–1']);
  if (damp) stop('relativeHumidity', sayProblem(damp.problem, style.units));
  const cold =
    coat.surfaceCelsius !== undefined &&
    outside(['surface temperature', coat.surfaceCelsius, ...AIR_CELSIUS.laid, '°C']);
  if (cold) stop('surfaceCelsius', sayProblem(cold.problem, style.units));
  const night = coat.night && outside(['coldest night', coat.night.celsius, ...AIR_CELSIUS.laid, '°C']);
  if (night) stop('night', sayProblem(night.problem, style.units));
  if (!Number.isInteger(coat.coatNumber) || !isInFact('coat-number', coat.coatNumber))
    stop('coatNumber', filled(words.form.number, { most: String(FACTS['coat-number'].max) }));
  const thickness = relativeThicknessOf(product, coat);
  if (coat.amount && outside(['film against the usual', thickness, 0.1, 10, '']))
    stop('amount', words.form.amount);
  const label = coat.label && outsideLabel(coat.label);
  if (label) stop(fieldOf(label.problem, coat), sayProblem(label.problem, style.units));
  if (faults.length) return faults;
  const reading = clockNow(product, coat, now);
  return reading.kind === 'refused'
    ? [
        {
          field: reading.night === undefined ? fieldOf(reading.problem, coat) : 'night',
          says: sayProblem(reading.problem, style.units),
          stops: false,
        },
      ]
    : [];
};
