import { REFERENCE_CLIMATE } from '#engine/calc/drying/climate.ts';
import type { Label } from '#engine/calc/drying/label.ts';
import { type ClockProduct, checkCoat, type LaidCoat, type TimeStyle } from '#engine/clock.ts';
import { MINUTE_MS } from '#engine/plain/time.ts';
import { clockWords } from '../../shared/clock-words.ts';
import { asDraft } from '../shared/cans/kept.ts';
import { BOTH_ENDS, isOneEnd } from '../shared/form/closed.ts';
import {
  type Draft,
  type FieldFault,
  LONGEST_TEXT,
  readForm,
  unitsIn,
  type Values,
} from '../shared/form/form.ts';
import { instantsOf } from '../shared/form/local-time.ts';
import type { KeptCan } from '../shared/storage.ts';
import { CAN_MILESTONES, COAT_FIELDS, FIELD_NAMES } from './fields.ts';

/** A fault beside a field. One that does not stop is told, and no time is promised. */
export type DraftFault = FieldFault & { readonly stops: boolean };

type CoatValues = Partial<Values<typeof COAT_FIELDS>>;

const labelOf = (told: CoatValues): Label | undefined => {
  const minutes: Partial<Record<(typeof CAN_MILESTONES)[number], { from: number; to: number }>> = {};
  for (const milestone of CAN_MILESTONES) {
    const from = told[`label-${milestone}`];
    if (from !== undefined) minutes[milestone] = { from, to: told[`label-${milestone}-to`] ?? from };
  }
  if (!Object.keys(minutes).length) return undefined;
  const { 'label-air': celsius, 'label-humidity': humidity } = told;
  if (celsius === undefined && humidity === undefined) return { minutes };
  const climate = {
    celsius: celsius ?? REFERENCE_CLIMATE.celsius,
    relativeHumidity: humidity ?? REFERENCE_CLIMATE.relativeHumidity,
  };
  return { minutes, climate };
};

/** The name of the kept can by whose times a coat was laid; nothing where it holds none, or others. */
export const canOf = ({ product, label }: LaidCoat, cans: readonly KeptCan[]): string | undefined => {
  if (!label) return undefined;
  const told = JSON.stringify(label);
  return cans.find((can) => {
    const { units } = can;
    const { values } = readForm(COAT_FIELDS, asDraft(COAT_FIELDS, can, { units }), units);
    return can.product === product && JSON.stringify(labelOf(values)) === told;
  })?.name;
};

/** To the nearest minute: nobody lays a coat to the second, and the times told are whole minutes. */
const wholeMinute = (at: number): number => Math.round(at / MINUTE_MS) * MINUTE_MS;

/** The two instants that a time in the hour that comes twice may mean. */
export const twiceIn = (draft: Draft): readonly number[] => {
  const all = draft['when'] === 'at' ? instantsOf(draft['at'] ?? '') : [];
  return all.length > 1 ? all : [];
};

const laidAtOf = (told: CoatValues, draft: Draft, now: number): number => {
  if (told.when === 'ago') return wholeMinute(now - (told.ago ?? Number.NaN) * MINUTE_MS);
  if (told.when !== 'at') return wholeMinute(now);
  const twice = twiceIn(draft);
  return (told['at-hour'] === 'second' ? twice.at(-1) : told.at) ?? Number.NaN;
};

/** Of the fields that are not in use nothing can be wrong. */
const inUse =
  (draft: Draft) =>
  ({ field }: FieldFault): boolean =>
    field === 'at' ? draft['when'] === 'at' : field !== 'ago' || draft['when'] === 'ago';

/** The fault of a second field stands beside the first of the pair. */
const beside = (field: string): string => field.replace(/-to$/, '');

const missing = (told: CoatValues, draft: Draft): readonly FieldFault[] => [
  ...((told.amount === undefined) !== (told.area === undefined) && draft['amount'] !== draft['area']
    ? [{ field: 'amount', says: 'Give both the amount and the area, or neither.' }]
    : []),
  ...(draft['when'] === 'ago' && !draft['ago']?.trim()
    ? [{ field: 'ago', says: 'Give the minutes since it was laid.' }]
    : []),
  ...(draft['when'] === 'at' && !draft['at'] ? [{ field: 'at', says: clockWords.form['no-time'] }] : []),
  ...(isOneEnd(told['label-no-coat'], told['label-no-coat-to'])
    ? [{ field: 'label-no-coat', says: BOTH_ENDS }]
    : []),
  ...(twiceIn(draft).length && !told['at-hour']
    ? [
        {
          field: 'at',
          says: 'That night the clocks go back, and this time comes twice. Say below which of the two it was.',
        },
      ]
    : []),
];

/** The coat that the form tells of, NaN where a number can not be read, and each fault beside its field. */
export const coatIn = (
  draft: Draft,
  now: number,
): { readonly coat: LaidCoat; readonly faults: readonly DraftFault[] } => {
  const read = readForm(COAT_FIELDS, draft, unitsIn(draft));
  const told: CoatValues = read.values;
  const { amount, area } = told;
  const coat: LaidCoat = {
    id: String(now),
    piece: told.piece ?? 'My piece',
    product: told.product ?? '',
    label: labelOf(told),
    laidAt: laidAtOf(told, draft, now),
    celsius: told.air ?? Number.NaN,
    relativeHumidity: told.humidity ?? Number.NaN,
    surfaceCelsius: told.surface,
    ...(told.night !== undefined && { night: { celsius: told.night } }),
    coatNumber: told.coat ?? 1,
    applicator: told.tool,
    ...(told.hardener && { hardener: told.hardener }),
    amount:
      amount !== undefined && area !== undefined ? { milliliters: amount, squareMeters: area } : undefined,
    baseTone: told.tone,
    sheen: told.sheen,
  };
  const faults = [...read.faults, ...missing(told, draft)].filter(inUse(draft));
  return { coat, faults: faults.map(({ field, says }) => ({ field: beside(field), says, stops: true })) };
};

/** What could not be read, and what can not be right, each by its field; of one field the first alone. */
export const faultsOf = (
  unread: readonly DraftFault[],
  coat: LaidCoat,
  product: ClockProduct,
  now: number,
  style: TimeStyle,
): readonly DraftFault[] => {
  const named = new Set(unread.map(({ field }) => field));
  if (named.has('ago')) named.add('at');
  const wrong = checkCoat(clockWords, product, coat, now, style).map(({ field, says, stops }) => ({
    field: FIELD_NAMES[field] ?? field,
    says,
    stops,
  }));
  return [...unread, ...wrong.filter(({ field }) => !named.has(field))];
};

/** What a link may tell: the coat, the air that it lies in, and when its can lets the next one on. */
const TOLD_IN_LINK: readonly string[] = [
  'product',
  'coat',
  'tool',
  'when',
  'ago',
  'units',
  'air',
  'humidity',
  'label-recoat',
  'label-no-coat',
  'label-no-coat-to',
  'label-air',
];

/** The coat that a link tells of, as a reply carries it; nothing where it tells of none. */
export const toldInLink = (fragment: string): Draft | undefined => {
  const told = [...new URLSearchParams(fragment.replace(/^#/, ''))].filter(([name]) =>
    TOLD_IN_LINK.includes(name),
  );
  return told.length
    ? Object.fromEntries(told.map(([name, text]) => [name, text.slice(0, LONGEST_TEXT)]))
    : undefined;
};
