import { toFahrenheit, toFluidOunces, toSquareFeet } from '#engine/calc/units.ts';
import type { LaidCoat } from '#engine/clock.ts';
import { localInput } from '../shared/say-date.ts';
import { type Draft, LABEL_MINUTES } from './draft.ts';
import type { Touched } from './standing.ts';

const text = (value: number | undefined, digits: number): string =>
  value === undefined ? '' : String(Number(value.toFixed(digits)));

/** A coat as it stands in the form, by name: the way back from `coatIn`, rounded as on any dial. */
export const draftOf = (coat: LaidCoat, us: boolean): Draft => {
  const degrees = (value: number | undefined) =>
    text(value !== undefined && us ? toFahrenheit(value) : value, us ? 0 : 1);
  const { celsius, surfaceCelsius, relativeHumidity, amount, label, applicator } = coat;
  const milliliters = amount?.milliliters;
  const area = amount?.squareMeters;
  const onCan = Object.entries(LABEL_MINUTES).flatMap(([milestone, unit]) => {
    const span = label?.minutes[milestone as keyof typeof LABEL_MINUTES];
    const to = span && span.to !== span.from ? span.to / unit : undefined;
    return [
      [`label-${milestone}`, text(span && span.from / unit, 2)],
      [`label-${milestone}-to`, text(to, 2)],
    ];
  });
  return {
    product: coat.product,
    piece: coat.piece,
    coat: String(coat.coatNumber),
    air: degrees(celsius),
    humidity: text(relativeHumidity * 100, 0),
    surface: degrees(surfaceCelsius),
    when: 'at',
    ago: '',
    at: localInput(coat.laidAt),
    tool: applicator ?? '',
    amount: text(milliliters !== undefined && us ? toFluidOunces(milliliters) : milliliters, 1),
    area: text(area !== undefined && us ? toSquareFeet(area) : area, us ? 1 : 2),
    sheen: coat.sheen ?? '',
    tone: coat.baseTone ?? '',
    ...Object.fromEntries(onCan),
  };
};

const ON_CAN = Object.keys(LABEL_MINUTES).flatMap((name) => [`label-${name}`, `label-${name}-to`]);
type Minutes = NonNullable<LaidCoat['label']>['minutes'];

/** The times on the can: those whose fields were touched as read, all others as they were. */
const minutesOf = (was: LaidCoat, read: LaidCoat, touched: Touched): Minutes => {
  const minutes: Record<string, unknown> = { ...was.label?.minutes };
  for (const milestone of Object.keys(LABEL_MINUTES) as (keyof typeof LABEL_MINUTES)[])
    if (touched(`label-${milestone}`, `label-${milestone}-to`))
      minutes[milestone] = read.label?.minutes[milestone];
  return Object.fromEntries(Object.entries(minutes).filter(([, span]) => span !== undefined)) as Minutes;
};

/**
 * What was read from the form, with all that was not touched exactly as it was: a form rounds, and holds less of a can
 * than a card does.
 */
export const corrected = (was: LaidCoat, read: LaidCoat, touched: Touched): LaidCoat => {
  const { minutes: _was, ...rest } = was.label ?? { minutes: {} };
  const minutes = minutesOf(was, read, touched);
  const can = Object.keys(minutes).length > 0 || Object.keys(rest).length > 0;
  return {
    ...was,
    product: touched('product') ? read.product : was.product,
    laidAt: touched('when', 'at', 'ago') ? read.laidAt : was.laidAt,
    celsius: touched('air') ? read.celsius : was.celsius,
    relativeHumidity: touched('humidity') ? read.relativeHumidity : was.relativeHumidity,
    surfaceCelsius: touched('surface') ? read.surfaceCelsius : was.surfaceCelsius,
    applicator: touched('tool') ? read.applicator : was.applicator,
    amount: read.amount && {
      milliliters: was.amount && !touched('amount') ? was.amount.milliliters : read.amount.milliliters,
      squareMeters: was.amount && !touched('area') ? was.amount.squareMeters : read.amount.squareMeters,
    },
    label: touched(...ON_CAN) ? (can ? { ...rest, minutes } : undefined) : was.label,
  };
};
