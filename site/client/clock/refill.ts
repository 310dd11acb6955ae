import type { LaidCoat } from '#engine/clock.ts';
import { type Draft, writeForm } from '../shared/form/form.ts';
import { whichOf } from '../shared/form/local-time.ts';
import type { Units } from '../shared/form/units.ts';
import { CAN_FIELDS, CAN_MILESTONES, COAT_FIELDS } from './fields.ts';
import type { Touched } from './standing.ts';

/** What of a can its fields hold. */
const onCan = (label: LaidCoat['label']) => ({
  ...Object.fromEntries(
    CAN_MILESTONES.flatMap((milestone) => {
      const span = label?.minutes[milestone];
      const to = span && span.to !== span.from ? span.to : undefined;
      return [
        [`label-${milestone}`, span?.from],
        [`label-${milestone}-to`, to],
      ];
    }),
  ),
  'label-air': label?.climate?.celsius,
  'label-humidity': label?.climate?.relativeHumidity,
});

/** A can as it stands in the form: what it does not say is empty. */
export const canDraft = (label: LaidCoat['label'], units: Units): Draft => ({
  ...Object.fromEntries(CAN_FIELDS.map((name) => [name, ''])),
  ...writeForm(COAT_FIELDS, onCan(label), units),
});

/** A coat as it stands in the form, by name: the way back from `coatIn`, rounded as on any dial. */
export const draftOf = (coat: LaidCoat, units: Units): Draft => {
  const { celsius, surfaceCelsius, relativeHumidity, amount, label, applicator, hardener } = coat;
  const empty = Object.fromEntries(Object.keys(COAT_FIELDS).map((name) => [name, '']));
  const filled = writeForm(
    COAT_FIELDS,
    {
      product: coat.product,
      piece: coat.piece,
      coat: coat.coatNumber,
      air: celsius,
      humidity: relativeHumidity,
      surface: surfaceCelsius,
      night: coat.night?.celsius,
      when: 'at',
      at: coat.laidAt,
      'at-hour': whichOf(coat.laidAt),
      tool: applicator,
      hardener,
      amount: amount?.milliliters,
      area: amount?.squareMeters,
      sheen: coat.sheen,
      tone: coat.baseTone,
      ...onCan(label),
    },
    units,
  );
  return { ...empty, ...filled };
};

type Label = NonNullable<LaidCoat['label']>;

/** The times on the can: those whose fields were touched as read, all others as they were. */
const minutesOf = (
  was: Pick<LaidCoat, 'label'>,
  read: Pick<LaidCoat, 'label'>,
  touched: Touched,
): Label['minutes'] => {
  const minutes = { ...was.label?.minutes };
  for (const milestone of CAN_MILESTONES)
    if (touched(`label-${milestone}`, `label-${milestone}-to`)) {
      const span = read.label?.minutes[milestone];
      if (span) minutes[milestone] = span;
      else delete minutes[milestone];
    }
  return minutes;
};

/** What the can says: what was touched as read, all else as it was. */
export const labelOf = (
  was: Pick<LaidCoat, 'label'>,
  read: Pick<LaidCoat, 'label'>,
  touched: Touched,
): LaidCoat['label'] => {
  if (!touched(...CAN_FIELDS)) return was.label;
  const { minutes: _minutes, climate: before, ...rest } = was.label ?? { minutes: {} };
  const minutes = minutesOf(was, read, touched);
  const climate = touched('label-air', 'label-humidity') ? read.label?.climate : before;
  const said = { ...rest, ...(climate && { climate }) };
  return Object.keys({ ...minutes, ...said }).length ? { ...said, minutes } : undefined;
};

/** The one that was not touched as it was; nothing where both are not told any more. */
const amountOf = (was: LaidCoat, read: LaidCoat, touched: Touched): LaidCoat['amount'] =>
  read.amount && {
    milliliters: was.amount && !touched('amount') ? was.amount.milliliters : read.amount.milliliters,
    squareMeters: was.amount && !touched('area') ? was.amount.squareMeters : read.amount.squareMeters,
  };

/**
 * What was read from the form, with all that was not touched exactly as it was: a form rounds, and holds less of a can
 * than a card does.
 */
export const corrected = (was: LaidCoat, read: LaidCoat, touched: Touched): LaidCoat => ({
  ...was,
  product: touched('product') ? read.product : was.product,
  laidAt: touched('when', 'at', 'ago', 'at-hour') ? read.laidAt : was.laidAt,
  celsius: touched('air') ? read.celsius : was.celsius,
  relativeHumidity: touched('humidity') ? read.relativeHumidity : was.relativeHumidity,
  surfaceCelsius: touched('surface') ? read.surfaceCelsius : was.surfaceCelsius,
  applicator: touched('tool') ? read.applicator : was.applicator,
  hardener: touched('hardener') ? read.hardener : was.hardener,
  amount: touched('amount', 'area') ? amountOf(was, read, touched) : was.amount,
  label: labelOf(was, read, touched),
});
